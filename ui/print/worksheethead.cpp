// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/worksheethead.h"

#include "core/assay/localday.h"
#include "core/evaluation/format.h"
#include "core/run/runcode.h"
#include "ui/print/decimalsign.h"
#include "ui/print/sharedwidth.h"

#include <QCoreApplication>

#include <algorithm>
#include <numeric>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using evaluation::plainText;
using evaluation::withUnit;

namespace {

struct WorksheetheadWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Worksheet)
};

constexpr double code_mm = 24;
constexpr TextStyle entryCaption{7, false, Qt::AlignLeft | Qt::AlignBottom};
constexpr double afterCaption_mm = 1.2;
constexpr double entryIndent_mm = 0.5;

QString codeOf(const WorksheetContent &content)
{
    return content.runCode.isEmpty() ? run::runCode(content.run, content.method.version) : content.runCode;
}

QString opticsText(const WorksheetContent &content)
{
    const int wavelength_nm = content.run.wavelength_nm.value_or(content.method.wavelength_nm);
    const double pathLength_mm = content.run.pathLength_mm.value_or(content.method.pathLength_mm);
    return WorksheetheadWords::tr("version %1, %2, cuvette of %3")
        .arg(QString::number(content.method.version), withUnit(QString::number(wavelength_nm), u"nm"_s),
             withUnit(localNumbers(plainText(pathLength_mm)), u"mm"_s));
}

QString rhythmText(const WorksheetContent &content)
{
    const QString tubes =
        WorksheetheadWords::tr("%n tubes", nullptr, static_cast<int>(content.run.tubes.size()));
    if (!content.startInterval_s)
        return tubes;
    const int seconds = *content.startInterval_s;
    const QString interval =
        seconds % 60 == 0 ? withUnit(QString::number(seconds / 60), u"min"_s)
        : seconds < 120
            ? withUnit(QString::number(seconds), u"s"_s)
            : WorksheetheadWords::tr("%1 %2").arg(withUnit(QString::number(seconds / 60), u"min"_s),
                                                  withUnit(QString::number(seconds % 60), u"s"_s));
    return WorksheetheadWords::tr("%1: start the next one every %2").arg(tubes, interval);
}

struct HeadField {
    QString caption;
    QString known;
    /// Room to write in where nothing is known.
    double written_mm;
    /// Of the room that is left over.
    double part;
};

/// Each as wide as what stands in it; where that is too much, names give way, which may go on on a second line.
void paintFields(Canvas &canvas, const WorksheetContent &content, const QRectF &area)
{
    const auto started = content.run.startedAt;
    const HeadField fields[] = {
        {WorksheetheadWords::tr("date"), started ? assay::shownDay(started->date()) : QString(), 18, 0.1},
        {WorksheetheadWords::tr("started at"), started ? started->toString(u"HH:mm"_s) : QString(), 11, 0.1},
        {WorksheetheadWords::tr("by"), content.person, 20, 0.4},
        {WorksheetheadWords::tr("photometer"), {}, 16, 0.3},
        {WorksheetheadWords::tr("°C"), {}, 8, 0.1},
    };
    constexpr std::size_t names[] = {2, 3};
    constexpr double leastOfName_mm = 10;
    std::vector<double> widths_mm;
    for (const HeadField &field : fields) {
        const double known_mm = field.known.isEmpty() ? 0 : canvas.width_mm(printable(field.known), entryStyle);
        widths_mm.push_back(entryWidth_mm(canvas, field.caption, std::max(field.written_mm, known_mm)));
    }
    double spare_mm = area.width() - std::accumulate(widths_mm.begin(), widths_mm.end(), 0.0);
    for (const std::size_t name : names) {
        const double least_mm = entryWidth_mm(canvas, fields[name].caption, leastOfName_mm);
        const double given_mm = std::clamp(-spare_mm, 0.0, widths_mm[name] - least_mm);
        widths_mm[name] -= given_mm;
        spare_mm += given_mm;
    }
    double x = area.left();
    for (std::size_t i = 0; i < widths_mm.size(); ++i) {
        const double width_mm = widths_mm[i] + spare_mm * fields[i].part;
        paintEntry(canvas, {x, area.top(), width_mm, area.height()}, fields[i].caption, fields[i].known);
        x += width_mm;
    }
}

