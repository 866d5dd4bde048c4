// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/recordparts.h"

#include "core/assay/insentence.h"
#include "core/assay/listed.h"
#include "core/assay/localday.h"
#include "core/evaluation/format.h"
#include "core/evaluation/standardage.h"
#include "ui/print/reporttext.h"
#include "ui/print/worksheetcontent.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using evaluation::plainText;
using evaluation::significantText;
using evaluation::withUnit;

namespace {

struct RecordpartsWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::RunRecord)
};

using Fit = TableColumn::Fit;
QString joined(const std::vector<QString> &names)
{
    return QStringList(names.begin(), names.end()).join(u", "_s);
}

QString stepText(const RecordPart &part, const assay::Step &step)
{
    const assay::Method &method = part.method;
    if (const auto *add = std::get_if<assay::AddStep>(&step)) {
        const assay::Component *component = assay::findComponent(method, add->component);
        return RecordpartsWords::tr("add %1").arg(component ? assay::inSentence(component->name) : add->component);
    }
    if (const auto *wait = std::get_if<assay::WaitStep>(&step))
        return RecordpartsWords::tr("wait %1").arg(part.local(waitOnPaper(*wait)));
    if (const auto *read = std::get_if<assay::ReadStep>(&step))
        return RecordpartsWords::tr("read %1").arg(read->reading);
    return RecordpartsWords::tr("mix");
}

/// How a series becomes one reading; empty where the method takes no line through it.
QString extrapolationText(const assay::Method &method)
{
    if (!method.extrapolate)
        return {};
    return RecordpartsWords::tr(
               "A series of %1 counts as the straight line through its last %2 readings gives it at "
               "0 min, the addition of the starter.")
        .arg(method.extrapolate->reading)
        .arg(method.extrapolate->lastReadings);
}

QString signalText(const assay::Measurand &measurand, const assay::Method &method)
{
    const std::vector<QString> names = assay::readingsOf(measurand.signal);
    const bool rising = method.direction == assay::Direction::Rising;
    if (names.size() == 2)
        return rising ? u"%1 - %2"_s.arg(names[1], names[0]) : u"%1 - %2"_s.arg(names[0], names[1]);
    return RecordpartsWords::tr("coupled indicator of %1").arg(joined(names));
}

void writeComponents(PageFlow &flow, const RecordPart &part)
{
    PrintedTable table;
    table.columns = {{RecordpartsWords::tr("component"), Fit::Wrap},
                     {RecordpartsWords::tr("volume, mL"), Fit::Natural, true},
                     {RecordpartsWords::tr("may be, mL"), Fit::Natural, true},
                     {RecordpartsWords::tr("part"), Fit::Wrap}};
    for (const assay::Component &component : part.method.components) {
        QStringList roles;
        if (component.id == part.method.sample)
            roles << RecordpartsWords::tr("sample");
        if (component.id == part.method.diluent)
            roles << RecordpartsWords::tr("diluent, makes up for the sample");
        if (component.id == part.method.starter)
            roles << RecordpartsWords::tr("starter");
        if (component.suspension)
            roles << RecordpartsWords::tr("suspension");
        table.rows.push_back({component.name, part.local(plainText(component.volume_mL)),
                              component.range_mL ? part.local(RecordpartsWords::tr("%1 to %2")
                                                                  .arg(plainText(component.range_mL->lower),
                                                                       plainText(component.range_mL->upper)))
                                                 : none,
                              assay::listed(roles)});
    }
    flow.table(table);
}

void writeMeasurands(PageFlow &flow, const RecordPart &part)
{
    PrintedTable table;
    table.columns = {{RecordpartsWords::tr("measured"), Fit::Wrap},
                     {RecordpartsWords::tr("signal"), Fit::Wrap},
                     {RecordpartsWords::tr("M, g/mol"), Fit::Natural, true},
                     {RecordpartsWords::tr("n"), Fit::Natural, true},
                     {RecordpartsWords::tr("factor, g/L for one unit of signal"), Fit::Natural, true}};
    for (const assay::Measurand &measurand : part.method.measurands) {
        const auto factor =
            std::ranges::find(part.evaluation.factors, measurand.id, &evaluation::Factor::measurand);
        table.rows.push_back({measurand.name, signalText(measurand, part.method),
                              part.local(plainText(measurand.molarMass_g_per_mol)),
                              part.local(plainText(measurand.chromophorePerMolecule)),
                              factor == part.evaluation.factors.end()
                                  ? none
                                  : part.local(significantText(factor->factor_g_per_L, 5))});
    }
    flow.table(table);
}

