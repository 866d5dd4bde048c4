// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/methodstore.h"

#include "core/exchange/readers.h"
#include "core/exchange/writers.h"
#include "core/notebook/sentence.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

Failure damagedMethod(qint64 row, const QString &details)
{
    return Failure(
        Failure::Kind::Damaged,
        Sentence::tr("The method in row %1 of the notebook is damaged, so its runs cannot be worked "
                     "out; go back to the latest backup.")
            .arg(row),
        details);
}

} // namespace

qint64 storeMethod(Act &act, const assay::Method &method)
{
    const QByteArray document = exchange::writeMethod(method);
    const QString hash = documentHash(document);
    const QString content = QString::fromUtf8(document);
    {
        Statement known(act.database(), u"SELECT id, content FROM method WHERE content_hash = ?"_s);
        known.run(hash);
        if (known.next()) {
            if (known.text(1) != content)
                throw damagedMethod(known.integer(0), u"content_hash is that of another content"_s);
            return known.integer(0);
        }
    }
    Statement insert(act.database(),
                     u"INSERT INTO method (method_id, version, content_hash, content) VALUES (?, ?, ?, ?)"_s);
    insert.run(method.id, method.version, hash, content);
    act.covers(u"method"_s, insert.insertedId());
    return insert.insertedId();
}

assay::Method loadMethod(const Database &database, qint64 row)
{
    Statement query(database, u"SELECT content FROM method WHERE id = ?"_s);
    query.run(row);
    if (!query.next())
        throw damagedMethod(row, u"no such row"_s);
    exchange::Read<assay::Method> read = exchange::readMethod(query.text(0).toUtf8());
    if (!read.value)
        throw damagedMethod(row, exchange::problemLine(u"method"_s, read.problems.front()));
    return std::move(*read.value);
}

} // namespace plateau::notebook
