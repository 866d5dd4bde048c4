// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/worksheettable.h"

#include "core/evaluation/format.h"
#include "ui/print/canvas.h"
#include "ui/print/decimalsign.h"
#include "ui/print/volumeunit.h"

#include <QCoreApplication>
#include <QFontMetricsF>

#include <algorithm>
#include <iterator>
#include <numeric>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct WorksheettableWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Worksheet)
};

// The left edge has room for the holes of a binder.
constexpr double leftEdge_mm = 15;
constexpr double rightEdge_mm = 8;
constexpr double number_mm = 7.5;
constexpr double smallestContents_mm = 33;
constexpr double largestContents_mm = 90;
/// What the tubes' contents have before columns get more than they need for their volumes.
constexpr double comfortableContents_mm = 42;
constexpr double largestHeadWord_mm = 20;
constexpr double smallestRound_mm = 12.5;
/// Two lines of the smallest type.
constexpr double pause_mm = 5.6;
/// Of a series, whose numbers stand closer.
constexpr double oneOfSeries_mm = 22;

/// What gives way before the sheet is turned, and what before it is squeezed.
struct ColumnRoom {
    double reading_mm;
    /// Of what stands in for a component: the widest that is shown whole.
    double standIn_mm;
    /// The times of additions beside the volumes, else above them.
    bool areStartsBeside = true;
};
constexpr ColumnRoom usualRoom{25, 26};
constexpr ColumnRoom tightRoom{22, 26};
constexpr ColumnRoom startsAboveRoom{22, 26, false};
constexpr ColumnRoom tightestRoom{22, 9, false};

/// With the font's own measures, whatever device it will be drawn on.
double textWidth_mm(const QString &text, double size_pt, bool bold)
{
    const double size_mm = size_pt * 25.4 / 72;
    QFont font(u"DejaVu Sans"_s);
    font.setPixelSize(100);
    font.setBold(bold);
    return QFontMetricsF(font).horizontalAdvance(text) / 100 * size_mm;
}

/// Of the number of a tube, and of the word over it.
double numberWidth_mm()
{
    constexpr double besideWord_mm = 0.6;
    return std::max(number_mm, textWidth_mm(WorksheettableWords::tr("tube"), smallestSheetType_pt, false) +
                                   besideWord_mm);
}

/// Of the widest time beside the doses of a round that starts its tubes; 0 of others.
double startWidth_mm(const WorksheetContent &content, const planning::Round &round)
{
    const auto starts = content.startAt_s.find(round.step);
    if (starts == content.startAt_s.end() || starts->second.empty())
        return 0;
    constexpr double besideTime_mm = 0.8;
    return textWidth_mm(sheetTimeText(std::ranges::max(starts->second)), smallestSheetType_pt, false) + besideTime_mm;
}

double roundWidth_mm(const WorksheetContent &content, const planning::Round &round, double largestStandIn_mm)
{
    double widest = 0;
    for (std::size_t tube = 0; tube < round.doses.size(); ++tube) {
        const auto &dose = round.doses[tube];
        if (!dose)
            continue;
        const QString other = standIn(content.run, *dose, static_cast<int>(tube));
        widest = std::max({widest, textWidth_mm(doseText(round, dose->volume_mL), volumeSize_pt, true),
                           std::min(largestStandIn_mm, textWidth_mm(other, standInSize_pt, true))});
    }
    return std::max(smallestRound_mm, tickBox_mm + 3.1 + widest);
}

/// What a name is broken into where it goes on on another line: its words, long ones behind a hyphen or a slash.
QStringList partsOfName(const QString &name)
{
    QStringList parts;
    QString part;
    for (const QChar sign : printable(name)) {
        if (sign != u' ')
            part += sign;
        if (sign == u' ' || sign == u'-' || sign == u'/')
            parts << std::exchange(part, {});
    }
    parts << part;
    return parts;
}

