// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/charts/controlchart.h"

#include "core/charts/chartbasis.h"
#include "core/charts/findings.h"
#include "core/quality/accumulatedcharts.h"

#include <algorithm>
#include <cmath>

namespace plateau::charts {

namespace {

/// What counts, as values and as places in the series.
struct Counted {
    std::vector<double> values;
    std::vector<std::uint32_t> places;
};

Counted countedOf(const Series &series)
{
    Counted counted;
    for (std::size_t i = 0; i < series.size(); ++i) {
        if (!series[i].omission) {
            counted.values.push_back(series[i].value);
            counted.places.push_back(static_cast<std::uint32_t>(i));
        }
    }
    return counted;
}

Panel singleValues(Plotted plotted, const Counted &counted)
{
    Panel panel{plotted, {}, {}, {}, {}};
    for (std::size_t i = 0; i < counted.values.size(); ++i)
        panel.marks.push_back({counted.values[i], counted.places[i], counted.places[i]});
    return panel;
}

Panel ofGroups(Plotted plotted, const std::vector<double> &values, const Counted &counted, std::size_t size,
               std::size_t step)
{
    Panel panel{plotted, {}, {}, {}, {}};
    for (std::size_t i = 0; i < values.size(); ++i)
        panel.marks.push_back({values[i], counted.places[i * step], counted.places[i * step + size - 1]});
    return panel;
}

/// The panels of a kind, without limits.
std::vector<Panel> panelsOf(const Settings &settings, const Counted &counted)
{
    const auto size = static_cast<std::size_t>(settings.subgroup);
    switch (settings.kind) {
    case Kind::Individuals:
        return {singleValues(Plotted::Values, counted),
                ofGroups(Plotted::MovingRanges, quality::movingRanges(counted.values), counted, 2, 1)};
    case Kind::MeanAndRange:
        return {ofGroups(Plotted::Means, quality::subgroupMeans(counted.values, settings.subgroup), counted,
                         size, size),
                ofGroups(Plotted::Ranges, quality::subgroupRanges(counted.values, settings.subgroup), counted,
                         size, size)};
    case Kind::Ranges:
        return {singleValues(Plotted::Ranges, counted)};
    case Kind::WeightedAverage:
        return {singleValues(Plotted::WeightedAverages, counted)};
    case Kind::CumulativeSum:
        return {singleValues(Plotted::CumulativeSums, counted)};
    case Kind::Trend:
        return {singleValues(Plotted::Results, counted)};
    }
    return {};
}

void average(Panel &panel, const Counted &counted, const Settings &settings)
{
    const auto averages =
        quality::weightedAverages(counted.values, *panel.baseline, settings.lambda, settings.width);
    for (std::size_t i = 0; i < averages.size(); ++i) {
        panel.marks[i].value = averages[i].value;
        panel.marks[i].lower = averages[i].lower;
        panel.marks[i].upper = averages[i].upper;
    }
}

void accumulate(Panel &panel, const Counted &counted, const Settings &settings)
{
    const double deviation = panel.baseline->deviation;
    panel.decisionLimit = settings.h * deviation;
    const auto sums = quality::cumulativeSums(counted.values, panel.baseline->centre, settings.k * deviation);
    for (std::size_t i = 0; i < sums.size(); ++i) {
        panel.marks[i].value = sums[i].above;
        panel.marks[i].below = -sums[i].below;
    }
}

bool hasManyNames(const Subject &subject, const Series &series)
{
    return subject.name.isEmpty() &&
           std::ranges::any_of(series, [&](const Point &point) { return point.name != series.front().name; });
}

} // namespace

bool hasVerdict(const ControlChart &chart)
{
    return chart.basis && !chart.basis->isProvisional;
}

bool isWarning(const Finding &finding)
{
    return finding.kind == Finding::Kind::Rule && quality::isWarning(finding.rule);
}

ControlChart controlChart(const Subject &subject, const SharedSeries &whole, const Filter &filter,
                          const Settings &settings)
{
    ControlChart chart;
    chart.settings = settings;
    chart.series = filtered(whole, filter);
    const bool namesCount =
        subject.quantity == Quantity::StandardRecovery || subject.quantity == Quantity::StandardStrength;
    chart.changes = changesIn(chart.series, namesCount);
    const Counted counted = countedOf(chart.series);
    chart.panels = panelsOf(settings, counted);
    const bool areMany = hasManyNames(subject, whole);
    chart.isMixed = areMany && isOfOneMaterial(subject.quantity);
    chart.joinsSamples = areMany && isRange(subject.quantity);
    if (settings.kind == Kind::Trend || chart.isMixed)
        return chart;
    const std::optional<Baselines> baselines = baselinesOf(whole, settings);
    if (!baselines)
        return chart;
    chart.basis = baselines->basis;
    for (Panel &panel : chart.panels) {
        const bool isSpread = panel.plotted == Plotted::MovingRanges || panel.plotted == Plotted::Ranges;
        panel.baseline = isSpread ? baselines->ranges : baselines->values;
        if (!panel.baseline)
            continue;
        if (panel.plotted == Plotted::WeightedAverages)
            average(panel, counted, settings);
        if (panel.plotted == Plotted::CumulativeSums)
            accumulate(panel, counted, settings);
        panel.findings = findingsOf(panel, settings);
    }
    return chart;
}

} // namespace plateau::charts
