// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/exportdocuments.h"

#include "core/exchange/moment.h"
#include "core/exchange/readers.h"
#include "core/exchange/writers.h"
#include "core/notebook/exportfile.h"
#include "core/notebook/exporttables.h"
#include "core/notebook/laboratorystore.h"
#include "core/notebook/sentence.h"
#include "core/notebook/specificationstore.h"
#include "core/notebook/storedrun.h"
#include "core/notebook/words.h"

#include <QDir>

#include <charconv>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

QString numbered(RunId run)
{
    return u"%1"_s.arg(run.value, 6, 10, QChar(u'0'));
}

/// The shortest form that reads back to the same number.
QByteArray numberText(std::optional<double> value)
{
    if (!value)
        return {};
    char text[64];
    const auto end = std::to_chars(text, text + sizeof text, *value).ptr;
    return QByteArray(text, end - text);
}

const char *const resultColumns =
    "\"run\",\"revision\",\"title\",\"started\",\"method\",\"method_version\",\"decision\",\"decided\","
    "\"decided_by\",\"sample\",\"sample_decision\",\"measurand\",\"value\",\"expanded_uncertainty\","
    "\"coverage_factor\",\"less_than\",\"greater_than\",\"unit\",\"tubes\",\"spread\",\"verdict\"\r\n";

QByteArray resultRow(const StoredRun &stored, std::size_t revision, const evaluation::Result &result)
{
    const Decision &decision = stored.decisions[revision];
    QByteArrayList cells;
    cells << QByteArray::number(stored.summary.id.value) << QByteArray::number(qint64(revision + 1))
          << csvText(stored.summary.title)
          << (stored.run.startedAt ? csvText(exchange::momentText(*stored.run.startedAt)) : QByteArray())
          << csvText(stored.method.id) << QByteArray::number(stored.method.version)
          << csvText(decisionWord(decision.kind)) << csvText(exchange::momentText(decision.at))
          << csvText(decision.person) << csvText(result.sample)
          << csvText(sampleDecisionWord(decidedOf(decision, result.sample))) << csvText(result.measurand)
          << numberText(result.value) << numberText(result.expandedUncertainty)
          << numberText(result.coverageFactor) << numberText(result.lessThan)
          << numberText(result.greaterThan) << csvText(result.unit) << QByteArray::number(result.n)
          << numberText(result.spread) << csvText(evaluation::verdictWord(result.verdict));
    return cells.join(',') + "\r\n";
}

void exportRun(const Database &database, RunId run, const QString &folder, ExportFile &results)
{
    const StoredRun stored = loadStored(database, run);
    writeWhole(u"%1/runs/%2.json"_s.arg(folder, numbered(run)),
               exchange::writeRun(stored.run, &stored.method));
    for (std::size_t i = 0; i < stored.decisions.size(); ++i) {
        const Decision &decision = stored.decisions[i];
        writeWhole(u"%1/evaluations/%2-%3.json"_s.arg(folder, numbered(run)).arg(i + 1), decision.evaluation);
        const auto read = exchange::readResults(decision.evaluation);
        if (!read.value)
            throw Failure(
                Failure::Kind::Damaged,
                Sentence::tr("The evaluation of run %1 cannot be read, so nothing was exported; have "
                             "plateau verify list what is wrong with the notebook.")
                    .arg(run.value));
        for (const evaluation::Result &result : *read.value)
            results.write(resultRow(stored, i, result));
    }
}

std::vector<RunId> runsIn(const Database &database)
{
    Statement query(database, u"SELECT id FROM run ORDER BY id"_s);
    query.run();
    std::vector<RunId> runs;
    while (query.next())
        runs.push_back({query.integer(0)});
    return runs;
}

} // namespace

void exportDocuments(const Session &session, const QString &folder, Progress &progress)
{
    const Database &database = session.database;
    QDir().mkpath(folder + u"/runs"_s);
    QDir().mkpath(folder + u"/evaluations"_s);
    ExportFile results(folder + u"/results.csv"_s);
    results.write(resultColumns);
    for (const RunId run : runsIn(database)) {
        exportRun(database, run, folder, results);
        progress.advance();
    }
    results.finish();
    writeWhole(folder + u"/laboratory.json"_s, exchange::writeLaboratory(loadLaboratory(database)));
    writeWhole(folder + u"/limits.json"_s, exchange::writeSpecifications(loadSpecifications(database)));
}

} // namespace plateau::notebook