/// Gives the columns of additions what of the spare room lets a long word of their names stand whole; returns how much
/// that is.
double widenForNames(std::vector<SheetColumn> &columns, const WorksheetContent &content, double spare_mm)
{
    std::vector<double> lacking_mm(columns.size(), 0);
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (columns[i].kind != SheetColumn::Kind::Round)
            continue;
        double wanted_mm = 0;
        for (const QString &word :
             partsOfName(content.rounds[static_cast<std::size_t>(columns[i].round)].name))
            wanted_mm = std::max(wanted_mm, textWidth_mm(word, smallestSheetType_pt, false));
        constexpr double besideName_mm = 1;
        lacking_mm[i] = std::max(0.0, std::min(largestHeadWord_mm, wanted_mm) + besideName_mm +
                                          (columns[i].hasUprightSwirl ? uprightSwirl_mm : 0) -
                                          columns[i].width_mm);
    }
    const double all_mm = std::accumulate(lacking_mm.begin(), lacking_mm.end(), 0.0);
    const double given_mm = std::clamp(spare_mm, 0.0, all_mm);
    for (std::size_t i = 0; i < columns.size() && all_mm > 0; ++i)
        columns[i].width_mm += lacking_mm[i] * given_mm / all_mm;
    return given_mm;
}

/// Walks the steps; mixing and waiting join into one pause.
class Columns
{
public:
    Columns(const WorksheetContent &content, const ColumnRoom &room)
        : m_content(content)
        , m_room(room)
    {
        for (std::size_t i = 0; i < content.method.steps.size(); ++i)
            std::visit([&](const auto &step) { add(step, static_cast<int>(i)); }, content.method.steps[i]);
        endPause();
    }
    std::vector<SheetColumn> columns;

private:
    void endPause()
    {
        if (!m_pause.isEmpty())
            columns.push_back({SheetColumn::Kind::Pause, 0, m_pause.join(u", "_s), 1, pause_mm, false});
        m_pause.clear();
    }
    void add(const assay::AddStep &, int step)
    {
        endPause();
        for (std::size_t i = 0; i < m_content.rounds.size(); ++i) {
            if (m_content.rounds[i].step == step)
                addRound(static_cast<int>(i));
        }
    }
    void addRound(int index)
    {
        const planning::Round &round = m_content.rounds[static_cast<std::size_t>(index)];
        SheetColumn column{SheetColumn::Kind::Round, index, {}, 1,
                           roundWidth_mm(m_content, round, m_room.standIn_mm), false};
        constexpr double besideSwirl_mm = 3.6;
        if (round.suspension &&
            textWidth_mm(swirlWord(), swirlSize_pt, true) + besideSwirl_mm > column.width_mm) {
            column.hasUprightSwirl = true;
            column.width_mm = std::max(column.width_mm, smallestRound_mm + uprightSwirl_mm - 0.4);
        }
        // A spike goes in right after its sample.
        const auto at = static_cast<std::size_t>(index);
        if (index == 0 || m_content.rounds[at - 1].step != round.step)
            column.start_mm = startWidth_mm(m_content, round);
        column.isStartAbove = column.start_mm > 0 && !m_room.areStartsBeside;
        if (!column.isStartAbove)
            column.width_mm += column.start_mm;
        columns.push_back(column);
    }
    void add(const assay::MixStep &, int) { m_pause << WorksheettableWords::tr("mix"); }
    void add(const assay::WaitStep &wait, int)
    {
        m_pause << WorksheettableWords::tr("wait %1").arg(localNumbers(waitOnPaper(wait)));
    }
    void add(const assay::ReadStep &read, int)
    {
        endPause();
        const auto &line = m_content.method.extrapolate;
        const int values = line && line->reading == read.reading ? line->lastReadings : 1;
        columns.push_back({SheetColumn::Kind::Reading, 0, read.reading, values,
                           values == 1 ? m_room.reading_mm : values * oneOfSeries_mm, false});
    }

    const WorksheetContent &m_content;
    ColumnRoom m_room;
    QStringList m_pause;
};

int decimalsOf(double number)
{
    const QString text = evaluation::plainText(number);
    const qsizetype point = text.indexOf(u'.');
    return point < 0 ? 0 : static_cast<int>(text.size() - point - 1);
}

/// How the tubes fall on pages with rows of this height.
SheetPages fill(int tubes, double first_mm, double other_mm, double tail_mm, const std::vector<int> &starts,
                double row_mm)
{
    SheetPages pages{row_mm, {}, false};
    double left_mm = 0;
    for (int from = 0; from < tubes;) {
        const double room_mm = from == 0 ? first_mm : other_mm;
        const int fitting = std::max(1, static_cast<int>(room_mm / row_mm + 1e-9));
        int to = std::min(tubes, from + fitting);
        const auto behind = std::ranges::upper_bound(starts, to);
        if (to < tubes && behind != starts.begin() && *std::prev(behind) > from)
            to = *std::prev(behind);
        pages.tubes.emplace_back(from, to);
        left_mm = room_mm - (to - from) * row_mm;
        from = to;
    }
    pages.tailApart = tail_mm > left_mm;
    return pages;
}

