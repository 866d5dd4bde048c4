// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/equipment/permissible.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace plateau::equipment {

namespace {

constexpr std::array<PistonLimits, 13> pistons{{
    {0.05, 0.05, 1},
    {0.08, 0.04, 2},
    {0.125, 0.075, 5},
    {0.12, 0.08, 10},
    {0.2, 0.1, 20},
    {0.5, 0.2, 50},
    {0.8, 0.3, 100},
    {1.6, 0.6, 200},
    {4, 1.5, 500},
    {8, 3, 1000},
    {16, 6, 2000},
    {40, 15, 5000},
    {60, 30, 10000},
}};

struct GlassLimit {
    double nominal_mL;
    double limit_mL;
};
constexpr std::array<GlassLimit, 9> bulbPipettes{{{0.5, 0.005},
                                                  {1, 0.008},
                                                  {2, 0.01},
                                                  {5, 0.015},
                                                  {10, 0.02},
                                                  {20, 0.03},
                                                  {25, 0.03},
                                                  {50, 0.05},
                                                  {100, 0.08}}};
constexpr std::array<GlassLimit, 14> flasks{{{1, 0.025},
                                             {2, 0.025},
                                             {5, 0.025},
                                             {10, 0.025},
                                             {20, 0.04},
                                             {25, 0.04},
                                             {50, 0.06},
                                             {100, 0.1},
                                             {200, 0.15},
                                             {250, 0.15},
                                             {500, 0.25},
                                             {1000, 0.4},
                                             {2000, 0.6},
                                             {5000, 1.2}}};

constexpr double sameSize = 1e-9;

std::optional<double> limitOf(std::span<const GlassLimit> table, double nominal_mL)
{
    const auto found = std::ranges::find_if(table, [nominal_mL](const GlassLimit &row) {
        return std::abs(row.nominal_mL - nominal_mL) <= sameSize * row.nominal_mL;
    });
    return found == table.end() ? std::nullopt : std::optional(found->limit_mL);
}

} // namespace

std::optional<PistonLimits> pistonLimits(double nominal_mL)
{
    const double nominal_uL = 1000 * nominal_mL;
    if (!(nominal_uL >= pistons.front().nominal_uL * (1 - sameSize)))
        return std::nullopt;
    const auto found = std::ranges::find_if(pistons, [nominal_uL](const PistonLimits &row) {
        return row.nominal_uL >= nominal_uL * (1 - sameSize);
    });
    return found == pistons.end() ? std::nullopt : std::optional(*found);
}

std::optional<double> bulbPipetteLimit_mL(double nominal_mL)
{
    return limitOf(bulbPipettes, nominal_mL);
}

std::optional<double> flaskLimit_mL(double nominal_mL)
{
    return limitOf(flasks, nominal_mL);
}

} // namespace plateau::equipment
