// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/exampledraft.h"

#include "core/evaluation/evaluation.h"
#include "core/evaluation/format.h"
#include "core/planning/uncertaintysources.h"
#include "core/run/soundness.h"
#include "ui/books/draftreader.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct ExampledraftWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Example)
};

bool hindersTrying(const assay::Problem &problem)
{
    if (problem.severity != assay::Problem::Severity::Error)
        return false;
    static const QStringList texts{u"id"_s,
                                   u"name"_s,
                                   u"source"_s,
                                   u"principle"_s,
                                   u"reactions"_s,
                                   u"interferences"_s,
                                   u"samplePreparation"_s,
                                   u"cautions"_s};
    const QStringList tokens = problem.pointer.split(u'/');
    return !texts.contains(tokens.value(1)) && tokens.last() != "name"_L1;
}

run::Run runOf(const ExampleDraft &example, const assay::Method &method, const DraftReader &reader)
{
    run::Run run;
    run.title = u"example"_s;
    run.method = method.id;
    run::Sample sample;
    sample.id = ExampledraftWords::tr("example");
    if (!example.take_mL.trimmed().isEmpty() || !example.makeUpTo_mL.trimmed().isEmpty())
        sample.dilution.push_back(
            {reader.number(example.take_mL, ExampledraftWords::tr("dilution, take")),
             reader.number(example.makeUpTo_mL, ExampledraftWords::tr("dilution, make up to"))});
    run.samples = {sample};
    run::Tube blank;
    blank.role = run::Role::Blank;
    run::Tube tube;
    tube.sample = sample.id;
    tube.sampleVolume_mL =
        reader.optionalNumber(example.sampleVolume_mL, ExampledraftWords::tr("volume of the sample"));
    for (const CellRow &row : example.readings) {
        const auto read = [&](run::Tube &into, int column, const QString &what) {
            const QString &typed = row.cells[static_cast<std::size_t>(column)];
            if (const auto value = reader.optionalNumber(typed, what.arg(row.key)))
                into.readings[row.key] = *value;
        };
        read(blank, example::Blank, ExampledraftWords::tr("%1 of the blank"));
        read(tube, example::Sample, ExampledraftWords::tr("%1 of the sample"));
    }
    run.tubes = {blank, tube};
    if (example.withUncertainty)
        run.uncertainty = planning::usualUncertainty();
    return run;
}

std::vector<Sentence> asSentences(const assay::Problems &problems)
{
    std::vector<Sentence> sentences;
    for (const assay::Problem &problem : problems)
        sentences.push_back({State::Attention, u"%1: %2"_s.arg(problem.pointer, problem.message)});
    return sentences;
}

QString quantityName(const assay::Method &method, const QString &id)
{
    if (const assay::Measurand *measurand = assay::findMeasurand(method, id))
        return measurand->name;
    const auto derived = std::ranges::find(method.derived, id, &assay::Derived::id);
    return derived == method.derived.end() ? id : derived->name;
}

QString resultText(const assay::Method &method, const evaluation::Result &result)
{
    const QString value = evaluation::valueText(*result.value, result.expandedUncertainty);
    const QString name = quantityName(method, result.measurand);
    if (!result.expandedUncertainty)
        return ExampledraftWords::tr("%1: %2 %3").arg(name, value, result.unit);
    return ExampledraftWords::tr("%1: %2 ± %3 %4 (k = %5)")
        .arg(name, value, evaluation::uncertaintyText(*result.expandedUncertainty), result.unit,
             evaluation::significantText(*result.coverageFactor, 2));
}

void addFailures(const evaluation::Evaluation &found, std::vector<Sentence> &sentences)
{
    for (const evaluation::Check &check : found.checks) {
        // Without readings there is nothing to say but that, and it has been said.
        if (!check.passed && check.id != evaluation::CheckId::ReadingMissing)
            sentences.push_back({State::Attention, check.message()});
    }
}

} // namespace

ExampleOutcome workExample(const ExampleDraft &example, const MethodOutcome &outcome)
{
    if (std::ranges::any_of(outcome.problems, hindersTrying))
        return {
            {{State::Pending, ExampledraftWords::tr(
                                  "The method cannot be tried yet: first put right what the list of problems "
                                  "names.")}},
            {}};
    assay::Problems problems;
    const run::Run run = runOf(example, outcome.method, DraftReader(problems));
    if (problems.empty()) {
        for (const assay::Problem &problem : run::problemsOf(run, outcome.method)) {
            // Names and texts are not needed to try the numbers.
            if (problem.severity == assay::Problem::Severity::Error && problem.pointer != "/method"_L1)
                problems.push_back(problem);
        }
    }
    if (!problems.empty())
        return {asSentences(problems), {}};

    const evaluation::Evaluation found = evaluation::evaluate(outcome.method, run);
    ExampleOutcome shown;
    for (const evaluation::Result &result : found.results) {
        if (!result.value)
            continue;
        shown.sentences.push_back({State::Good, resultText(outcome.method, result)});
        std::vector<evaluation::WorkingSection> sections =
            evaluation::working(outcome.method, run, found, result.sample, result.measurand);
        if (found.results.size() > 1) {
            for (evaluation::WorkingSection &section : sections)
                section.title =
                    u"%1: %2"_s.arg(quantityName(outcome.method, result.measurand), section.title);
        }
        shown.working.insert(shown.working.end(), sections.begin(), sections.end());
    }
    if (shown.sentences.empty())
        return {
            {{State::Pending, ExampledraftWords::tr("Type the readings of the blank and of the sample.")}},
            {}};
    addFailures(found, shown.sentences);
    return shown;
}

std::vector<CellRow> exampleRows(const std::vector<QString> &readings, const std::vector<CellRow> &before)
{
    std::vector<CellRow> rows;
    for (const QString &reading : readings) {
        const auto known = std::ranges::find(before, reading, &CellRow::key);
        if (known != before.end())
            rows.push_back(*known);
        else
            rows.push_back({reading, std::vector<QString>(example::Count)});
    }
    return rows;
}

} // namespace plateau::ui
