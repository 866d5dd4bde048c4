// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/worksheethead.h"

#include "core/assay/localday.h"
#include "core/evaluation/format.h"
#include "core/run/runcode.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using evaluation::plainText;
using evaluation::withUnit;

namespace {

struct WorksheetheadWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Worksheet)
};

constexpr double code_mm = 24;
constexpr double addition_mm = 5;

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
             withUnit(plainText(pathLength_mm), u"mm"_s));
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

/// A caption, then what is known, on a line to write on.
void paintField(Canvas &canvas, const QRectF &area, const QString &caption, const QString &known)
{
    const TextStyle small{7, false, Qt::AlignLeft | Qt::AlignBottom};
    const double caption_mm = canvas.width_mm(caption, small) + 1.2;
    canvas.text(area, caption, small);
    const QRectF rest(area.left() + caption_mm, area.top(), area.width() - caption_mm - 3, area.height());
    canvas.line(rest.bottomLeft(), rest.bottomRight(), 0.2);
    if (!known.isEmpty())
        canvas.text(rest.adjusted(0.5, 0, 0, -0.3), known, {8, true, Qt::AlignLeft | Qt::AlignBottom});
}

void paintFields(Canvas &canvas, const WorksheetContent &content, const QRectF &area)
{
    const auto started = content.run.startedAt;
    const struct {
        QString caption;
        QString known;
        double part;
    } fields[] = {
        {WorksheetheadWords::tr("date"), started ? assay::shownDay(started->date()) : QString(), 0.2},
        {WorksheetheadWords::tr("started at"), started ? started->toString(u"HH:mm"_s) : QString(), 0.19},
        {WorksheetheadWords::tr("by"), content.person, 0.25},
        {WorksheetheadWords::tr("photometer"), {}, 0.22},
        {WorksheetheadWords::tr("°C"), {}, 0.14},
    };
    double x = area.left();
    for (const auto &field : fields) {
        paintField(canvas, {x, area.top(), area.width() * field.part, area.height()}, field.caption,
                   field.known);
        x += area.width() * field.part;
    }
}

const run::LotUse *lotOf(const WorksheetContent &content, const planning::Round &round)
{
    const auto &lots = content.run.lots;
    const auto found = std::ranges::find_if(lots, [&](const run::LotUse &use) {
        return use.component == round.component && use.lot == round.lot;
    });
    return found == lots.end() ? nullptr : &*found;
}

void paintLot(Canvas &canvas, const QRectF &area, const WorksheetContent &content,
              const planning::Round &round)
{
    const run::LotUse *lot = lotOf(content, round);
    const QRectF name(area.left(), area.top(), area.width() * 0.52, area.height());
    paintField(canvas, name.adjusted(0, 0, 0, -0.8), WorksheetheadWords::tr("lot"), round.lot);
    if (lot && lot->expires)
        canvas.shrunkText({name.right(), area.top(), area.width() * 0.48, area.height()},
                          WorksheetheadWords::tr("until %1", "the last good day of a lot")
                              .arg(assay::shownDay(*lot->expires)),
                          {7.5}, 6);
}

} // namespace

void paintSwirl(Canvas &canvas, const QRectF &area)
{
    canvas.fill(area);
    canvas.text(area, WorksheetheadWords::tr("swirl"), {6.5, true, Qt::AlignCenter, 1, true});
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
    canvas.text({left, sheetTop_mm, text_mm, 7}, content.run.title, {15, true});
    const TextStyle method{9.5, true};
    const QString name = printable(content.method.name);
    const double name_mm = std::min(canvas.width_mm(name, method) + 0.5, text_mm - 62);
    canvas.text({left, sheetTop_mm + 7.2, name_mm, 4.8}, name, method);
    canvas.text({left + name_mm + 2, sheetTop_mm + 7.2, text_mm - name_mm - 2, 4.8}, opticsText(content),
                {8.5});
    canvas.text({left, sheetTop_mm + 12.2, text_mm * 0.62, 4.8}, rhythmText(content),
                {8.5, content.startInterval_s.has_value()});
    if (!content.laboratory.isEmpty())
        canvas.text({left + text_mm * 0.62, sheetTop_mm + 12.2, text_mm * 0.38, 4.8}, content.laboratory,
                    {8.5, false, Qt::AlignRight | Qt::AlignVCenter});
    paintFields(canvas, content, {left, sheetTop_mm + 18, text_mm, 6});

    const QString code = codeOf(content);
    const QRectF square(left + table.width_mm - code_mm, sheetTop_mm - 1.5, code_mm, code_mm);
    canvas.qrCode(square, qrCodeOf(run::scannedText(code)));
    canvas.text({square.left(), square.bottom() - 0.5, code_mm, 3.2}, run::groupedCode(code),
                {7, true, Qt::AlignCenter});
}

double additionsHeight_mm(const WorksheetContent &content)
{
    return static_cast<double>(content.rounds.size()) * addition_mm + 2;
}

void paintAdditions(Canvas &canvas, const WorksheetContent &content, const SheetTable &table, double top_mm)
{
    const double name_mm = table.width_mm * 0.38;
    const double volume_mm = 17;
    const double pipette_mm = table.width_mm * 0.22;
    double y = top_mm;
    for (std::size_t i = 0; i < content.rounds.size(); ++i, y += addition_mm) {
        const planning::Round &round = content.rounds[i];
        double x = table.left_mm;
        paintNumber(canvas, {x + 2.6, y + addition_mm / 2}, static_cast<int>(i) + 1);
        x += 6;
        const double swirl_mm = round.suspension ? 10 : 0;
        canvas.shrunkText({x, y, name_mm - 6 - swirl_mm, addition_mm}, round.name, {8.5, true}, 6);
        if (round.suspension)
            paintSwirl(canvas, {x + name_mm - 6 - swirl_mm + 0.5, y + 0.8, 9, addition_mm - 1.6});
        x += name_mm - 6;
        canvas.text({x, y, volume_mm, addition_mm}, withUnit(doseText(round, round.usualVolume_mL), u"mL"_s),
                    {8.5, true, Qt::AlignRight | Qt::AlignVCenter});
        x += volume_mm + 3;
        canvas.shrunkText({x, y, pipette_mm, addition_mm}, round.pipette, {7.5}, 6);
        x += pipette_mm + 2;
        if (round.component != content.method.sample)
            paintLot(canvas, {x, y, table.left_mm + table.width_mm - x, addition_mm}, content, round);
    }
}

void paintFoot(Canvas &canvas, const WorksheetContent &content, const SheetTable &table, int page, int pages)
{
    const QRectF foot(table.left_mm, table.sheetHeight_mm - sheetBottom_mm + 1.5, table.width_mm, 3.5);
    canvas.text(foot, WorksheetheadWords::tr("Plateau, run %1").arg(run::groupedCode(codeOf(content))), {7});
    canvas.text(foot, WorksheetheadWords::tr("page %1 of %2").arg(page).arg(pages),
                {7, true, Qt::AlignRight | Qt::AlignVCenter});
}

} // namespace plateau::ui
