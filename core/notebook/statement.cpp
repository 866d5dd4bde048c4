// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/statement.h"

#include "core/notebook/database.h"
#include "core/notebook/enginefailure.h"
#include "core/notebook/progress.h"
#include "core/notebook/sentence.h"
#include "core/notebook/text.h"

#include <QSqlError>

#include <sqlite3.h>

#include <cmath>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

QSqlQuery preparedQuery(const Database &database, const QString &sql)
{
    if (auto kept = database.prepared().take(sql))
        return std::move(*kept);
    QSqlQuery query(database.handle());
    query.setForwardOnly(true);
    query.prepare(sql);
    return query;
}

} // namespace

Statement::Statement(const Database &database, const QString &sql)
    : m_database(database)
    , m_sql(sql)
    , m_query(preparedQuery(database, sql))
{
    if (m_query.lastError().isValid())
        fail();
}

Statement::~Statement()
{
    if (m_hasFailed)
        return;
    m_query.finish();
    m_database.prepared().giveBack(m_sql, std::move(m_query));
}

void Statement::execute()
{
    // Qt notices too few values only at the first use: at the next ones those of the use before would stand in.
    if (m_query.boundValues().size() != m_place)
        throw engineFailure(QSqlError(u"another number of values than before"_s), m_database.path(), m_sql);
    if (!m_query.exec())
        fail();
    requireColumns();
}

bool Statement::next()
{
    if (m_query.next()) {
        requireColumns();
        return true;
    }
    // false is "no more rows" as well as "could not read on".
    if (m_query.lastError().isValid())
        fail();
    return false;
}

// Qt takes a text that the engine had no memory to hand out for an empty one. The first row is read while it is executed.
void Statement::requireColumns()
{
    if (sqlite3_errcode(m_database.native()) != SQLITE_NOMEM)
        return;
    m_hasFailed = true;
    throw engineFailure(QSqlError({}, u"out of memory"_s, QSqlError::StatementError, QString::number(SQLITE_NOMEM)),
                        m_database.path(), m_sql);
}

void Statement::fail()
{
    m_hasFailed = true;
    if (wasStopped(m_query.lastError()))
        throw Stopped();
    throw engineFailure(m_query.lastError(), m_database.path(), m_sql);
}

std::optional<double> Statement::optionalReal(int column) const
{
    return isNull(column) ? std::nullopt : std::optional(real(column));
}

Cell Statement::cell(int column) const
{
    const QVariant found = value(column);
    switch (found.typeId()) {
    case QMetaType::Double:
        return found.toDouble();
    case QMetaType::Int:
    case QMetaType::LongLong:
        return found.toLongLong();
    default:
        if (isNull(column))
            return std::monostate();
        return found.toString();
    }
}

QDateTime Statement::time(int column) const
{
    return timeOf({text(column), int(integer(column + 1))});
}

std::optional<QDateTime> Statement::optionalTime(int column) const
{
    return isNull(column) ? std::nullopt : std::optional(time(column));
}

void Statement::bind(const QString &text)
{
    requireStorable(text);
    place(text.isNull() ? QVariant(u""_s) : QVariant(text)); // a null QString would become NULL
}

void Statement::bind(double number)
{
    if (!std::isfinite(number))
        throw Failure(Failure::Kind::Refused,
                      Sentence::tr("Nothing was stored: one of the numbers is not finite; give a number."));
    place(number + 0.0); // minus zero comes back as zero, so it is made one before it is hashed
}

void Statement::bind(const std::vector<Cell> &cells)
{
    for (const Cell &cell : cells) {
        if (const auto *number = std::get_if<qint64>(&cell))
            bind(*number);
        else if (const auto *real = std::get_if<double>(&cell))
            bind(*real);
        else if (const auto *text = std::get_if<QString>(&cell))
            bind(*text);
        else
            place(QVariant());
    }
}

void Statement::bind(const Moment &moment)
{
    place(moment.utc);
    place(moment.offset_min);
}

void Statement::bind(const std::optional<Moment> &moment)
{
    if (moment) {
        bind(*moment);
    } else {
        place(QVariant());
        place(QVariant());
    }
}

} // namespace plateau::notebook
