// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/worksheettable.h"

#include "core/evaluation/format.h"
#include "ui/print/decimalsign.h"

#include <QCoreApplication>
#include <QLocale>
#include <QFontMetricsF>

#include <algorithm>
#include <cmath>
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
constexpr double smallestRound_mm = 12.5;
constexpr double largestStandIn_mm = 9;
constexpr double pause_mm = 5.2;
constexpr double reading_mm = 25;
/// Of a series, whose numbers stand closer.
constexpr double oneOfSeries_mm = 22;

/// Of bold text, with the font's own measures, whatever device it will be drawn on.
double boldWidth_mm(const QString &text, double size_pt)
{
    const double size_mm = size_pt * 25.4 / 72;
    QFont font(u"DejaVu Sans"_s);
    font.setPixelSize(100);
    font.setBold(true);
    return QFontMetricsF(font).horizontalAdvance(text) / 100 * size_mm;
}

double roundWidth_mm(const WorksheetContent &content, const planning::Round &round)
{
    double widest = 0;
    for (std::size_t tube = 0; tube < round.doses.size(); ++tube) {
        const auto &dose = round.doses[tube];
        if (!dose)
            continue;
        const QString other = standIn(content.run, *dose, static_cast<int>(tube));
        widest = std::max({widest, boldWidth_mm(doseText(round, dose->volume_mL), volumeSize_pt),
                           std::min(largestStandIn_mm, boldWidth_mm(other, standInSize_pt))});
    }
    return std::max(smallestRound_mm, tickBox_mm + 3.1 + widest);
}

/// Walks the steps; mixing and waiting join into one pause.
class Columns
{
public:
    explicit Columns(const WorksheetContent &content)
        : m_content(content)
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
            columns.push_back({SheetColumn::Kind::Pause, 0, m_pause.join(u", "_s), 1, pause_mm});
        m_pause.clear();
    }
    void add(const assay::AddStep &, int step)
    {
        endPause();
        for (std::size_t i = 0; i < m_content.rounds.size(); ++i) {
            if (m_content.rounds[i].step == step)
                columns.push_back({SheetColumn::Kind::Round,
                                   static_cast<int>(i),
                                   {},
                                   1,
                                   roundWidth_mm(m_content, m_content.rounds[i])});
        }
    }
    void add(const assay::MixStep &, int) { m_pause << WorksheettableWords::tr("mix"); }
    void add(const assay::WaitStep &wait, int)
    {
        m_pause << WorksheettableWords::tr("wait %1").arg(waitOnPaper(wait));
    }
    void add(const assay::ReadStep &read, int)
    {
        endPause();
        const auto &line = m_content.method.extrapolate;
        const int values = line && line->reading == read.reading ? line->lastReadings : 1;
        columns.push_back({SheetColumn::Kind::Reading, 0, read.reading, values,
                           values == 1 ? reading_mm : values * oneOfSeries_mm});
    }

    const WorksheetContent &m_content;
    QStringList m_pause;
};

/// To a hundredth of a microlitre, which no hand pipettes: what is finer is what subtracting left.
int decimalsOf(double volume_mL)
{
    const QString text = evaluation::plainText(std::round(volume_mL * 1e5) / 1e5);
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
    int decimals = 0;
    for (const auto &dose : round.doses) {
        if (dose)
            decimals = std::max(decimals, decimalsOf(dose->volume_mL));
    }
    return localNumbers(QString::number(volume_mL, 'f', decimals), usualDecimalSign(QLocale()));
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
    table.number_mm = number_mm;
    table.columns = Columns(content).columns;
    const double columns_mm =
        std::accumulate(table.columns.begin(), table.columns.end(), 0.0,
                        [](double sum, const SheetColumn &column) { return sum + column.width_mm; });
    const double needed_mm = number_mm + smallestContents_mm + columns_mm;
    for (const auto orientation : {QPageLayout::Portrait, QPageLayout::Landscape}) {
        const QSizeF sheet = sheetOf(paper, orientation).fullRect().size();
        table.orientation = orientation;
        table.width_mm = sheet.width() - leftEdge_mm - rightEdge_mm;
        table.sheetHeight_mm = sheet.height();
        if (needed_mm <= table.width_mm)
            break;
    }
    // A method of very many steps: everything narrower by the same part, so that nothing runs off the sheet.
    const double squeeze = std::min(1.0, table.width_mm / needed_mm);
    for (SheetColumn &column : table.columns)
        column.width_mm *= squeeze;
    table.number_mm *= squeeze;
    table.contents_mm = std::min(largestContents_mm, table.width_mm - table.number_mm - columns_mm * squeeze);
    table.width_mm = table.number_mm + table.contents_mm + columns_mm * squeeze;
    return table;
}

SheetPages pagesOf(int tubes, double first_mm, double other_mm, double tail_mm,
                   const std::vector<int> &starts)
{
    const auto with = [&](double row_mm) { return fill(tubes, first_mm, other_mm, tail_mm, starts, row_mm); };
    // Fewer pages with tubes count before higher rows: none for a single tube where the tail needs one
    // anyway.
    const SheetPages tightest = with(smallestRow_mm);
    for (double row_mm = largestRow_mm; row_mm > smallestRow_mm; row_mm -= 0.1) {
        SheetPages pages = with(row_mm);
        if (count(pages) == count(tightest) && pages.tubes.size() == tightest.tubes.size())
            return pages;
    }
    return tightest;
}

} // namespace plateau::ui
