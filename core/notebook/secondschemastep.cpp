// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/schemawords.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

// What people did with a method. note: for retired and reinstated the reason. A method that shipped, or that
// only came with a run, has no row saying how it came.
const char *const secondStatements[] = {
    R"(CREATE TABLE method_act (
        id @ID,
        method INTEGER NOT NULL REFERENCES method (id),
        kind TEXT NOT NULL CHECK (kind IN ('saved', 'imported', 'retired', 'reinstated')),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET),
        note TEXT NOT NULL,
        file_name TEXT CHECK (file_name <> ''),
        CHECK ((kind = 'imported') = (file_name IS NOT NULL)),
        CHECK (kind IN ('saved', 'imported') OR trim(note, @BLANKS) <> '')
    ) STRICT)",
    "CREATE INDEX method_act_of_method ON method_act (method)",
    "CREATE UNIQUE INDEX method_arrival ON method_act (method) WHERE kind IN ('saved', 'imported')",
    R"(CREATE TRIGGER method_act_changes_something BEFORE INSERT ON method_act
        WHEN NEW.kind IN ('retired', 'reinstated') AND (NEW.kind = 'retired') = coalesce((
        SELECT kind = 'retired' FROM method_act WHERE method = NEW.method AND kind IN ('retired', 'reinstated')
        ORDER BY id DESC LIMIT 1), 0)
        BEGIN SELECT RAISE(ABORT, 'the method is so already'); END)",

    // The runs by other methods that the derived results of a decision were taken from, as they stood then.
    R"(CREATE TABLE decision_companion (
        id @ID,
        decision INTEGER NOT NULL REFERENCES decision (id),
        position INTEGER NOT NULL CHECK (position >= 0),
        run INTEGER NOT NULL REFERENCES run (id),
        last_reading INTEGER NOT NULL CHECK (last_reading >= 0),
        UNIQUE (decision, position),
        UNIQUE (decision, run)
    ) STRICT)",
};

} // namespace

SchemaStep secondSchemaStep()
{
    SchemaStep step{2, u"the laboratory's methods, and the runs that derived results come from"_s, {}};
    for (const char *const statement : secondStatements)
        step.statements.append(writtenOut(statement));
    step.statements.append(protectionOf(
        u"method_act"_s,
        {u"method = NEW.method AND kind IN ('saved', 'imported') AND NEW.kind IN ('saved', 'imported')"_s}));
    step.statements.append(
        protectionOf(u"decision_companion"_s, {u"decision = NEW.decision AND position = NEW.position"_s,
                                               u"decision = NEW.decision AND run = NEW.run"_s}));
    return step;
}

} // namespace plateau::notebook
