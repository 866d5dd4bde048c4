// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/worksheetadditions.h"

#include "core/assay/listed.h"
#include "core/assay/localday.h"
#include "core/evaluation/format.h"
#include "ui/print/sharedwidth.h"
#include "ui/print/worksheethead.h"

#include <QCoreApplication>

#include <algorithm>
#include <utility>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct WorksheetadditionsWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Worksheet)
};

constexpr double disc_mm = 6;
constexpr double betweenColumns_mm = 2.5;
constexpr double smallestLine_mm = 5;
constexpr double betweenLines_mm = 0.4;
constexpr double belowAdditions_mm = 2;
/// From the line that a lot is written on to the next addition.
constexpr double underLot_mm = 0.8;
/// From the lots of an addition to the next one.
constexpr double belowLots_mm = 0.6;
/// Room to write a lot in that is not known.
constexpr double emptyLot_mm = 22;
/// What lots leave to names and pipettes, however long they are.
constexpr double smallestShared_mm = 60;
/// The names' part where both want more.
constexpr double partOfNames = 0.6;
constexpr int mostAdditionLines = 5;

constexpr TextStyle additionName{8.5, true};
constexpr TextStyle additionVolume{8.5, true, Qt::AlignRight | Qt::AlignVCenter};
constexpr TextStyle additionDetail{7.5};

const run::LotUse *lotUseOf(const WorksheetContent &content, const planning::Round &round)
{
    const auto &lots = content.run.lots;
    const auto found = std::ranges::find_if(lots, [&](const run::LotUse &use) {
        return use.component == round.component && use.lot == round.lot;
    });
    return found == lots.end() ? nullptr : &*found;
}

/// The style in which the text is whole: on one line if it may be smaller for that, else on several.
TextStyle wholeStyle(const Canvas &canvas, const QString &text, double width_mm, TextStyle style)
{
    const QString shown = printable(text);
    while (style.size_pt > smallestSheetType_pt && !canvas.fits({width_mm, 1}, shown, style))
        style.size_pt = std::max(smallestSheetType_pt, style.size_pt - 0.5);
    if (!canvas.fits({width_mm, 1}, shown, style))
        style.lines = static_cast<int>(
            std::clamp<qsizetype>(canvas.wrapped(shown, width_mm, style).size(), 1, mostAdditionLines));
    return style;
}

double wholeHeight_mm(const Canvas &canvas, const QString &text, double width_mm, const TextStyle &style)
{
    const TextStyle used = wholeStyle(canvas, text, width_mm, style);
    return used.lines * canvas.lineHeight_mm(used);
}

QString untilText(const QDate &lastGoodDay)
{
    return WorksheetadditionsWords::tr("use by %1", "the last good day of a lot")
        .arg(assay::shownDay(lastGoodDay));
}

/// isToldAbove: the last good day of that lot.
QString lotText(const LotStretch &stretch, bool isToldAbove)
{
    if (stretch.lot.isEmpty())
        return WorksheetadditionsWords::tr("by the book no lot is enough");
    const QString lot = stretch.isAnotherContainer
                            ? WorksheetadditionsWords::tr("another container of lot %1").arg(stretch.lot)
                            : WorksheetadditionsWords::tr("lot %1").arg(stretch.lot);
    return stretch.lastGoodDay && !isToldAbove
               ? WorksheetadditionsWords::tr("%1, use by %2").arg(lot, assay::shownDay(*stretch.lastGoodDay))
               : lot;
}

QString stretchText(const LotStretch &stretch, bool isToldAbove)
{
    const QString lot = lotText(stretch, isToldAbove);
    QString text;
    if (stretch.isLast && stretch.standIn.isEmpty())
        text = WorksheetadditionsWords::tr("from tube %1 on: %2").arg(stretch.firstTube + 1).arg(lot);
    else if (stretch.firstTube == stretch.lastTube)
        text = WorksheetadditionsWords::tr("tube %1: %2").arg(stretch.firstTube + 1).arg(lot);
    else
        text = WorksheetadditionsWords::tr("tubes %1 to %2: %3")
                   .arg(stretch.firstTube + 1)
                   .arg(stretch.lastTube + 1)
                   .arg(lot);
    return stretch.standIn.isEmpty() ? text : QStringList{stretch.standIn, text}.join(u", "_s);
}

