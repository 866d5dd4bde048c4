// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/format.h"
#include "core/evaluation/working.h"
#include "core/evaluation/workingparts.h"
#include "core/run/controls.h"
#include "ui/print/papertext.h"
#include "ui/print/recordparts.h"
#include "ui/print/reporttext.h"
#include "ui/print/worksheetcontent.h"

#include <QCoreApplication>

#include <algorithm>
#include <iterator>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using evaluation::significantText;
using evaluation::withUnit;
using evaluation::WorkingSection;

namespace {

struct RecordworkingWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::RunRecord)
};

using Fit = TableColumn::Fit;
/// One decimal more than a photometer shows, as in the calculation.
QString signalText(double signal)
{
    return QString::number(signal, 'f', 4);
}

QString optional(const RecordPart &part, std::optional<double> value, QString (*text)(double))
{
    return value ? part.local(text(*value)) : none;
}

QString working(double value)
{
    return significantText(value, 5);
}

QString recovery(double percent)
{
    return QString::number(percent, 'f', 1);
}

void writeTubeValues(PageFlow &flow, const RecordPart &part, const assay::Measurand &measurand)
{
    PrintedTable table;
    table.columns = {{RecordworkingWords::tr("tube"), Fit::Natural, true},
                     {RecordworkingWords::tr("contents"), Fit::Wrap},
                     {RecordworkingWords::tr("V, mL"), Fit::Natural, true},
                     {RecordworkingWords::tr("signal"), Fit::Natural, true},
                     {RecordworkingWords::tr("net signal dA"), Fit::Natural, true},
                     {RecordworkingWords::tr("c, g/L"), Fit::Natural, true},
                     {withPrintedSigns(RecordworkingWords::tr("c x F, g/L")), Fit::Natural, true}};
    for (const evaluation::TubeValue &value : part.evaluation.tubes) {
        if (value.measurand != measurand.id)
            continue;
        const run::Tube &tube = part.run.tubes[static_cast<std::size_t>(value.index)];
        const QString name = tube.sample.isEmpty() ? tube.standard : tube.sample;
        table.rows.push_back(
            {QString::number(value.index + 1), name.isEmpty() ? roleOnPaper(tube.role) : name,
             part.local(working(value.totalVolume_mL)), optional(part, value.signal, signalText),
             optional(part, value.netSignal, signalText), optional(part, value.pipetted_g_per_L, working),
             optional(part, value.concentration_g_per_L, working)});
    }
    flow.subheading(RecordworkingWords::tr("%1: signals and concentrations").arg(measurand.name));
    flow.table(table);
    for (const evaluation::BlankMean &blank : part.evaluation.blanks) {
        if (blank.measurand == measurand.id && blank.mean)
            flow.paragraph(RecordworkingWords::tr("Mean blank: %1 of %n tubes.", nullptr, blank.n)
                               .arg(part.local(signalText(*blank.mean))));
    }
}

void writeRecoveries(PageFlow &flow, const RecordPart &part)
{
    PrintedTable table;
    table.columns = {{RecordworkingWords::tr("recovered"), Fit::Wrap},
                     {RecordworkingWords::tr("quantity"), Fit::Wrap},
                     {RecordworkingWords::tr("expected, g/L"), Fit::Natural, true},
                     {RecordworkingWords::tr("found, g/L"), Fit::Natural, true},
                     {RecordworkingWords::tr("recovery, %"), Fit::Natural, true}};
    for (const evaluation::StandardRecovery &standard : part.evaluation.standards)
        table.rows.push_back({(run::isControl(part.run, standard.standard) ? RecordworkingWords::tr("control %1")
                                                                            : RecordworkingWords::tr("standard %1"))
                                  .arg(standard.standard),
                              quantityName(part.method, standard.measurand),
                              part.local(working(standard.expected_g_per_L)),
                              optional(part, standard.found_g_per_L, working),
                              optional(part, standard.recovery_percent, recovery)});
    for (const evaluation::SpikeRecovery &spike : part.evaluation.spikes)
        table.rows.push_back({RecordworkingWords::tr("spike of %1").arg(spike.sample),
                              quantityName(part.method, spike.measurand), none, none,
                              optional(part, spike.recovery_percent, recovery)});
    if (table.rows.empty())
        return;
    flow.subheading(RecordworkingWords::tr("Recoveries"));
    flow.table(table);
}

