// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/labels.h"

#include "core/assay/label.h"
#include "core/assay/localday.h"
#include "core/evaluation/format.h"
#include "core/planning/standardlife.h"
#include "ui/print/canvas.h"
#include "ui/print/decimalsign.h"
#include "ui/print/pdf.h"
#include "ui/print/worksheetcontent.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using evaluation::plainText;
using evaluation::withUnit;

namespace {

struct LabelsWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Labels)
};

constexpr double smallestWidth_mm = 15;
constexpr double smallestHeight_mm = 8;
constexpr double smallestType_pt = 4.5;

QString momentOn(const QDateTime &moment)
{
    return assay::shownMoment(moment);
}

Label labelOf(const run::Standard &standard, const QString &person)
{
    Label label;
    label.what = standard.id;
    label.strength = strengthOnPaper(standard);
    if (standard.preparedAt)
        label.madeAt = momentOn(*standard.preparedAt);
    if (const auto by = planning::useStandardBy(standard))
        label.useBy = momentOn(*by);
    label.by = person;
    return label;
}

void addPreparation(std::vector<Label> &labels, const run::Sample &sample, const QString &person)
{
    if (sample.form == run::Form::Solid && sample.mass_g && sample.extract_mL)
        labels.push_back({sample.id,
                          LabelsWords::tr("extract: %1 in %2")
                              .arg(withUnit(localNumbers(plainText(*sample.mass_g)), u"g"_s),
                                   withUnit(localNumbers(plainText(*sample.extract_mL)), u"mL"_s)),
                          {},
                          {},
                          person});
    for (std::size_t step = 1; step <= sample.dilution.size(); ++step) {
        const std::vector<run::DilutionStep> chain(
            sample.dilution.begin(), sample.dilution.begin() + static_cast<std::ptrdiff_t>(step));
        labels.push_back({sample.id,
                          LabelsWords::tr("1 in %1: %2")
                              .arg(localNumbers(assay::shown(run::dilutionFactor(chain))),
                                   localNumbers(dilutionOnPaper(chain))),
                          {},
                          {},
                          person});
    }
}

/// A caption and what is known, or a line to write on.
void paintLine(Canvas &canvas, const QRectF &area, const QString &caption, const QString &known,
               double size_pt)
{
    const TextStyle style{size_pt, false};
    if (!known.isEmpty()) {
        canvas.shrunkText(area, LabelsWords::tr("%1 %2").arg(caption, known), style, smallestType_pt);
        return;
    }
    canvas.text(area, caption, style);
    const double y = area.bottom() - area.height() * 0.15;
    canvas.line({area.left() + canvas.width_mm(caption, style) + 1, y}, {area.right(), y}, 0.15);
}

/// Name, strength, then the times and the hand, each in its part of the height, whatever the label's size.
void paintLabel(Canvas &canvas, const QRectF &label, const Label &content)
{
    const double edge_mm = std::min(2.0, label.height() * 0.08);
    const QRectF inside = label.adjusted(edge_mm, edge_mm, -edge_mm, -edge_mm);
    // As large as the line lets it be, but no poster.
    const auto typeFor = [](double line_mm, double largest_pt) {
        constexpr double pointsPerMm = 72 / 25.4;
        return std::clamp(line_mm * 0.8 * pointsPerMm, smallestType_pt, largest_pt);
    };
    double y = inside.top();
    const auto part = [&](double fraction) {
        const QRectF area(inside.left(), y, inside.width(), inside.height() * fraction);
        y += area.height();
        return area;
    };
    const QRectF name = part(0.36);
    canvas.shrunkText(name, content.what, {typeFor(name.height() / 1.5, 14), true}, 5.5);
    const QRectF strength = part(0.22);
    canvas.shrunkText(strength, localNumbers(content.strength), {typeFor(strength.height(), 12), true}, smallestType_pt);
    const double small_pt = typeFor(inside.height() * 0.14, 9);
    paintLine(canvas, part(0.14), LabelsWords::tr("made"), content.madeAt, small_pt);
    paintLine(canvas, part(0.14), LabelsWords::tr("use by"), content.useBy, small_pt);
    paintLine(canvas, part(0.14), LabelsWords::tr("by"), content.by, small_pt);
}

} // namespace

