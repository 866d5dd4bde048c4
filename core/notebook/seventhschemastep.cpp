// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/seventhschemastep.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

SchemaStep seventhSchemaStep()
{
    SchemaStep step{7, u"reagents dissolved, divided, stored and noted"_s, {}};
    for (const SchemaPart &part : {lotKeepingPart()}) {
        step.statements.append(part.statements);
        for (const ProtectedTable &table : part.records)
            step.statements.append(protectionOf(table.table, table.keys));
    }
    return step;
}

} // namespace plateau::notebook