void writeSeries(PageFlow &flow, const RecordPart &part)
{
    if (part.evaluation.series.empty())
        return;
    PrintedTable table;
    table.columns = {{RecordworkingWords::tr("tube"), Fit::Natural, true},
                     {RecordworkingWords::tr("reading")},
                     {RecordworkingWords::tr("points"), Fit::Natural, true},
                     {RecordworkingWords::tr("at 0 min"), Fit::Natural, true},
                     {RecordworkingWords::tr("slope per min"), Fit::Natural, true},
                     {RecordworkingWords::tr("its standard error"), Fit::Natural, true},
                     {RecordworkingWords::tr("reaction"), Fit::Wrap}};
    for (const evaluation::SeriesFit &fit : part.evaluation.series)
        table.rows.push_back(
            {QString::number(fit.tube + 1), fit.reading, QString::number(fit.points),
             part.local(signalText(fit.atStart)), part.local(significantText(fit.slope_per_min, 3)),
             fit.slopeStandardError_per_min
                 ? part.local(evaluation::spreadText(*fit.slopeStandardError_per_min, fit.slope_per_min, 3))
                 : none,
             fit.ended ? RecordworkingWords::tr("ended") : RecordworkingWords::tr("not ended")});
    flow.subheading(RecordworkingWords::tr("Lines through series of readings"));
    flow.table(table);
}

void writeLines(PageFlow &flow, const RecordPart &part)
{
    if (part.evaluation.lines.empty())
        return;
    PrintedTable table;
    table.columns = {{RecordworkingWords::tr("calibration line"), Fit::Wrap},
                     {RecordworkingWords::tr("points"), Fit::Natural, true},
                     {RecordworkingWords::tr("a"), Fit::Natural, true},
                     {RecordworkingWords::tr("b, per mg"), Fit::Natural, true},
                     {RecordworkingWords::tr("residual"), Fit::Natural, true}};
    for (const evaluation::CalibrationLine &line : part.evaluation.lines)
        table.rows.push_back(
            {quantityName(part.method, line.measurand), QString::number(line.points),
             part.local(signalText(line.intercept)), part.local(working(line.slope_per_mg)),
             optional(part, line.residual, [](double residual) { return significantText(residual, 3); })});
    flow.subheading(RecordworkingWords::tr("Calibration"));
    flow.table(table);
}

/// What is computed, the formula, the numbers in it, the value; in every section at the same places.
PrintedTable workingTable()
{
    PrintedTable table;
    table.size_pt = 7.5;
    table.mostLines = 40;
    table.columns = {{{}, Fit::Wrap, false, false, 0.27},
                     {{}, Fit::Wrap, false, false, 0.22},
                     {{}, Fit::Wrap, false, false, 0.29},
                     {{}, Fit::Wrap, true, true, 0.155}};
    return table;
}

/// Formulas are kept in ASCII; on paper they have the signs that the window shows.
QStringList workingRow(const RecordPart &part, const evaluation::WorkingLine &line)
{
    return {line.what, withPrintedSigns(line.formula), withPrintedSigns(part.local(line.numbers)),
            withPrintedSigns(part.local(line.value))};
}

void writeSection(PageFlow &flow, const RecordPart &part, const WorkingSection &section)
{
    PrintedTable table = workingTable();
    for (const evaluation::WorkingLine &line : section.lines)
        table.rows.push_back(workingRow(part, line));
    flow.subheading(section.title);
    flow.table(table);
}

void writeSymbols(PageFlow &flow, const WorkingSection &symbols)
{
    PrintedTable table;
    table.size_pt = 7.5;
    table.columns = {{RecordworkingWords::tr("symbol")},
                     {RecordworkingWords::tr("what it is"), Fit::Wrap},
                     {RecordworkingWords::tr("unit")}};
    for (const evaluation::WorkingLine &line : symbols.lines)
        table.rows.push_back({line.what, withPrintedSigns(line.formula), line.value});
    flow.table(table);
}

/// The budget as its table, and the one line that puts it together.
void writeBudget(PageFlow &flow, const RecordPart &part, const evaluation::Result &result,
                 const WorkingSection &section)
{
    PrintedTable table;
    table.size_pt = 7.5;
    table.columns = {
        {RecordworkingWords::tr("source of uncertainty"), Fit::Wrap},
        {RecordworkingWords::tr("standard uncertainty, %1").arg(result.unit), Fit::Natural, true},
        {RecordworkingWords::tr("share of the variance, %"), Fit::Natural, true},
        {{}, Fit::Bar}};
    for (const evaluation::BudgetTerm &term : result.budget)
        table.rows.push_back({part.local(term.term), part.local(significantText(term.standardUncertainty, 3)),
                              part.local(QString::number(term.share * 100, 'f', 1)),
                              QString::number(term.share)});
    flow.subheading(section.title);
    flow.table(table);
    // The coverage factor, and what comes of both.
    PrintedTable last = workingTable();
    for (std::size_t i = result.budget.size(); i < section.lines.size(); ++i) {
        const evaluation::WorkingLine &line = section.lines[i];
        last.rows.push_back(workingRow(part, line));
    }
    flow.table(last);
}

