// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/audit.h"
#include "core/notebook/checks.h"
#include "core/notebook/sentence.h"

#include <algorithm>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

QString entryPlace(qint64 id)
{
    return Sentence::tr("audit entry %1").arg(id);
}

/// Walks the entries and their records side by side, both in the order of the entries.
class ChainWalk
{
public:
    /// after: an entry that is taken as it is; 0: all are looked at.
    ChainWalk(const Database &database, Progress *progress, qint64 after = 0)
        : m_progress(progress)
        , m_entries(
              database,
              u"SELECT id, previous_hash, at_utc, at_offset_min, person, account, host, "
              "program_version, schema_version, action, run, details, hash FROM audit WHERE id > ? ORDER BY "
              "id"_s)
        , m_records(database,
                    u"SELECT audit, record_table, record_id, content_hash, position FROM audit_record "
                    "WHERE audit > ? ORDER BY audit, position"_s)
        , m_lastId(after)
    {
        Statement last(database, u"SELECT hash FROM audit WHERE id = ?"_s);
        last.run(after);
        m_lastHash = last.next() ? last.text(0) : noHash();
        m_entries.run(after);
        m_records.run(after);
        m_recordAhead = m_records.next();
    }

    std::vector<Finding> walk()
    {
        while (m_entries.next()) {
            checkEntry();
            if (m_progress)
                m_progress->advance();
        }
        if (m_recordAhead)
            complain(m_records.integer(0), Sentence::tr("is missing, but what it covers is there"));
        return m_findings;
    }

private:
    void checkEntry()
    {
        const AuditFields entry = currentEntry();
        if (entry.id != m_lastId + 1)
            complain(m_lastId + 1, Sentence::tr("is missing"));
        else if (entry.previousHash != m_lastHash)
            complain(entry.id, Sentence::tr("does not continue the entry before it"));
        const std::vector<AuditedRecord> records = recordsOf(entry.id);
        m_lastId = entry.id;
        m_lastHash = m_entries.text(12);
        if (auditHash(entry, records) != m_lastHash)
            complain(entry.id, Sentence::tr("is not as it was written"));
    }

    AuditFields currentEntry() const
    {
        AuditFields entry{
            m_entries.text(1), m_entries.integer(0), Moment{m_entries.text(2), int(m_entries.integer(3))},
            m_entries.text(4), m_entries.text(5),    m_entries.text(6),
            m_entries.text(7), m_entries.integer(8), m_entries.text(9),
            std::nullopt,      m_entries.text(11)};
        if (!m_entries.isNull(10))
            entry.run = m_entries.integer(10);
        return entry;
    }

    std::vector<AuditedRecord> recordsOf(qint64 entry)
    {
        std::vector<AuditedRecord> records;
        while (m_recordAhead && m_records.integer(0) <= entry) {
            if (m_records.integer(0) < entry || m_records.integer(4) != qint64(records.size()))
                complain(m_records.integer(0),
                         Sentence::tr("covers a record it did not cover when it was written"));
            records.push_back({m_records.text(1), m_records.integer(2), m_records.text(3)});
            m_recordAhead = m_records.next();
        }
        return records;
    }

    void complain(qint64 entry, const QString &message)
    {
        m_findings.push_back({entryPlace(entry), message});
    }

    Progress *m_progress;
    Statement m_entries;
    Statement m_records;
    bool m_recordAhead = false;
    qint64 m_lastId;
    QString m_lastHash;
    std::vector<Finding> m_findings;
};

/// The rows of one table against the newest audit record of each, both in the order of the row's id.
class TableCheck
{
public:
    TableCheck(const Database &database, const std::map<int, Layout> &layouts, int version,
               const QString &table, std::vector<Finding> &findings)
        : m_database(database)
        , m_layouts(layouts)
        , m_version(version)
        , m_table(table)
        , m_findings(findings)
        , m_rows(database, table, layouts.at(version).columns.at(table))
        , m_audited(
              database,
              u"SELECT record_id, content_hash, schema_version, max(audit) FROM audit_record JOIN audit "
              "ON audit.id = audit_record.audit WHERE record_table = ? GROUP BY record_id "
              "ORDER BY record_id"_s)
    {
    }

