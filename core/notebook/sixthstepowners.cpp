// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/sixthschemastep.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

const char *const owners[] = {
    // Who answered for a number of the run's budget when it was planned, and where that number came from.
    // is_usual: nobody of the laboratory stated it.
    R"(CREATE TABLE plan_owner (
        id @ID,
        plan INTEGER NOT NULL REFERENCES plan (id),
        input TEXT NOT NULL CHECK (input IN ('absorbance', 'absorptivity', 'pathLength', 'totalVolume',
            'sampleVolume', 'dilution', 'extract', 'standard')),
        standard INTEGER REFERENCES standard (id),
        owner TEXT NOT NULL CHECK (trim(owner, @BLANKS) <> ''),
        source TEXT NOT NULL CHECK (trim(source, @BLANKS) <> ''),
        is_usual INTEGER NOT NULL CHECK (is_usual IN (0, 1)),
        CHECK ((input = 'standard') = (standard IS NOT NULL))
    ) STRICT)",
    "CREATE UNIQUE INDEX plan_owner_once ON plan_owner (plan, input, coalesce(standard, 0))",
    R"(CREATE TRIGGER plan_owner_within_run BEFORE INSERT ON plan_owner WHEN NEW.standard IS NOT NULL
        AND NOT EXISTS (SELECT 1 FROM plan JOIN standard ON standard.run = plan.run
        WHERE plan.id = NEW.plan AND standard.id = NEW.standard)
        BEGIN SELECT RAISE(ABORT, 'an owner is of a standard of its run'); END)",
};

} // namespace

SchemaPart ownersPart()
{
    SchemaPart part;
    for (const char *const statement : owners)
        part.statements.append(writtenOut(statement));
    part.records = {
        {u"plan_owner"_s, {u"plan = NEW.plan AND input = NEW.input AND standard IS NEW.standard"_s}}};
    return part;
}

} // namespace plateau::notebook
