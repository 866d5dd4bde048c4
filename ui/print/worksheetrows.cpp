// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/worksheetrows.h"

#include "core/evaluation/format.h"
#include "ui/print/worksheethead.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct WorksheetrowsWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Worksheet)
};

/// Of a column's head: its number, the mark of a suspension, the volume.
constexpr double headNumber_mm = 4.8;
constexpr double headSwirl_mm = 3.1;
constexpr double headVolume_mm = 4.3;
constexpr double smallestHead_mm = 21;
/// The rows need the rest of the page.
constexpr double largestHead_mm = 30;
constexpr TextStyle headName{smallestSheetType_pt, false, Qt::AlignHCenter | Qt::AlignTop};
constexpr double hairline_mm = 0.12;
constexpr double groupLine_mm = 0.3;
constexpr double rackLine_mm = 0.7;
/// Where a method of very many steps squeezes the columns: smaller, but whole.
constexpr double smallestCaption_pt = 5;
/// Of a reading's room for its absorbance, the rest is for the time.
constexpr double valuePart = 0.56;

/// How a name and what stands below it go into a cell.
struct GroupText {
    TextStyle name{8, true};
    double name_mm = 0;
    TextStyle below{smallestSheetType_pt};
    double below_mm = 0;
    bool isNameWhole = false;
    bool isBelowWhole = true;
};

/// What is printed in so many lines below the name, the name in the largest type that is whole above it.
GroupText groupTextOver(const Canvas &canvas, const QSizeF &cell, const QString &name, int linesBelow)
{
    constexpr int mostNameLines = 3;
    constexpr double slack_mm = 0.1;
    GroupText text;
    text.below.lines = std::max(1, linesBelow);
    text.below_mm = linesBelow * canvas.lineHeight_mm(text.below);
    const double room_mm = cell.height() - text.below_mm + slack_mm;
    for (;; text.name.size_pt -= 0.5) {
        const double line_mm = canvas.lineHeight_mm(text.name);
        const int most = std::clamp(static_cast<int>(room_mm / line_mm), 0, mostNameLines);
        text.name.lines = 1;
        while (text.name.lines < most && !canvas.fits(cell, name, text.name))
            ++text.name.lines;
        text.name_mm = std::max(0.0, std::min(room_mm - slack_mm, text.name.lines * line_mm));
        text.isNameWhole = most > 0 && canvas.fits(cell, name, text.name);
        if (text.isNameWhole || text.name.size_pt <= smallestSheetType_pt)
            return text;
    }
}

GroupText groupTextIn(const Canvas &canvas, const QSizeF &cell, const QString &name, const QString &below)
{
    constexpr int mostLinesBelow = 2;
    if (below.isEmpty())
        return groupTextOver(canvas, cell, name, 0);
    const TextStyle small{smallestSheetType_pt};
    const auto wanted = static_cast<int>(canvas.wrapped(below, cell.width(), small).size());
    for (int lines = std::clamp(wanted, 1, mostLinesBelow);; --lines) {
        GroupText text = groupTextOver(canvas, cell, name, lines);
        text.isBelowWhole = canvas.fits(cell, below, text.below);
        if (text.isNameWhole || lines == 1)
            return text;
    }
}

QString belowName(const TubeGroup &group)
{
    QStringList parts{group.role, group.preparation};
    parts.removeAll(QString());
    return printable(parts.join(u", "_s));
}

} // namespace

WorksheetRows::WorksheetRows(const Canvas &canvas, const WorksheetContent &content, const SheetTable &table)
    : m_content(content)
    , m_table(table)
    , m_groups(tubeGroups(content.run))
{
    double needed_mm = smallestHead_mm;
    for (const SheetColumn &column : table.columns) {
        if (column.kind == SheetColumn::Kind::Round)
            needed_mm = std::max(needed_mm, neededHead_mm(canvas, column));
    }
    m_head_mm = std::min(needed_mm, largestHead_mm);
}

QRectF WorksheetRows::roundName(const QRectF &cell, const SheetColumn &column) const
{
    const planning::Round &round = m_content.rounds[static_cast<std::size_t>(column.round)];
    const double swirl_mm = round.suspension && !column.hasUprightSwirl ? headSwirl_mm : 0;
    const double beside_mm = column.hasUprightSwirl ? uprightSwirl_mm : 0;
    return cell.adjusted(beside_mm + 0.4, headNumber_mm, -0.4, -headVolume_mm - swirl_mm);
}

