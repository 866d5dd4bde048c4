// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/audit.h"

#include "core/notebook/openrepeats.h"
#include "core/notebook/searchindex.h"
#include "core/notebook/sentence.h"
#include "core/notebook/text.h"

#include <QDir>

#include <algorithm>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

void insertEntry(const Database &database, const AuditFields &entry, const QString &hash)
{
    Statement(database,
              u"INSERT INTO audit (id, previous_hash, at_utc, at_offset_min, person, account, host, "
              "program_version, schema_version, action, run, details, hash) "
              "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"_s)
        .run(entry.id, entry.previousHash, entry.at, entry.person, entry.account, entry.host,
             entry.programVersion, entry.schemaVersion, entry.action, entry.run, entry.details, hash);
}

void insertRecords(const Database &database, qint64 entry, const std::vector<AuditedRecord> &records)
{
    Statement insert(database,
                     u"INSERT INTO audit_record (audit, position, record_table, record_id, content_hash) "
                     "VALUES (?, ?, ?, ?, ?)"_s);
    int position = 0;
    for (const AuditedRecord &record : records)
        insert.run(entry, position++, record.table, record.id, record.contentHash);
}

bool mayStand(const Database &database, const QString &hash)
{
    try {
        return readAuditHead(database).hash == hash;
    } catch (const Failure &failure) {
        // What the disk does not give cannot be told; a notebook that is only being made has no trail to
        // read.
        return failure.kind() == Failure::Kind::Storage;
    }
}

} // namespace

Act::Act(const Session &session, const QString &person, const QString &action)
    : m_session(session)
    , m_person(person)
    , m_at(momentOf(session.surroundings.now()))
    , m_boot(session.surroundings.boot ? session.surroundings.boot() : timing::BootTime{})
    , m_deeds({Deed{action, {}, {}}})
    , m_transaction(session.database, Transaction::Kind::Write)
{
    requirePerson(person);
}

std::vector<AuditedRecord> Act::hashed(const std::vector<Record> &records) const
{
    std::vector<AuditedRecord> hashed;
    std::map<QString, std::unique_ptr<RowReader>> readers;
    for (const Record &record : records) {
        auto &reader = readers[record.table];
        if (!reader)
            reader = std::make_unique<RowReader>(database(), record.table,
                                                 m_session.layout.columns.at(record.table));
        // A row just inserted in this transaction; were it not there, the empty hash would break a CHECK.
        hashed.push_back({record.table, record.id, reader->hashOf(record.id).value_or(QString())});
    }
    return hashed;
}

QString Act::write(const Deed &deed, std::optional<RunId> run)
{
    const std::vector<AuditedRecord> records = hashed(deed.records);
    const AuditHead head = readAuditHead(database());
    const Surroundings &around = m_session.surroundings;
    AuditFields entry{head.hash,
                      head.entries + 1,
                      m_at,
                      m_person,
                      around.account,
                      around.host,
                      around.programVersion,
                      m_session.schemaVersion,
                      deed.action,
                      std::nullopt,
                      deed.details};
    if (run)
        entry.run = run->value;
    const QString hash = auditHash(entry, records);
    insertEntry(database(), entry, hash);
    insertRecords(database(), entry.id, records);
    return hash;
}

void Act::commit()
{
    QString hash = write(m_deeds.front(), m_run);
    for (auto deed = m_deeds.begin() + 1; deed != m_deeds.end(); ++deed)
        hash = write(*deed, {});
    if (m_run && m_session.layout.columns.contains(u"search_run"_s))
        refreshSearchOf(*m_run);
    commitOrTell(hash);
}

bool Act::bearsOnRepeats() const
{
    return std::ranges::any_of(m_deeds, [](const Deed &deed) {
        return std::ranges::any_of(
            deed.records, [](const Record &record) { return notebook::bearsOnRepeats(record.table); });
    });
}

void Act::refreshSearchOf(RunId run)
{
    if (m_onlyTakesReading)
        countReading(database(), run, m_person);
    else
        refreshSearch(database(), run);
    if (m_session.layout.columns.contains(u"search_repeat"_s) && bearsOnRepeats())
        refreshOpenRepeats(database(), run);
}

// A commit that reports an error may stand all the same: where the last of its four syncs fails, the journal
// that would undo it is void already. The head of the chain tells.
void Act::commitOrTell(const QString &hash)
{
    try {
        m_transaction.commit();
    } catch (const Failure &failure) {
        m_transaction.rollBack();
        if (!mayStand(database(), hash))
            throw;
        throw Failure(
            Failure::Kind::Unconfirmed,
            Sentence::tr("The disk failed at the end of the last step in the notebook %1, so it is not sure "
                         "that it is kept: see that the disk is sound, open the notebook again, and look "
                         "before doing the step again.")
                .arg(QDir::toNativeSeparators(database().path())),
            failure.details());
    }
}

QString auditHash(const AuditFields &fields, const std::vector<AuditedRecord> &records)
{
    FieldHash hash("plateau-audit/1");
    hash.add(fields.previousHash);
    hash.add(fields.id);
    hash.add(fields.at.utc);
    hash.add(fields.at.offset_min);
    hash.add(fields.person);
    hash.add(fields.account);
    hash.add(fields.host);
    hash.add(fields.programVersion);
    hash.add(fields.schemaVersion);
    hash.add(fields.action);
    hash.add(fields.run ? QByteArray::number(*fields.run) : QByteArray());
    hash.add(fields.details);
    hash.add(qint64(records.size()));
    for (const AuditedRecord &record : records) {
        hash.add(record.table);
        hash.add(record.id);
        hash.add(record.contentHash);
    }
    return hash.hex();
}

QString noHash()
{
    return QString(64, u'0');
}

AuditHead readAuditHead(const Database &database)
{
    Statement last(database, u"SELECT id, hash FROM audit ORDER BY id DESC LIMIT 1"_s);
    last.run();
    if (!last.next())
        return {0, noHash()};
    return {int(last.integer(0)), last.text(1)};
}

} // namespace plateau::notebook
