// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/charts/findings.h"

#include <algorithm>
#include <functional>
#include <map>
#include <utility>

namespace plateau::charts {

using quality::RunRule;

namespace {

bool holdsFor(Plotted plotted, RunRule rule)
{
    if (plotted == Plotted::MovingRanges)
        return rule == RunRule::OneBeyond3;
    return plotted != Plotted::Ranges || quality::holdsForRanges(rule);
}

/// Which way a pattern points; patterns that point nowhere count as above.
bool pointsUp(const quality::Violation &violation, std::span<const double> z)
{
    switch (violation.rule) {
    case RunRule::SixRisingOrFalling:
        return z[violation.last] > z[violation.first];
    case RunRule::FourteenAlternating:
    case RunRule::FifteenWithin1:
    case RunRule::EightBeyond1OnBothSides:
    case RunRule::OppositeBeyond2:
        return true;
    default:
        return z[violation.last] > 0;
    }
}

/// Violations of one rule that follow each other mark by mark, as one.
class Joining
{
public:
    void add(const Finding &finding)
    {
        const auto [newest, isFirst] =
            m_newest.try_emplace({finding.rule, finding.isAbove}, m_findings.size());
        if (!isFirst && m_findings[newest->second].last + 1 == finding.last) {
            m_findings[newest->second].last = finding.last;
            return;
        }
        newest->second = m_findings.size();
        m_findings.push_back(finding);
    }
    std::vector<Finding> take() { return std::move(m_findings); }

private:
    std::map<std::pair<RunRule, bool>, std::size_t> m_newest;
    std::vector<Finding> m_findings;
};

std::vector<Finding> byRules(const Panel &panel, const Settings &settings)
{
    std::vector<double> z;
    z.reserve(panel.marks.size());
    for (const Mark &mark : panel.marks)
        z.push_back(panel.baseline->deviationsOf(mark.value));
    std::set<RunRule> rules;
    for (const RunRule rule : settings.rules) {
        if (holdsFor(panel.plotted, rule))
            rules.insert(rule);
    }
    Joining joining;
    for (const quality::Violation &violation : quality::violationsOf(z, rules))
        joining.add({Finding::Kind::Rule, violation.rule, violation.first, violation.last, violation.last,
                     pointsUp(violation, z)});
    return joining.take();
}

using Outside = std::function<bool(const Mark &)>;

void addRuns(const Panel &panel, Finding::Kind kind, bool isAbove, const Outside &isOutside,
             std::vector<Finding> &findings)
{
    for (std::size_t i = 0; i < panel.marks.size(); ++i) {
        if (!isOutside(panel.marks[i]))
            continue;
        const std::size_t first = i;
        while (i + 1 < panel.marks.size() && isOutside(panel.marks[i + 1]))
            ++i;
        findings.push_back({kind, RunRule::OneBeyond3, first, i, first, isAbove});
    }
}

} // namespace

void holdAgainst(ControlChart &chart, std::optional<double> lower, std::optional<double> upper)
{
    for (Panel &panel : chart.panels) {
        if (upper)
            addRuns(
                panel, Finding::Kind::OutsideLimit, true,
                [upper](const Mark &mark) { return mark.value > *upper; }, panel.findings);
        if (lower)
            addRuns(
                panel, Finding::Kind::OutsideLimit, false,
                [lower](const Mark &mark) { return mark.value < *lower; }, panel.findings);
        std::ranges::stable_sort(panel.findings, {}, &Finding::completed);
    }
}

std::vector<Finding> findingsOf(const Panel &panel, const Settings &settings)
{
    std::vector<Finding> findings;
    if (panel.plotted == Plotted::WeightedAverages) {
        addRuns(
            panel, Finding::Kind::AverageAbove, true,
            [](const Mark &mark) { return mark.value > mark.upper; }, findings);
        addRuns(
            panel, Finding::Kind::AverageBelow, false,
            [](const Mark &mark) { return mark.value < mark.lower; }, findings);
    } else if (panel.plotted == Plotted::CumulativeSums) {
        const double limit = *panel.decisionLimit;
        addRuns(
            panel, Finding::Kind::SumAbove, true, [limit](const Mark &mark) { return mark.value > limit; },
            findings);
        addRuns(
            panel, Finding::Kind::SumBelow, false, [limit](const Mark &mark) { return mark.below < -limit; },
            findings);
    } else {
        findings = byRules(panel, settings);
    }
    std::ranges::stable_sort(findings, {}, &Finding::completed);
    return findings;
}

} // namespace plateau::charts
