// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/searchindex.h"

#include "core/notebook/openrepeats.h"
#include "core/notebook/runfacts.h"
#include "core/notebook/runlist.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

constexpr int runsPerReport = 200;

const DerivedTable &wordsTable()
{
    return derivedTables().back();
}

QString places(qsizetype number)
{
    return QStringList(number, u"?"_s).join(u", "_s);
}

void insertRows(const Database &database, const DerivedTable &table,
                const std::vector<std::vector<Cell>> &rows)
{
    if (rows.empty())
        return;
    Statement insert(database, u"INSERT INTO %1 (%2) VALUES (%3)"_s.arg(
                                   table.name, table.columns.join(u", "_s), places(table.columns.size())));
    for (const std::vector<Cell> &row : rows)
        insert.run(row);
}

/// The index of words keeps no text, so it has to be told what it forgets. way: "" for taking in.
void tellIndex(const Database &database, const QString &way, const std::vector<std::vector<Cell>> &rows)
{
    const QStringList columns = wordsTable().columns.mid(1);
    for (const std::vector<Cell> &row : rows) {
        if (way.isEmpty())
            Statement(database, u"INSERT INTO search_text (rowid, %1) VALUES (%2)"_s.arg(
                                    columns.join(u", "_s), places(columns.size() + 1)))
                .run(row);
        else
            Statement(database, u"INSERT INTO search_text (search_text, rowid, %1) VALUES ('%2', %3)"_s.arg(
                                    columns.join(u", "_s), way, places(columns.size() + 1)))
                .run(row);
    }
}

void replaceRows(const Database &database, RunId run, const DerivedTable &table,
                 const std::vector<std::vector<Cell>> &old, const std::vector<std::vector<Cell>> &fresh)
{
    const bool areWords = table.name == wordsTable().name;
    if (areWords)
        tellIndex(database, u"delete"_s, old);
    if (!old.empty())
        Statement(database, u"DELETE FROM %1 WHERE run = ?"_s.arg(table.name)).run(run.value);
    insertRows(database, table, fresh);
    if (areWords)
        tellIndex(database, {}, fresh);
}

} // namespace

void refreshSearch(const Database &database, RunId run)
{
    const RunFacts fresh = factsOf(database, loadSummary(database, run));
    const RunFacts old = storedFacts(database, run);
    for (std::size_t i = 0; i < fresh.size(); ++i) {
        if (fresh[i] != old[i])
            replaceRows(database, run, derivedTables()[i], old[i], fresh[i]);
    }
}

void countReading(const Database &database, RunId run, const QString &person)
{
    Statement known(database, u"SELECT 1 FROM search_person WHERE run = ? AND person = ?"_s);
    known.run(run.value, person);
    if (known.next())
        Statement(database, u"UPDATE search_run SET readings_taken = ? WHERE run = ?"_s)
            .run(readingsTaken(database, run), run.value);
    else
        refreshSearch(database, run);
}

void rebuildSearch(const Database &database, const std::function<void(int, int)> &progress)
{
    database.execute(u"INSERT INTO search_text (search_text) VALUES ('delete-all')"_s);
    for (const DerivedTable &table : derivedTables())
        database.execute(u"DELETE FROM "_s + table.name);
    const std::vector<RunSummary> runs = loadSummaries(database);
    int done = 0;
    for (auto run = runs.rbegin(); run != runs.rend(); ++run) {
        const RunFacts facts = factsOf(database, *run);
        for (std::size_t i = 0; i < facts.size(); ++i)
            insertRows(database, derivedTables()[i], facts[i]);
        if (progress && ++done % runsPerReport == 0)
            progress(done, int(runs.size()));
    }
    database.execute(u"INSERT INTO search_text (search_text) VALUES ('rebuild')"_s);
    rebuildOpenRepeats(database);
}

bool searchKnowsAllRuns(const Database &database)
{
    // Each act takes its run in, and a rebuilding takes all in or none: where the newest is known, all are.
    return database.single(u"SELECT (SELECT max(run) FROM search_run) IS (SELECT max(id) FROM run)"_s).toBool();
}

} // namespace plateau::notebook
