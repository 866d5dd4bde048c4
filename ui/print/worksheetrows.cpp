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

constexpr double nameLine_mm = 3.5;
constexpr double hairline_mm = 0.12;
constexpr double groupLine_mm = 0.3;
constexpr double rackLine_mm = 0.7;
/// Of a reading's room for its absorbance, the rest is for the time.
constexpr double valuePart = 0.56;

QString clockText(int seconds)
{
    return u"%1:%2"_s.arg(seconds / 60).arg(seconds % 60, 2, 10, QChar(u'0'));
}

} // namespace

WorksheetRows::WorksheetRows(const WorksheetContent &content, const SheetTable &table)
    : m_content(content)
    , m_table(table)
    , m_groups(tubeGroups(content.run))
{
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
    canvas.text({m_table.left_mm, top_mm, m_table.number_mm, headHeight_mm - 0.8},
                WorksheetrowsWords::tr("tube"), caption);
    canvas.text(
        {m_table.left_mm + m_table.number_mm + 1, top_mm, m_table.contents_mm - 1, headHeight_mm - 0.8},
        WorksheetrowsWords::tr("contents, taken → made up to"),
        {7, false, Qt::AlignLeft | Qt::AlignBottom, 2});
    eachColumn([&](const SheetColumn &column, double x) {
        const QRectF cell(x, top_mm, column.width_mm, headHeight_mm);
        if (column.kind == SheetColumn::Kind::Round)
            paintRoundHead(canvas, cell, column);
        else if (column.kind == SheetColumn::Kind::Reading)
            paintReadingHead(canvas, cell, column);
    });
}

void WorksheetRows::paintRoundHead(Canvas &canvas, const QRectF &cell, const SheetColumn &column) const
{
    const planning::Round &round = m_content.rounds[static_cast<std::size_t>(column.round)];
    const double bottom = cell.bottom();
    paintNumber(canvas, {cell.center().x(), cell.top() + 2.8}, column.round + 1);
    canvas.text({cell.left() + 0.4, cell.top() + 5.2, cell.width() - 0.8, 7.8}, round.name,
                {6, false, Qt::AlignHCenter | Qt::AlignTop, 3});
    if (round.suspension)
        paintSwirl(canvas, {cell.left() + 1.5, bottom - 7.6, cell.width() - 3, 2.9});
    canvas.text({cell.left(), bottom - 4.4, cell.width(), 4},
                evaluation::withUnit(doseText(round, round.usualVolume_mL), u"mL"_s),
                {7.5, true, Qt::AlignCenter});
}

void WorksheetRows::paintReadingHead(Canvas &canvas, const QRectF &cell, const SheetColumn &column) const
{
    canvas.text({cell.left(), cell.top() + 3, cell.width(), 7}, column.text, {13, true, Qt::AlignCenter});
    const TextStyle caption{6.5, false, Qt::AlignHCenter | Qt::AlignBottom};
    const double each_mm = cell.width() / column.values;
    for (int i = 0; i < column.values; ++i) {
        const QRectF own(cell.left() + i * each_mm, cell.top(), each_mm, cell.height() - 0.8);
        canvas.text({own.left(), own.top(), own.width() * valuePart, own.height()},
                    WorksheetrowsWords::tr("reads"), caption);
        canvas.text(
            {own.left() + own.width() * valuePart, own.top(), own.width() * (1 - valuePart), own.height()},
            WorksheetrowsWords::tr("time"), caption);
    }
}

