// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/audittrail.h"

#include "core/notebook/auditsearch.h"
#include "core/notebook/statement.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

/// The conditions of a filter with the values they need, in their order; lastStep of those that made the file.
class Conditions
{
public:
    Conditions(const AuditFilter &filter, qint64 lastStep)
    {
        if (filter.actions.isEmpty())
            add(u"audit.id NOT BETWEEN 2 AND ?"_s, {lastStep});
        if (filter.run) {
            add(u"(audit.run = ? OR audit.id IN (SELECT audit FROM audit_record JOIN clock_jump_run ON "
                "clock_jump_run.id = record_id WHERE record_table = 'clock_jump_run' AND "
                "clock_jump_run.run = ?))"_s,
                {filter.run->value, filter.run->value});
        }
        if (!filter.person.isEmpty())
            add(u"audit.person = ?"_s, {filter.person});
        if (!filter.actions.isEmpty()) {
            QVariantList values;
            for (const QString &action : filter.actions)
                values << action;
            add(u"audit.action IN (%1)"_s.arg(QStringList(values.size(), u"?"_s).join(u", "_s)), values);
        }
        const QString day = u"date(audit.at_utc, audit.at_offset_min || ' minutes')"_s;
        if (filter.from)
            add(day + u" >= ?"_s, {filter.from->toString(Qt::ISODate)});
        if (filter.to)
            add(day + u" <= ?"_s, {filter.to->toString(Qt::ISODate)});
        if (filter.before)
            add(u"audit.id < ?"_s, {*filter.before});
    }

    QString where() const { return m_parts.isEmpty() ? QString() : u"WHERE "_s + m_parts.join(u" AND "_s); }
    const QVariantList &values() const { return m_values; }

private:
    void add(const QString &condition, const QVariantList &values)
    {
        m_parts << condition;
        m_values << values;
    }

    QStringList m_parts;
    QVariantList m_values;
};

QStringList column(const Database &database, const QString &sql)
{
    Statement query(database, sql);
    query.run();
    QStringList texts;
    while (query.next())
        texts << query.text(0);
    return texts;
}

std::vector<AuditItem> itemsOf(const Database &database, const Conditions &conditions, int most)
{
    Statement query(
        database,
        u"SELECT audit.id, at_utc, at_offset_min, audit.person, account, host, program_version, "
        "action, details, hash, audit.run, coalesce(run.title, '') FROM audit "
        "LEFT JOIN run ON run.id = audit.run %1 ORDER BY audit.id DESC LIMIT ?"_s.arg(conditions.where()));
    query.runWith(conditions.values() + QVariantList{most});
    std::vector<AuditItem> items;
    while (query.next()) {
        AuditEntry entry{query.integer(0), query.time(1), query.text(3), query.text(4), query.text(5),
                         query.text(6),    query.text(7), std::nullopt,  query.text(8), query.text(9)};
        if (!query.isNull(10))
            entry.run = RunId{query.integer(10)};
        items.push_back({entry, query.text(11)});
    }
    return items;
}

/// Read together while words are looked for.
constexpr int entriesAtOnce = 500;

} // namespace

qint64 lastOfMaking(const Database &database)
{
    // A step by a newer program is an update, though nobody may have done anything before it.
    Statement query(database,
                    u"SELECT coalesce((SELECT id - 1 FROM audit WHERE id > 1 AND (action <> 'schemaStep' OR "
                    "program_version <> (SELECT program_version FROM audit WHERE id = 1)) ORDER BY id LIMIT 1), "
                    "(SELECT max(id) FROM audit), 0)"_s);
    query.run();
    return query.next() ? query.integer(0) : 0;
}

AuditPage auditPage(const Database &database, const AuditFilter &filter)
{
    const AuditSearch search(filter);
    const qint64 lastStep = lastOfMaking(database);
    AuditFilter rest = filter;
    AuditPage page;
    int looked = 0;
    QDateTime last;
    for (;;) {
        // One more than is wanted tells whether there are older ones.
        const int chunk = search.isEmpty() ? filter.most + 1 : entriesAtOnce;
        const std::vector<AuditItem> items = itemsOf(database, Conditions(rest, lastStep), chunk);
        for (const AuditItem &item : items) {
            const bool full = static_cast<int>(page.items.size()) == filter.most;
            page.isCutShort = !full && !search.isEmpty() && filter.mostLooked > 0 && looked == filter.mostLooked;
            if (full || page.isCutShort) {
                page.lookedTo = rest.before;
                page.lookedBackTo = last;
                return page;
            }
            ++looked;
            rest.before = item.entry.number;
            last = item.entry.at;
            if (search.finds(database, item))
                page.items.push_back(item);
        }
        if (static_cast<int>(items.size()) < chunk)
            return page;
    }
}

QStringList auditPersons(const Database &database)
{
    return column(database, u"SELECT DISTINCT person FROM audit ORDER BY person"_s);
}

QStringList auditActions(const Database &database)
{
    return column(database, u"SELECT DISTINCT action FROM audit ORDER BY action"_s);
}

} // namespace plateau::notebook
