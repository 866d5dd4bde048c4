// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/runlist.h"

#include "core/notebook/methodstore.h"
#include "core/notebook/runstore.h"
#include "core/notebook/words.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

// Nothing for all runs.
using Which = std::optional<qint64>;

std::map<qint64, QStringList> samplesByRun(const Database &database, const Which &which)
{
    Statement query(database,
                    u"SELECT run, name FROM sample WHERE run = coalesce(?, run) ORDER BY run, position"_s);
    query.run(which);
    std::map<qint64, QStringList> samples;
    while (query.next())
        samples[query.integer(0)].append(query.text(1));
    return samples;
}

struct Standing {
    RunState state = RunState::OnBench;
    QString person;
    QDateTime at;
};

// A run that is not among them is on the bench.
std::map<qint64, Standing> standingByRun(const Database &database, const Which &which)
{
    Statement query(database,
                    u"SELECT run, kind, person, at_utc, at_offset_min FROM decision WHERE run = coalesce(?, "
                    "run) AND id NOT IN (SELECT decision FROM reopening)"_s);
    query.run(which);
    std::map<qint64, Standing> standing;
    while (query.next()) {
        const bool accepted = decisionKindOf(query.text(1)) == DecisionKind::Accepted;
        standing[query.integer(0)] = {accepted ? RunState::Accepted : RunState::Rejected, query.text(2),
                                      query.time(3)};
    }
    return standing;
}

/// The methods of the list, each read once.
class Methods
{
public:
    explicit Methods(const Database &database)
        : m_database(database)
    {
    }
    const assay::Method &at(qint64 row)
    {
        const auto found = m_methods.find(row);
        return found != m_methods.end() ? found->second
                                        : m_methods.emplace(row, loadMethod(m_database, row)).first->second;
    }

private:
    const Database &m_database;
    std::map<qint64, assay::Method> m_methods;
};

std::vector<RunSummary> summaries(const Database &database, const Which &which)
{
    const std::map<qint64, QStringList> samples = samplesByRun(database, which);
    const std::map<qint64, Standing> standing = standingByRun(database, which);
    Methods methods(database);
    Statement query(database, u"SELECT run.id, title, method, created_utc, created_offset_min, "
                              "(SELECT count(*) FROM tube WHERE tube.run = run.id), "
                              "(SELECT count(*) FROM reading JOIN tube ON tube.id = reading.tube "
                              "WHERE tube.run = run.id AND corrects IS NULL) "
                              "FROM run WHERE run.id = coalesce(?, run.id) ORDER BY run.id DESC"_s);
    query.run(which);
    std::vector<RunSummary> list;
    while (query.next()) {
        const qint64 id = query.integer(0);
        const assay::Method &method = methods.at(query.integer(2));
        RunSummary summary;
        summary.id = {id};
        summary.title = query.text(1);
        summary.methodId = method.id;
        summary.methodName = method.name;
        summary.methodVersion = method.version;
        summary.createdAt = query.time(3);
        if (const auto found = standing.find(id); found != standing.end()) {
            summary.state = found->second.state;
            summary.decidedBy = found->second.person;
            summary.decidedAt = found->second.at;
        }
        if (const auto found = samples.find(id); found != samples.end())
            summary.samples = found->second;
        summary.tubes = int(query.integer(5));
        summary.readingsTaken = int(query.integer(6));
        summary.readingsPlanned = summary.tubes * int(assay::readingsInOrder(method).size());
        list.push_back(summary);
    }
    return list;
}

} // namespace

std::vector<RunSummary> loadSummaries(const Database &database)
{
    return summaries(database, std::nullopt);
}

RunSummary loadSummary(const Database &database, RunId run)
{
    const std::vector<RunSummary> list = summaries(database, run.value);
    if (list.empty())
        throw noSuchRun(run);
    return list.front();
}

} // namespace plateau::notebook
