// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/laboratorystore.h"

#include "core/exchange/readers.h"
#include "core/exchange/writers.h"
#include "core/notebook/sentence.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

std::optional<QString> lastDocument(const Database &database)
{
    Statement query(database, u"SELECT content FROM laboratory ORDER BY id DESC LIMIT 1"_s);
    query.run();
    return query.next() ? std::optional(query.text(0)) : std::nullopt;
}

} // namespace

planning::Laboratory loadLaboratory(const Database &database)
{
    const std::optional<QString> document = lastDocument(database);
    if (!document)
        return planning::usualLaboratory();
    exchange::Read<planning::Laboratory> read = exchange::readLaboratory(document->toUtf8());
    if (!read.value)
        throw Failure(
            Failure::Kind::Damaged,
            Sentence::tr("The laboratory's settings in the notebook are damaged; go back to the latest "
                         "backup, or save them anew."),
            exchange::problemLine(u"laboratory"_s, read.problems.front()));
    return std::move(*read.value);
}

std::optional<LaboratorySaving> loadLaboratorySaving(const Database &database)
{
    Statement query(database, u"SELECT person, at_utc, at_offset_min, (SELECT count(*) FROM laboratory) "
                              "FROM laboratory ORDER BY id DESC LIMIT 1"_s);
    query.run();
    if (!query.next())
        return std::nullopt;
    return LaboratorySaving{static_cast<int>(query.integer(3)), query.text(0), query.time(1)};
}

bool storeLaboratory(Act &act, const planning::Laboratory &laboratory)
{
    const QString document = QString::fromUtf8(exchange::writeLaboratory(laboratory));
    if (lastDocument(act.database()) == document)
        return false;
    Statement insert(
        act.database(),
        u"INSERT INTO laboratory (content, person, at_utc, at_offset_min) VALUES (?, ?, ?, ?)"_s);
    insert.run(document, act.person(), act.at());
    act.covers(u"laboratory"_s, insert.insertedId());
    return true;
}

} // namespace plateau::notebook