/// One lot for all that the addition's own reagent goes into stands above, in its row.
QString stretchesText(const std::vector<LotStretch> &stretches)
{
    QStringList parts;
    bool isFirst = true;
    for (const LotStretch &stretch : stretches) {
        const bool isOwn = stretch.standIn.isEmpty();
        const bool isInRow = isOwn && std::exchange(isFirst, false) && !stretch.lot.isEmpty();
        if (!isInRow || !stretch.isLast)
            parts << stretchText(stretch, isInRow);
    }
    return evaluation::capitalised(assay::listed(parts));
}

} // namespace

WorksheetAdditions::Line WorksheetAdditions::lineOf(const WorksheetContent &content, int index)
{
    const planning::Round &round = content.rounds.at(static_cast<std::size_t>(index));
    Line line;
    line.name = round.name;
    line.suspension = round.suspension;
    line.volume = usualDoseText(round);
    line.pipette = round.pipette;
    line.hasLot = round.component != content.method.sample;
    line.lot = round.lot;
    if (const run::LotUse *lot = lotUseOf(content, round); line.hasLot && lot && lot->expires)
        line.until = untilText(*lot->expires);
    const auto found = content.lotsByRound.find(index);
    if (found == content.lotsByRound.end())
        return line;
    const std::vector<LotStretch> &stretches = found->second;
    const auto own =
        std::ranges::find_if(stretches, [](const LotStretch &stretch) { return stretch.standIn.isEmpty(); });
    if (own != stretches.end() && !own->lot.isEmpty()) {
        line.lot = own->lot;
        line.until = own->lastGoodDay ? untilText(*own->lastGoodDay) : QString();
    }
    line.lots = stretchesText(stretches);
    return line;
}

WorksheetAdditions::WorksheetAdditions(const Canvas &canvas, const WorksheetContent &content,
                                       const SheetTable &table)
    : m_table(table)
{
    for (int round = 0; round < static_cast<int>(content.rounds.size()); ++round)
        m_lines.push_back(lineOf(content, round));
    setWidths(canvas);
    for (Line &line : m_lines) {
        const double lotRoom_mm = entryRoom_mm(canvas, WorksheetadditionsWords::tr("lot"), m_lot_mm);
        line.row_mm = std::max({smallestLine_mm - betweenLines_mm,
                                wholeHeight_mm(canvas, line.name, nameRoom_mm(line), additionName),
                                wholeHeight_mm(canvas, line.pipette, m_pipette_mm, additionDetail),
                                wholeHeight_mm(canvas, line.lot, lotRoom_mm, entryStyle) + underLot_mm}) +
                      betweenLines_mm;
        line.height_mm =
            line.row_mm +
            (line.lots.isEmpty()
                 ? 0
                 : wholeHeight_mm(canvas, line.lots, lotsRoom_mm(), additionDetail) + belowLots_mm);
    }
}

