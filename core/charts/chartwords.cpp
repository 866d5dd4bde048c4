// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/charts/chartwords.h"

#include "core/assay/localday.h"
#include "core/charts/wording.h"
#include "core/evaluation/format.h"

#include <algorithm>
#include <cmath>

namespace plateau::charts {

using namespace Qt::StringLiterals;
using quality::RunRule;

QString quantityName(Quantity quantity)
{
    switch (quantity) {
    case Quantity::StandardRecovery:
        return Wording::tr("recovery of standards");
    case Quantity::StandardStrength:
        return Wording::tr("found strength of standards");
    case Quantity::ControlMaterial:
        return Wording::tr("control material");
    case Quantity::Blank:
        return Wording::tr("signal of the blanks");
    case Quantity::DuplicateRange:
        return Wording::tr("range of duplicates");
    case Quantity::RelativeDuplicateRange:
        return Wording::tr("range of duplicates in % of their mean");
    case Quantity::SampleResult:
        return Wording::tr("results of a sample");
    case Quantity::ProductResult:
        return Wording::tr("results of a product");
    }
    return {};
}

QString kindName(Kind kind)
{
    switch (kind) {
    case Kind::Individuals:
        return Wording::tr("individuals with moving range");
    case Kind::MeanAndRange:
        return Wording::tr("means with range");
    case Kind::Ranges:
        return Wording::tr("ranges");
    case Kind::WeightedAverage:
        return Wording::tr("weighted moving average (EWMA)");
    case Kind::CumulativeSum:
        return Wording::tr("cumulative sums (CUSUM)");
    case Kind::Trend:
        return Wording::tr("results with their limits");
    }
    return {};
}

QString ruleName(RunRule rule)
{
    switch (rule) {
    case RunRule::OneBeyond3:
        return Wording::tr("one beyond 3 s");
    case RunRule::TwoOfThreeBeyond2:
        return Wording::tr("two of three beyond 2 s on one side");
    case RunRule::FourOfFiveBeyond1:
        return Wording::tr("four of five beyond 1 s on one side");
    case RunRule::NineOnOneSide:
        return Wording::tr("nine in a row on one side");
    case RunRule::SixRisingOrFalling:
        return Wording::tr("six in a row rising or falling");
    case RunRule::FourteenAlternating:
        return Wording::tr("fourteen in a row alternating up and down");
    case RunRule::FifteenWithin1:
        return Wording::tr("fifteen in a row within 1 s");
    case RunRule::EightBeyond1OnBothSides:
        return Wording::tr("eight in a row beyond 1 s, on both sides");
    case RunRule::EightOnOneSide:
        return Wording::tr("eight in a row on one side");
    case RunRule::SevenOnOneSide:
        return Wording::tr("seven in a row on one side");
    case RunRule::TenOnOneSide:
        return Wording::tr("ten in a row on one side");
    case RunRule::OneBeyond2:
        return Wording::tr("one beyond 2 s (a warning)");
    case RunRule::TwoInARowBeyond2:
        return Wording::tr("two in a row beyond 2 s on one side");
    case RunRule::OppositeBeyond2:
        return Wording::tr("two in a row, beyond 2 s on opposite sides");
    case RunRule::FourInARowBeyond1:
        return Wording::tr("four in a row beyond 1 s on one side");
    }
    return {};
}

QString plottedName(Plotted plotted, const Settings &settings)
{
    switch (plotted) {
    case Plotted::Values:
        return Wording::tr("value");
    case Plotted::MovingRanges:
        return Wording::tr("moving range");
    case Plotted::Means:
        return Wording::tr("mean of %1").arg(settings.subgroup);
    case Plotted::Ranges:
        return settings.kind == Kind::MeanAndRange ? Wording::tr("range of %1").arg(settings.subgroup)
                                                   : Wording::tr("range of two");
    case Plotted::WeightedAverages:
        return Wording::tr("weighted average");
    case Plotted::CumulativeSums:
        return Wording::tr("cumulative sum");
    case Plotted::Results:
        return Wording::tr("result");
    }
    return {};
}

int decimalsOf(const ControlChart &chart)
{
    if (chart.basis && chart.basis->deviation > 0)
        return std::clamp(evaluation::decimalsFor(chart.basis->deviation, 2), 0, 6);
    const auto largest =
        std::ranges::max_element(chart.series, {}, [](const Point &point) { return std::abs(point.value); });
    if (largest == chart.series.end() || largest->value == 0)
        return 1;
    return std::clamp(evaluation::decimalsFor(largest->value, 4), 0, 6);
}

QString valueText(const ControlChart &chart, double value, const QString &unit)
{
    const QString number = QString::number(value, 'f', decimalsOf(chart));
    return unit.isEmpty() ? number : evaluation::withUnit(number, unit);
}

QString runText(const RunFacts &run)
{
    return Wording::tr("run %1 (%2, %3)")
        .arg(QString::number(run.run), run.title(), assay::shownDay(run.at.date()));
}

namespace {

QString provisionalSentence(const Settings &settings)
{
    const int wanted = valuesForVerdict(settings);
    if (std::get<EarlierRuns>(settings.limits).values < wanted)
        return Wording::tr(
                   "They are provisional: whether nothing is out of control is said from %1 values on. Under "
                   "Limits and rules, raise the number of values to %1.")
            .arg(wanted);
    return Wording::tr("They are provisional: whether nothing is out of control is said from %1 values on.")
        .arg(wanted);
}

} // namespace

QString basisSentence(const ControlChart &chart)
{
    if (chart.settings.kind == Kind::Trend)
        return {};
    if (chart.isMixed)
        return Wording::tr(
            "Values of several materials stand in this chart, so it has no limits: a control chart is "
            "of one material. Choose one above.");
    if (!chart.basis)
        return Wording::tr(
                   "There are too few values for limits so far. Accept more runs, or enter limits that "
                   "the laboratory has fixed.") +
               u' ' + Wording::tr("Limits need %1 values.").arg(valuesForLimits(chart.settings));
    const Basis &basis = *chart.basis;
    const QString unit = chart.series.empty() ? QString() : chart.series.front().unit;
    const QString numbers =
        Wording::tr("centre %1, standard deviation of a single value %2")
            .arg(valueText(chart, basis.centre, unit), valueText(chart, basis.deviation, unit));
    if (basis.isFixed) {
        const auto &fixed = std::get<FixedLimits>(chart.settings.limits);
        return Wording::tr("Limits fixed by the laboratory: %1 (%2, %3).")
            .arg(numbers, fixed.source, assay::shownDay(fixed.date));
    }
    QStringList sentences{Wording::tr("Limits from %1 values, run %2 to run %3: %4.")
                              .arg(QString::number(basis.values), QString::number(basis.firstRun),
                                   QString::number(basis.lastRun), numbers)};
    if (basis.isProvisional)
        sentences << provisionalSentence(chart.settings);
    if (chart.joinsSamples)
        sentences << Wording::tr(
            "The ranges are of many samples: the limits hold where these have similar amounts.");
    return sentences.join(u' ');
}

} // namespace plateau::charts
