// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/run/run.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace plateau::run {

using namespace Qt::StringLiterals;

double dilutionFactor(const std::vector<DilutionStep> &steps)
{
    double factor = 1;
    for (const DilutionStep &step : steps)
        factor *= step.makeUpTo_mL / step.take_mL;
    return factor;
}

double reportedPer_g_per_L(const Sample &sample)
{
    return sample.form == Form::Solid ? *sample.extract_mL / 1000 / *sample.mass_g * 100 : 1;
}

double ageAtUse_h(const Standard &standard)
{
    if (!standard.preparedAt || !standard.usedAt)
        return 0;
    constexpr double millisecondsPerHour = 3.6e6;
    return static_cast<double>(standard.preparedAt->msecsTo(*standard.usedAt)) / millisecondsPerHour;
}

double concentrationAtUse_g_per_L(const Standard &standard)
{
    return standard.concentration_g_per_L * std::pow(1 - standard.lossPerHour, ageAtUse_h(standard));
}

const Sample *findSample(const Run &run, const QString &id)
{
    const auto found = std::ranges::find(run.samples, id, &Sample::id);
    return found == run.samples.end() ? nullptr : &*found;
}

const Standard *findStandard(const Run &run, const QString &id)
{
    const auto found = std::ranges::find(run.standards, id, &Standard::id);
    return found == run.standards.end() ? nullptr : &*found;
}

namespace {

constexpr std::array<std::pair<Role, QLatin1StringView>, 6> roleWords{{
    {Role::Blank, "blank"_L1},
    {Role::SampleBlank, "sampleBlank"_L1},
    {Role::Standard, "standard"_L1},
    {Role::Control, "control"_L1},
    {Role::Sample, "sample"_L1},
    {Role::Spiked, "spiked"_L1},
}};

} // namespace

QString roleWord(Role role)
{
    const auto found = std::ranges::find(roleWords, role, &std::pair<Role, QLatin1StringView>::first);
    return found->second;
}

std::optional<Role> roleFromWord(const QString &word)
{
    const auto found =
        std::ranges::find_if(roleWords, [&](const auto &entry) { return entry.second == word; });
    if (found == roleWords.end())
        return std::nullopt;
    return found->first;
}

} // namespace plateau::run
