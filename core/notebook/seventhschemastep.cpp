// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/seventhschemastep.h"

#include "core/notebook/openrepeats.h"

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
    // Which methods have runs is asked at every start.
    step.statements.append(u"CREATE INDEX run_by_method ON run (method)"_s);
    // What a run wants repeated and nobody has repeated yet (openrepeats.h). To find it in the records takes as long as
    // there are runs.
    step.statements.append(writtenOut(R"(CREATE TABLE search_repeat (
        sample TEXT NOT NULL,
        method_id TEXT NOT NULL,
        run INTEGER NOT NULL REFERENCES run (id),
        PRIMARY KEY (sample, method_id)
    ) STRICT, WITHOUT ROWID)"));
    step.derive = rebuildOpenRepeats;
    return step;
}

} // namespace plateau::notebook
