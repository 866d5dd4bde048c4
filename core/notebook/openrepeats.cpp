// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/openrepeats.h"

#include "core/notebook/sentence.h"
#include "core/notebook/shelfstore.h"
#include "core/notebook/statement.h"

#include <algorithm>
#include <array>
#include <iterator>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

QString methodIdOf(const Database &database, RunId run)
{
    Statement query(database, u"SELECT method_id FROM run JOIN method ON method.id = run.method WHERE run.id = ?"_s);
    query.run(run.value);
    return query.next() ? query.text(0) : QString();
}

QStringList samplesOf(const Database &database, RunId run)
{
    Statement query(database, u"SELECT name FROM sample WHERE run = ? ORDER BY position"_s);
    query.run(run.value);
    QStringList names;
    while (query.next())
        names.append(query.text(0));
    return names;
}

bool isWaived(const Database &database, RunId run, const QString &sample)
{
    Statement query(database, u"SELECT 1 FROM repeat_waiver WHERE run = ? AND sample = ?"_s);
    query.run(run.value, sample);
    return query.next();
}

/// What a decision wants repeated is what repeated the sample within its run, or the sample.
bool isNoted(const Database &database, RunId run, const QString &sample)
{
    Statement query(
        database,
        u"WITH asked (run, name) AS (SELECT decision.run, decision_repeat.sample FROM decision "
        "JOIN decision_repeat ON decision_repeat.decision = decision.id "
        "WHERE decision.run = ? AND decision.id NOT IN (SELECT decision FROM reopening)) "
        "SELECT 1 FROM asked WHERE ? = coalesce((SELECT other.name FROM sample AS own "
        "JOIN sample_repeat ON sample_repeat.sample = own.id JOIN sample AS other ON other.id = sample_repeat.repeats "
        "WHERE own.run = asked.run AND own.name = asked.name), asked.name)"_s);
    query.run(run.value, sample);
    return query.next();
}

bool asksFor(const Database &database, RunId run, const QString &sample)
{
    return !isWaived(database, run, sample) &&
           (isNoted(database, run, sample) || olderRepeats(database, run).contains(sample));
}

/// From the newest run of the sample by the method back to the last that was not rejected: what lies before that is settled
/// by it.
std::optional<OpenRepeat> findOpen(const Database &database, const QString &sample, const QString &method)
{
    Statement runs(database, u"SELECT sample.run, %1 FROM sample JOIN run ON run.id = sample.run "
                             "JOIN method ON method.id = run.method WHERE sample.name = ? AND method.method_id = ? "
                             "ORDER BY sample.run DESC"_s.arg(isRejected(u"sample.run"_s, u"sample.name"_s)));
    runs.run(sample, method);
    while (runs.next()) {
        const OpenRepeat repeat{{runs.integer(0)}, sample, method};
        if (asksFor(database, repeat.run, sample))
            return isSettledAtTheBench(database, repeat) ? std::nullopt : std::optional(repeat);
        if (runs.integer(1) == 0)
            return std::nullopt;
    }
    return std::nullopt;
}

void insert(const Database &database, const OpenRepeat &repeat)
{
    Statement(database, u"INSERT INTO search_repeat (sample, method_id, run) VALUES (?, ?, ?)"_s)
        .run(repeat.sample, repeat.method, repeat.run.value);
}

} // namespace

std::vector<OpenRepeat> openRepeats(const Database &database)
{
    Statement query(database, u"SELECT search_repeat.run, search_repeat.sample, method_id FROM search_repeat "
                              "LEFT JOIN sample ON sample.run = search_repeat.run AND sample.name = search_repeat.sample "
                              "ORDER BY search_repeat.run, sample.position"_s);
    query.run();
    std::vector<OpenRepeat> repeats;
    while (query.next())
        repeats.push_back({{query.integer(0)}, query.text(1), query.text(2)});
    return repeats;
}

void refreshOpenRepeats(const Database &database, RunId run)
{
    const QString method = methodIdOf(database, run);
    for (const QString &sample : samplesOf(database, run)) {
        Statement(database, u"DELETE FROM search_repeat WHERE sample = ? AND method_id = ?"_s).run(sample, method);
        if (const auto repeat = findOpen(database, sample, method))
            insert(database, *repeat);
    }
}

bool bearsOnRepeats(const QString &table)
{
    constexpr std::array tables{"sample"_L1, "decision"_L1, "reopening"_L1, "repeat_waiver"_L1};
    return std::ranges::find(tables, table) != tables.end();
}

void rebuildOpenRepeats(const Database &database)
{
    database.execute(u"DELETE FROM search_repeat"_s);
    for (const OpenRepeat &repeat : derivedOpenRepeats(database))
        insert(database, repeat);
}

std::vector<Finding> openRepeatFindings(const Database &database)
{
    std::vector<OpenRepeat> found = openRepeats(database);
    std::sort(found.begin(), found.end());
    const std::vector<OpenRepeat> wanted = derivedOpenRepeats(database);
    std::vector<OpenRepeat> other;
    std::set_symmetric_difference(found.begin(), found.end(), wanted.begin(), wanted.end(), std::back_inserter(other));
    std::vector<Finding> findings;
    for (const OpenRepeat &repeat : other)
        findings.push_back({u"search_repeat %1"_s.arg(repeat.run.value),
                            Sentence::tr("is not as the records say, so that what waits to be repeated may not be shown")});
    return findings;
}

} // namespace plateau::notebook
