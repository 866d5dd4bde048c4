// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/seriespicture.h"

#include "core/run/waits.h"

#include <algorithm>

namespace plateau::ui {

namespace {

/// What a series counts its minutes from.
QString additionBefore(const notebook::StoredRun &stored, const Place &place)
{
    QString last;
    for (const run::TubeAct &act :
         run::tubeActs(stored.method, stored.run.tubes[static_cast<std::size_t>(place.tube)])) {
        if (act.kind == run::TubeAct::Kind::Add)
            last = act.name;
        else if (act.name == place.reading)
            break;
    }
    const assay::Component *component = assay::findComponent(stored.method, last);
    return component ? component->name : last;
}

} // namespace

std::optional<AbsorbanceSeries> seriesAt(const notebook::StoredRun &stored,
                                         const evaluation::Evaluation &evaluation, const Place &place)
{
    const run::Reading *reading = readingAt(stored.run, place);
    const auto *points = reading ? std::get_if<run::ReadingSeries>(reading) : nullptr;
    if (!points)
        return std::nullopt;
    AbsorbanceSeries series;
    for (const run::TimedAbsorbance &point : *points)
        series.points.push_back({point.at_min, point.absorbance});
    series.reading = place.reading;
    series.start = additionBefore(stored, place);
    const auto fit = std::ranges::find_if(evaluation.series, [&place](const evaluation::SeriesFit &each) {
        return each.tube == place.tube && each.reading == place.reading;
    });
    // Through one point there is no line.
    if (fit != evaluation.series.end() && fit->points >= 2) {
        series.line =
            AbsorbanceSeries::Line{fit->atStart, fit->slope_per_min, fit->slopeStandardError_per_min,
                                   static_cast<int>(points->size()) - fit->points};
        series.ended = fit->ended;
    }
    return series;
}

} // namespace plateau::ui
