// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/runquery.h"

#include "core/notebook/searchwords.h"
#include "core/notebook/words.h"

#include <algorithm>
#include <limits>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

/// One condition on a run, as the set of runs that meet it and, but for words, as a question to one run r;
/// both have the same values in their places.
struct Condition {
    QString set;
    QString probe;
    std::vector<Cell> values;
    bool isWords = false;
};

constexpr auto wordsMatch = "SELECT rowid FROM search_text WHERE search_text MATCH ?"_L1;

Condition wordsCondition(const QString &match)
{
    return {wordsMatch, {}, {match}, true};
}

// The plus signs keep the engine from walking an index of that column where the run is known already.
Condition valueCondition(const ValueRange &range)
{
    constexpr double most = std::numeric_limits<double>::max();
    return {u"SELECT run FROM search_result WHERE measurand = ? AND unit = ? AND value BETWEEN ? AND ?"_s,
            u"EXISTS (SELECT 1 FROM search_result AS x WHERE x.run = r.run AND +x.measurand = ? AND "
            "+x.unit = ? AND +x.value BETWEEN ? AND ?)"_s,
            {range.measurand, range.unit, range.least.value_or(-most), range.most.value_or(most)}};
}

Condition dayCondition(const RunFilter &filter)
{
    const auto dayText = [](const std::optional<QDate> &day, const QString &otherwise) {
        return day && day->isValid() ? day->toString(Qt::ISODate) : otherwise;
    };
    return {u"SELECT run FROM search_run WHERE day BETWEEN ? AND ?"_s,
            u"+r.day BETWEEN ? AND ?"_s,
            {dayText(filter.from, u""_s), dayText(filter.to, u"9999-12-31"_s)}};
}

Condition containerCondition(LotId container)
{
    return {u"SELECT run FROM search_lot WHERE lot = ? AND lot > 0"_s,
            u"EXISTS (SELECT 1 FROM search_lot AS x WHERE x.run = r.run AND +x.lot = ?)"_s,
            {container.value}};
}

QString stateWordOf(RunState state)
{
    return state == RunState::OnBench    ? u"onBench"_s
           : state == RunState::Accepted ? decisionWord(DecisionKind::Accepted)
                                         : decisionWord(DecisionKind::Rejected);
}

std::vector<Condition> conditionsOf(const RunFilter &filter)
{
    std::vector<Condition> conditions;
    if (const QString match = matchOf(filter); !match.isEmpty())
        conditions.push_back(wordsCondition(match));
    if (filter.container)
        conditions.push_back(containerCondition(*filter.container));
    if (filter.from || filter.to)
        conditions.push_back(dayCondition(filter));
    if (filter.state)
        conditions.push_back({u"SELECT run FROM search_run WHERE state = ?"_s,
                              u"r.state = ?"_s,
                              {stateWordOf(*filter.state)}});
    if (filter.value)
        conditions.push_back(valueCondition(*filter.value));
    if (filter.flag)
        conditions.push_back(
            {u"SELECT run FROM search_flag WHERE check_word = ?"_s,
             u"EXISTS (SELECT 1 FROM search_flag AS x WHERE x.run = r.run AND x.check_word = ?)"_s,
             {evaluation::checkWord(*filter.flag)}});
    return conditions;
}

qint64 countOf(const Database &database, const Condition &condition)
{
    Statement count(database, u"SELECT count(*) FROM (%1 LIMIT %2)"_s.arg(condition.set).arg(fewRows + 1));
    count.run(condition.values);
    return count.next() ? count.integer(0) : 0;
}

/// The rarest condition, where one is rare. Words are met in the order of the runs however rare they are, so
/// they are only counted where another order is wanted and nothing else is rare.
std::optional<std::size_t> rarest(const Database &database, const std::vector<Condition> &conditions,
                                  bool byRun)
{
    std::optional<std::size_t> best;
    qint64 fewest = fewRows + 1;
    for (std::size_t i = 0; i < conditions.size(); ++i) {
        if (conditions[i].isWords)
            continue;
        const qint64 rows = countOf(database, conditions[i]);
        if (rows < fewest) {
            fewest = rows;
            best = i;
        }
    }
    const bool words = !conditions.empty() && conditions.front().isWords;
    if (!best && words && !byRun && countOf(database, conditions.front()) <= fewRows)
        best = 0;
    return best;
}

struct Order {
    /// "run" where the key is the run itself.
    QString key;
    bool falling = false;
};

