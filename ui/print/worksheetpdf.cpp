// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/worksheetpdf.h"

#include "ui/print/canvas.h"
#include "ui/print/pdf.h"
#include "ui/print/worksheethead.h"
#include "ui/print/worksheetlists.h"
#include "ui/print/worksheetrows.h"
#include "ui/print/worksheettail.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct WorksheetpdfWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Worksheet)
};

constexpr double tailGap_mm = 2;
/// Below the lists the table begins with so many rows, or on a page of its own: the lists take most of theirs then.
constexpr int leastRowsBelowLists = 4;

class Sheets
{
public:
    Sheets(const WorksheetContent &content, const SheetTable &table, Canvas &canvas,
           std::function<void()> newPage)
        : m_content(content)
        , m_table(table)
        , m_canvas(canvas)
        , m_newPage(std::move(newPage))
        , m_lists(canvas, content, table, bottom() - tableTop())
        , m_rows(canvas, content, table)
    {
        const double room_mm = bottom() - tableTop() - m_lists.lastHeight_mm() - m_rows.headHeight_mm();
        const int least = std::min(leastRowsBelowLists, static_cast<int>(content.run.tubes.size()));
        m_isTableApart = room_mm < least * twoLineRow_mm; // the highest that rows may become
    }

    /// names: to be given in full in the tail. Returns those that were cut.
    std::vector<TubeGroup> paint(const std::vector<TubeGroup> &names)
    {
        WorksheetTail tail(m_canvas, m_content, m_table);
        tail.addNames(m_canvas, names);
        const SheetPages pages = pagesWith(tail);
        const bool isTableBelow = !m_isTableApart && !pages.tubes.empty();
        m_pages = m_lists.pages() + static_cast<int>(pages.tubes.size()) - (isTableBelow ? 1 : 0) +
                  tailPages(pages, tail);
        for (int page = 0; page < m_lists.pages(); ++page) {
            beginPage();
            m_lists.paint(m_canvas, page, tableTop());
        }
        double y = tableTop() + m_lists.lastHeight_mm();
        for (const auto &[first, end] : pages.tubes) {
            if (first > 0 || !isTableBelow)
                beginPage();
            const double headTop_mm = rowsTop(first == 0) - m_rows.headHeight_mm();
            m_rows.paintHead(m_canvas, headTop_mm);
            m_rows.paintRows(m_canvas, headTop_mm, first, end, pages.row_mm);
            y = rowsTop(first == 0) + (end - first) * pages.row_mm + tailGap_mm;
        }
        const auto next = [this] {
            beginPage();
            return tableTop();
        };
        tail.paint(m_canvas, pages.tailApart ? next() : y, bottom(), next);
        return m_rows.cutNames();
    }

private:
    static double tableTop() { return sheetTop_mm + headHeight_mm; }
    /// first: of the page with the first tube, where the lists may stand above.
    double rowsTop(bool first) const
    {
        return tableTop() + (first && !m_isTableApart ? m_lists.lastHeight_mm() : 0) + m_rows.headHeight_mm();
    }
    double bottom() const { return m_table.sheetHeight_mm - sheetBottom_mm; }

    /// With a row of the rack, or where the rack is not known with what is in several tubes.
    std::vector<int> pageStarts() const
    {
        std::vector<int> starts;
        const int tubes = static_cast<int>(m_content.run.tubes.size());
        if (m_content.rackColumns) {
            for (int tube = 0; tube < tubes; tube += std::max(1, *m_content.rackColumns))
                starts.push_back(tube);
        } else {
            for (const TubeGroup &group : tubeGroups(m_content.run))
                starts.push_back(group.firstTube);
        }
        return starts;
    }
    /// Rows that hold two lines of a name, where lower ones would cut more of them.
    SheetPages pagesWith(const WorksheetTail &tail) const
    {
        const auto with = [&](double least_mm) {
            return pagesOf(static_cast<int>(m_content.run.tubes.size()), bottom() - rowsTop(true),
                           bottom() - rowsTop(false), tail.height_mm() + tailGap_mm, pageStarts(), least_mm);
        };
        const SheetPages pages = with(smallestRow_mm);
        const int cut = m_rows.cutOn(m_canvas, pages);
        if (cut == 0)
            return pages;
        const SheetPages high = with(twoLineRow_mm);
        return m_rows.cutOn(m_canvas, high) < cut ? high : pages;
    }
    /// Pages that the tail takes for itself.
    int tailPages(const SheetPages &pages, const WorksheetTail &tail) const
    {
        return pages.tailApart ? tail.pages(tableTop(), bottom()) : 0;
    }
    void beginPage()
    {
        if (m_page > 0)
            m_newPage();
        paintHead(m_canvas, m_content, m_table);
        paintFoot(m_canvas, m_content, m_table, ++m_page, m_pages);
    }

    const WorksheetContent &m_content;
    const SheetTable &m_table;
    Canvas &m_canvas;
    std::function<void()> m_newPage;
    WorksheetLists m_lists;
    WorksheetRows m_rows;
    bool m_isTableApart = false;
    int m_page = 0;
    int m_pages = 0;
};

} // namespace

QByteArray worksheetPdf(const WorksheetContent &content, Paper paper)
{
    const SheetTable table = tableOf(content, paper);
    const QString title = WorksheetpdfWords::tr("Worksheet: %1").arg(printable(content.run.title));
    // Which names are cut shows in painting, and giving them in full takes room from the rows: again, until
    // nothing more is cut. Higher rows cut fewer names, so that this comes to an end.
    std::vector<TubeGroup> names;
    for (;;) {
        std::vector<TubeGroup> cut;
        const QByteArray pdf = paintedPdf(title, sheetOf(paper, table.orientation),
                                          [&](Canvas &canvas, const std::function<void()> &newPage) {
                                              cut = Sheets(content, table, canvas, newPage).paint(names);
                                          });
        const auto isNew = [&](const TubeGroup &group) {
            return std::ranges::none_of(
                names, [&](const TubeGroup &known) { return known.firstTube == group.firstTube; });
        };
        const std::size_t before = names.size();
        std::ranges::copy_if(cut, std::back_inserter(names), isNew);
        if (names.size() == before)
            return pdf;
        std::ranges::sort(names, {}, &TubeGroup::firstTube);
    }
}

QString worksheetFileName(const run::Run &run)
{
    return fileNameOf(WorksheetpdfWords::tr("Worksheet %1", "a file name").arg(printable(run.title).left(80)),
                      u".pdf"_s);
}

} // namespace plateau::ui
