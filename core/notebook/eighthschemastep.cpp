// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/schema.h"
#include "core/notebook/schemawords.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

const char *const openedLife[] = {
    // What was said of a container's opening after it was noted; the last word counts. Without a day it is
    // not opened after all. Without a reason it was opened anew after that.
    R"(CREATE TABLE lot_opening_change (
        id @ID,
        lot INTEGER NOT NULL REFERENCES lot_opening (lot),
        day TEXT CHECK (day @DAY),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        reason TEXT NOT NULL,
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",
    "CREATE INDEX lot_opening_change_of_lot ON lot_opening_change (lot)",
    R"(CREATE TRIGGER lot_opening_change_says_why BEFORE INSERT ON lot_opening_change
        WHEN trim(NEW.reason, @BLANKS) = '' AND (NEW.day IS NULL OR coalesce((
        SELECT day IS NOT NULL FROM lot_opening_change WHERE lot = NEW.lot ORDER BY id DESC LIMIT 1), 1))
        BEGIN SELECT RAISE(ABORT, 'a correction needs a reason'); END)",

    // The last good day of the container that a mark names, as it was known then, where it was not that
    // of the label.
    R"(CREATE TABLE mark_lot_day (
        id @ID,
        mark INTEGER NOT NULL UNIQUE REFERENCES pipetting_mark (id),
        day TEXT NOT NULL CHECK (day @DAY)
    ) STRICT)",

    // Which container a run means is asked by what stands on it.
    "CREATE INDEX lot_version_by_name ON lot_version (name)",
};

} // namespace

SchemaStep eighthSchemaStep()
{
    SchemaStep step{
        8,
        u"openings of reagents that are corrected, and how long each was good when it was taken from"_s,
        {}};
    for (const char *const statement : openedLife)
        step.statements.append(writtenOut(statement));
    step.statements.append(protectionOf(u"lot_opening_change"_s, {}));
    step.statements.append(protectionOf(u"mark_lot_day"_s, {u"mark = NEW.mark"_s}));
    return step;
}

} // namespace plateau::notebook
