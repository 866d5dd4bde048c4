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
    // Whether a sample was run again later is asked of every repeat; by its name alone that meant all its
    // runs, each time.
    step.statements.append(
        {u"DROP INDEX sample_by_name"_s, u"CREATE INDEX sample_by_name ON sample (name, run)"_s});
    return step;
}

} // namespace plateau::notebook