Order orderOf(RunOrder order)
{
    switch (order) {
    case RunOrder::OldestFirst:
        return {u"run"_s, false};
    case RunOrder::ByDay:
        return {u"day"_s, true};
    case RunOrder::ByDecision:
        return {u"decided_utc"_s, true};
    case RunOrder::ByTitle:
        return {u"title_key"_s, false};
    case RunOrder::ByMethod:
        return {u"method_key"_s, false};
    case RunOrder::NewestFirst:
        break;
    }
    return {u"run"_s, true};
}

/// Puts a statement together from where it reads, its conditions and its order.
class Writer
{
public:
    Writer(const Database &database, const RunFilter &filter, const Order &order)
        : m_conditions(conditionsOf(filter))
        , m_order(order)
        , m_rarest(rarest(database, m_conditions, byRun()))
    {
        m_walksWords = !m_rarest && !m_conditions.empty() && m_conditions.front().isWords && byRun();
        if (m_walksWords) {
            m_from = u"search_text CROSS JOIN search_run AS r ON r.run = search_text.rowid"_s;
            add(u"search_text MATCH ?"_s, m_conditions.front().values);
        }
        for (std::size_t i = 0; i < m_conditions.size(); ++i)
            addCondition(i);
        const bool byDay = filter.from || filter.to;
        if (byDay && !m_rarest && byRun())
            addBounds(filter);
    }

    void continueAfter(const PageEnd &end)
    {
        const QString sign = m_order.falling ? u"<"_s : u">"_s;
        if (byRun())
            add(u"%1 %2 ?"_s.arg(run(), sign), {end.run});
        else
            add(u"(%1, %2) %3 (?, ?)"_s.arg(key(), run(), sign), {end.key, end.run});
    }

    Query page(int limit) const
    {
        const QString direction = m_order.falling ? u" DESC"_s : QString();
        const QString orderBy = byRun() ? run() + direction : key() + direction + u", "_s + run() + direction;
        const QString keyText = byRun() ? u"''"_s : u"r."_s + m_order.key;
        return {u"SELECT %1, %2 FROM %3%4 ORDER BY %5 LIMIT %6"_s.arg(runColumns(), keyText, m_from, where(),
                                                                      orderBy, QString::number(limit)),
                m_values};
    }

    Query count(int limit) const
    {
        // What one condition alone finds is counted in its own index, and not asked of one run after the
        // other.
        if (m_conditions.size() == 1 && !m_conditions.front().isWords)
            return {u"SELECT count(*) FROM (SELECT DISTINCT run FROM (%1) LIMIT %2)"_s.arg(
                        m_conditions.front().set, QString::number(limit)),
                    m_conditions.front().values};
        // Nothing is asked of the runs themselves where only words count.
        const bool wordsAlone = m_walksWords && m_where.size() == 1;
        return {u"SELECT count(*) FROM (SELECT 1 FROM %1%2 LIMIT %3)"_s.arg(
                    wordsAlone ? u"search_text"_s : m_from, where(), QString::number(limit)),
                m_values};
    }

private:
    bool byRun() const { return m_order.key == "run"_L1; }
    /// With a plus the engine does not walk the runs in this order, but sorts the few that are left.
    QString run() const
    {
        return m_walksWords ? u"search_text.rowid"_s : m_rarest ? u"+r.run"_s : u"r.run"_s;
    }
    QString key() const { return (m_rarest ? u"+r."_s : u"r."_s) + m_order.key; }

    void addCondition(std::size_t i)
    {
        const Condition &condition = m_conditions[i];
        if (m_rarest == i)
            add(u"r.run IN (%1)"_s.arg(condition.set), condition.values);
        else if (condition.isWords && m_rarest)
            addWordsBetween(m_conditions[*m_rarest]);
        else if (condition.isWords && !m_walksWords)
            add(u"+r.run IN (%1)"_s.arg(condition.set), condition.values);
        else if (!condition.isWords)
            add(probeOf(condition), condition.values);
    }

    /// Asked of one run after the other the index of words would begin anew each time.
    void addWordsBetween(const Condition &rare)
    {
        add(u"+r.run IN (%1 AND rowid >= (SELECT min(run) FROM (%2)) AND rowid <= (SELECT max(run) FROM (%2)))"_s
                .arg(wordsMatch, rare.set),
            m_conditions.front().values);
        for (int end = 0; end < 2; ++end)
            m_values.insert(m_values.end(), rare.values.begin(), rare.values.end());
    }