struct Written {
    evaluation::Result result;
    std::vector<WorkingSection> sections;
};

/// The symbols of all calculations, each once; nothing is left of them in the calculations themselves.
WorkingSection takeSymbols(const RecordPart &part, std::vector<Written> &all)
{
    WorkingSection symbols;
    for (Written &written : all) {
        const run::Sample *sample = run::findSample(part.run, written.result.sample);
        if (!sample || !written.result.value)
            continue;
        const WorkingSection own = evaluation::symbolSection(part.run.calibration, *sample, written.result);
        if (std::erase(written.sections, own) == 0)
            continue;
        symbols.title = own.title;
        for (const evaluation::WorkingLine &line : own.lines) {
            if (std::ranges::find(symbols.lines, line) == symbols.lines.end())
                symbols.lines.push_back(line);
        }
    }
    return symbols;
}

/// What stands in every calculation of a measurand: blanks, calibration.
std::vector<WorkingSection> sharedSections(const std::vector<Written> &all)
{
    std::vector<WorkingSection> shared;
    if (all.size() < 2)
        return shared;
    for (const WorkingSection &section : all.front().sections) {
        const bool everywhere = std::ranges::all_of(all, [&](const Written &written) {
            return std::ranges::find(written.sections, section) != written.sections.end();
        });
        if (everywhere)
            shared.push_back(section);
    }
    return shared;
}

void writeOne(PageFlow &flow, const RecordPart &part, const Written &written,
              const std::vector<WorkingSection> &shared)
{
    const evaluation::Result &result = written.result;
    const ResultWords words = wordsOf(part.content, result);
    const QString name = quantityName(part.method, result.measurand);
    flow.heading(RecordworkingWords::tr("Calculation: %1, %2").arg(result.sample, name));
    QString reported = words.value;
    if (words.uncertainty != none)
        reported = RecordworkingWords::tr("%1 ± %2").arg(words.value, words.uncertainty);
    flow.paragraph(result.value ? RecordworkingWords::tr("Result: %1.").arg(withUnit(reported, words.unit))
                                : RecordworkingWords::tr("There is no value; the checks say why."),
                   9);
    if (const double factor = reportingFactor(part.content, result); factor != 1 && result.value)
        flow.paragraph(part.local(RecordworkingWords::tr("That is the result below, in %1, times %2.")
                                      .arg(result.unit, significantText(factor, 5))));
    if (written.sections.empty())
        return;
    const WorkingSection uncertainty =
        result.expandedUncertainty ? evaluation::uncertaintySection(result) : WorkingSection();
    for (const WorkingSection &section : written.sections) {
        if (std::ranges::find(shared, section) != shared.end())
            continue;
        if (result.expandedUncertainty && section == uncertainty)
            writeBudget(flow, part, result, section);
        else
            writeSection(flow, part, section);
    }
}

} // namespace

void writeSignals(PageFlow &flow, const RecordPart &part)
{
    flow.heading(RecordworkingWords::tr("Signals"));
    for (const assay::Measurand &measurand : part.method.measurands)
        writeTubeValues(flow, part, measurand);
    writeRecoveries(flow, part);
    writeSeries(flow, part);
    writeLines(flow, part);
}

void writeCalculations(PageFlow &flow, const RecordPart &part, const std::vector<evaluation::Result> &wanted)
{
    QStringList quantities;
    std::vector<Written> all;
    for (const evaluation::Result &result : wanted) {
        if (!quantities.contains(result.measurand))
            quantities << result.measurand;
        all.push_back({result, evaluation::working(part.method, part.run, part.evaluation, result.sample,
                                                   result.measurand, part.content.rules)});
    }
    if (const WorkingSection symbols = takeSymbols(part, all); !symbols.lines.empty()) {
        flow.heading(RecordworkingWords::tr("Calculations"));
        writeSymbols(flow, symbols);
    }
    for (const QString &quantity : quantities) {
        std::vector<Written> own;
        std::ranges::copy_if(all, std::back_inserter(own),
                             [&](const Written &written) { return written.result.measurand == quantity; });
        const std::vector<WorkingSection> shared = sharedSections(own);
        if (!shared.empty()) {
            flow.heading(RecordworkingWords::tr("Calculation: for every result of %1")
                             .arg(quantityName(part.method, quantity)));
            for (const WorkingSection &section : shared)
                writeSection(flow, part, section);
        }
        for (const Written &written : own)
            writeOne(flow, part, written, shared);
    }
}

} // namespace plateau::ui