double WorksheetRows::neededHead_mm(const Canvas &canvas, const SheetColumn &column) const
{
    const QRectF head(0, 0, column.width_mm, smallestHead_mm);
    const QRectF name = roundName(head, column);
    const planning::Round &round = m_content.rounds[static_cast<std::size_t>(column.round)];
    const auto lines =
        static_cast<double>(canvas.wrapped(printable(round.name), name.width(), headName).size());
    return head.height() - name.height() + lines * canvas.lineHeight_mm(headName);
}

template <class Use> void WorksheetRows::eachColumn(Use use) const
{
    double x = m_table.left_mm + m_table.number_mm + m_table.contents_mm;
    for (const SheetColumn &column : m_table.columns) {
        use(column, x);
        x += column.width_mm;
    }
}

void WorksheetRows::paintHead(Canvas &canvas, double top_mm) const
{
    const TextStyle caption{7, false, Qt::AlignHCenter | Qt::AlignBottom};
    canvas.shrunkText({m_table.left_mm, top_mm, m_table.number_mm, m_head_mm - 0.8},
                      WorksheetrowsWords::tr("tube"), caption, smallestSheetType_pt);
    canvas.text(
        {m_table.left_mm + m_table.number_mm + 1, top_mm, m_table.contents_mm - 1, m_head_mm - 0.8},
        WorksheetrowsWords::tr("contents, taken → made up to"),
        {7, false, Qt::AlignLeft | Qt::AlignBottom, 2});
    eachColumn([&](const SheetColumn &column, double x) {
        const QRectF cell(x, top_mm, column.width_mm, m_head_mm);
        if (column.kind == SheetColumn::Kind::Round)
            paintRoundHead(canvas, cell, column);
        else if (column.kind == SheetColumn::Kind::Reading)
            paintReadingHead(canvas, cell, column);
    });
}

void WorksheetRows::paintRoundHead(Canvas &canvas, const QRectF &cell, const SheetColumn &column) const
{
    const planning::Round &round = m_content.rounds[static_cast<std::size_t>(column.round)];
    const QRectF name = roundName(cell, column);
    paintNumber(canvas, {name.center().x(), cell.top() + headNumber_mm / 2}, column.round + 1);
    TextStyle style = headName;
    // Smaller rather than torn; where even that is torn, as large as the others.
    constexpr double smallestWhole_pt = 5;
    const QString shown = printable(round.name);
    while (style.size_pt > smallestWhole_pt && canvas.tears(shown, name.width(), style))
        style.size_pt -= 0.5;
    if (canvas.tears(shown, name.width(), style))
        style.size_pt = headName.size_pt;
    style.lines = std::max(1, static_cast<int>((name.height() + 0.1) / canvas.lineHeight_mm(style)));
    // It stands in full in the list of the additions, under the same number.
    constexpr double smallestHeadName_pt = 5.5;
    canvas.shrunkText(name, round.name, style, std::min(style.size_pt, smallestHeadName_pt));
    if (column.hasUprightSwirl)
        paintSwirl(canvas, {cell.left() + 0.4, cell.top() + 0.8, uprightSwirl_mm - 0.4, cell.height() - 1.6});
    else if (round.suspension)
        paintSwirl(canvas, {cell.left() + 1.5, name.bottom() + 0.1, cell.width() - 3, headSwirl_mm - 0.2});
    canvas.shrunkText({name.left(), cell.bottom() - headVolume_mm, name.width(), headVolume_mm - 0.4},
                      usualDoseText(round), {7.5, true, Qt::AlignCenter}, smallestSheetType_pt);
}

void WorksheetRows::paintReadingHead(Canvas &canvas, const QRectF &cell, const SheetColumn &column) const
{
    canvas.text({cell.left(), cell.top() + 3, cell.width(), 7}, column.text, {13, true, Qt::AlignCenter});
    const TextStyle caption{6.5, false, Qt::AlignHCenter | Qt::AlignBottom};
    const double each_mm = cell.width() / column.values;
    for (int i = 0; i < column.values; ++i) {
        const QRectF own(cell.left() + i * each_mm, cell.top(), each_mm, cell.height() - 0.8);
        canvas.shrunkText({own.left(), own.top(), own.width() * valuePart, own.height()},
                          WorksheetrowsWords::tr("reads"), caption, smallestCaption_pt);
        canvas.shrunkText(
            {own.left() + own.width() * valuePart, own.top(), own.width() * (1 - valuePart), own.height()},
            WorksheetrowsWords::tr("time"), caption, smallestCaption_pt);
    }
}

void WorksheetRows::paintStart(Canvas &canvas, const QRectF &area, const planning::Round &round, int tube) const
{
    const auto starts = m_content.startAt_s.find(round.step);
    const auto index = static_cast<std::size_t>(tube);
    if (starts != m_content.startAt_s.end() && index < starts->second.size())
        canvas.shrunkText(area, sheetTimeText(starts->second[index]),
                          {smallestSheetType_pt, false, Qt::AlignRight | Qt::AlignTop}, smallestCaption_pt);
}

