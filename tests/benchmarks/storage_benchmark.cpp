// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// What it costs that a reading, or an imported run, is on the disk before anybody goes on: the notebook's own
// acts beside bare inserts of the same content with the same journal and the same syncs. In the folder
// PLATEAU_BENCHMARK_FOLDER, else where it is started: on a disk, not in memory. Run by hand: cmake
// -DPLATEAU_BENCHMARKS=ON, then storage_benchmark.
#include "core/exchange/readers.h"
#include "core/exchange/writers.h"
#include "core/notebook/database.h"
#include "core/notebook/notebook.h"
#include "core/notebook/statement.h"
#include "tests/benchmarks/percentiles.h"
#include "tests/benchmarks/racks.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <benchmark/benchmark.h>

using namespace Qt::StringLiterals;
using namespace plateau;

namespace {

QTemporaryDir &folder()
{
    static QTemporaryDir made(qEnvironmentVariable("PLATEAU_BENCHMARK_FOLDER", QDir::currentPath()) +
                              u"/storage-XXXXXX"_s);
    return made;
}

QString freshPath(const QString &name)
{
    static int number = 0;
    return folder().filePath(u"%1-%2.plateau"_s.arg(name).arg(++number));
}

/// As a notebook's file, with one table that holds a reading and one that holds who did it.
std::unique_ptr<notebook::Database> bareDatabase()
{
    const QString path = freshPath(u"bare"_s);
    QFile(path).open(QIODevice::WriteOnly);
    auto database = std::make_unique<notebook::Database>(path, notebook::Access::ReadWrite);
    database->takeExclusively();
    database->setJournal();
    database->execute(
        u"CREATE TABLE reading (id INTEGER PRIMARY KEY, run INTEGER, tube INTEGER, name TEXT, value REAL, "
        "typed TEXT, person TEXT, at TEXT)"_s);
    database->execute(u"CREATE TABLE document (id INTEGER PRIMARY KEY, content TEXT)"_s);
    return database;
}

void bareReading(benchmark::State &state)
{
    const auto database = bareDatabase();
    test::Percentiles turns;
    for (auto _ : state) {
        turns.time([&] {
            notebook::Transaction transaction(*database, notebook::Transaction::Kind::Write);
            notebook::Statement(
                *database, u"INSERT INTO reading (run, tube, name, value, typed, person, at) VALUES (?, ?, "
                           "?, ?, ?, ?, ?)"_s)
                .run(1, 3, u"A1"_s, 0.512, u"0,512"_s, u"M. Keel"_s, u"2026-03-02T08:10:00.000Z"_s);
            transaction.commit();
        });
    }
    turns.report(state);
}

/// The rack is read again and again: each reading is a correction of the one before it, as large a row as
/// any.
void durableReading(benchmark::State &state)
{
    const auto book = notebook::Notebook::create(freshPath(u"reading"_s));
    const assay::Method method = test::risingMethod();
    run::Run run = test::rackOf(24);
    for (run::Tube &tube : run.tubes)
        tube.readings.clear();
    std::vector<notebook::RunId> runs;
    for (int i = 0; i < 60; ++i)
        runs.push_back(book->addRun(run, method, u"M. Keel"_s));
    test::Percentiles turns;
    std::size_t at = 0;
    for (auto _ : state) {
        const int tube = static_cast<int>(at / 2 % run.tubes.size());
        const notebook::RunId id = runs.at(at / 2 / run.tubes.size());
        const QString name = at % 2 == 0 ? u"A1"_s : u"A2"_s;
        turns.time([&] { book->addReading(id, tube, name, 0.512, u"0,512"_s, u"M. Keel"_s); });
        ++at;
    }
    turns.report(state);
}

std::vector<QByteArray> documents()
{
    const assay::Method method = test::risingMethod();
    std::vector<QByteArray> all;
    for (int i = 0; i < 200; ++i) {
        run::Run run = test::rackOf(14);
        run.title = u"Rack %1"_s.arg(i);
        all.push_back(exchange::writeRun(run, &method));
    }
    return all;
}

/// Read from its document and put on the bench, each run for itself.
void importRuns(benchmark::State &state)
{
    const std::vector<QByteArray> runs = documents();
    for (auto _ : state) {
        state.PauseTiming();
        const auto book = notebook::Notebook::create(freshPath(u"import"_s));
        state.ResumeTiming();
        for (const QByteArray &document : runs) {
            const auto read = exchange::readRun(document, [](const QString &) { return std::nullopt; });
            book->addRun(read.value->run, read.value->method, u"M. Keel"_s);
        }
    }
    state.SetItemsProcessed(state.iterations() * static_cast<int64_t>(runs.size()));
}

/// The same documents read, and written into one row each.
void bareRuns(benchmark::State &state)
{
    const std::vector<QByteArray> runs = documents();
    for (auto _ : state) {
        state.PauseTiming();
        const auto database = bareDatabase();
        state.ResumeTiming();
        for (const QByteArray &document : runs) {
            const auto read = exchange::readRun(document, [](const QString &) { return std::nullopt; });
            benchmark::DoNotOptimize(read);
            notebook::Transaction transaction(*database, notebook::Transaction::Kind::Write);
            notebook::Statement(*database, u"INSERT INTO document (content) VALUES (?)"_s)
                .run(QString::fromUtf8(document));
            transaction.commit();
        }
    }
    state.SetItemsProcessed(state.iterations() * static_cast<int64_t>(runs.size()));
}

} // namespace

BENCHMARK(bareReading)->Iterations(2000)->Unit(benchmark::kMicrosecond);
BENCHMARK(durableReading)->Iterations(2000)->Unit(benchmark::kMicrosecond);
BENCHMARK(bareRuns)->Unit(benchmark::kMillisecond);
BENCHMARK(importRuns)->Unit(benchmark::kMillisecond);

int main(int argc, char **argv)
{
    const QCoreApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    folder().remove();
    return 0;
}
