// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/database.h"

#include "core/notebook/enginefailure.h"
#include "core/notebook/sentence.h"
#include "core/notebook/statement.h"

#include <QDir>
#include <QFileInfo>
#include <QSqlDriver>
#include <QSqlQuery>
#include <QUrl>
#include <QUuid>

#include <sqlite3.h>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

constexpr auto busyTimeout_ms = 2000;

sqlite3 *nativeOf(const QSqlDatabase &database)
{
    const QVariant pointer = database.driver()->handle();
    return *static_cast<sqlite3 *const *>(pointer.constData());
}

QString uriOf(const QString &path, Access access)
{
    const QUrl url = QUrl::fromLocalFile(QFileInfo(path).absoluteFilePath());
    return QString::fromLatin1(url.toEncoded(QUrl::FullyEncoded)) +
           (access == Access::ReadWrite ? u"?mode=rw"_s : u"?mode=ro"_s);
}

/// What is stored in a file that was removed, moved or replaced is lost with it. SQLite looks only where it
/// opens a journal, and in exclusive locking mode that is once.
void requireInPlace(const Database &database)
{
    int hasMoved = 0;
    sqlite3_file_control(database.native(), "main", SQLITE_FCNTL_HAS_MOVED, &hasMoved);
    if (hasMoved == 0)
        return;
    throw Failure(
        Failure::Kind::Storage,
        Sentence::tr(
            "The notebook %1 was removed, moved or replaced while it was open; nothing of this step was "
            "stored: put the file back where it was, or close the program and open the notebook where it "
            "is now.")
            .arg(QDir::toNativeSeparators(database.path())),
        u"SQLITE_FCNTL_HAS_MOVED"_s);
}

} // namespace

Database::Database(const QString &path, Access access)
    : m_path(path)
    , m_access(access)
    , m_connection(u"plateau-notebook-"_s + QUuid::createUuid().toString(QUuid::WithoutBraces))
{
    connect(uriOf(path, access), u"QSQLITE_OPEN_URI;QSQLITE_BUSY_TIMEOUT=%1"_s.arg(busyTimeout_ms));
}

Database::Database(InMemory)
    : m_path(u":memory:"_s)
    , m_connection(u"plateau-memory-"_s + QUuid::createUuid().toString(QUuid::WithoutBraces))
{
    connect(m_path, u"QSQLITE_BUSY_TIMEOUT=%1"_s.arg(busyTimeout_ms));
}

Database::~Database()
{
    disconnect();
}

QSqlDatabase Database::handle() const
{
    return QSqlDatabase::database(m_connection, false);
}

void Database::connect(const QString &name, const QString &options)
{
    try {
        QSqlDatabase database = QSqlDatabase::addDatabase(u"QSQLITE"_s, m_connection);
        database.setDatabaseName(name);
        database.setConnectOptions(options);
        if (!database.open())
            throw engineFailure(database.lastError(), m_path, u"open"_s);
        m_native = nativeOf(database);
        setSafely(u"busy_timeout"_s, QString::number(busyTimeout_ms), QString::number(busyTimeout_ms));
        setSafely(u"foreign_keys"_s, u"ON"_s, u"1"_s);
        setSafely(u"trusted_schema"_s, u"OFF"_s, u"0"_s);
        setSafely(u"recursive_triggers"_s, u"ON"_s, u"1"_s);
        setSafely(u"cell_size_check"_s, u"ON"_s, u"1"_s);
        setSafely(u"ignore_check_constraints"_s, u"OFF"_s, u"0"_s);
        if (name != m_path) { // a database in memory has neither a map nor a disk to wait for
            setSafely(u"mmap_size"_s, u"0"_s, u"0"_s);
            setSafely(u"synchronous"_s, u"EXTRA"_s, u"3"_s);
        }
    } catch (...) {
        disconnect();
        throw;
    }
}

void Database::disconnect()
{
    m_prepared.clear();
    {
        QSqlDatabase database = handle();
        database.close();
    }
    QSqlDatabase::removeDatabase(m_connection);
    m_hold.release();
}

void Database::setSafely(const QString &pragma, const QString &value, const QString &readBack)
{
    execute(u"PRAGMA %1=%2"_s.arg(pragma, value));
    const QString found = single(u"PRAGMA %1"_s.arg(pragma)).toString();
    if (found != readBack)
        throw Failure(
            Failure::Kind::Storage,
            Sentence::tr("The notebook %1 could not be opened in the way that keeps its records safe; "
                         "nothing was stored: see that the program's SQLite is the one it was built with.")
                .arg(QDir::toNativeSeparators(m_path)),
            u"PRAGMA %1: asked for %2, found %3"_s.arg(pragma, readBack, found));
}

void Database::execute(const QString &statement) const
{
    Statement(*this, statement).run();
}

QVariant Database::single(const QString &query) const
{
    Statement statement(*this, query);
    statement.run();
    return statement.next() ? statement.value(0) : QVariant();
}

void Database::takeExclusively()
{
    setSafely(u"locking_mode"_s, u"EXCLUSIVE"_s, u"exclusive"_s);
    execute(u"BEGIN EXCLUSIVE"_s);
    execute(u"COMMIT"_s); // in this locking mode the lock stays
    if (!m_hold.take(m_path))
        throw inUseElsewhere(m_path);
}

void Database::setJournal()
{
    setSafely(u"journal_mode"_s, u"DELETE"_s, u"delete"_s);
}

void Database::leaveDiskToTheEnd(int cache_KiB)
{
    setSafely(u"journal_mode"_s, u"MEMORY"_s, u"memory"_s);
    setSafely(u"synchronous"_s, u"OFF"_s, u"0"_s);
    const QString size = QString::number(-cache_KiB); // SQLite counts KiB downwards, pages upwards
    setSafely(u"cache_size"_s, size, size);
}

void Database::setForeignKeys(bool on)
{
    setSafely(u"foreign_keys"_s, on ? u"ON"_s : u"OFF"_s, on ? u"1"_s : u"0"_s);
}

Transaction::Transaction(const Database &database, Kind kind)
    : m_database(database)
{
    database.execute(kind == Kind::Write ? u"BEGIN IMMEDIATE"_s : u"BEGIN"_s);
}

Transaction::~Transaction()
{
    if (m_open)
        rollBack();
}

void Transaction::rollBack()
{
    // After most storage errors SQLite has rolled back by itself and answers that no transaction is active:
    // that is what is wanted, so the answer is not looked at.
    QSqlQuery(m_database.handle()).exec(u"ROLLBACK"_s);
    m_open = false;
}

void Transaction::commit()
{
    if (m_database.access() == Access::ReadWrite)
        requireInPlace(m_database);
    m_database.execute(u"COMMIT"_s);
    m_open = false;
}

} // namespace plateau::notebook
