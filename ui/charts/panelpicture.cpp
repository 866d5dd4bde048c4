// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/charts/panelpicture.h"

#include "core/charts/chartwords.h"
#include "core/evaluation/format.h"
#include "ui/shared/shownnumbers.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using charts::ControlChart;
using charts::Finding;
using charts::Panel;
using charts::Plotted;

namespace {

struct PanelPictureWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::PanelPicture)
};

/// What each mark of the panel is, by what speaks against it.
std::vector<State> statesOf(const Panel &panel)
{
    std::vector<State> states(panel.marks.size(), State::Good);
    for (const Finding &finding : panel.findings) {
        for (std::size_t mark = finding.completed; mark <= finding.last; ++mark) {
            if (states[mark] != State::Bad)
                states[mark] = charts::isWarning(finding) ? State::Attention : State::Bad;
        }
    }
    return states;
}

/// Which of the two sums a finding is about.
bool isOfSum(const Finding &finding, bool above)
{
    return finding.kind == (above ? Finding::Kind::SumAbove : Finding::Kind::SumBelow);
}

void addSums(const Panel &panel, PanelPicture &picture)
{
    for (const bool above : {true, false}) {
        std::vector<PanelPoint> line;
        for (const charts::Mark &mark : panel.marks)
            line.push_back({static_cast<double>(mark.last + 1), above ? mark.value : mark.below});
        for (const Finding &finding : panel.findings) {
            for (std::size_t i = finding.first; isOfSum(finding, above) && i <= finding.last; ++i)
                line[i].state = State::Bad;
        }
        picture.lines.push_back(std::move(line));
    }
}

void addMarks(const ControlChart &chart, const Panel &panel, PanelPicture &picture)
{
    if (panel.plotted == Plotted::CumulativeSums) {
        addSums(panel, picture);
        return;
    }
    const std::vector<State> states = statesOf(panel);
    std::vector<PanelPoint> line;
    line.reserve(panel.marks.size());
    for (std::size_t i = 0; i < panel.marks.size(); ++i) {
        const charts::Mark &mark = panel.marks[i];
        line.push_back({static_cast<double>(mark.last + 1), mark.value, states[i]});
        if (panel.plotted == Plotted::Results)
            line.back().uncertainty = chart.series[mark.last].expandedUncertainty;
    }
    picture.lines.push_back(std::move(line));
    if (panel.plotted == Plotted::WeightedAverages && panel.baseline) {
        picture.bounds.resize(2);
        for (const charts::Mark &mark : panel.marks) {
            picture.bounds[0].emplace_back(mark.last + 1, mark.lower);
            picture.bounds[1].emplace_back(mark.last + 1, mark.upper);
        }
    }
}

LevelLine level(LevelLine::Kind kind, double value, const QString &name, int decimals)
{
    return {kind, value, u"%1 %2"_s.arg(name, shownNumber(QString::number(value, 'f', decimals)))};
}

void addLevels(const Panel &panel, PanelPicture &picture)
{
    using Kind = LevelLine::Kind;
    if (!panel.baseline)
        return;
    const quality::ControlBaseline &baseline = *panel.baseline;
    if (panel.decisionLimit) {
        picture.levels = {level(Kind::Centre, 0, PanelPictureWords::tr("centre"), picture.decimals),
                          level(Kind::Action, *panel.decisionLimit, u"+h"_s, picture.decimals),
                          level(Kind::Action, -*panel.decisionLimit, u"−h"_s, picture.decimals)};
        return;
    }
    picture.levels = {
        level(Kind::Centre, baseline.centre, PanelPictureWords::tr("centre"), picture.decimals)};
    if (!picture.bounds.empty())
        return;
    for (const int deviations : {-3, -2, 2, 3}) {
        // A line that ends at the floor is none of so many deviations.
        if (baseline.centre + deviations * baseline.deviation < baseline.lowest)
            continue;
        const QString name = u"%1%2 s"_s.arg(deviations < 0 ? u"−"_s : u"+"_s).arg(std::abs(deviations));
        picture.levels.push_back(level(std::abs(deviations) == 3 ? Kind::Action : Kind::Warning,
                                       baseline.line(deviations), name, picture.decimals));
    }
}

void addLeftOut(const ControlChart &chart, const Panel &panel, PanelPicture &picture)
{
    const bool showsValues =
        panel.plotted == Plotted::Values || panel.plotted == Plotted::Results ||
        (panel.plotted == Plotted::Ranges && chart.settings.kind == charts::Kind::Ranges);
    for (std::size_t i = 0; showsValues && i < chart.series.size(); ++i) {
        if (chart.series[i].omission)
            picture.leftOut.push_back({static_cast<double>(i + 1), chart.series[i].value});
    }
}

