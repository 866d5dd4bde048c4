// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "sampledata/maker/story.h"

#include <algorithm>

namespace plateau::sampledata {

namespace {

constexpr double mostOfScale = 0.009;
constexpr double soundPipette = 0.003;
constexpr double wornPipette = 0.04;
constexpr int mostDaysOfWear = 40;
constexpr int mostDaysOfCreep = 200;

/// 0 before, 1 at the end and not beyond.
double shareOf(const QDate &from, const QDate &to, const QDate &day)
{
    const double whole = double(std::max<qint64>(1, from.daysTo(to)));
    return std::clamp(double(from.daysTo(day)) / whole, 0.0, 1.0);
}

} // namespace

Story Story::over(const std::vector<QDate> &worked)
{
    const auto at = [&](double share, std::size_t later = 0) {
        const auto index = std::size_t(double(worked.size()) * share) + later;
        return worked[std::min(index, worked.size() - 1)];
    };
    Story story;
    story.lampChanged = at(0.40);
    story.scaleCreepsFrom = std::max(at(0.12), story.lampChanged.addDays(-mostDaysOfCreep));
    story.weakLotFrom = at(0.55);
    story.pipetteFails = at(0.78);
    story.pipetteWearsFrom = std::max(at(0.66), story.pipetteFails.addDays(-mostDaysOfWear));
    story.pipetteRepaired = at(0.78, 1);
    return story;
}

double Story::scaleOn(const QDate &day) const
{
    return day >= lampChanged ? 1 : 1 + mostOfScale * shareOf(scaleCreepsFrom, lampChanged, day);
}

double Story::pipetteScatterOn(const QDate &day) const
{
    if (day >= pipetteFails)
        return soundPipette;
    return soundPipette + (wornPipette - soundPipette) * shareOf(pipetteWearsFrom, pipetteFails, day);
}

} // namespace plateau::sampledata