QString calibrationText(run::Calibration calibration)
{
    switch (calibration) {
    case run::Calibration::Standard:
        return RecordpartsWords::tr("by the run's own standard");
    case run::Calibration::Line:
        return RecordpartsWords::tr("by a line through the run's standards");
    case run::Calibration::Absorptivity:
        break;
    }
    return RecordpartsWords::tr("by the molar absorptivity");
}

/// "5 → 50 mL ± 0.3 % (k = 1)": a step's own uncertainty travels with it.
QString stepsText(const std::vector<run::DilutionStep> &steps)
{
    QStringList parts;
    for (const run::DilutionStep &step : steps) {
        const QString made = dilutionOnPaper({step});
        parts << (step.uncertainty_percent
                      ? RecordpartsWords::tr("%1 (u = %2)")
                            .arg(made, withUnit(evaluation::roundedText(*step.uncertainty_percent, 4), u"%"_s))
                      : made);
    }
    return parts.join(u", "_s);
}

void writeSamples(PageFlow &flow, const RecordPart &part)
{
    PrintedTable table;
    table.columns = {{RecordpartsWords::tr("sample"), Fit::Wrap},
                     {RecordpartsWords::tr("weighed, g"), Fit::Natural, true},
                     {RecordpartsWords::tr("extract, mL"), Fit::Natural, true},
                     {RecordpartsWords::tr("dilution"), Fit::Wrap},
                     {RecordpartsWords::tr("factor F"), Fit::Natural, true}};
    for (const run::Sample &sample : part.run.samples)
        table.rows.push_back({sample.id, sample.mass_g ? part.local(plainText(*sample.mass_g)) : none,
                              sample.extract_mL ? part.local(plainText(*sample.extract_mL)) : none,
                              sample.dilution.empty() ? RecordpartsWords::tr("undiluted")
                                                      : part.local(stepsText(sample.dilution)),
                              part.local(plainText(run::dilutionFactor(sample.dilution)))});
    flow.subheading(RecordpartsWords::tr("Samples"));
    flow.table(table);
}

void writeStandards(PageFlow &flow, const RecordPart &part)
{
    if (part.run.standards.empty())
        return;
    PrintedTable table;
    table.columns = {{RecordpartsWords::tr("standard"), Fit::Wrap},
                     {RecordpartsWords::tr("holds"), Fit::Wrap},
                     {RecordpartsWords::tr("made, g/L"), Fit::Natural, true},
                     {RecordpartsWords::tr("prepared"), Fit::Wrap},
                     {RecordpartsWords::tr("used"), Fit::Wrap},
                     {RecordpartsWords::tr("lost in an hour, %"), Fit::Natural, true},
                     {RecordpartsWords::tr("at use, g/L"), Fit::Natural, true}};
    for (const run::Standard &standard : part.run.standards)
        table.rows.push_back({standard.id,
                              standard.measurand.isEmpty() ? RecordpartsWords::tr("all measured")
                                                           : quantityName(part.method, standard.measurand),
                              part.local(plainText(standard.concentration_g_per_L)),
                              standard.preparedAt ? momentOnReport(*standard.preparedAt) : none,
                              standard.usedAt ? momentOnReport(*standard.usedAt) : none,
                              part.local(significantText(standard.lossPerHour * 100, 3)),
                              part.local(significantText(run::concentrationAtUse_g_per_L(standard), 5))});
    flow.subheading(RecordpartsWords::tr("Standards"));
    flow.table(table);
}

