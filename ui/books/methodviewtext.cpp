// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/methodviewtext.h"

#include "core/assay/insentence.h"
#include "core/exchange/shippedtexts.h"
#include "ui/books/htmlpage.h"
#include "ui/books/measurandnames.h"
#include "ui/shared/matrixtext.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/theme.h"

#include <QCoreApplication>
#include <QLocale>

#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using namespace assay;

namespace {

struct MethodViewTextWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::MethodViewText)
};

/// As the page shows it: many of these stand without a unit, by which a sentence's numbers are known.
QString number(double value)
{
    return shownNumber(QString::number(value, 'g', QLocale::FloatingPointShortest));
}

QString percent(double fraction)
{
    return number(QString::number(fraction * 100, 'g', 15).toDouble());
}

QString interval(const Interval &interval, const QString &unit)
{
    return MethodViewTextWords::tr("%1 to %2 %3")
        .arg(number(interval.lower), number(interval.upper), unit)
        .trimmed();
}

QString nameOfComponent(const Method &method, const QString &id)
{
    const Component *component = findComponent(method, id);
    return component ? component->name : id;
}

QString signalText(const Signal &signal, Direction direction)
{
    if (const auto *difference = std::get_if<DifferenceSignal>(&signal))
        return direction == Direction::Rising ? u"%1 \u2212 %2"_s.arg(difference->to, difference->from)
                                              : u"%1 \u2212 %2"_s.arg(difference->from, difference->to);
    const auto &coupled = std::get<CoupledIndicatorSignal>(signal);
    return u"(%3 \u2212 %1) \u2212 (%2 \u2212 %1)² / (%3 \u2212 %1)"_s.arg(coupled.base, coupled.middle, coupled.final);
}

QString stepText(const Method &method, const Step &step)
{
    struct Writer {
        const Method &method;
        QString operator()(const AddStep &add) const
        {
            const Component *component = findComponent(method, add.component);
            return component ? MethodViewTextWords::tr("add %1 mL %2")
                                   .arg(number(component->volume_mL), assay::inSentence(component->name))
                             : MethodViewTextWords::tr("add %1").arg(add.component);
        }
        QString operator()(const MixStep &) const { return MethodViewTextWords::tr("mix"); }
        QString operator()(const WaitStep &wait) const
        {
            const QString time = interval(wait.wait_min, MethodViewTextWords::tr("min"));
            return wait.temperature_C ? MethodViewTextWords::tr("wait %1 at %2")
                                            .arg(time, interval(*wait.temperature_C, u"°C"_s))
                                      : MethodViewTextWords::tr("wait %1").arg(time);
        }
        QString operator()(const ReadStep &read) const
        {
            return MethodViewTextWords::tr("read %1").arg(read.reading);
        }
    };
    return std::visit(Writer{method}, step);
}

void writeDescription(HtmlPage &page, const Method &method)
{
    if (!method.cautions.empty()) {
        page.heading(MethodViewTextWords::tr("Cautions"));
        std::vector<QString> shown;
        for (const QString &caution : method.cautions)
            shown.push_back(exchange::inWindowLanguage(caution));
        page.list(shown);
    }
    page.heading(MethodViewTextWords::tr("Source"));
    page.paragraph(method.source);
    if (isPartlyFromMemory(method))
        page.paragraph(MethodViewTextWords::tr("What is from memory was set down by whoever wrote the method, for a shipped "
                                               "one by the makers of the program, without a published source."));
    if (!method.principle.isEmpty()) {
        page.heading(MethodViewTextWords::tr("Principle"));
        page.paragraph(method.principle);
    }
    if (!method.reactions.empty()) {
        page.heading(MethodViewTextWords::tr("Reactions"));
        page.list(method.reactions);
    }
}

