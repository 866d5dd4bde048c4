// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// What it costs that a reading, or an imported run, is on the disk before anybody goes on: the notebook's own
// acts beside bare inserts of the same rows with the same journal and the same syncs. In the folder
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

#include <map>

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

/// As a notebook's file.
std::unique_ptr<notebook::Database> emptyDatabase()
{
    const QString path = freshPath(u"bare"_s);
    QFile(path).open(QIODevice::WriteOnly);
    auto database = std::make_unique<notebook::Database>(path, notebook::Access::ReadWrite);
    database->takeExclusively();
    database->setJournal();
    return database;
}

/// With one table that holds a reading.
std::unique_ptr<notebook::Database> bareDatabase()
{
    auto database = emptyDatabase();
    database->execute(
        u"CREATE TABLE reading (id INTEGER PRIMARY KEY, run INTEGER, tube INTEGER, name TEXT, value REAL, "
        "typed TEXT, person TEXT, at TEXT)"_s);
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

/// Read from its document, looked for in the notebook and put on its bench, each run for itself.
void importRuns(benchmark::State &state)
{
    const std::vector<QByteArray> runs = documents();
    for (auto _ : state) {
        state.PauseTiming();
        const auto book = notebook::Notebook::create(freshPath(u"import"_s));
        state.ResumeTiming();
        for (const QByteArray &document : runs) {
            const auto read = exchange::readRun(document, [](const QString &) { return std::nullopt; });
            if (!book->findSameRun(read.value->run, read.value->method))
                book->addRun(read.value->run, read.value->method, u"M. Keel"_s);
        }
    }
    state.SetItemsProcessed(state.iterations() * static_cast<int64_t>(runs.size()));
}

/// A table of a notebook, with all it holds.
struct Rows {
    QString insert;
    std::vector<QVariantList> values;
};

using Counts = std::map<QString, qint64>;

/// The rows that a notebook holds beyond those, but those of the engine's own tables.
std::vector<Rows> rowsBeyond(const QString &path, const Counts &before)
{
    const notebook::Database database(path, notebook::Access::ReadOnly);
    std::vector<Rows> all;
    notebook::Statement tables(database, u"SELECT name, ncol FROM pragma_table_list WHERE type = 'table' AND schema = 'main' "
                                         "AND name NOT LIKE 'sqlite_%'"_s);
    tables.run();
    while (tables.next()) {
        const QString name = tables.text(0);
        const int columns = int(tables.integer(1));
        Rows rows{u"INSERT INTO %1 VALUES (%2)"_s.arg(name, QStringList(columns, u"?"_s).join(u", "_s)), {}};
        const auto passed = before.find(name);
        notebook::Statement query(database, u"SELECT * FROM %1 LIMIT -1 OFFSET ?"_s.arg(name));
        query.run(passed == before.end() ? qint64(0) : passed->second);
        while (query.next()) {
            QVariantList values;
            for (int column = 0; column < columns; ++column)
                values.append(query.value(column));
            rows.values.push_back(values);
        }
        if (!rows.values.empty())
            all.push_back(std::move(rows));
    }
    return all;
}

Counts countsOf(const QString &path)
{
    Counts counts;
    for (const Rows &rows : rowsBeyond(path, {}))
        counts[rows.insert.section(u' ', 2, 2)] = qint64(rows.values.size());
    return counts;
}

/// The rows that the same import leaves.
std::vector<Rows> importedRows(const std::vector<QByteArray> &runs)
{
    const QString path = freshPath(u"rows"_s);
    {
        const auto book = notebook::Notebook::create(path);
        for (const QByteArray &document : runs) {
            const auto read = exchange::readRun(document, [](const QString &) { return std::nullopt; });
            book->addRun(read.value->run, read.value->method, u"M. Keel"_s);
        }
    }
    return rowsBeyond(path, {});
}

/// Tables of the same names and columns, without types, keys, indices and triggers.
void makeBareTables(const notebook::Database &database, const std::vector<Rows> &all)
{
    for (const Rows &rows : all) {
        QStringList columns;
        for (qsizetype i = 0; i < rows.values.front().size(); ++i)
            columns.append(u"c%1"_s.arg(i));
        const QString name = rows.insert.section(u' ', 2, 2);
        database.execute(u"CREATE TABLE %1 (%2)"_s.arg(name, columns.join(u", "_s)));
    }
}

/// The rows that readings leave (the reading, its entry in the trail, what the entry covers) put into such tables, in
/// as many transactions: what the record costs before anything is worked out, checked or searched.
void rowsOfReadings(benchmark::State &state)
{
    const QString path = freshPath(u"readings"_s);
    run::Run run = test::rackOf(24);
    const std::size_t readings = 2 * run.tubes.size();
    for (run::Tube &tube : run.tubes)
        tube.readings.clear();
    {
        const auto book = notebook::Notebook::create(path);
        book->addRun(run, test::risingMethod(), u"M. Keel"_s);
    }
    const Counts before = countsOf(path);
    {
        const auto book = notebook::Notebook::open(path);
        for (std::size_t at = 0; at < readings; ++at)
            book->addReading({1}, static_cast<int>(at / 2), at % 2 == 0 ? u"A1"_s : u"A2"_s, 0.512, u"0,512"_s, u"M. Keel"_s);
    }
    const std::vector<Rows> all = rowsBeyond(path, before);
    const auto database = emptyDatabase();
    makeBareTables(*database, all);
    test::Percentiles turns;
    std::size_t reading = 0;
    std::size_t number = 0;
    for (auto _ : state) {
        turns.time([&] {
            notebook::Transaction transaction(*database, notebook::Transaction::Kind::Write);
            for (const Rows &rows : all) {
                notebook::Statement insert(*database, rows.insert);
                const std::size_t end = rows.values.size() * (reading + 1) / readings;
                for (std::size_t row = rows.values.size() * reading / readings; row < end; ++row, ++number)
                    insert.runWith(rows.values[row]);
            }
            transaction.commit();
        });
        reading = (reading + 1) % readings;
    }
    state.counters["rows_per_reading"] = double(number) / double(state.iterations());
    turns.report(state);
}

/// The same rows put into such tables, in as many transactions.
void bareRuns(benchmark::State &state)
{
    const std::vector<QByteArray> runs = documents();
    const std::vector<Rows> all = importedRows(runs);
    std::size_t number = 0;
    for (auto _ : state) {
        state.PauseTiming();
        const auto database = emptyDatabase();
        makeBareTables(*database, all);
        state.ResumeTiming();
        number = 0;
        for (std::size_t run = 0; run < runs.size(); ++run) {
            notebook::Transaction transaction(*database, notebook::Transaction::Kind::Write);
            for (const Rows &rows : all) {
                notebook::Statement insert(*database, rows.insert);
                const std::size_t end = rows.values.size() * (run + 1) / runs.size();
                for (std::size_t row = rows.values.size() * run / runs.size(); row < end; ++row, ++number)
                    insert.runWith(rows.values[row]);
            }
            transaction.commit();
        }
    }
    state.counters["rows_per_run"] = double(number) / double(runs.size());
    state.SetItemsProcessed(state.iterations() * static_cast<int64_t>(runs.size()));
}

} // namespace

BENCHMARK(bareReading)->Iterations(2000)->Unit(benchmark::kMicrosecond);
BENCHMARK(rowsOfReadings)->Iterations(2000)->Unit(benchmark::kMicrosecond);
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
