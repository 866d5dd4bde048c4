// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/runhistory.h"

#include "core/notebook/opennotebook.h"
#include "core/notebook/text.h"
#include "core/notebook/words.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

/// A query on rows x of one derived table, with the run r they are of.
class HistoryQuery
{
public:
    HistoryQuery(const Database &database, const HistoryFilter &filter)
        : m_database(database)
    {
        add(u"r.state <> 'onBench'"_s, {});
        if (!filter.rejectedToo)
            add(u"r.state = 'accepted'"_s, {});
        if (!filter.method.isEmpty())
            add(u"r.method_id = ?"_s, {filter.method});
        if (!filter.measurand.isEmpty())
            add(u"x.measurand = ?"_s, {filter.measurand});
        if (!filter.person.isEmpty())
            add(u"EXISTS (SELECT 1 FROM search_person AS p WHERE p.run = r.run AND p.person = ?)"_s,
                {filter.person});
        if (filter.container)
            add(u"EXISTS (SELECT 1 FROM search_lot AS l WHERE l.run = r.run AND +l.lot = ?)"_s,
                {filter.container->value});
        if (filter.from)
            add(u"r.day >= ?"_s, {filter.from->toString(Qt::ISODate)});
        if (filter.to)
            add(u"r.day <= ?"_s, {filter.to->toString(Qt::ISODate)});
        if (filter.until)
            add(u"r.started_utc <= ?"_s, {momentOf(*filter.until).utc});
        if (filter.newestRuns)
            add(u"r.run IN (SELECT n.run FROM search_run AS n WHERE n.state <> 'onBench' AND n.method_id = ? "
                u"AND "
                "n.started_utc <= ? ORDER BY n.started_utc DESC, n.run DESC LIMIT ?)"_s,
                {filter.method, filter.until ? momentOf(*filter.until).utc : u"9999"_s, *filter.newestRuns});
    }

    void add(const QString &condition, const std::vector<Cell> &values)
    {
        m_conditions.append(condition);
        m_values.insert(m_values.end(), values.begin(), values.end());
    }

    /// take: gets the run and the row, whose own columns begin at `own`.
    static constexpr int own = 8;
    template <class Take> void read(const QString &columns, const QString &from, Take take) const
    {
        Transaction snapshot(m_database, Transaction::Kind::Read);
        Statement rows(m_database,
                       u"SELECT r.run, r.title, r.method_id, r.method_version, r.started_utc, "
                       "r.started_offset_min, r.decided_by, r.state, %1 FROM %2 AS x JOIN search_run AS r "
                       "ON r.run = x.run WHERE %3 ORDER BY r.started_utc, r.run"_s.arg(
                           columns, from, m_conditions.join(u" AND "_s)));
        rows.run(m_values);
        while (rows.next())
            take(HistoryRun{{rows.integer(0)},
                            rows.text(1),
                            rows.text(2),
                            int(rows.integer(3)),
                            rows.time(4),
                            rows.text(6),
                            rows.text(7) == "rejected"_L1},
                 rows);
    }

private:
    const Database &m_database;
    QStringList m_conditions;
    std::vector<Cell> m_values;
};

constexpr int own = HistoryQuery::own;

std::vector<ResultPoint> resultsOf(HistoryQuery &query, const HistoryFilter &filter)
{
    if (!filter.sample.isEmpty())
        query.add(u"x.sample_key = ?"_s, {comparisonKey(filter.sample)});
    if (!filter.product.isEmpty())
        query.add(u"EXISTS (SELECT 1 FROM search_sample AS s WHERE s.run = x.run AND s.name = x.sample AND "
                  "s.product_key = ?)"_s,
                  {comparisonKey(filter.product)});
    if (!filter.rejectedToo)
        query.add(u"x.kind = 'accepted'"_s, {});
    query.add(u"x.value IS NOT NULL"_s, {});
    std::vector<ResultPoint> points;
    query.read(
        u"x.sample, coalesce((SELECT s.product FROM search_sample AS s WHERE s.run = x.run AND s.name = "
        "x.sample), ''), x.measurand, x.unit, x.value, x.expanded_uncertainty, x.n, x.spread, x.kind"_s,
        u"search_result"_s, [&points](const HistoryRun &run, const Statement &row) {
            points.push_back({run, row.text(own), row.text(own + 1), row.text(own + 2), row.text(own + 3),
                              row.real(own + 4), row.optionalReal(own + 5), int(row.integer(own + 6)),
                              row.optionalReal(own + 7), row.text(own + 8) != "accepted"_L1});
        });
    return points;
}

} // namespace

std::vector<RecoveryPoint> RunHistory::recoveries(const HistoryFilter &filter) const
{
    HistoryQuery query(*m_open.database, filter);
    if (!filter.standard.isEmpty())
        query.add(u"x.name = ?"_s, {filter.standard});
    query.add(u"abs(x.recovery_percent - 100) > 1e-6"_s, {});
    query.add(u"x.found_g_per_L IS NOT NULL"_s, {});
    std::vector<RecoveryPoint> points;
    query.read(u"x.name, x.measurand, x.expected_g_per_L, x.found_g_per_L, x.recovery_percent, x.age_h, "
               "x.prepared_utc"_s,
               u"search_standard"_s, [&points](const HistoryRun &run, const Statement &row) {
                   std::optional<QDateTime> preparedAt;
                   if (!row.isNull(own + 6))
                       preparedAt = timeOf({row.text(own + 6), 0});
                   points.push_back({run, row.text(own), row.text(own + 1), row.real(own + 2),
                                     row.real(own + 3), row.real(own + 4), row.optionalReal(own + 5),
                                     preparedAt});
               });
    return points;
}

std::vector<BlankPoint> RunHistory::blanks(const HistoryFilter &filter) const
{
    HistoryQuery query(*m_open.database, filter);
    std::vector<BlankPoint> points;
    query.read(u"x.measurand, x.mean, x.n"_s, u"search_blank"_s,
               [&points](const HistoryRun &run, const Statement &row) {
                   points.push_back({run, row.text(own), row.real(own + 1), int(row.integer(own + 2))});
               });
    return points;
}

std::vector<ResultPoint> RunHistory::results(const HistoryFilter &filter) const
{
    HistoryQuery query(*m_open.database, filter);
    return resultsOf(query, filter);
}

std::vector<ResultPoint> RunHistory::duplicates(const HistoryFilter &filter) const
{
    HistoryQuery query(*m_open.database, filter);
    query.add(u"x.n >= 2"_s, {});
    query.add(u"x.spread IS NOT NULL"_s, {});
    return resultsOf(query, filter);
}

} // namespace plateau::notebook
