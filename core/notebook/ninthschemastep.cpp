// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/schema.h"
#include "core/notebook/schemawords.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

const char *const dilutionsMade[] = {
    // A step of diluting a sample was made, or was not after all; the last one of a step counts. last_mark:
    // the newest mark in a tube of the run then, 0 for none, so that the order among those is known.
    R"(CREATE TABLE dilution_mark (
        id @ID,
        dilution INTEGER NOT NULL REFERENCES dilution (id),
        kind TEXT NOT NULL CHECK (kind IN ('done', 'undone')),
        last_mark INTEGER NOT NULL CHECK (last_mark >= 0),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",
    "CREATE INDEX dilution_mark_of_dilution ON dilution_mark (dilution)",
    R"(CREATE TRIGGER dilution_mark_on_bench BEFORE INSERT ON dilution_mark WHEN EXISTS (
        SELECT 1 FROM dilution JOIN sample ON sample.id = dilution.sample JOIN decision ON decision.run = sample.run
        WHERE dilution.id = NEW.dilution AND decision.id NOT IN (SELECT decision FROM reopening))
        BEGIN SELECT RAISE(ABORT, 'the run is decided'); END)",
    R"(CREATE TRIGGER dilution_mark_changes_something BEFORE INSERT ON dilution_mark
        WHEN (NEW.kind = 'done') = coalesce((
        SELECT kind = 'done' FROM dilution_mark WHERE dilution = NEW.dilution ORDER BY id DESC LIMIT 1), 0)
        BEGIN SELECT RAISE(ABORT, 'the mark is so already'); END)",
};

} // namespace

SchemaStep ninthSchemaStep()
{
    SchemaStep step{9, u"dilutions that were ticked as made"_s, {}};
    for (const char *const statement : dilutionsMade)
        step.statements.append(writtenOut(statement));
    step.statements.append(protectionOf(u"dilution_mark"_s, {}));
    return step;
}

} // namespace plateau::notebook
