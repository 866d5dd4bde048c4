// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/worksheettail.h"

#include "core/exchange/shippedtexts.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct WorksheettailWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Worksheet)
};

constexpr TextStyle prose{7.5};
constexpr TextStyle heading{8.5, true};
constexpr double line_mm = 3.2;
constexpr double headingLine_mm = 4.6;
constexpr double notesGap_mm = 2.5;
constexpr double smallestNotes_mm = 14;

double heightOf(bool isHeading)
{
    return isHeading ? headingLine_mm : line_mm;
}

} // namespace

WorksheetTail::WorksheetTail(const Canvas &canvas, const WorksheetContent &content, const SheetTable &table)
    : m_table(table)
{
    bool first = true;
    for (std::size_t i = 0; i < content.run.tubes.size(); ++i) {
        const QString &spoilt = content.run.tubes[i].spoilt;
        if (spoilt.isEmpty())
            continue;
        if (std::exchange(first, false))
            addHeading(WorksheettailWords::tr("Tubes that do not count"));
        addParagraph(canvas, WorksheettailWords::tr("tube %1: %2").arg(i + 1).arg(spoilt));
    }
    if (content.method.cautions.empty())
        return;
    addHeading(WorksheettailWords::tr("Cautions"));
    for (const QString &caution : content.method.cautions)
        addParagraph(canvas, exchange::inWindowLanguage(caution));
}

void WorksheetTail::addHeading(const QString &text)
{
    m_lines.push_back({text, true});
}

void WorksheetTail::addParagraph(const Canvas &canvas, const QString &text)
{
    // Prose may be longer than what printable() keeps of a name, and has line feeds of its own.
    for (const QString &part : text.split(u'\n')) {
        QString whole;
        constexpr qsizetype piece = 1000;
        for (qsizetype at = 0; at < part.size(); at += piece)
            whole += printable(part.sliced(at, std::min(piece, part.size() - at)));
        for (const QString &line : canvas.wrapped(whole, m_table.width_mm, prose))
            m_lines.push_back({line, false});
    }
}

void WorksheetTail::addNames(const Canvas &canvas, const std::vector<TubeGroup> &names)
{
    if (names.empty())
        return;
    addHeading(WorksheettailWords::tr("Names in full"));
    for (const TubeGroup &group : names)
        addParagraph(
            canvas,
            WorksheettailWords::tr("tube %1: %2").arg(group.firstTube + 1).arg(printable(group.name)));
}

double WorksheetTail::height_mm() const
{
    double sum_mm = 0;
    for (const Line &line : m_lines)
        sum_mm += heightOf(line.heading);
    return sum_mm;
}

template <class Place>
void WorksheetTail::flow(double top_mm, double bottom_mm, const std::function<double()> &nextTop_mm,
                         Place place) const
{
    double y = top_mm;
    for (const Line &line : m_lines) {
        // A heading never stands alone at the end of a page.
        const double needed_mm = heightOf(line.heading) + (line.heading ? line_mm : 0);
        if (y + needed_mm > bottom_mm)
            y = nextTop_mm();
        place(line, y);
        y += heightOf(line.heading);
    }
}

int WorksheetTail::pages(double top_mm, double bottom_mm) const
{
    int count = 1;
    const auto next = [&] {
        ++count;
        return top_mm;
    };
    flow(top_mm, bottom_mm, next, [](const Line &, double) {});
    return count;
}

void WorksheetTail::paint(Canvas &canvas, double top_mm, double bottom_mm,
                          const std::function<double()> &nextTop_mm) const
{
    double end_mm = top_mm;
    flow(top_mm, bottom_mm, nextTop_mm, [&](const Line &line, double y) {
        end_mm = y + heightOf(line.heading);
        canvas.text({m_table.left_mm, y, m_table.width_mm + 1, heightOf(line.heading)}, line.text,
                    line.heading ? heading : prose);
    });
    if (bottom_mm - end_mm < smallestNotes_mm)
        return;
    const QRectF notes(m_table.left_mm, end_mm + notesGap_mm, m_table.width_mm,
                       bottom_mm - end_mm - notesGap_mm);
    canvas.box(notes, 0.2);
    canvas.text(notes.adjusted(1.5, 1, -1, -1), WorksheettailWords::tr("notes"),
                {7, false, Qt::AlignLeft | Qt::AlignTop});
}

} // namespace plateau::ui
