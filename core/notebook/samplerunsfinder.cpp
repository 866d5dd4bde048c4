// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/reportstore.h"
#include "core/notebook/runstore.h"
#include "core/notebook/shelfstore.h"
#include "core/notebook/text.h"

#include <algorithm>
#include <map>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

/// A run that holds the name, and what its plan says of the sample.
struct Holding {
    RunId run;
    std::optional<RunId> repeats;
    QString product;
    /// Invalid where nobody told it.
    QDate received;
};

/// Runs of one sample: what tells it from others of its name.
struct Group {
    qint64 registration = 0;
    /// The number it is known by, which choices are stored with.
    qint64 since = 0;
    QDate received;
};

QStringList spellingsOf(const Database &database, const QString &key)
{
    Statement query(database, u"SELECT DISTINCT name FROM sample"_s);
    query.run();
    QStringList names;
    while (query.next()) {
        if (comparisonKey(query.text(0)) == key)
            names.append(query.text(0));
    }
    return names;
}

/// Oldest first, each run once.
std::vector<Holding> holdingsOf(const Database &database, const QStringList &names)
{
    std::map<RunId, Holding> holdings;
    Statement query(database, u"SELECT sample.run, plan_sample.repeats, coalesce(product, ''), "
                              "received_utc, received_offset_min FROM sample "
                              "LEFT JOIN plan_sample ON plan_sample.sample = sample.id "
                              "LEFT JOIN sample_detail ON sample_detail.id = plan_sample.detail "
                              "WHERE sample.name = ? ORDER BY sample.id"_s);
    for (const QString &name : names) {
        query.run(name);
        while (query.next()) {
            Holding holding{{query.integer(0)}, std::nullopt, query.text(2), {}};
            if (!query.isNull(3))
                holding.received = query.time(3).date();
            if (!query.isNull(1))
                holding.repeats = RunId{query.integer(1)};
            holdings.insert({holding.run, holding});
        }
    }
    std::vector<Holding> list;
    for (const auto &[run, holding] : holdings)
        list.push_back(holding);
    return list;
}

/// The newest run at each registration of the name, ascending; those that were withdrawn do not count.
std::vector<qint64> registrationsOf(const Database &database, const QString &key)
{
    Statement query(
        database,
        u"SELECT DISTINCT last_run FROM shelf_sample JOIN shelf_version ON shelf_version.sample = "
        "shelf_sample.id JOIN sample_detail ON sample_detail.id = shelf_version.detail "
        "WHERE name_key = ? AND shelf_version.id = (SELECT max(id) FROM shelf_version AS any_version "
        "WHERE any_version.sample = shelf_sample.id) "
        "AND shelf_sample.id NOT IN (SELECT sample FROM shelf_withdrawal) ORDER BY last_run"_s);
    query.run(key);
    std::vector<qint64> numbers;
    while (query.next())
        numbers.push_back(query.integer(0));
    return numbers;
}

qint64 registrationBefore(RunId run, const std::vector<qint64> &registrations)
{
    const auto after = std::ranges::lower_bound(registrations, run.value);
    return after == registrations.begin() ? 0 : *std::prev(after);
}

/// The newest that the holding may be of; nullptr where it begins one of its own.
Group *groupOf(const Holding &holding, qint64 registration, std::vector<Group> &groups)
{
    Group *newest = nullptr;
    for (Group &group : groups) {
        if (group.registration != registration)
            continue;
        if (holding.received.isValid() && group.received == holding.received)
            return &group;
        newest = &group;
    }
    const bool isOther =
        newest && holding.received.isValid() && newest->received.isValid(); // the same day was looked for above
    return isOther ? nullptr : newest;
}

/// What tells the samples of one name apart, by run.
std::map<RunId, qint64> sinceByRun(const std::vector<Holding> &holdings,
                                   const std::vector<qint64> &registrations)
{
    std::map<RunId, qint64> since;
    std::vector<Group> groups;
    for (const Holding &holding : holdings) {
        if (holding.repeats && since.contains(*holding.repeats)) {
            since[holding.run] = since[*holding.repeats];
            continue;
        }
        const qint64 registration = registrationBefore(holding.run, registrations);
        Group *group = groupOf(holding, registration, groups);
        if (!group) {
            const bool isFirst = std::ranges::find(groups, registration, &Group::registration) == groups.end();
            group = &groups.emplace_back(
                Group{registration, isFirst ? registration : holding.run.value - 1, holding.received});
        }
        if (!group->received.isValid())
            group->received = holding.received;
        since[holding.run] = group->since;
    }
    return since;
}

/// The name it was given first, where it stands in that run as a repeat of another.
QString firstName(const Database &database, const QString &sample, RunId run)
{
    for (const run::Sample &held : loadPlan(database, run).samples) {
        if (comparisonKey(held.id) == comparisonKey(sample) && !held.repeats.isEmpty())
            return held.repeats;
    }
    return sample;
}

bool areOneProduct(const QString &a, const QString &b)
{
    return a.isEmpty() || b.isEmpty() || comparisonKey(a) == comparisonKey(b);
}

} // namespace

SampleRuns sampleRuns(const Database &database, const QString &sample, std::optional<RunId> of)
{
    SampleRuns found;
    const QString name = of ? firstName(database, sample, *of) : sample;
    found.key = comparisonKey(name);
    const QStringList names = spellingsOf(database, found.key);
    const std::vector<Holding> holdings = holdingsOf(database, names);
    if (const auto told = loadLastTold(database, names.isEmpty() ? name : names.back()))
        found.product = told->product;
    if (holdings.empty())
        return found;
    std::map<RunId, qint64> since = sinceByRun(holdings, registrationsOf(database, found.key));
    const auto meant = of ? std::ranges::find(holdings, *of, &Holding::run) : std::prev(holdings.end());
    if (meant == holdings.end())
        return found;
    found.sinceRun = since[meant->run];
    if (!meant->product.isEmpty())
        found.product = meant->product;
    for (const Holding &holding : holdings) {
        if (since[holding.run] == found.sinceRun && areOneProduct(holding.product, found.product))
            found.runs.push_back(holding.run);
    }
    return found;
}

} // namespace plateau::notebook