QString derivedText(const Derived &derived, const Method &method, const MethodOfId &others)
{
    QStringList parts;
    for (const DerivedTerm &term : derived.terms) {
        const Method *by = term.method.isEmpty() ? &method : others(term.method);
        const QString name = by ? measurandName(*by, term.measurand) : term.measurand;
        const QString from = term.method.isEmpty()
                                 ? name
                                 : MethodViewTextWords::tr("%1 by %2").arg(name, by ? by->name : term.method);
        const QString sign = term.factor < 0 ? u"\u2212 "_s : parts.isEmpty() ? QString() : u"+ "_s;
        const double size = std::abs(term.factor);
        parts << (size == 1 ? sign + from : u"%1%2 \u00d7 %3"_s.arg(sign, number(size), from));
    }
    return parts.join(u' ');
}

void writeMeasures(HtmlPage &page, const Method &method, const MethodOfId &others)
{
    page.heading(MethodViewTextWords::tr("What it measures"));
    std::vector<QStringList> rows;
    for (const Measurand &measurand : method.measurands) {
        QStringList facts{MethodViewTextWords::tr("%1 g/mol").arg(number(measurand.molarMass_g_per_mol)),
                          MethodViewTextWords::tr("%1 %2 per molecule")
                              .arg(number(measurand.chromophorePerMolecule), method.chromophore),
                          signalText(measurand.signal, method.direction)};
        if (measurand.typicalRange_g_per_L)
            facts << MethodViewTextWords::tr("usually %1")
                         .arg(interval(*measurand.typicalRange_g_per_L, u"g/L"_s));
        rows.push_back(QStringList{measurand.name} + facts);
    }
    page.table(rows, HtmlPage::First::Name);
    if (method.derived.empty())
        return;
    page.heading(MethodViewTextWords::tr("What comes from other results"));
    rows.clear();
    for (const Derived &derived : method.derived)
        rows.push_back({derived.name, derivedText(derived, method, others)});
    page.table(rows, HtmlPage::First::Name);
}

void writePhotometer(HtmlPage &page, const Method &method)
{
    page.heading(MethodViewTextWords::tr("Photometer"));
    QStringList table;
    for (const auto &[wavelength_nm, value] : method.absorptivity_L_per_mol_cm)
        table << MethodViewTextWords::tr("%1 L/(mol cm) at %2 nm").arg(number(value)).arg(wavelength_nm);
    if (table.isEmpty())
        table << MethodViewTextWords::tr("that of the chromophore");
    page.table(
        {{MethodViewTextWords::tr("Chromophore"),
          method.direction == Direction::Rising
              ? MethodViewTextWords::tr("%1, made by the reaction").arg(method.chromophore)
              : MethodViewTextWords::tr("%1, used up by the reaction").arg(method.chromophore)},
         {MethodViewTextWords::tr("Wavelength"), MethodViewTextWords::tr("%1 nm").arg(method.wavelength_nm)},
         {MethodViewTextWords::tr("Path length"),
          MethodViewTextWords::tr("%1 mm").arg(number(method.pathLength_mm))},
         {MethodViewTextWords::tr("Absorptivity"), table.join(u", "_s)},
         {MethodViewTextWords::tr("Readings"),
          method.volumeCorrection == VolumeCorrection::None
              ? MethodViewTextWords::tr("as read")
              : MethodViewTextWords::tr("brought to the final volume")}});
}

QString partOf(const Component &component, const Method &method)
{
    QStringList parts;
    if (component.id == method.sample)
        parts << MethodViewTextWords::tr("sample");
    if (component.id == method.diluent)
        parts << MethodViewTextWords::tr("diluent");
    if (component.id == method.starter)
        parts << MethodViewTextWords::tr("starter");
    if (component.range_mL)
        parts << MethodViewTextWords::tr("%1 allowed").arg(interval(*component.range_mL, u"mL"_s));
    if (component.suspension)
        parts << MethodViewTextWords::tr("suspension: swirl before use");
    return parts.join(u", "_s);
}

