// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/runlist.h"

#include "core/notebook/methodstore.h"
#include "core/notebook/runstore.h"
#include "core/notebook/words.h"

#include <algorithm>
#include <iterator>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

constexpr auto spoiltTubes =
    "(SELECT mark.tube FROM pipetting_mark AS mark WHERE mark.component IS NULL AND mark.kind = 'spoilt' "
    "AND NOT EXISTS (SELECT 1 FROM pipetting_mark AS later WHERE later.tube = mark.tube "
    "AND later.component IS NULL AND later.id > mark.id))"_L1;

/// The readings that a run has, by run; %1 is where the condition on the run goes. Asked of its tubes one by one: it is asked
/// at every reading.
QString takenQuery()
{
    return u"SELECT tube.run, count(*) FROM tube JOIN reading ON reading.tube = tube.id "
           "WHERE reading.corrects IS NULL AND NOT EXISTS (SELECT 1 FROM pipetting_mark AS mark WHERE mark.tube = tube.id "
           "AND mark.component IS NULL AND mark.kind = 'spoilt' AND NOT EXISTS (SELECT 1 FROM pipetting_mark AS later "
           "WHERE later.tube = mark.tube AND later.component IS NULL AND later.id > mark.id)) AND %1 GROUP BY tube.run"_s;
}

/// Reads the list in a few passes over the tables, not one for each run: a notebook grows for years.
class RunList
{
public:
    /// which: nothing for all runs.
    RunList(const Database &database, std::optional<RunId> which)
        : m_database(database)
        , m_which(which)
    {
    }

    std::vector<RunSummary> load()
    {
        loadGeneral();
        loadSamples();
        loadTubes();
        loadSpoilt();
        loadReadings();
        loadStanding();
        loadRevisions();
        std::vector<RunSummary> list;
        std::transform(m_runs.rbegin(), m_runs.rend(), std::back_inserter(list),
                       [](auto &run) { return std::move(run.second); });
        return list;
    }

private:
    /// Hands each row to use. %1 in the query is where the condition on the run goes.
    template <class Use> void read(const QString &query, const QString &runColumn, Use use) const
    {
        Statement rows(m_database, query.arg(m_which ? runColumn + u" = ?"_s : u"true"_s));
        if (m_which)
            rows.run(m_which->value);
        else
            rows.run();
        while (rows.next())
            use(rows);
    }

    void loadGeneral()
    {
        read(u"SELECT id, title, method, created_utc, created_offset_min FROM run WHERE %1"_s, u"id"_s,
             [this](const Statement &row) {
                 const assay::Method &method = methodAt(row.integer(2));
                 RunSummary &summary = m_runs[row.integer(0)];
                 summary.id = {row.integer(0)};
                 summary.title = row.text(1);
                 summary.methodId = method.id;
                 summary.methodName = method.name;
                 summary.methodVersion = method.version;
                 summary.createdAt = row.time(3);
                 m_ofOneTube[row.integer(0)] = int(assay::readingsInOrder(method).size());
             });
    }

    void loadSamples()
    {
        read(u"SELECT run, name FROM sample WHERE %1 ORDER BY run, position"_s, u"run"_s,
             [this](const Statement &row) { m_runs[row.integer(0)].samples.append(row.text(1)); });
    }

    void loadTubes()
    {
        read(u"SELECT run, count(*) FROM tube WHERE %1 GROUP BY run"_s, u"run"_s,
             [this](const Statement &row) {
                 RunSummary &summary = m_runs[row.integer(0)];
                 summary.tubes = int(row.integer(1));
                 summary.readingsPlanned = summary.tubes * m_ofOneTube[row.integer(0)];
             });
    }

    /// Those of spoilt tubes do not count, neither as planned nor as taken.
    void loadSpoilt()
    {
        read(u"SELECT tube.run, tube.id FROM tube WHERE tube.id IN %2 AND %1"_s.arg(u"%1"_s, spoiltTubes),
             u"tube.run"_s, [this](const Statement &row) {
                 RunSummary &summary = m_runs[row.integer(0)];
                 summary.readingsPlanned -= m_ofOneTube[row.integer(0)];
             });
    }

    void loadReadings()
    {
        read(takenQuery(), u"tube.run"_s,
             [this](const Statement &row) { m_runs[row.integer(0)].readingsTaken = int(row.integer(1)); });
    }

    void loadStanding()
    {
        read(u"SELECT run, kind, person, at_utc, at_offset_min, acceptable, "
             "EXISTS (SELECT 1 FROM decision_signature WHERE decision_signature.decision = decision.id), "
             "(SELECT count(*) FROM decision_sample WHERE decision_sample.decision = decision.id AND "
             "decision_sample.kind = 'rejected'), "
             "(SELECT count(*) FROM decision_repeat WHERE decision_repeat.decision = decision.id) FROM "
             "decision "
             "WHERE id NOT IN (SELECT decision FROM reopening) AND %1"_s,
             u"run"_s, [this](const Statement &row) {
                 RunSummary &summary = m_runs[row.integer(0)];
                 const bool accepted = decisionKindOf(row.text(1)) == DecisionKind::Accepted;
                 summary.state = accepted ? RunState::Accepted : RunState::Rejected;
                 summary.decidedBy = row.text(2);
                 summary.decidedAt = row.time(3);
                 summary.acceptable = row.integer(5) != 0;
                 summary.isSigned = row.integer(6) != 0;
                 summary.samplesRejected = int(row.integer(7));
                 summary.samplesToRepeat = int(row.integer(8));
             });
    }

    /// After loadStanding.
    void loadRevisions()
    {
        read(u"SELECT run, count(*) FROM decision WHERE %1 GROUP BY run"_s, u"run"_s,
             [this](const Statement &row) {
                 RunSummary &summary = m_runs[row.integer(0)];
                 summary.revision = int(row.integer(1)) + (summary.state == RunState::OnBench ? 1 : 0);
             });
    }

    const assay::Method &methodAt(qint64 row)
    {
        const auto found = m_methods.find(row);
        return found != m_methods.end() ? found->second
                                        : m_methods.emplace(row, loadMethod(m_database, row)).first->second;
    }

    const Database &m_database;
    std::optional<RunId> m_which;
    std::map<qint64, RunSummary> m_runs;
    /// Readings planned of one tube, by run.
    std::map<qint64, int> m_ofOneTube;
    std::map<qint64, assay::Method> m_methods;
};

} // namespace

std::vector<RunSummary> loadSummaries(const Database &database)
{
    return RunList(database, std::nullopt).load();
}

int readingsTaken(const Database &database, RunId run)
{
    Statement query(database, takenQuery().arg(u"tube.run = ?"_s));
    query.run(run.value);
    return query.next() ? int(query.integer(1)) : 0;
}

RunSummary loadSummary(const Database &database, RunId run)
{
    const std::vector<RunSummary> list = RunList(database, run).load();
    if (list.empty())
        throw noSuchRun(run);
    return list.front();
}

} // namespace plateau::notebook