void WorksheetRows::paintDose(Canvas &canvas, QRectF cell, const SheetColumn &column, int tube) const
{
    const planning::Round &round = m_content.rounds[static_cast<std::size_t>(column.round)];
    const auto index = static_cast<std::size_t>(tube);
    const auto dose = index < round.doses.size() ? round.doses[index] : std::nullopt;
    if (!dose) {
        canvas.text(cell, u"–"_s, {8, false, Qt::AlignCenter});
        return;
    }
    if (column.start_mm > 0 && !column.isStartAbove) {
        paintStart(canvas, {cell.right() - column.start_mm, cell.top() + 0.3, column.start_mm - 0.3, 2.7}, round, tube);
        cell.setRight(cell.right() - column.start_mm);
    }
    canvas.box({cell.left() + 0.9, cell.center().y() - tickBox_mm / 2, tickBox_mm, tickBox_mm}, 0.3);
    QRectF text(cell.left() + tickBox_mm + 2, cell.top() + 0.5, cell.width() - tickBox_mm - 2.4,
                      cell.height() - 1);
    if (dose->odd)
        canvas.fill(text);
    const QString content = standIn(m_content.run, *dose, tube);
    if (column.isStartAbove && content.isEmpty() && !dose->odd) {
        constexpr double time_mm = 2.4;
        paintStart(canvas, {text.left(), cell.top() + 0.3, text.width() + 0.2, time_mm}, round, tube);
        text.setTop(cell.top() + 0.3 + time_mm);
    }
    const TextStyle volume{volumeSize_pt, dose->odd, Qt::AlignCenter, 1, dose->odd};
    if (content.isEmpty()) {
        canvas.shrunkText(text, doseText(round, dose->volume_mL), volume, smallestCaption_pt);
        return;
    }
    const double upper_mm = text.height() * 0.56;
    canvas.shrunkText({text.left(), text.top(), text.width(), upper_mm}, doseText(round, dose->volume_mL),
                      volume, smallestCaption_pt);
    canvas.shrunkText({text.left(), text.top() + upper_mm, text.width(), text.height() - upper_mm}, content,
                      {standInSize_pt, true, Qt::AlignCenter, 1, dose->odd}, smallestCaption_pt);
}

void WorksheetRows::paintReading(Canvas &canvas, const QRectF &cell, const SheetColumn &column,
                                 int tube) const
{
    const double each_mm = cell.width() / column.values;
    for (int i = 0; i < column.values; ++i) {
        const double x = cell.left() + i * each_mm;
        const double time_mm = x + each_mm * valuePart;
        canvas.line({time_mm, cell.top() + 1.2}, {time_mm, cell.bottom()}, hairline_mm);
        if (i > 0)
            canvas.line({x, cell.top()}, {x, cell.bottom()}, groupLine_mm);
    }
    const auto due = m_content.readAt_s.find(column.text);
    const auto index = static_cast<std::size_t>(tube);
    if (due != m_content.readAt_s.end() && index < due->second.size())
        canvas.shrunkText(
            {cell.left() + each_mm * valuePart + 0.4, cell.top() + 0.3, each_mm * (1 - valuePart) - 0.8, 2.7},
            sheetTimeText(due->second[index]), {smallestSheetType_pt, false, Qt::AlignLeft | Qt::AlignTop},
            smallestCaption_pt);
}

void WorksheetRows::paintTube(Canvas &canvas, const QRectF &row, int tube) const
{
    canvas.text({row.left(), row.top(), m_table.number_mm, row.height()}, QString::number(tube + 1),
                {12, true, Qt::AlignCenter});
    eachColumn([&](const SheetColumn &column, double x) {
        const QRectF cell(x, row.top(), column.width_mm, row.height());
        if (column.kind == SheetColumn::Kind::Round)
            paintDose(canvas, cell, column, tube);
        else if (column.kind == SheetColumn::Kind::Reading)
            paintReading(canvas, cell, column, tube);
    });
}

void WorksheetRows::paintGroup(Canvas &canvas, const QRectF &cell, const TubeGroup &group)
{
    const QString below = belowName(group);
    const GroupText text = groupTextIn(canvas, cell.size(), printable(group.name), below);
    const double top = cell.center().y() - (text.name_mm + text.below_mm) / 2;
    canvas.text({cell.left(), top, cell.width(), text.name_mm}, group.name, text.name);
    const bool isKnown = std::ranges::any_of(
        m_cut, [&](const TubeGroup &known) { return known.firstTube == group.firstTube; });
    if (!text.isNameWhole && !isKnown)
        m_cut.push_back(group);
    canvas.shrunkText({cell.left(), top + text.name_mm, cell.width(), text.below_mm}, below, text.below,
                      smallestCaption_pt);
}

