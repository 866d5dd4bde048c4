// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/reporthead.h"

#include "ui/print/pdf.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct ReportheadWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Report)
};

constexpr double side_mm = 18;
constexpr double firstTop_mm = 16;
constexpr double top_mm = 22;
constexpr double foot_mm = 18;
constexpr double logoWidth_mm = 48;
constexpr double logoHeight_mm = 20;
/// Of a document that is set close: what is left free between its parts.
constexpr double closeSpacing = 0.45;
constexpr double aboveEnd_mm = 4;
constexpr TextStyle endStyle{7.5, true, Qt::AlignCenter};

void paintMark(Canvas &canvas, const QString &mark, double right_mm)
{
    if (mark.isEmpty())
        return;
    const TextStyle style{9, true, Qt::AlignCenter};
    const double width_mm = canvas.width_mm(mark, style) + 5;
    const QRectF box(right_mm - width_mm, 7.5, width_mm, 6);
    canvas.box(box, 0.4);
    canvas.text(box, mark, style);
}

PageFlow::Frame frameOf(const RunningText &running, const QSizeF &sheet_mm, int pages, double spacing)
{
    PageFlow::Frame frame;
    frame.spacing = spacing;
    frame.left_mm = side_mm;
    frame.width_mm = sheet_mm.width() - 2 * side_mm;
    frame.firstTop_mm = firstTop_mm;
    frame.top_mm = top_mm;
    frame.bottom_mm = sheet_mm.height() - foot_mm;
    frame.paint = [running, sheet_mm, pages, width_mm = frame.width_mm](Canvas &canvas, int page) {
        const double right_mm = side_mm + width_mm;
        paintMark(canvas, running.mark, right_mm);
        if (page > 1) {
            canvas.text({side_mm, 14.2, width_mm * 0.55, 4}, running.headLeft, {7.5, true});
            canvas.text({side_mm + width_mm * 0.56, 14.2, width_mm * 0.44, 4}, running.headRight,
                        {7.5, false, Qt::AlignRight | Qt::AlignVCenter});
            canvas.line({side_mm, 18.8}, {right_mm, 18.8}, 0.2);
        }
        const double y = sheet_mm.height() - foot_mm + 4;
        canvas.line({side_mm, y}, {right_mm, y}, 0.2);
        canvas.text({side_mm, y + 1, width_mm - 28, 4}, running.foot, {6.5});
        canvas.text({right_mm - 27, y + 1, 27, 4}, ReportheadWords::tr("page %1 of %2").arg(page).arg(pages),
                    {7, true, Qt::AlignRight | Qt::AlignVCenter});
    };
    return frame;
}

} // namespace

QByteArray flowedPdf(const RunningText &running, Paper paper, const std::function<void(PageFlow &)> &write)
{
    const QPageLayout sheet = sheetOf(paper, QPageLayout::Portrait);
    const QSizeF sheet_mm = sheet.fullRect(QPageLayout::Millimeter).size();
    int pages = 0;
    double spacing = 1;
    const auto paint = [&](Canvas &canvas, const std::function<void()> &newPage) {
        PageFlow flow(canvas, frameOf(running, sheet_mm, pages, spacing), newPage);
        write(flow);
        pages = flow.page();
    };
    // What stands at the foot takes no room from the text, so that the second time has as many pages.
    if (paintedPdf(running.title, sheet, paint).isEmpty())
        return {};
    if (pages == 2) {
        spacing = closeSpacing;
        paintedPdf(running.title, sheet, paint);
        if (pages > 1) {
            spacing = 1;
            pages = 2;
        }
    }
    return paintedPdf(running.title, sheet, paint);
}

void paintLaboratory(PageFlow &flow, const ReportLaboratory &laboratory)
{
    Canvas &canvas = flow.canvas();
    const double top = flow.y_mm();
    const double text_mm = flow.width_mm() - logoWidth_mm - 6;
    const QRectF logo(flow.left_mm() + flow.width_mm() - logoWidth_mm, top, logoWidth_mm, logoHeight_mm);
    const bool hasLogo = canvas.picture(logo, laboratory.logo, Qt::AlignRight | Qt::AlignTop);
    if (laboratory.name.isEmpty()) {
        flow.fields({{ReportheadWords::tr("laboratory: name, address, contact"), {}, 2}}, hasLogo ? 2 : 1);
    } else {
        const TextStyle name{13, true, Qt::AlignLeft | Qt::AlignTop, 2};
        const qsizetype lines = canvas.wrapped(printable(laboratory.name), text_mm, name).size();
        const double name_mm =
            static_cast<double>(std::clamp<qsizetype>(lines, 1, 2)) * canvas.lineHeight_mm(name);
        canvas.text({flow.left_mm(), top, text_mm, name_mm}, laboratory.name, name);
        flow.advance(name_mm + 0.6);
        QStringList below = laboratory.address.split(u'\n', Qt::SkipEmptyParts);
        if (!laboratory.contact.isEmpty())
            below << laboratory.contact;
        const double line_mm = canvas.lineHeight_mm({8});
        for (const QString &line : below) {
            canvas.text({flow.left_mm(), flow.y_mm(), text_mm, line_mm}, line, {8});
            flow.advance(line_mm);
        }
        if (laboratory.address.isEmpty())
            flow.fields({{ReportheadWords::tr("address of the laboratory"), {}, 1}}, 2);
    }
    if (hasLogo)
        flow.advance(std::max(0.0, logo.bottom() - flow.y_mm()));
    flow.gap(2);
    canvas.line({flow.left_mm(), flow.y_mm()}, {flow.left_mm() + flow.width_mm(), flow.y_mm()}, 0.4);
    flow.gap(4);
}

void paintTitle(PageFlow &flow, const QString &title, const QString &line)
{
    Canvas &canvas = flow.canvas();
    const TextStyle large{18, true};
    const TextStyle below{9.5};
    canvas.text({flow.left_mm(), flow.y_mm(), flow.width_mm(), canvas.lineHeight_mm(large)}, title, large);
    flow.advance(canvas.lineHeight_mm(large) + 0.4);
    canvas.text({flow.left_mm(), flow.y_mm(), flow.width_mm(), canvas.lineHeight_mm(below)}, line, below);
    flow.advance(canvas.lineHeight_mm(below));
    flow.gap(3.5);
}

void paintEnd(PageFlow &flow, const QString &sentence)
{
    const double line_mm = flow.canvas().lineHeight_mm(endStyle);
    flow.need(endHeight_mm(flow));
    flow.advance(aboveEnd_mm);
    flow.canvas().text({flow.left_mm(), flow.y_mm(), flow.width_mm(), line_mm}, sentence, endStyle);
    flow.advance(line_mm);
}

double endHeight_mm(const PageFlow &flow)
{
    return aboveEnd_mm + flow.canvas().lineHeight_mm(endStyle);
}

} // namespace plateau::ui
