// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/methodstore.h"

#include "core/exchange/readers.h"
#include "core/exchange/writers.h"
#include "core/notebook/sentence.h"

#include <algorithm>

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

/// Reads the document anew only where it is another than one of those read last: an act works on one run, whose method is
/// asked for several times, and a list of runs on few methods.
class MethodReader
{
public:
    const exchange::Read<assay::Method> &read(const QString &content)
    {
        const auto known = std::ranges::find(m_known, content, &Known::content);
        if (known != m_known.end())
            return known->read;
        if (m_known.size() >= mostKnown)
            m_known.erase(m_known.begin());
        m_known.push_back({content, exchange::readMethod(content.toUtf8())});
        return m_known.back().read;
    }

private:
    static constexpr std::size_t mostKnown = 16;
    struct Known {
        QString content;
        exchange::Read<assay::Method> read;
    };
    std::vector<Known> m_known;
};

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
    thread_local MethodReader reader;
    const exchange::Read<assay::Method> &read = reader.read(query.text(0));
    if (!read.value)
        throw damagedMethod(row, exchange::problemLine(u"method"_s, read.problems.front()));
    return *read.value;
}

} // namespace plateau::notebook