void WorksheetRows::paintDose(Canvas &canvas, const QRectF &cell, const planning::Round &round,
                              int tube) const
{
    const auto index = static_cast<std::size_t>(tube);
    const auto dose = index < round.doses.size() ? round.doses[index] : std::nullopt;
    if (!dose) {
        canvas.text(cell, u"–"_s, {8, false, Qt::AlignCenter});
        return;
    }
    canvas.box({cell.left() + 0.9, cell.center().y() - tickBox_mm / 2, tickBox_mm, tickBox_mm}, 0.3);
    const QRectF text(cell.left() + tickBox_mm + 2, cell.top() + 0.5, cell.width() - tickBox_mm - 2.4,
                      cell.height() - 1);
    if (dose->odd)
        canvas.fill(text);
    const QString content = standIn(m_content.run, *dose, tube);
    const TextStyle volume{volumeSize_pt, dose->odd, Qt::AlignCenter, 1, dose->odd};
    if (content.isEmpty()) {
        canvas.text(text, doseText(round, dose->volume_mL), volume);
        return;
    }
    const double upper_mm = text.height() * 0.56;
    canvas.text({text.left(), text.top(), text.width(), upper_mm}, doseText(round, dose->volume_mL), volume);
    canvas.text({text.left(), text.top() + upper_mm, text.width(), text.height() - upper_mm}, content,
                {standInSize_pt, true, Qt::AlignCenter, 1, dose->odd});
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
        canvas.text(
            {cell.left() + each_mm * valuePart + 0.4, cell.top() + 0.3, each_mm * (1 - valuePart) - 0.8, 2.6},
            clockText(due->second[index]), {6, false, Qt::AlignLeft | Qt::AlignTop});
}

void WorksheetRows::paintTube(Canvas &canvas, const QRectF &row, int tube) const
{
    canvas.text({row.left(), row.top(), m_table.number_mm, row.height()}, QString::number(tube + 1),
                {12, true, Qt::AlignCenter});
    eachColumn([&](const SheetColumn &column, double x) {
        const QRectF cell(x, row.top(), column.width_mm, row.height());
        if (column.kind == SheetColumn::Kind::Round)
            paintDose(canvas, cell, m_content.rounds[static_cast<std::size_t>(column.round)], tube);
        else if (column.kind == SheetColumn::Kind::Reading)
            paintReading(canvas, cell, column, tube);
    });
}

void WorksheetRows::paintGroup(Canvas &canvas, const QRectF &cell, const TubeGroup &group)
{
    QStringList parts{group.role, group.preparation};
    parts.removeAll(QString());
    const QString below = parts.join(u", "_s);
    const QRectF inside = cell.adjusted(1, 0.1, -0.6, -0.1);
    const double below_mm = below.isEmpty() ? 0 : 2.8;
    TextStyle style{8, true, Qt::AlignLeft | Qt::AlignVCenter};
    const int most = std::clamp(static_cast<int>((inside.height() - below_mm) / nameLine_mm), 1, 3);
    while (style.lines < most && !canvas.fits(inside.size(), printable(group.name), style))
        ++style.lines;
    const double name_mm = std::min(inside.height() - below_mm, nameLine_mm * style.lines);
    const double top = inside.center().y() - (name_mm + below_mm) / 2;
    if (!canvas.shrunkText({inside.left(), top, inside.width(), name_mm}, group.name, style, 6.5) &&
        std::ranges::none_of(m_cut,
                             [&](const TubeGroup &known) { return known.firstTube == group.firstTube; }))
        m_cut.push_back(group);
    canvas.shrunkText({inside.left(), top + name_mm, inside.width(), below_mm}, below,
                      {6.5, false, Qt::AlignLeft | Qt::AlignVCenter}, 5);
}

void WorksheetRows::paintRows(Canvas &canvas, double headTop_mm, int first, int end, double row_mm)
{
    const double top_mm = headTop_mm + headHeight_mm;
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
        paintGroup(
            canvas,
            {m_table.left_mm + m_table.number_mm, rowTop(from), m_table.contents_mm, (to - from) * row_mm},
            group);
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
    canvas.line({contents, headTop_mm + headHeight_mm}, {contents, bottom_mm}, hairline_mm);
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
        const TextStyle oneLine{8, true, Qt::AlignCenter};
        const TextStyle twoLines{6, true, Qt::AlignCenter, 2};
        const bool fits = canvas.fits(band.size().transposed(), column.text, oneLine);
        canvas.uprightText(band, column.text, fits ? oneLine : twoLines);
    });
}

} // namespace plateau::ui
