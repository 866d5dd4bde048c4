// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/specificationstore.h"

#include "core/exchange/readers.h"
#include "core/exchange/writers.h"
#include "core/notebook/notebook.h"
#include "core/notebook/sentence.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

std::optional<QString> lastDocument(const Database &database)
{
    Statement query(database, u"SELECT content FROM specifications ORDER BY id DESC LIMIT 1"_s);
    query.run();
    return query.next() ? std::optional(query.text(0)) : std::nullopt;
}

} // namespace

std::vector<evaluation::Specification> loadSpecifications(const Database &database)
{
    const std::optional<QString> document = lastDocument(database);
    if (!document)
        return {};
    auto read = exchange::readSpecifications(document->toUtf8());
    if (!read.value)
        throw Failure(Failure::Kind::Damaged,
                      Sentence::tr("The limits in the notebook are damaged; go back to the latest backup, or "
                                   "save them anew."),
                      exchange::problemLine(u"specifications"_s, read.problems.front()));
    return std::move(*read.value);
}

std::optional<LaboratorySaving> loadSpecificationsSaving(const Database &database)
{
    Statement query(database, u"SELECT person, at_utc, at_offset_min, (SELECT count(*) FROM specifications) "
                              "FROM specifications ORDER BY id DESC LIMIT 1"_s);
    query.run();
    if (!query.next())
        return std::nullopt;
    return LaboratorySaving{static_cast<int>(query.integer(3)), query.text(0), query.time(1)};
}

bool storeSpecifications(Act &act, const std::vector<evaluation::Specification> &specifications,
                         const QString &reason)
{
    const QString document = QString::fromUtf8(exchange::writeSpecifications(specifications));
    const std::optional<QString> last = lastDocument(act.database());
    if (last == document || (!last && specifications.empty()))
        return false;
    Statement insert(act.database(), u"INSERT INTO specifications (content, person, reason, at_utc, "
                                     "at_offset_min) VALUES (?, ?, ?, ?, ?)"_s);
    insert.run(document, act.person(), reason, act.at());
    act.covers(u"specifications"_s, insert.insertedId());
    return true;
}

} // namespace plateau::notebook
