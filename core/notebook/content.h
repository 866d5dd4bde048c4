// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/statement.h"

#include <QCryptographicHash>
#include <QString>
#include <QStringList>

#include <map>
#include <memory>
#include <optional>

namespace plateau::notebook {

/// SHA-256 over fields, each with its length before it, so that no two lists of fields give the same bytes.
class FieldHash
{
public:
    /// domain: says what is hashed, so that a record never passes for an audit entry.
    explicit FieldHash(const QByteArray &domain);
    void add(const QByteArray &bytes);
    void add(const QString &text) { add(text.toUtf8()); }
    void add(qint64 number) { add(QByteArray::number(number)); }
    /// 64 lower-case hexadecimal digits.
    QString hex() const;

private:
    QCryptographicHash m_hash;
};

/// The hash of whole rows as they lie in the file: of every column its name, its storage class and its bytes,
/// a text's before any decoding, a number's by its bits.
class RowReader
{
public:
    RowReader(const Database &database, const QString &table, const QStringList &columns);
    /// Of one row; nothing if there is none of that id.
    std::optional<QString> hashOf(qint64 id);
    /// All rows in the order of their ids: start, then next until it says false.
    void start();
    bool next();
    qint64 id() const { return m_all->integer(0); }
    QString hash() const { return hashOfRow(*m_all); }

private:
    QString hashOfRow(const Statement &row) const;

    QString m_table;
    QStringList m_columns;
    Statement m_one;
    std::unique_ptr<Statement> m_all;
    const Database &m_database;
};

/// SHA-256 of a document, hexadecimal.
QString documentHash(const QByteArray &document);

} // namespace plateau::notebook