void writeRecipe(HtmlPage &page, const Method &method)
{
    page.heading(MethodViewTextWords::tr("Components"));
    std::vector<QStringList> rows;
    for (const Component &component : method.components)
        rows.push_back({component.name, MethodViewTextWords::tr("%1 mL").arg(number(component.volume_mL)),
                        partOf(component, method)});
    page.table(rows, HtmlPage::First::Name);
    page.heading(MethodViewTextWords::tr("Steps"));
    std::vector<QString> steps;
    for (const Step &step : method.steps)
        steps.push_back(stepText(method, step));
    page.list(steps, true);
    if (method.extrapolate)
        page.paragraph(MethodViewTextWords::tr(
                           "%1 is a series; a line through its last %2 readings is taken back to the moment "
                           "%3 was added.")
                           .arg(method.extrapolate->reading)
                           .arg(method.extrapolate->lastReadings)
                           .arg(nameOfComponent(method, method.starter)));
}

void addLimit(std::vector<QStringList> &rows, const QString &words, const std::optional<double> &value)
{
    if (value)
        rows.push_back({words, number(*value)});
}

void writeLimits(HtmlPage &page, const Method &method)
{
    page.heading(MethodViewTextWords::tr("Measuring window and acceptance"));
    std::vector<QStringList> rows{{MethodViewTextWords::tr("Net signal"),
                                   interval({method.window.minSignal, method.window.maxSignal}, {})}};
    addLimit(rows, MethodViewTextWords::tr("Largest absorbance"), method.window.maxAbsorbance);
    addLimit(rows, MethodViewTextWords::tr("Absorbance that must remain"), method.window.reserveAbsorbance);
    addLimit(rows, MethodViewTextWords::tr("Largest blank signal"), method.acceptance.maxBlankSignal);
    if (const auto &recovery = method.acceptance.standardRecovery_percent)
        rows.push_back({MethodViewTextWords::tr("Recovery of a standard"), interval(*recovery, u"%"_s)});
    if (const auto &recovery = method.acceptance.spikeRecovery_percent)
        rows.push_back({MethodViewTextWords::tr("Recovery of a spike"), interval(*recovery, u"%"_s)});
    if (const auto &limit = method.acceptance.repeatability)
        rows.push_back({MethodViewTextWords::tr("Repeatability"),
                        MethodViewTextWords::tr("r = %1 g/L + %2 % of the mean")
                            .arg(number(limit->constant_g_per_L), percent(limit->proportional))});
    if (method.standard && method.standard->concentration_g_per_L)
        rows.push_back(
            {MethodViewTextWords::tr("Usual standard"),
             MethodViewTextWords::tr("%1 g/L").arg(number(*method.standard->concentration_g_per_L))});
    if (method.standard && method.standard->lossPerHour)
        rows.push_back(
            {MethodViewTextWords::tr("The standard loses"),
             MethodViewTextWords::tr("%1 % in an hour").arg(percent(*method.standard->lossPerHour))});
    if (method.tubes)
        rows.push_back({MethodViewTextWords::tr("Tubes of a rack"),
                        MethodViewTextWords::tr("blanks: %1, of each sample: %2, standards: %3")
                            .arg(method.tubes->blanks)
                            .arg(method.tubes->replicates)
                            .arg(method.tubes->standards)});
    page.table(rows);
}

void writeSamples(HtmlPage &page, const Method &method)
{
    if (!method.samplePreparation.empty()) {
        page.heading(MethodViewTextWords::tr("Preparation of samples"));
        std::vector<QStringList> rows;
        for (const Preparation &preparation : method.samplePreparation)
            rows.push_back({matrixText(preparation.matrix), preparation.text});
        page.table(rows);
    }
    if (!method.interferences.empty()) {
        page.heading(MethodViewTextWords::tr("What interferes"));
        page.list(method.interferences);
    }
}

} // namespace

QString methodHtml(const Theme &theme, const Method &method, const MethodOfId &others)
{
    HtmlPage page(theme);
    writeDescription(page, method);
    writeMeasures(page, method, others);
    writeRecipe(page, method);
    writePhotometer(page, method);
    writeLimits(page, method);
    writeSamples(page, method);
    return page.html();
}

} // namespace plateau::ui
