// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/specificationstore.h"

#include "core/exchange/readers.h"
#include "core/exchange/writers.h"
#include "core/notebook/documentstore.h"
#include "core/notebook/notebook.h"
#include "core/notebook/sentence.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

std::vector<evaluation::Specification> loadSpecifications(const Database &database)
{
    return loadSpecifications(database, newestDocument(database, Document::Specifications));
}

std::vector<evaluation::Specification> loadSpecifications(const Database &database, std::optional<qint64> row)
{
    const std::optional<QString> document = documentText(database, Document::Specifications, row);
    if (!document)
        return {};
    auto read = exchange::readSpecifications(document->toUtf8());
    if (!read.value)
        throw Failure(
            Failure::Kind::Damaged,
            Sentence::tr(
                "The limits in the notebook are damaged; go back to the latest backup, or save them again."),
            exchange::problemLine(u"specifications"_s, read.problems.front()));
    return std::move(*read.value);
}

bool storeSpecifications(Act &act, const std::vector<evaluation::Specification> &specifications,
                         const QString &reason)
{
    const bool isFirst = !newestDocument(act.database(), Document::Specifications);
    if (isFirst && specifications.empty())
        return false;
    return storeDocument(act, Document::Specifications, exchange::writeSpecifications(specifications),
                         reason);
}

} // namespace plateau::notebook
