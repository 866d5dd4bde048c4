// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/volumeunit.h"

#include "core/evaluation/format.h"

#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

constexpr double oneMillilitre = 1 - 1e-9;

} // namespace

double volumeUnitsPer_mL(double volume_mL)
{
    return volume_mL < oneMillilitre ? 1000 : 1;
}

QString volumeUnit(double volume_mL)
{
    return volume_mL < oneMillilitre ? u"µL"_s : u"mL"_s;
}

QString volumeWords(double volume_mL)
{
    // What is left behind the sixth decimal is arithmetic: 0.07 mL times 1000 is not quite 70.
    const double number = std::round(volume_mL * volumeUnitsPer_mL(volume_mL) * 1e6) / 1e6;
    return evaluation::withUnit(evaluation::plainText(number), volumeUnit(volume_mL));
}

double volumeInUnitOf(double volume_mL, double other_mL)
{
    constexpr double hundredthsPer_mL = 1e5;
    return std::round(volume_mL * hundredthsPer_mL) / (hundredthsPer_mL / volumeUnitsPer_mL(other_mL));
}

} // namespace plateau::ui
