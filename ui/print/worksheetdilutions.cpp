// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/worksheetdilutions.h"

#include "core/assay/localday.h"
#include "core/evaluation/format.h"
#include "ui/print/decimalsign.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct WorksheetdilutionsWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Worksheet)
};

/// Read at arm's length.
constexpr double dilutionSize_pt = 9;
constexpr double dilutionLine_mm = 5.2;
constexpr double betweenItems_mm = 4;
constexpr double besideBox_mm = 1.2;
constexpr double belowDilutions_mm = 1;
constexpr double roomOfAName_mm = 35;
/// What measuring and drawing may differ by.
constexpr double roomToSpare_mm = 0.5;
constexpr int mostDilutionLines = 4;

TextStyle dilutionStyle(bool isCaption, int lines)
{
    return {dilutionSize_pt, isCaption, Qt::AlignLeft | Qt::AlignVCenter, lines};
}

/// Those that are diluted in the same way stand together, in the order of the first of them.
std::vector<std::pair<QString, QStringList>> samplesByDilution(const run::Run &run)
{
    std::vector<std::pair<QString, QStringList>> groups;
    for (const run::Sample &sample : run.samples) {
        if (sample.dilution.empty())
            continue;
        const QString how = localNumbers(dilutionOnPaper(sample.dilution));
        auto group = std::ranges::find(groups, how, &std::pair<QString, QStringList>::first);
        if (group == groups.end())
            group = groups.insert(groups.end(), {how, {}});
        group->second << sample.id;
    }
    return groups;
}

} // namespace

WorksheetDilutions::WorksheetDilutions(const Canvas &canvas, const WorksheetContent &content,
                                       const SheetTable &table)
    : m_left_mm(table.left_mm)
    , m_width_mm(table.width_mm)
{
    addStandards(canvas, content.run);
    for (const auto &[how, samples] : samplesByDilution(content.run)) {
        add(canvas, {WorksheetdilutionsWords::tr("Dilute %1:", "millilitres taken, made up to").arg(how), true, false, 1, {}});
        for (const QString &sample : samples)
            add(canvas, {printable(sample), false, true, 1, {}});
    }
    if (!m_items.empty())
        m_height_mm += belowDilutions_mm;
}

/// Each on a line of its own. What keeps its strength needs no time, and has its strength beside its tubes.
void WorksheetDilutions::addStandards(const Canvas &canvas, const run::Run &run)
{
    for (const run::Standard &standard : run.standards) {
        if (standard.lossPerHour <= 0)
            continue;
        const QString made = standard.preparedAt ? assay::shownMoment(*standard.preparedAt) : u"______________"_s;
        const QString loss = localNumbers(evaluation::roundedText(100 * standard.lossPerHour, 4));
        const QString words = WorksheetdilutionsWords::tr("%1: %2, made %3, loses %4 per hour", "a standard")
                                  .arg(printable(standard.id), strengthOnPaper(standard), made,
                                       evaluation::withUnit(loss, u"%"_s));
        add(canvas, {words, false, false, 1, {}});
        beginLine();
    }
}

/// One behind the other, as words are.
void WorksheetDilutions::add(const Canvas &canvas, Item item)
{
    const TextStyle style = dilutionStyle(item.isCaption, 1);
    const double box_mm = item.hasBox ? tickBox_mm + besideBox_mm : 0;
    const double width_mm = box_mm + canvas.width_mm(item.text, style) + roomToSpare_mm;
    const double wide_mm = std::min(width_mm, m_width_mm);
    // How stands on a line with the first name.
    const double together_mm = wide_mm + (item.isCaption ? roomOfAName_mm : 0);
    if (m_items.empty() || m_next_mm + together_mm > m_width_mm) {
        m_next_mm = 0;
        m_height_mm += dilutionLine_mm;
    }
    const double top_mm = m_height_mm - dilutionLine_mm;
    if (width_mm > m_width_mm) {
        const double text_mm = m_width_mm - box_mm;
        item.lines = static_cast<int>(
            std::clamp<qsizetype>(canvas.wrapped(item.text, text_mm, style).size(), 1, mostDilutionLines));
        m_height_mm += (item.lines - 1) * canvas.lineHeight_mm(style);
    }
    item.place_mm = QRectF(m_next_mm, top_mm, wide_mm, m_height_mm - top_mm);
    m_next_mm += wide_mm + betweenItems_mm;
    m_items.push_back(std::move(item));
}

std::vector<double> WorksheetDilutions::lineTops_mm() const
{
    std::vector<double> tops_mm;
    for (const Item &item : m_items) {
        if (tops_mm.empty() || item.place_mm.top() > tops_mm.back())
            tops_mm.push_back(item.place_mm.top());
    }
    return tops_mm;
}

std::vector<double> WorksheetDilutions::lineHeights_mm() const
{
    const std::vector<double> tops_mm = lineTops_mm();
    std::vector<double> heights_mm;
    for (std::size_t line = 0; line < tops_mm.size(); ++line)
        heights_mm.push_back((line + 1 < tops_mm.size() ? tops_mm[line + 1] : m_height_mm) - tops_mm[line]);
    return heights_mm;
}

void WorksheetDilutions::paintLine(Canvas &canvas, std::size_t line, double top_mm) const
{
    const double lineTop_mm = lineTops_mm()[line];
    for (const Item &item : m_items) {
        if (item.place_mm.top() != lineTop_mm)
            continue;
        QRectF area = item.place_mm.translated(m_left_mm, top_mm - lineTop_mm);
        if (item.hasBox) {
            canvas.box({area.left(), area.center().y() - tickBox_mm / 2, tickBox_mm, tickBox_mm}, 0.3);
            area.setLeft(area.left() + tickBox_mm + besideBox_mm);
        }
        canvas.text(area, item.text, dilutionStyle(item.isCaption, item.lines));
    }
}

} // namespace plateau::ui
