// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/charts/chartwords.h"

#include "core/assay/listed.h"
#include "core/charts/wording.h"
#include "core/evaluation/format.h"

namespace plateau::charts {

using namespace Qt::StringLiterals;
using quality::RunRule;

namespace {

QString whatToDoBeyond(Plotted plotted)
{
    if (plotted == Plotted::Ranges || plotted == Plotted::MovingRanges)
        return Wording::tr("Look for a pipetting error, a bubble or a mixed-up tube, and measure again "
                           "before results of that run are reported.");
    return Wording::tr(
        "Report no results of that run before the cause is known: look at the standard and its age, "
        "the dilution, the lots and the photometer, then measure again.");
}

QString whatToDo(RunRule rule, Plotted plotted)
{
    switch (rule) {
    case RunRule::OneBeyond3:
    case RunRule::TwoOfThreeBeyond2:
    case RunRule::TwoInARowBeyond2:
        return whatToDoBeyond(plotted);
    case RunRule::OneBeyond2:
        return Wording::tr("A single one is to be expected now and then; watch the next run.");
    case RunRule::OppositeBeyond2:
        return Wording::tr("The scatter has grown: look at pipettes, mixing and temperature.");
    case RunRule::SixRisingOrFalling:
        return Wording::tr("Something drifts: look at a standard or reagent that ages, and at the lamp.");
    case RunRule::FourteenAlternating:
        return Wording::tr("Two conditions alternate: compare people, pipettes and racks.");
    case RunRule::FifteenWithin1:
        return Wording::tr("The scatter is smaller than the limits say: set them again from these runs, or "
                           "see whether values of two kinds are mixed in one chart.");
    case RunRule::EightBeyond1OnBothSides:
        return Wording::tr(
            "Values of two kinds are mixed in one chart: separate them by lot, person or standard.");
    case RunRule::FourOfFiveBeyond1:
    case RunRule::FourInARowBeyond1:
    case RunRule::SevenOnOneSide:
    case RunRule::EightOnOneSide:
    case RunRule::NineOnOneSide:
    case RunRule::TenOnOneSide:
        return Wording::tr(
            "Something has shifted: compare lots, standard and photometer before and after the first of "
            "them.");
    }
    return {};
}

QString sideWord(const Finding &finding)
{
    return finding.isAbove ? Wording::tr("above the centre") : Wording::tr("below the centre");
}

QString what(const Finding &finding)
{
    switch (finding.kind) {
    case Finding::Kind::AverageAbove:
        return Wording::tr("weighted average above its upper limit");
    case Finding::Kind::AverageBelow:
        return Wording::tr("weighted average below its lower limit");
    case Finding::Kind::SumAbove:
        return Wording::tr("upper cumulative sum beyond its decision limit");
    case Finding::Kind::SumBelow:
        return Wording::tr("lower cumulative sum beyond its decision limit");
    case Finding::Kind::OutsideLimit:
        return finding.isAbove ? Wording::tr("above a limit of the product")
                               : Wording::tr("below a limit of the product");
    case Finding::Kind::Rule:
        break;
    }
    switch (finding.rule) {
    case RunRule::SixRisingOrFalling:
        return finding.isAbove ? Wording::tr("six in a row rising") : Wording::tr("six in a row falling");
    case RunRule::FourteenAlternating:
    case RunRule::FifteenWithin1:
    case RunRule::EightBeyond1OnBothSides:
    case RunRule::OppositeBeyond2:
        return ruleName(finding.rule);
    case RunRule::OneBeyond2:
        return Wording::tr("one beyond 2 s, %1").arg(sideWord(finding));
    default:
        return Wording::tr("%1, %2").arg(ruleName(finding.rule), sideWord(finding));
    }
}

const RunFacts &runAt(const ControlChart &chart, const Panel &panel, std::size_t mark)
{
    return *chart.series[panel.marks[mark].last].run;
}

QString where(const ControlChart &chart, const Panel &panel, const Finding &finding)
{
    const QString first = runText(runAt(chart, panel, finding.completed));
    if (finding.completed == finding.last)
        return first;
    return Wording::tr("%1 to %2").arg(first, runText(runAt(chart, panel, finding.last)));
}

/// "begun with run 104", where the pattern is longer than what completes it.
QString since(const ControlChart &chart, const Panel &panel, const Finding &finding)
{
    if (finding.first == finding.completed)
        return {};
    return Wording::tr(", begun with run %1").arg(runAt(chart, panel, finding.first).run);
}

/// A subgroup is out of control with all its values, a moving range with the later one.
bool isAt(const Panel &panel, const Finding &finding, std::size_t point)
{
    const Mark &completed = panel.marks[finding.completed];
    const std::size_t first = panel.plotted == Plotted::MovingRanges ? completed.last : completed.first;
    return first <= point && point <= panel.marks[finding.last].last;
}

/// "moving range: one beyond 3 s, above the centre"; of single values without their name.
QString whatIn(const ControlChart &chart, const Panel &panel, const Finding &finding)
{
    if (panel.plotted == Plotted::Values || finding.kind != Finding::Kind::Rule)
        return what(finding);
    return Wording::tr("%1: %2").arg(plottedName(panel.plotted, chart.settings), what(finding));
}

QString changeAt(const ControlChart &chart, std::size_t point)
{
    for (const Change &change : chart.changes) {
        if (change.at == point)
            return change.text;
    }
    return {};
}

QString distanceText(const ControlChart &chart, std::size_t point)
{
    const Panel &panel = chart.panels.front();
    if (!panel.baseline || panel.baseline->deviation <= 0)
        return {};
    const QString &unit = chart.series[point].unit;
    for (const Mark &mark : panel.marks) {
        if (mark.last != point)
            continue;
        if (panel.plotted == Plotted::CumulativeSums)
            return Wording::tr("sums %1 above and %2 below")
                .arg(valueText(chart, mark.value, unit), valueText(chart, -mark.below, unit));
        const double z = panel.baseline->deviationsOf(mark.value);
        const QString number = QString::number(std::abs(z), 'f', 1);
        const QString of = panel.plotted == Plotted::Values
                               ? QString()
                               : plottedName(panel.plotted, chart.settings) + u' ' +
                                     valueText(chart, mark.value, unit) + u", "_s;
        return of + (z < 0 ? Wording::tr("%1 s below the centre") : Wording::tr("%1 s above the centre"))
                        .arg(number);
    }
    return {};
}

} // namespace

QString findingSentence(const ControlChart &chart, const Panel &panel, const Finding &finding)
{
    QString advice = whatToDo(finding.rule, panel.plotted);
    if (finding.kind == Finding::Kind::OutsideLimit)
        advice = Wording::tr("The record of the run says what was decided at its uncertainty.");
    else if (finding.kind != Finding::Kind::Rule)
        advice = Wording::tr(
            "Something has shifted a little and stays so: compare lots, standard and photometer before "
            "and after.");
    const QString of = panel.plotted == Plotted::Values || finding.kind != Finding::Kind::Rule
                           ? QString()
                           : Wording::tr(" (%1)").arg(plottedName(panel.plotted, chart.settings));
    return Wording::tr("%1%2: %3%4. %5")
        .arg(evaluation::capitalised(what(finding)), of, where(chart, panel, finding),
             since(chart, panel, finding), advice);
}

QString pointSentence(const ControlChart &chart, std::size_t point)
{
    const Point &shown = chart.series[point];
    QStringList facts{Wording::tr("%1 of %2").arg(point + 1).arg(chart.series.size()), runText(*shown.run)};
    if (!shown.name.isEmpty())
        facts << shown.name;
    // Beside its uncertainty a value has the decimals of that, not of the chart.
    facts << (shown.expandedUncertainty
                  ? evaluation::withUnit(
                        u"%1 ± %2"_s.arg(evaluation::valueText(shown.value, shown.expandedUncertainty),
                                         evaluation::uncertaintyText(*shown.expandedUncertainty)),
                        shown.unit)
                  : valueText(chart, shown.value, shown.unit));
    if (const QString distance = distanceText(chart, point); !distance.isEmpty() && !shown.omission)
        facts << distance;
    for (const Panel &panel : chart.panels) {
        for (const Finding &finding : panel.findings) {
            if (!shown.omission && isAt(panel, finding, point))
                facts << whatIn(chart, panel, finding);
        }
    }
    if (const QString change = changeAt(chart, point); !change.isEmpty())
        facts << change;
    if (!shown.isAccepted)
        facts << Wording::tr("rejected");
    if (shown.omission)
        facts << Wording::tr("left out by %1: %2").arg(shown.omission->person, shown.omission->reason);
    return assay::listed(facts) + u'.';
}

} // namespace plateau::charts
