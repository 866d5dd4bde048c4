// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/filehold.h"
#include "core/notebook/notebook.h"
#include "core/notebook/preparedqueries.h"

#include <QSqlDatabase>
#include <QVariant>

struct sqlite3;

namespace plateau::notebook {

/// One connection, and the only place that opens one. Every setting the records rely on is set and read back:
/// a misspelt pragma is ignored by SQLite without a word. Belongs to the thread that made it.
class Database
{
public:
    enum class InMemory { Yes };

    /// An existing file; a name that is not there creates nothing. Nothing has been read of it yet.
    Database(const QString &path, Access access);
    /// A private one that lives as long as the object.
    explicit Database(InMemory);
    ~Database();
    Database(const Database &) = delete;
    Database &operator=(const Database &) = delete;

    const QString &path() const { return m_path; }
    Access access() const { return m_access; }
    /// Not to be kept: a handle that outlives the connection kills every query.
    QSqlDatabase handle() const;
    /// The engine's own connection, for what Qt has no way to.
    sqlite3 *native() const { return m_native; }

    /// For Statement.
    PreparedQueries &prepared() const { return m_prepared; }

    /// One statement without values and without rows.
    void execute(const QString &statement) const;
    /// The first column of the first row; invalid where there is none.
    QVariant single(const QString &query) const;

    /// Keeps every other program out until this object goes. Throws Failure(Locked) within about two seconds.
    void takeExclusively();
    /// Rollback journal: a commit is whole in the one file, which people copy and keep for years.
    void setJournal();
    /// Of a file that is made as a whole and has no name yet: nothing waits for the disk, which gets all of
    /// it at the end, and what goes wrong before is thrown away with the file.
    void leaveDiskToTheEnd(int cache_KiB);
    /// Only while tables are rebuilt; foreign keys cannot be switched inside a transaction.
    void setForeignKeys(bool on);

private:
    void connect(const QString &name, const QString &options);
    void disconnect();
    void setSafely(const QString &pragma, const QString &value, const QString &readBack);

    QString m_path;
    Access m_access = Access::ReadWrite;
    QString m_connection;
    sqlite3 *m_native = nullptr;
    FileHold m_hold;
    mutable PreparedQueries m_prepared;
};

/// BEGIN ... COMMIT. A transaction not committed when it goes out of scope is rolled back as a whole.
class Transaction
{
public:
    /// Write asks for the lock at once: a reader that turns into a writer later would not be helped by
    /// waiting.
    enum class Kind { Write, Read };
    Transaction(const Database &database, Kind kind);
    ~Transaction();
    Transaction(const Transaction &) = delete;
    Transaction &operator=(const Transaction &) = delete;
    void commit();
    /// Never throws; whatever the answer, the transaction is over.
    void rollBack();

private:
    const Database &m_database;
    bool m_open = true;
};

} // namespace plateau::notebook