void WorksheetAdditions::setWidths(const Canvas &canvas)
{
    const auto widest_mm = [&](QString Line::*text, const TextStyle &style) {
        double widest = 0;
        for (const Line &line : m_lines)
            widest = std::max(widest, canvas.width_mm(printable(line.*text), style));
        return widest == 0 ? 0 : widest + 0.5;
    };
    m_swirl_mm = canvas.width_mm(swirlWord(), {swirlSize_pt, true}) + 2;
    m_volume_mm = widest_mm(&Line::volume, additionVolume);
    m_until_mm = widest_mm(&Line::until, additionDetail);
    const QString caption = WorksheetadditionsWords::tr("lot");
    m_lot_mm = entryWidth_mm(canvas, caption, std::max(emptyLot_mm, widest_mm(&Line::lot, entryStyle)));
    const double fixed_mm = disc_mm + m_volume_mm + m_until_mm + 4 * betweenColumns_mm;
    double shared_mm = m_table.width_mm - fixed_mm - m_lot_mm;
    if (shared_mm < smallestShared_mm) {
        // A lot as long as a sentence goes on on other lines.
        m_lot_mm = std::max(entryWidth_mm(canvas, caption, emptyLot_mm),
                            m_lot_mm - (smallestShared_mm - shared_mm));
        shared_mm = m_table.width_mm - fixed_mm - m_lot_mm;
    }
    double name_mm = 0;
    for (const Line &line : m_lines)
        name_mm = std::max(name_mm, canvas.width_mm(printable(line.name), additionName) + 0.5 +
                                        (line.suspension ? m_swirl_mm + 1 : 0));
    const double pipette_mm = widest_mm(&Line::pipette, additionDetail);
    m_name_mm = sharedWidth(shared_mm, name_mm, pipette_mm, partOfNames);
    m_pipette_mm = std::min(pipette_mm, shared_mm - m_name_mm);
    // What is left is for who writes a lot.
    m_lot_mm += shared_mm - m_name_mm - m_pipette_mm;
}

double WorksheetAdditions::lotsRoom_mm() const
{
    return m_table.width_mm - disc_mm;
}

double WorksheetAdditions::nameRoom_mm(const Line &line) const
{
    return m_name_mm - (line.suspension ? m_swirl_mm + 1 : 0);
}

std::vector<double> WorksheetAdditions::lineHeights_mm() const
{
    std::vector<double> heights_mm;
    for (const Line &line : m_lines)
        heights_mm.push_back(line.height_mm);
    if (!heights_mm.empty())
        heights_mm.back() += belowAdditions_mm;
    return heights_mm;
}

void WorksheetAdditions::paintLine(Canvas &canvas, std::size_t line, double top_mm) const
{
    paintLine(canvas, m_lines[line], top_mm, static_cast<int>(line) + 1);
}

void WorksheetAdditions::paintLine(Canvas &canvas, const Line &line, double top_mm, int number) const
{
    double x = m_table.left_mm;
    const auto cell = [&](double width_mm) {
        const QRectF area(x, top_mm, width_mm, line.row_mm);
        x += width_mm + betweenColumns_mm;
        return area;
    };
    if (!line.lots.isEmpty())
        canvas.text(
            {x + disc_mm, top_mm + line.row_mm, lotsRoom_mm(), line.height_mm - line.row_mm - belowLots_mm},
            line.lots, wholeStyle(canvas, line.lots, lotsRoom_mm(), additionDetail));
    const double middle_mm = top_mm + line.row_mm / 2;
    paintNumber(canvas, {x + 2.6, middle_mm}, number);
    x += disc_mm;
    const QRectF name = cell(m_name_mm);
    const double nameRoom = nameRoom_mm(line);
    canvas.text({name.left(), name.top(), nameRoom, name.height()}, line.name,
                wholeStyle(canvas, line.name, nameRoom, additionName));
    if (line.suspension)
        paintSwirl(canvas, {name.right() - m_swirl_mm, middle_mm - 1.7, m_swirl_mm, 3.4});
    canvas.text(cell(m_volume_mm), line.volume, additionVolume);
    const QRectF pipette = cell(m_pipette_mm);
    canvas.text(pipette, line.pipette, wholeStyle(canvas, line.pipette, pipette.width(), additionDetail));
    const QRectF lot = cell(m_lot_mm);
    if (!line.hasLot)
        return;
    paintEntry(canvas, lot.adjusted(0, 0, 0, -underLot_mm), WorksheetadditionsWords::tr("lot"), line.lot);
    canvas.text(cell(m_until_mm), line.until, additionDetail);
}

} // namespace plateau::ui