    void check(Progress *progress)
    {
        m_rows.start();
        m_audited.run(m_table);
        bool row = m_rows.next();
        bool audited = m_audited.next();
        while (row || audited) {
            if (audited && (!row || m_audited.integer(0) < m_rows.id())) {
                complain(m_audited.integer(0), Sentence::tr("is gone, but audit entry %1 covers it"));
                audited = m_audited.next();
            } else if (!audited || m_rows.id() < m_audited.integer(0)) {
                m_findings.push_back({place(m_rows.id()), Sentence::tr("is covered by no audit entry")});
                row = m_rows.next();
            } else {
                if (hashAsAudited() != m_audited.text(1))
                    complain(m_rows.id(), Sentence::tr("was changed since audit entry %1"));
                if (progress)
                    progress->advance();
                row = m_rows.next();
                audited = m_audited.next();
            }
        }
    }

private:
    QString hashAsAudited()
    {
        const int then = int(m_audited.integer(2));
        if (then == m_version)
            return m_rows.hash();
        const auto layout = m_layouts.find(then);
        if (layout == m_layouts.end() || !layout->second.columns.contains(m_table))
            return {};
        auto &reader = m_older[then];
        if (!reader)
            reader = std::make_unique<RowReader>(m_database, m_table, layout->second.columns.at(m_table));
        return reader->hashOf(m_rows.id()).value_or(QString());
    }

    QString place(qint64 id) const { return u"%1 %2"_s.arg(m_table).arg(id); }
    void complain(qint64 id, const QString &message)
    {
        m_findings.push_back({place(id), message.arg(m_audited.integer(3))});
    }

    const Database &m_database;
    const std::map<int, Layout> &m_layouts;
    int m_version;
    QString m_table;
    std::vector<Finding> &m_findings;
    RowReader m_rows;
    Statement m_audited;
    std::map<int, std::unique_ptr<RowReader>> m_older;
};

bool isCoveredByChain(const QString &table)
{
    return table == "audit"_L1 || table == "audit_record"_L1 || table.startsWith("sqlite_"_L1) ||
           isDerived(table);
}

} // namespace

std::vector<Finding> chainFindings(const Database &database, Progress *progress)
{
    try {
        return ChainWalk(database, progress).walk();
    } catch (const Failure &failure) {
        return {{Sentence::tr("the audit trail"), failure.details()}};
    }
}

std::vector<Finding> lastChainFindings(const Database &database, qint64 entries)
{
    try {
        const qint64 newest = database.single(u"SELECT max(id) FROM audit"_s).toLongLong();
        return ChainWalk(database, nullptr, std::max<qint64>(0, newest - entries)).walk();
    } catch (const Failure &failure) {
        return {{Sentence::tr("the audit trail"), failure.details()}};
    }
}

std::vector<Finding> recordFindings(const Database &database, const std::vector<SchemaStep> &steps,
                                    int version, Progress *progress)
{
    QStringList tables;
    for (const auto &[table, columns] : layoutAfter(steps, version).columns) {
        if (!isCoveredByChain(table))
            tables.append(table);
    }
    return recordFindings(database, steps, version, tables, progress);
}

std::vector<Finding> recordFindings(const Database &database, const std::vector<SchemaStep> &steps,
                                    int version, const QStringList &tables, Progress *progress)
{
    std::map<int, Layout> layouts;
    for (int number = 1; number <= version; ++number)
        layouts[number] = layoutAfter(steps, number);
    std::vector<Finding> findings;
    for (const QString &table : tables) {
        try {
            TableCheck(database, layouts, version, table, findings).check(progress);
        } catch (const Failure &failure) {
            findings.push_back({table, failure.details()});
        }
    }
    return findings;
}

} // namespace plateau::notebook
