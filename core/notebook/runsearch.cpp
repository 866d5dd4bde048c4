// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/runsearch.h"

#include "core/notebook/opennotebook.h"
#include "core/notebook/runquery.h"

#include <algorithm>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

/// The least value of a column above another, read from its index; the engine would read every row for
/// DISTINCT. Calls take for each.
template <class Take>
void forEachDistinct(const Database &database, const QString &column, const QString &table, Take take)
{
    Statement next(database, u"SELECT min(%1) FROM %2 WHERE %1 > ?"_s.arg(column, table));
    for (QString value = u""_s;;) {
        next.run(value);
        if (!next.next() || next.isNull(0))
            return;
        value = next.text(0);
        next.next();
        take(value);
    }
}

QStringList distinct(const Database &database, const QString &column, const QString &table)
{
    QStringList all;
    forEachDistinct(database, column, table, [&all](const QString &value) { all.append(value); });
    return all;
}

/// One text for each key.
QStringList namesOf(const Database &database, const QString &name, const QString &key, const QString &table)
{
    Statement newest(database,
                     u"SELECT %1 FROM %3 WHERE %2 = ? ORDER BY run DESC LIMIT 1"_s.arg(name, key, table));
    QStringList names;
    for (const QString &value : distinct(database, key, table)) {
        newest.run(value);
        if (newest.next())
            names.append(newest.text(0));
        newest.next();
    }
    return names;
}

} // namespace

bool RunFilter::isEmpty() const
{
    const bool words = std::ranges::any_of(QStringList{text, sample, product, method, person, lot, standard},
                                           [](const QString &part) { return hasWords(part); });
    return !words && !container && !from && !to && !state && !value && !flag;
}

RunPage RunSearch::page(const RunFilter &filter, RunOrder order, int size,
                        const std::optional<PageEnd> &after) const
{
    const Database &database = *m_open.database;
    Transaction snapshot(database, Transaction::Kind::Read);
    const int wanted = std::max(size, 1);
    const Query query = pageQuery(database, filter, order, wanted + 1, after);
    Statement rows(database, query.sql);
    rows.run(query.values);
    RunPage page;
    PageEnd last;
    while (rows.next()) {
        if (int(page.runs.size()) == wanted) {
            page.end = last;
            break;
        }
        page.runs.push_back(foundRun(rows));
        last = {rows.integer(0), rows.text(keyColumn)};
    }
    return page;
}

RunCount RunSearch::count(const RunFilter &filter, int upTo) const
{
    const Database &database = *m_open.database;
    Transaction snapshot(database, Transaction::Kind::Read);
    if (filter.isEmpty())
        return {database.single(u"SELECT count(*) FROM search_run"_s).toInt(), false};
    const Query query = countQuery(database, filter, upTo + 1);
    Statement count(database, query.sql);
    count.run(query.values);
    const int found = count.next() ? int(count.integer(0)) : 0;
    return {std::min(found, upTo), found > upTo};
}

std::vector<RunId> RunSearch::onBench() const
{
    const Database &database = *m_open.database;
    Transaction snapshot(database, Transaction::Kind::Read);
    Statement rows(database, u"SELECT run FROM search_run WHERE state = 'onBench' ORDER BY run"_s);
    rows.run();
    std::vector<RunId> runs;
    while (rows.next())
        runs.push_back({rows.integer(0)});
    return runs;
}

std::vector<FoundRun> RunSearch::of(const std::vector<RunId> &runs) const
{
    const Database &database = *m_open.database;
    Transaction snapshot(database, Transaction::Kind::Read);
    Statement one(database, u"SELECT %1 FROM search_run AS r WHERE r.run = ?"_s.arg(runColumns()));
    std::vector<RunId> sorted = runs;
    std::ranges::sort(sorted, [](RunId left, RunId right) { return right < left; });
    std::vector<FoundRun> found;
    for (const RunId run : sorted) {
        one.run(run.value);
        if (one.next())
            found.push_back(foundRun(one));
        one.next();
    }
    return found;
}

QStringList RunSearch::methods() const
{
    Transaction snapshot(*m_open.database, Transaction::Kind::Read);
    return namesOf(*m_open.database, u"method_name"_s, u"method_key"_s, u"search_run"_s);
}

std::vector<KnownMeasurand> RunSearch::measurands() const
{
    const Database &database = *m_open.database;
    Transaction snapshot(database, Transaction::Kind::Read);
    Statement next(database, u"SELECT min(unit) FROM search_result WHERE measurand = ? AND unit > ?"_s);
    std::vector<KnownMeasurand> all;
    for (const QString &measurand : distinct(database, u"measurand"_s, u"search_result"_s)) {
        for (QString unit = u""_s;;) {
            next.run(measurand, unit);
            if (!next.next() || next.isNull(0))
                break;
            unit = next.text(0);
            next.next();
            all.push_back({measurand, unit});
        }
    }
    return all;
}

QStringList RunSearch::persons() const
{
    Transaction snapshot(*m_open.database, Transaction::Kind::Read);
    return distinct(*m_open.database, u"person"_s, u"search_person"_s);
}

QStringList RunSearch::products() const
{
    Transaction snapshot(*m_open.database, Transaction::Kind::Read);
    return namesOf(*m_open.database, u"product"_s, u"product_key"_s,
                   u"(SELECT product, product_key, run FROM search_sample WHERE product_key <> '')"_s);
}

} // namespace plateau::notebook
