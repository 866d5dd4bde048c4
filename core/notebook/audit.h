// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/content.h"
#include "core/notebook/database.h"
#include "core/notebook/moment.h"
#include "core/notebook/schema.h"

#include <optional>
#include <vector>

namespace plateau::notebook {

/// What every act needs: the file, its schema, and who and what is running.
struct Session {
    Database &database;
    int schemaVersion = 0;
    const Layout &layout;
    const Surroundings &surroundings;
};

/// A row that an audit entry covers.
struct AuditedRecord {
    QString table;
    qint64 id = 0;
    QString contentHash;
};

/// One act on the notebook, from its first row to its audit entry: a writing transaction that only commits
/// together with an audit entry covering every row the act added. Without commit nothing is stored. What an
/// act brings about besides (a lot is open, since something was taken from it) has an entry of its own.
class Act
{
public:
    Act(const Session &session, const QString &person, const QString &action);

    const Database &database() const { return m_session.database; }
    const QString &person() const { return m_person; }
    const QString &programVersion() const { return m_session.surroundings.programVersion; }
    /// One time for all rows of the act.
    const Moment &at() const { return m_at; }
    /// The same by both clocks.
    timing::Stamp stamp() const { return {timeOf(m_at), m_boot}; }

    void concerns(RunId run) { m_run = run; }
    void note(const QString &details) { m_deeds.back().details = details; }
    /// What the act did to the run is that it took one reading more.
    void onlyTakesReading() { m_onlyTakesReading = true; }
    void covers(const QString &table, qint64 id) { m_deeds.back().records.push_back({table, id}); }
    /// What is noted and covered from here on stands in an entry of its own behind the one before, in the
    /// same transaction; it concerns no run.
    void bringsAbout(const QString &action) { m_deeds.push_back({action, {}, {}}); }
    void commit();

private:
    struct Record {
        QString table;
        qint64 id;
    };

    /// One entry of the audit trail.
    struct Deed {
        QString action;
        QString details;
        std::vector<Record> records;
    };

    std::vector<AuditedRecord> hashed(const std::vector<Record> &records) const;
    /// Gives the entry's hash.
    QString write(const Deed &deed, std::optional<RunId> run);
    bool bearsOnRepeats() const;
    void refreshSearchOf(RunId run);
    void commitOrTell(const QString &hash);

    Session m_session;
    QString m_person;
    Moment m_at;
    timing::BootTime m_boot;
    std::optional<RunId> m_run;
    bool m_onlyTakesReading = false;
    /// The act itself, then what it brought about.
    std::vector<Deed> m_deeds;
    Transaction m_transaction;
};

/// The fields of an audit entry that its hash covers, in the order they are hashed.
struct AuditFields {
    QString previousHash;
    qint64 id = 0;
    Moment at;
    QString person;
    QString account;
    QString host;
    QString programVersion;
    qint64 schemaVersion = 0;
    QString action;
    std::optional<qint64> run;
    QString details;
};
QString auditHash(const AuditFields &fields, const std::vector<AuditedRecord> &records);

/// What stands before the first entry.
QString noHash();
AuditHead readAuditHead(const Database &database);

} // namespace plateau::notebook