QRectF WorksheetRows::groupCell(double top_mm, double height_mm) const
{
    return QRectF(m_table.left_mm + m_table.number_mm, top_mm, m_table.contents_mm, height_mm)
        .adjusted(1, 0.1, -0.6, -0.1);
}

int WorksheetRows::cutOn(const Canvas &canvas, const SheetPages &pages) const
{
    int cut = 0;
    for (const auto &[first, end] : pages.tubes) {
        for (const TubeGroup &group : m_groups) {
            const int rows = std::min(end, group.firstTube + group.tubes) - std::max(first, group.firstTube);
            if (rows <= 0)
                continue;
            const GroupText text = groupTextIn(canvas, groupCell(0, rows * pages.row_mm).size(),
                                               printable(group.name), belowName(group));
            cut += (text.isNameWhole ? 0 : 1) + (text.isBelowWhole ? 0 : 1);
        }
    }
    return cut;
}

void WorksheetRows::paintRows(Canvas &canvas, double headTop_mm, int first, int end, double row_mm)
{
    const double top_mm = headTop_mm + m_head_mm;
    const double right = m_table.left_mm + m_table.width_mm;
    const double bottom_mm = top_mm + (end - first) * row_mm;
    const auto rowTop = [&](int tube) { return top_mm + (tube - first) * row_mm; };
    for (int tube = first; tube < end; ++tube) {
        paintTube(canvas, {m_table.left_mm, rowTop(tube), m_table.width_mm, row_mm}, tube);
        canvas.line({m_table.left_mm + m_table.number_mm + m_table.contents_mm, rowTop(tube)},
                    {right, rowTop(tube)}, hairline_mm);
        const bool newRackRow = m_content.rackColumns && tube % std::max(1, *m_content.rackColumns) == 0;
        if (newRackRow && tube > first)
            canvas.line({m_table.left_mm, rowTop(tube)}, {right, rowTop(tube)}, rackLine_mm);
    }
    for (const TubeGroup &group : m_groups) {
        const int from = std::max(first, group.firstTube);
        const int to = std::min(end, group.firstTube + group.tubes);
        if (from >= to)
            continue;
        paintGroup(canvas, groupCell(rowTop(from), (to - from) * row_mm), group);
        canvas.line({m_table.left_mm, rowTop(from)}, {right, rowTop(from)}, groupLine_mm);
    }
    paintPauses(canvas, headTop_mm, bottom_mm);
    paintRules(canvas, headTop_mm, bottom_mm);
}

void WorksheetRows::paintRules(Canvas &canvas, double headTop_mm, double bottom_mm) const
{
    canvas.line({m_table.left_mm, headTop_mm}, {m_table.left_mm + m_table.width_mm, headTop_mm}, rackLine_mm);
    canvas.line({m_table.left_mm, bottom_mm}, {m_table.left_mm + m_table.width_mm, bottom_mm}, rackLine_mm);
    const double contents = m_table.left_mm + m_table.number_mm;
    canvas.line({contents, headTop_mm + m_head_mm}, {contents, bottom_mm}, hairline_mm);
    eachColumn([&](const SheetColumn &column, double x) {
        const bool heavy = column.kind != SheetColumn::Kind::Round;
        canvas.line({x, headTop_mm}, {x, bottom_mm}, heavy ? groupLine_mm : hairline_mm);
        if (heavy)
            canvas.line({x + column.width_mm, headTop_mm}, {x + column.width_mm, bottom_mm}, groupLine_mm);
    });
}

void WorksheetRows::paintPauses(Canvas &canvas, double headTop_mm, double bottom_mm) const
{
    eachColumn([&](const SheetColumn &column, double x) {
        if (column.kind != SheetColumn::Kind::Pause)
            return;
        const QRectF band(x, headTop_mm, column.width_mm, bottom_mm - headTop_mm);
        canvas.clear(band);
        TextStyle style{8, true, Qt::AlignCenter};
        const auto fits = [&] { return canvas.fits(band.size().transposed(), column.text, style); };
        while (!fits() && style.size_pt > smallestSheetType_pt)
            style.size_pt -= 0.5;
        if (!fits())
            style.lines = 2;
        while (!fits() && style.size_pt > smallestCaption_pt)
            style.size_pt -= 0.5;
        canvas.uprightText(band, column.text, style);
    });
}

} // namespace plateau::ui
