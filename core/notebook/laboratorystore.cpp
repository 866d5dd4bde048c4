// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/laboratorystore.h"

#include "core/exchange/readers.h"
#include "core/exchange/writers.h"
#include "core/notebook/documentstore.h"
#include "core/notebook/sentence.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

planning::Laboratory loadLaboratory(const Database &database)
{
    return loadLaboratory(database, newestDocument(database, Document::Laboratory));
}

planning::Laboratory loadLaboratory(const Database &database, std::optional<qint64> row)
{
    const std::optional<QString> document = documentText(database, Document::Laboratory, row);
    if (!document)
        return planning::usualLaboratory();
    exchange::Read<planning::Laboratory> read = exchange::readLaboratory(document->toUtf8());
    if (!read.value)
        throw Failure(Failure::Kind::Damaged,
                      Sentence::tr("The laboratory's settings in the notebook are damaged; go back to the "
                                   "latest backup, or save them again."),
                      exchange::problemLine(u"laboratory"_s, read.problems.front()));
    return std::move(*read.value);
}

bool storeLaboratory(Act &act, const planning::Laboratory &laboratory)
{
    return storeDocument(act, Document::Laboratory, exchange::writeLaboratory(laboratory));
}

} // namespace plateau::notebook