    /// Only where it helps the order the engine may walk an index for a condition.
    QString probeOf(const Condition &condition) const
    {
        if (m_rarest && condition.probe.startsWith("r."_L1))
            return u'+' + condition.probe;
        if (!m_rarest && m_order.key == "day"_L1 && condition.probe.startsWith("+r.day"_L1))
            return condition.probe.mid(1);
        return condition.probe;
    }

    /// Runs of a few days lie close together, though not always in the order of their days.
    void addBounds(const RunFilter &filter)
    {
        const Condition days = dayCondition(filter);
        const QString set = days.set.mid(QStringLiteral("SELECT run ").size());
        add(u"%1 >= (SELECT min(run) %2)"_s.arg(run(), set), days.values);
        add(u"%1 <= (SELECT max(run) %2)"_s.arg(run(), set), days.values);
    }

    void add(const QString &condition, const std::vector<Cell> &values)
    {
        m_where.append(condition);
        m_values.insert(m_values.end(), values.begin(), values.end());
    }

    QString where() const { return m_where.isEmpty() ? QString() : u" WHERE "_s + m_where.join(u" AND "_s); }

    std::vector<Condition> m_conditions;
    Order m_order;
    std::optional<std::size_t> m_rarest;
    bool m_walksWords = false;
    QString m_from = u"search_run AS r"_s;
    QStringList m_where;
    std::vector<Cell> m_values;
};

RunState stateAt(const QString &word)
{
    if (word == "onBench"_L1)
        return RunState::OnBench;
    return decisionKindOf(word) == DecisionKind::Accepted ? RunState::Accepted : RunState::Rejected;
}

std::vector<evaluation::CheckId> flagsOf(const QString &words)
{
    std::vector<evaluation::CheckId> flags;
    if (words.isEmpty())
        return flags;
    const QStringList failed = words.split(u',', Qt::SkipEmptyParts);
    for (const evaluation::CheckId id : allChecks()) {
        if (failed.contains(evaluation::checkWord(id)))
            flags.push_back(id);
    }
    return flags;
}

} // namespace

std::vector<evaluation::CheckId> allChecks()
{
    std::vector<evaluation::CheckId> all;
    for (int i = 0; i <= int(evaluation::CheckId::SampleVolumeOutsideRange); ++i)
        all.push_back(evaluation::CheckId(i));
    return all;
}

Query pageQuery(const Database &database, const RunFilter &filter, RunOrder order, int limit,
                const std::optional<PageEnd> &after)
{
    Writer writer(database, filter, orderOf(order));
    if (after)
        writer.continueAfter(*after);
    return writer.page(limit);
}

Query countQuery(const Database &database, const RunFilter &filter, int limit)
{
    return Writer(database, filter, orderOf(RunOrder::NewestFirst)).count(limit);
}

QString runColumns()
{
    // A name has no control characters in it.
    return u"r.run, r.title, r.method_id, r.method_name, r.method_version, r.created_utc, "
           "r.created_offset_min, r.started_utc, r.started_offset_min, r.state, r.revision, r.tubes, "
           "r.readings_taken, r.readings_planned, r.decided_by, r.decided_utc, r.decided_offset_min, "
           "r.acceptable, r.is_signed, r.samples_rejected, r.samples_to_repeat, "
           "(SELECT group_concat(name, char(31)) FROM (SELECT name FROM search_sample WHERE run = r.run "
           "ORDER BY position)), "
           "(SELECT group_concat(DISTINCT check_word) FROM search_flag WHERE run = r.run)"_s;
}

FoundRun foundRun(const Statement &row)
{
    FoundRun found;
    RunSummary &run = found.summary;
    run.id = {row.integer(0)};
    run.title = row.text(1);
    run.methodId = row.text(2);
    run.methodName = row.text(3);
    run.methodVersion = int(row.integer(4));
    run.createdAt = row.time(5);
    found.startedAt = row.time(7);
    run.state = stateAt(row.text(9));
    run.revision = int(row.integer(10));
    run.tubes = int(row.integer(11));
    run.readingsTaken = int(row.integer(12));
    run.readingsPlanned = int(row.integer(13));
    run.decidedBy = row.text(14);
    if (!row.text(15).isEmpty())
        run.decidedAt = row.time(15);
    run.acceptable = row.integer(17) != 0;
    run.isSigned = row.integer(18) != 0;
    run.samplesRejected = int(row.integer(19));
    run.samplesToRepeat = int(row.integer(20));
    run.samples = row.text(21).split(QChar(31), Qt::SkipEmptyParts);
    found.flags = flagsOf(row.text(22));
    return found;
}

} // namespace plateau::notebook