class Extent
{
public:
    void take(double value)
    {
        if (!std::isfinite(value))
            return;
        m_lowest = m_any ? std::min(m_lowest, value) : value;
        m_highest = m_any ? std::max(m_highest, value) : value;
        m_any = true;
    }
    void give(PanelPicture &picture) const
    {
        if (!m_any)
            return;
        // One value alone says nothing of its scatter: the scale must not make a mountain of its last figure.
        const double around = m_lowest < m_highest ? 0 : 0.05 * std::abs(m_lowest);
        picture.lowest = m_lowest - around;
        picture.highest = m_highest + around;
    }

private:
    bool m_any = false;
    double m_lowest = 0;
    double m_highest = 1;
};

void measure(PanelPicture &picture)
{
    Extent extent;
    for (const auto &line : picture.lines) {
        for (const PanelPoint &point : line) {
            extent.take(point.value + point.uncertainty.value_or(0));
            extent.take(point.value - point.uncertainty.value_or(0));
        }
    }
    for (const PanelPoint &point : picture.leftOut)
        extent.take(point.value);
    for (const auto &bound : picture.bounds) {
        for (const QPointF &point : bound)
            extent.take(point.y());
    }
    for (const LevelLine &line : picture.levels)
        extent.take(line.value);
    extent.give(picture);
}

QString axisTitle(const charts::Subject &subject, const ControlChart &chart, const Panel &panel)
{
    const QString unit = chart.series.empty() ? QString() : chart.series.front().unit;
    QString name = charts::plottedName(panel.plotted, chart.settings);
    if (panel.plotted == Plotted::Values && subject.quantity == charts::Quantity::Blank)
        name = PanelPictureWords::tr("absorbance");
    if (panel.plotted == Plotted::Values && subject.quantity == charts::Quantity::StandardRecovery)
        name = PanelPictureWords::tr("recovery");
    // It stands alone above the plot: in German a noun's adjective would begin it in lower case.
    return evaluation::capitalised(unit.isEmpty() ? name : PanelPictureWords::tr("%1 in %2").arg(name, unit));
}

} // namespace

PanelPicture pictureOf(const charts::Subject &subject, const ControlChart &chart, std::size_t panel,
                       const ProductLimits &limits)
{
    const Panel &shown = chart.panels.at(panel);
    PanelPicture picture;
    picture.quantity = axisTitle(subject, chart, shown);
    picture.decimals = charts::decimalsOf(chart);
    picture.places = static_cast<int>(chart.series.size());
    picture.isProvisional = shown.baseline && chart.basis && chart.basis->isProvisional;
    if (picture.isProvisional)
        picture.quantity = PanelPictureWords::tr("%1; limits provisional").arg(picture.quantity);
    addMarks(chart, shown, picture);
    addLevels(shown, picture);
    if (shown.plotted == Plotted::Results)
        picture.levels.insert(picture.levels.end(), limits.begin(), limits.end());
    addLeftOut(chart, shown, picture);
    measure(picture);
    return picture;
}

std::vector<std::size_t> thinnedPoints(const std::vector<PanelPoint> &points, double from, double to,
                                       int pixels)
{
    const auto place = [](const PanelPoint &point) { return point.place; };
    auto first = std::ranges::lower_bound(points, from, {}, place);
    auto last = std::ranges::upper_bound(points, to, {}, place);
    if (first != points.begin())
        --first;
    if (last != points.end())
        ++last;
    const auto begin = static_cast<std::size_t>(first - points.begin());
    const auto end = static_cast<std::size_t>(last - points.begin());
    std::vector<std::size_t> kept;
    if (end - begin <= 2 * static_cast<std::size_t>(std::max(pixels, 1))) {
        for (std::size_t i = begin; i < end; ++i)
            kept.push_back(i);
        return kept;
    }
    const double perPlace = pixels / std::max(to - from, 1e-9);
    const auto columnOf = [&](std::size_t i) { return std::floor((points[i].place - from) * perPlace); };
    for (std::size_t i = begin; i < end;) {
        std::size_t lowest = i;
        std::size_t highest = i;
        const double column = columnOf(i);
        for (; i < end && columnOf(i) == column; ++i) {
            if (points[i].value < points[lowest].value)
                lowest = i;
            if (points[i].value > points[highest].value)
                highest = i;
        }
        kept.push_back(std::min(lowest, highest));
        if (lowest != highest)
            kept.push_back(std::max(lowest, highest));
    }
    return kept;
}

} // namespace plateau::ui
