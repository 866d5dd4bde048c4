// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/sixthschemastep.h"
#include "core/notebook/stockschema.h"

namespace plateau::notebook {

SchemaPart stockPart()
{
    SchemaPart part;
    for (const SchemaPart &book : {equipmentTables(), standardTables()}) {
        part.statements.append(book.statements);
        part.records.insert(part.records.end(), book.records.begin(), book.records.end());
    }
    return part;
}

} // namespace plateau::notebook
