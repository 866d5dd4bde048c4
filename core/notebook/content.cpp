// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/content.h"

#include "core/notebook/database.h"

#include <QtEndian>

#include <bit>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

QByteArray bigEndian(quint64 number)
{
    QByteArray bytes(sizeof number, Qt::Uninitialized);
    qToBigEndian(number, bytes.data());
    return bytes;
}

// Two places a column: its storage class, and its value with texts as bytes.
QString selection(const QString &table, const QStringList &columns)
{
    QString list = u"id"_s;
    for (const QString &column : columns)
        list += u", typeof(%1), CASE typeof(%1) WHEN 'text' THEN CAST(%1 AS BLOB) ELSE %1 END"_s.arg(column);
    return u"SELECT %1 FROM %2"_s.arg(list, table);
}

QByteArray bytesOf(const QString &storageClass, const QVariant &value)
{
    if (storageClass == "null"_L1)
        return {};
    if (storageClass == "real"_L1)
        return bigEndian(std::bit_cast<quint64>(value.toDouble()));
    if (storageClass == "integer"_L1)
        return QByteArray::number(value.toLongLong());
    return value.toByteArray();
}

} // namespace

FieldHash::FieldHash(const QByteArray &domain)
    : m_hash(QCryptographicHash::Sha256)
{
    add(domain);
}

void FieldHash::add(const QByteArray &bytes)
{
    m_hash.addData(bigEndian(quint64(bytes.size())));
    m_hash.addData(bytes);
}

QString FieldHash::hex() const
{
    return QString::fromLatin1(m_hash.result().toHex());
}

RowReader::RowReader(const Database &database, const QString &table, const QStringList &columns)
    : m_table(table)
    , m_columns(columns)
    , m_one(database, selection(table, columns) + u" WHERE id = ?"_s)
    , m_database(database)
{
}

std::optional<QString> RowReader::hashOf(qint64 id)
{
    m_one.run(id);
    if (!m_one.next())
        return std::nullopt;
    const QString hash = hashOfRow(m_one);
    m_one.next(); // to the end, so that no read stays open
    return hash;
}

void RowReader::start()
{
    m_all = std::make_unique<Statement>(m_database, selection(m_table, m_columns) + u" ORDER BY id"_s);
    m_all->run();
}

bool RowReader::next()
{
    return m_all->next();
}

QString RowReader::hashOfRow(const Statement &row) const
{
    FieldHash hash("plateau-record/1");
    hash.add(m_table);
    int place = 1;
    for (const QString &column : m_columns) {
        const QString storageClass = row.text(place++);
        hash.add(column);
        hash.add(storageClass);
        hash.add(bytesOf(storageClass, row.value(place++)));
    }
    return hash.hex();
}

QString documentHash(const QByteArray &document)
{
    return QString::fromLatin1(QCryptographicHash::hash(document, QCryptographicHash::Sha256).toHex());
}

} // namespace plateau::notebook
