// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/moment.h"

#include <QSqlQuery>
#include <QVariant>

#include <concepts>
#include <optional>
#include <variant>
#include <vector>

namespace plateau::notebook {

class Database;

/// A value as SQLite keeps it; monostate for NULL.
using Cell = std::variant<std::monostate, qint64, double, QString>;

/// One prepared statement, read forward once; the connection keeps it for the next of the same text. Every error throws Failure, what is stopped (stopping.h) throws
/// Stopped; nothing fails quietly. Values are
/// bound by position, texts only where they come back as the same text, numbers only where they are finite
/// (SQLite would store a NaN as NULL). A Moment takes two places: the time in UTC and its offset.
class Statement
{
public:
    Statement(const Database &database, const QString &sql);
    Statement(const Statement &) = delete;
    Statement &operator=(const Statement &) = delete;
    ~Statement();

    template <class... Values> Statement &run(const Values &...values)
    {
        m_place = 0;
        (bind(values), ...);
        execute();
        return *this;
    }
    /// The same with values whose number and kinds only show when it runs; they go in as they are.
    Statement &runWith(const QVariantList &values)
    {
        m_place = 0;
        for (const QVariant &value : values)
            place(value);
        execute();
        return *this;
    }
    bool next();

    QVariant value(int column) const { return m_query.value(column); }
    bool isNull(int column) const { return m_query.isNull(column); }
    qint64 integer(int column) const { return m_query.value(column).toLongLong(); }
    double real(int column) const { return m_query.value(column).toDouble(); }
    QString text(int column) const { return m_query.value(column).toString(); }
    std::optional<double> optionalReal(int column) const;
    Cell cell(int column) const;
    /// From the column and the one after it.
    QDateTime time(int column) const;
    std::optional<QDateTime> optionalTime(int column) const;

    qint64 insertedId() const { return m_query.lastInsertId().toLongLong(); }

private:
    void bind(const QString &text);
    void bind(double number);
    void bind(std::integral auto number) { place(QVariant(qint64(number))); }
    void bind(const Moment &moment);
    void bind(const std::optional<Moment> &moment);
    template <class T> void bind(const std::optional<T> &value)
    {
        if (value)
            bind(*value);
        else
            place(QVariant());
    }
    /// One place each.
    void bind(const std::vector<Cell> &cells);
    void place(const QVariant &value) { m_query.bindValue(m_place++, value); }
    void execute();
    void requireColumns();
    [[noreturn]] void fail();

    const Database &m_database;
    QString m_sql;
    QSqlQuery m_query;
    bool m_hasFailed = false;
    int m_place = 0;
};

} // namespace plateau::notebook
