// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/documentstore.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

QString tableOf(Document document)
{
    return document == Document::Laboratory ? u"laboratory"_s : u"specifications"_s;
}

std::optional<qint64> optionalInteger(const Statement &query)
{
    return query.isNull(0) ? std::nullopt : std::optional(query.integer(0));
}

} // namespace

std::optional<qint64> newestDocument(const Database &database, Document document)
{
    Statement query(database, u"SELECT max(id) FROM %1"_s.arg(tableOf(document)));
    query.run();
    query.next();
    return optionalInteger(query);
}

std::optional<qint64> documentBefore(const Database &database, Document document, const QString &recordTable,
                                     qint64 recordId)
{
    Statement query(database, u"SELECT max(record_id) FROM audit_record WHERE record_table = ? AND audit < "
                              "(SELECT min(audit) FROM audit_record WHERE record_table = ? AND "
                              "record_id = ?)"_s);
    query.run(tableOf(document), recordTable, recordId);
    query.next();
    return optionalInteger(query);
}

std::optional<QString> documentText(const Database &database, Document document, std::optional<qint64> row)
{
    if (!row)
        return std::nullopt;
    Statement query(database, u"SELECT content FROM %1 WHERE id = ?"_s.arg(tableOf(document)));
    query.run(*row);
    return query.next() ? std::optional(query.text(0)) : std::nullopt;
}

std::optional<LaboratorySaving> documentSaving(const Database &database, Document document,
                                               std::optional<qint64> row)
{
    if (!row)
        return std::nullopt;
    Statement query(database, u"SELECT person, at_utc, at_offset_min, (SELECT count(*) FROM %1 AS earlier "
                              "WHERE earlier.id <= %1.id) FROM %1 WHERE id = ?"_s.arg(tableOf(document)));
    query.run(*row);
    if (!query.next())
        return std::nullopt;
    return LaboratorySaving{static_cast<int>(query.integer(3)), query.text(0), query.time(1)};
}

bool storeDocument(Act &act, Document document, const QByteArray &content, const QString &reason)
{
    const Database &database = act.database();
    const QString text = QString::fromUtf8(content);
    if (documentText(database, document, newestDocument(database, document)) == text)
        return false;
    const QString table = tableOf(document);
    const bool withReason = document == Document::Specifications;
    Statement insert(
        database,
        withReason
            ? u"INSERT INTO %1 (content, person, at_utc, at_offset_min, reason) "
              "VALUES (?, ?, ?, ?, ?)"_s.arg(table)
            : u"INSERT INTO %1 (content, person, at_utc, at_offset_min) VALUES (?, ?, ?, ?)"_s.arg(table));
    if (withReason)
        insert.run(text, act.person(), act.at(), reason);
    else
        insert.run(text, act.person(), act.at());
    act.covers(table, insert.insertedId());
    return true;
}

} // namespace plateau::notebook
