// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/sixthschemastep.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

SchemaStep sixthSchemaStep()
{
    SchemaStep step{
        6,
        u"owners of uncertainties, standards, equipment, charts, the basis of reviews, and a search over all runs"_s,
        {}};
    for (const SchemaPart &part :
         {ownersPart(), stockPart(), chartsPart(), reviewPart(), recordPart(), searchPart()}) {
        step.statements.append(part.statements);
        for (const ProtectedTable &table : part.records)
            step.statements.append(protectionOf(table.table, table.keys));
    }
    return step;
}

} // namespace plateau::notebook
