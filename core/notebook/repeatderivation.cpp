// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/decisionstore.h"
#include "core/notebook/openrepeats.h"
#include "core/notebook/shelfstore.h"

#include <algorithm>
#include <set>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

/// What makes a repeat of the row of sample, its run and the run's method wait still.
QString isOpen()
{
    return u"NOT EXISTS (SELECT 1 FROM repeat_waiver WHERE repeat_waiver.run = sample.run "
           "AND repeat_waiver.sample = sample.name) AND NOT EXISTS ("
           "SELECT 1 FROM sample AS later JOIN run AS later_run ON later_run.id = later.run "
           "JOIN method AS later_method ON later_method.id = later_run.method "
           "WHERE later.name = sample.name AND later.run > sample.run "
           "AND later_method.method_id = method.method_id AND NOT %1)"_s.arg(
               isRejected(u"later.run"_s, u"later.name"_s));
}

/// Of an audit entry, its record and the standing decision in it: that it was made before there were rows of what is to be
/// repeated (schema 3), and asks for a repeat. The first entry of the trail tells whether there can be any.
constexpr auto isOlder =
    "audit_record.record_table = 'decision' "
    "AND audit.id < coalesce((SELECT id FROM audit WHERE schema_version >= 3 ORDER BY id LIMIT 1), 9e18) "
    "AND decision.id NOT IN (SELECT decision FROM reopening) "
    "AND instr(evaluation, '\"verdict\": \"repeat\"') > 0"_L1;

constexpr auto runOfSample = "JOIN run ON run.id = sample.run JOIN method ON method.id = run.method"_L1;

/// Decisions say in rows of their own which samples are to be repeated. A repeat that was made in the same
/// run speaks for the sample it repeats.
void addNoted(const Database &database, std::vector<OpenRepeat> &repeats)
{
    Statement query(
        database,
        u"SELECT sample.run, sample.name, method.method_id FROM decision_repeat "
        "JOIN decision ON decision.id = decision_repeat.decision "
        "JOIN sample ON sample.run = decision.run AND sample.name = coalesce(("
        "SELECT other.name FROM sample AS own JOIN sample_repeat ON sample_repeat.sample = own.id "
        "JOIN sample AS other ON other.id = sample_repeat.repeats "
        "WHERE own.run = decision.run AND own.name = decision_repeat.sample), decision_repeat.sample) %1 "
        "WHERE decision.id NOT IN (SELECT decision FROM reopening) AND %2"_s.arg(runOfSample, isOpen()));
    query.run();
    while (query.next())
        repeats.push_back({{query.integer(0)}, query.text(1), query.text(2)});
}

/// Of those made before there were such rows the evaluation says it.
void addOlder(const Database &database, std::vector<OpenRepeat> &repeats)
{
    Statement decisions(
        database,
        u"SELECT DISTINCT decision.run FROM audit CROSS JOIN audit_record ON audit_record.audit = audit.id "
        "CROSS JOIN decision ON decision.id = audit_record.record_id WHERE %1"_s.arg(isOlder));
    decisions.run();
    Statement open(database,
                   u"SELECT method.method_id FROM sample %1 WHERE sample.run = ? AND sample.name = ? "
                   "AND %2"_s.arg(runOfSample, isOpen()));
    while (decisions.next()) {
        const RunId run{decisions.integer(0)};
        for (const QString &sample : olderRepeats(database, run)) {
            open.run(run.value, sample);
            while (open.next())
                repeats.push_back({run, sample, open.text(0)});
        }
    }
}

/// Whether whatever one of them leaves to be repeated is reportable of another.
bool isSettled(const std::vector<evaluation::Result> &results, const QStringList &samples)
{
    std::set<QString> open;
    std::set<QString> reportable;
    for (const evaluation::Result &result : results) {
        if (!samples.contains(result.sample))
            continue;
        if (result.verdict == evaluation::Verdict::Repeat)
            open.insert(result.measurand);
        if (result.verdict == evaluation::Verdict::Reportable)
            reportable.insert(result.measurand);
    }
    return !open.empty() && std::ranges::includes(reportable, open);
}

} // namespace

QStringList repeatsWith(const Database &database, RunId run, const QString &sample)
{
    Statement query(database, u"SELECT own.name FROM sample_repeat JOIN sample AS own ON own.id = "
                              "sample_repeat.sample JOIN sample AS other ON other.id = sample_repeat.repeats "
                              "WHERE other.run = ? AND other.name = ? ORDER BY own.position"_s);
    query.run(run.value, sample);
    QStringList names{sample};
    while (query.next())
        names.append(query.text(0));
    return names;
}

QStringList olderRepeats(const Database &database, RunId run)
{
    Statement older(database,
                    u"SELECT 1 FROM audit CROSS JOIN audit_record ON audit_record.audit = audit.id "
                    "CROSS JOIN decision ON decision.id = audit_record.record_id WHERE audit.run = ? AND %1"_s.arg(isOlder));
    older.run(run.value);
    if (!older.next())
        return {};
    return repeatsOf(resultsOnRecord(loadDecisions(database, run).back()));
}

bool isSettledAtTheBench(const Database &database, const OpenRepeat &repeat)
{
    const QStringList samples = repeatsWith(database, repeat.run, repeat.sample);
    if (samples.size() == 1)
        return false;
    const DecisionRow decision = loadDecisions(database, repeat.run).back();
    const bool somebodyWantsIt =
        std::ranges::any_of(decision.decision.samples, [&](const SampleDecision &own) {
            return own.kind == SampleDecisionKind::Repeat && samples.contains(own.sample);
        });
    return decision.decision.kind == DecisionKind::Accepted && !somebodyWantsIt &&
           isSettled(resultsOnRecord(decision), samples);
}

std::vector<OpenRepeat> derivedOpenRepeats(const Database &database)
{
    std::vector<OpenRepeat> all;
    addNoted(database, all);
    addOlder(database, all);
    std::ranges::stable_sort(all, std::ranges::greater(), &OpenRepeat::run);
    std::vector<OpenRepeat> newest;
    std::set<std::pair<QString, QString>> seen;
    for (const OpenRepeat &repeat : all) {
        if (seen.insert({repeat.sample, repeat.method}).second)
            newest.push_back(repeat);
    }
    std::erase_if(newest,
                  [&](const OpenRepeat &repeat) { return isSettledAtTheBench(database, repeat); });
    std::sort(newest.begin(), newest.end());
    return newest;
}

} // namespace plateau::notebook