/// Two texts on one line, each whole in its type or a smaller one.
void paintPair(Canvas &canvas, const QRectF &area, const QString &first, TextStyle firstStyle,
               const QString &second, const TextStyle &secondStyle)
{
    constexpr double between_mm = 2;
    constexpr double partOfFirst = 0.6;
    const double first_mm =
        sharedWidth(area.width() - between_mm, canvas.width_mm(printable(first), firstStyle) + 0.5,
                    canvas.width_mm(printable(second), secondStyle) + 0.5, partOfFirst);
    canvas.shrunkText({area.left(), area.top(), first_mm, area.height()}, first, firstStyle,
                      smallestSheetType_pt);
    canvas.shrunkText({area.left() + first_mm + between_mm, area.top(), area.width() - first_mm - between_mm,
                       area.height()},
                      second, secondStyle, smallestSheetType_pt);
}

/// Caption and gap before what is written, and the gap behind it.
double besideEntry_mm(const Canvas &canvas, const QString &caption)
{
    constexpr double behind_mm = 3;
    return canvas.width_mm(caption, entryCaption) + afterCaption_mm + behind_mm;
}

} // namespace

double entryWidth_mm(const Canvas &canvas, const QString &caption, double written_mm)
{
    return besideEntry_mm(canvas, caption) + written_mm + entryIndent_mm + 0.1;
}

double entryRoom_mm(const Canvas &canvas, const QString &caption, double width_mm)
{
    return width_mm - besideEntry_mm(canvas, caption) - entryIndent_mm;
}

void paintEntry(Canvas &canvas, const QRectF &area, const QString &caption, const QString &known)
{
    canvas.text(area, caption, entryCaption);
    const QRectF rest(area.left() + canvas.width_mm(caption, entryCaption) + afterCaption_mm, area.top(),
                      area.width() - besideEntry_mm(canvas, caption), area.height());
    canvas.line(rest.bottomLeft(), rest.bottomRight(), 0.2);
    if (!known.isEmpty())
        canvas.shrunkText(rest.adjusted(entryIndent_mm, 0, 0, -0.3), known, entryStyle, smallestSheetType_pt);
}

void paintSwirl(Canvas &canvas, const QRectF &area)
{
    const TextStyle style{swirlSize_pt, true, Qt::AlignCenter, 1, true};
    canvas.fill(area);
    if (area.height() > area.width())
        canvas.uprightText(area, swirlWord(), style);
    else
        canvas.text(area, swirlWord(), style);
}

void paintNumber(Canvas &canvas, const QPointF &centre, int number)
{
    constexpr double size_mm = 4.2;
    const QRectF disc(centre.x() - size_mm / 2, centre.y() - size_mm / 2, size_mm, size_mm);
    canvas.fillDisc(disc);
    canvas.text(disc, QString::number(number), {7.5, true, Qt::AlignCenter, 1, true});
}

void paintHead(Canvas &canvas, const WorksheetContent &content, const SheetTable &table)
{
    const double text_mm = table.width_mm - code_mm - 3;
    const double left = table.left_mm;
    canvas.shrunkText({left, sheetTop_mm, text_mm, 7}, content.run.title, {15, true}, 9);
    paintPair(canvas, {left, sheetTop_mm + 7.2, text_mm, 4.9}, content.method.name, {9.5, true},
              opticsText(content), {8.5});
    paintPair(canvas, {left, sheetTop_mm + 12.2, text_mm, 4.9}, rhythmText(content),
              {8.5, content.startInterval_s.has_value()}, content.laboratory,
              {8.5, false, Qt::AlignRight | Qt::AlignVCenter});
    paintFields(canvas, content, {left, sheetTop_mm + 18, text_mm, 6});

    const QString code = codeOf(content);
    const QRectF square(left + table.width_mm - code_mm, sheetTop_mm - 1.5, code_mm, code_mm);
    canvas.qrCode(square, qrCodeOf(run::scannedText(code)));
    canvas.text({square.left(), square.bottom() - 0.5, code_mm, 3.2}, run::groupedCode(code),
                {7, true, Qt::AlignCenter});
}

void paintFoot(Canvas &canvas, const WorksheetContent &content, const SheetTable &table, int page, int pages)
{
    const QRectF foot(table.left_mm, table.sheetHeight_mm - sheetBottom_mm + 1.5, table.width_mm, 3.5);
    canvas.text(foot, WorksheetheadWords::tr("Plateau, run %1").arg(run::groupedCode(codeOf(content))), {7});
    canvas.text(foot, WorksheetheadWords::tr("page %1 of %2").arg(page).arg(pages),
                {7, true, Qt::AlignRight | Qt::AlignVCenter});
}

} // namespace plateau::ui