std::size_t count(const SheetPages &pages)
{
    return pages.tubes.size() + (pages.tailApart ? 1 : 0);
}

} // namespace

QString doseText(const planning::Round &round, double volume_mL)
{
    const double usual_mL = round.usualVolume_mL;
    const auto hasItsUnit = [&](double own_mL) { return own_mL == 0 || volumeUnit(own_mL) == volumeUnit(usual_mL); };
    if (!hasItsUnit(volume_mL))
        return localNumbers(volumeWords(volume_mL));
    int decimals = 0;
    for (const auto &dose : round.doses) {
        if (dose && hasItsUnit(dose->volume_mL))
            decimals = std::max(decimals, decimalsOf(volumeInUnitOf(dose->volume_mL, usual_mL)));
    }
    return localNumbers(QString::number(volumeInUnitOf(volume_mL, usual_mL), 'f', decimals));
}

QString usualDoseText(const planning::Round &round)
{
    return evaluation::withUnit(doseText(round, round.usualVolume_mL), volumeUnit(round.usualVolume_mL));
}

QString sheetTimeText(int seconds)
{
    return u"%1:%2"_s.arg(seconds / 60).arg(seconds % 60, 2, 10, QChar(u'0'));
}

QString swirlWord()
{
    return WorksheettableWords::tr("swirl");
}

QString standIn(const run::Run &run, const planning::Round::Dose &dose, int tube)
{
    const run::Tube &own = run.tubes[static_cast<std::size_t>(tube)];
    const bool known = dose.content == own.sample || dose.content == own.standard;
    return known ? QString() : dose.content;
}

SheetTable tableOf(const WorksheetContent &content, Paper paper)
{
    SheetTable table;
    table.left_mm = leftEdge_mm;
    table.number_mm = numberWidth_mm();
    const struct {
        QPageLayout::Orientation orientation;
        ColumnRoom room;
    } ways[] = {{QPageLayout::Portrait, usualRoom},
                {QPageLayout::Portrait, tightRoom},
                {QPageLayout::Portrait, startsAboveRoom},
                {QPageLayout::Landscape, usualRoom},
                {QPageLayout::Landscape, tightRoom},
                {QPageLayout::Landscape, tightestRoom}};
    double columns_mm = 0;
    double needed_mm = 0;
    for (const auto &way : ways) {
        const QSizeF sheet = sheetOf(paper, way.orientation).fullRect().size();
        table.orientation = way.orientation;
        table.width_mm = sheet.width() - leftEdge_mm - rightEdge_mm;
        table.sheetHeight_mm = sheet.height();
        table.columns = Columns(content, way.room).columns;
        columns_mm =
            std::accumulate(table.columns.begin(), table.columns.end(), 0.0,
                            [](double sum, const SheetColumn &column) { return sum + column.width_mm; });
        needed_mm = table.number_mm + smallestContents_mm + columns_mm;
        if (needed_mm <= table.width_mm)
            break;
    }
    // A method of very many steps: everything narrower by the same part, so that nothing runs off the sheet.
    const double squeeze = std::min(1.0, table.width_mm / needed_mm);
    for (SheetColumn &column : table.columns) {
        column.width_mm *= squeeze;
        column.start_mm *= squeeze;
    }
    table.number_mm *= squeeze;
    columns_mm *= squeeze;
    columns_mm += widenForNames(
        table.columns, content, table.width_mm - table.number_mm - columns_mm - comfortableContents_mm);
    table.contents_mm = std::min(largestContents_mm, table.width_mm - table.number_mm - columns_mm);
    table.width_mm = table.number_mm + table.contents_mm + columns_mm;
    return table;
}

SheetPages pagesOf(int tubes, double first_mm, double other_mm, double tail_mm,
                   const std::vector<int> &starts, double least_mm)
{
    const auto with = [&](double row_mm) { return fill(tubes, first_mm, other_mm, tail_mm, starts, row_mm); };
    // Fewer pages with tubes count before higher rows: none for a single tube where the tail needs one
    // anyway.
    const SheetPages tightest = with(least_mm);
    for (double row_mm = largestRow_mm; row_mm > least_mm; row_mm -= 0.1) {
        SheetPages pages = with(row_mm);
        if (count(pages) == count(tightest) && pages.tubes.size() == tightest.tubes.size())
            return pages;
    }
    return tightest;
}

} // namespace plateau::ui