void writeLots(PageFlow &flow, const RecordPart &part)
{
    flow.subheading(RecordpartsWords::tr("Lots"));
    if (part.run.lots.empty()) {
        flow.paragraph(RecordpartsWords::tr("The run names no lots."));
        return;
    }
    PrintedTable table;
    table.columns = {{RecordpartsWords::tr("component"), Fit::Wrap},
                     {RecordpartsWords::tr("lot"), Fit::Wrap},
                     {RecordpartsWords::tr("use-by date")}};
    for (const run::LotUse &lot : part.run.lots) {
        const assay::Component *component = assay::findComponent(part.method, lot.component);
        table.rows.push_back({component ? component->name : lot.component, lot.lot,
                              lot.expires ? assay::shownDay(*lot.expires) : none});
    }
    flow.table(table);
}

} // namespace

void writeMethod(PageFlow &flow, const RecordPart &part)
{
    const assay::Method &method = part.method;
    flow.heading(RecordpartsWords::tr("Method"));
    flow.paragraph(methodTitle(method), 9);
    if (const QString sentence = templateSentence(method); !sentence.isEmpty())
        flow.paragraph(sentence);
    flow.paragraph(RecordpartsWords::tr("Source: %1").arg(method.source));
    if (!method.principle.isEmpty())
        flow.paragraph(method.principle);
    for (const QString &reaction : method.reactions)
        flow.paragraph(reaction, 8, 3);
    writeComponents(flow, part);
    QStringList steps;
    for (const assay::Step &step : method.steps)
        steps << stepText(part, step);
    flow.paragraph(RecordpartsWords::tr("Steps: %1.").arg(assay::listed(steps)));
    if (const QString sentence = extrapolationText(method); !sentence.isEmpty())
        flow.paragraph(sentence);
    writeMeasurands(flow, part);
}

void writeConditions(PageFlow &flow, const RecordPart &part)
{
    const assay::Method &method = part.method;
    const int wavelength_nm = part.run.wavelength_nm.value_or(method.wavelength_nm);
    const double path_mm = part.run.pathLength_mm.value_or(method.pathLength_mm);
    const auto absorptivity = assay::absorptivity(method, wavelength_nm);
    const bool corrects = method.volumeCorrection == assay::VolumeCorrection::ToFinalVolume;
    const assay::Window &window = method.window;
    flow.heading(RecordpartsWords::tr("Conditions"));
    flow.fields(
        {{RecordpartsWords::tr("wavelength"), withUnit(QString::number(wavelength_nm), u"nm"_s)},
         {RecordpartsWords::tr("path length d"), part.local(withUnit(plainText(path_mm / 10), u"cm"_s))},
         {RecordpartsWords::tr("molar absorptivity e"),
          absorptivity ? part.local(withUnit(plainText(*absorptivity), u"L/(mol cm)"_s)) : none},
         {RecordpartsWords::tr("calibration"), calibrationText(part.run.calibration)},
         {RecordpartsWords::tr("direction"), method.direction == assay::Direction::Rising
                                                 ? RecordpartsWords::tr("rising")
                                                 : RecordpartsWords::tr("falling")},
         {RecordpartsWords::tr("readings"), corrects
                                                ? RecordpartsWords::tr("brought to the final volume")
                                                : RecordpartsWords::tr("as read, no correction for volume")},
         {RecordpartsWords::tr("net signal to be reported"),
          part.local(RecordpartsWords::tr("%1 to %2")
                         .arg(plainText(window.minSignal), plainText(window.maxSignal)))},
         {RecordpartsWords::tr("largest absorbance"),
          window.maxAbsorbance ? part.local(plainText(*window.maxAbsorbance)) : none},
         {RecordpartsWords::tr("absorbance that has to remain"),
          window.reserveAbsorbance ? part.local(plainText(*window.reserveAbsorbance)) : none}},
        3);
    writeUncertainties(flow, part);
}

void writeMaterials(PageFlow &flow, const RecordPart &part)
{
    flow.heading(RecordpartsWords::tr("Samples, standards, lots"));
    writeSamples(flow, part);
    writeStandards(flow, part);
    writeLots(flow, part);
}

} // namespace plateau::ui