std::vector<Label> labelsOf(const run::Run &run, const QString &person)
{
    std::vector<Label> labels;
    for (const run::Standard &standard : run.standards)
        labels.push_back(labelOf(standard, person));
    for (const run::Sample &sample : run.samples)
        addPreparation(labels, sample, person);
    return labels;
}

LabelSheet usualLabels(Paper paper)
{
    return paper == Paper::A4 ? LabelSheet{paper, 5, 13, 38.1, 21.2, 4.75, 10.7, 2.5, 0}
                              : LabelSheet{paper, 3, 10, 66.7, 25.4, 4.8, 12.7, 3.1, 0};
}

QString faultOf(const LabelSheet &sheet)
{
    if (sheet.columns < 1 || sheet.rows < 1)
        return LabelsWords::tr("A sheet has at least one column and one row of labels.");
    const auto isSize = [](double size_mm, double least_mm) {
        return size_mm >= least_mm && size_mm <= 1000;
    };
    if (!isSize(sheet.width_mm, smallestWidth_mm) || !isSize(sheet.height_mm, smallestHeight_mm))
        return LabelsWords::tr("A label of %1 by %2 can't be read; it needs at least %3 by %4.")
            .arg(withUnit(plainText(sheet.width_mm), u"mm"_s), withUnit(plainText(sheet.height_mm), u"mm"_s),
                 withUnit(plainText(smallestWidth_mm), u"mm"_s),
                 withUnit(plainText(smallestHeight_mm), u"mm"_s));
    if (!isSize(sheet.left_mm, 0) || !isSize(sheet.top_mm, 0) || !isSize(sheet.columnGap_mm, 0) ||
        !isSize(sheet.rowGap_mm, 0))
        return LabelsWords::tr("Margins and gaps of a sheet of labels are 0 mm or more.");
    constexpr double slack_mm = 0.5; // printed sizes are rounded
    const QSizeF paper = sheetOf(sheet.paper, QPageLayout::Portrait).fullRect().size();
    const double right_mm =
        sheet.left_mm + sheet.columns * (sheet.width_mm + sheet.columnGap_mm) - sheet.columnGap_mm;
    const double bottom_mm =
        sheet.top_mm + sheet.rows * (sheet.height_mm + sheet.rowGap_mm) - sheet.rowGap_mm;
    if (right_mm > paper.width() + slack_mm || bottom_mm > paper.height() + slack_mm)
        return LabelsWords::tr("The labels take %1 by %2, but the paper has only %3 by %4.")
            .arg(withUnit(plainText(right_mm), u"mm"_s), withUnit(plainText(bottom_mm), u"mm"_s),
                 withUnit(plainText(paper.width()), u"mm"_s), withUnit(plainText(paper.height()), u"mm"_s));
    return {};
}

QRectF placeOf(const LabelSheet &sheet, int position)
{
    return {sheet.left_mm + (position % sheet.columns) * (sheet.width_mm + sheet.columnGap_mm),
            sheet.top_mm + (position / sheet.columns) * (sheet.height_mm + sheet.rowGap_mm), sheet.width_mm,
            sheet.height_mm};
}

QByteArray labelsPdf(const std::vector<Label> &labels, const LabelSheet &sheet, int firstFree)
{
    if (!faultOf(sheet).isEmpty() || firstFree < 1 || firstFree > sheet.columns * sheet.rows)
        return {};
    return paintedPdf(LabelsWords::tr("Labels"), sheetOf(sheet.paper, QPageLayout::Portrait),
                      [&](Canvas &canvas, const std::function<void()> &newPage) {
                          int position = firstFree - 1;
                          for (const Label &label : labels) {
                              if (position == sheet.columns * sheet.rows) {
                                  newPage();
                                  position = 0;
                              }
                              paintLabel(canvas, placeOf(sheet, position++), label);
                          }
                      });
}

} // namespace plateau::ui
