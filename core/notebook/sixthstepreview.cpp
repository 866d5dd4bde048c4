// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/sixthschemastep.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

const char *const reviewStatements[] = {
    // Which of the laboratory's settings and limits held when a run was decided; NULL: nobody had saved any.
    // Of a decision without such a row the audit trail tells.
    R"(CREATE TABLE decision_basis (
        id @ID,
        decision INTEGER NOT NULL UNIQUE REFERENCES decision (id),
        laboratory INTEGER REFERENCES laboratory (id),
        specifications INTEGER REFERENCES specifications (id)
    ) STRICT)",

    // A reopening without such a row is unsigned.
    R"(CREATE TABLE reopening_signature (
        id @ID,
        reopening INTEGER NOT NULL UNIQUE REFERENCES reopening (id),
        person_version INTEGER NOT NULL REFERENCES person_version (id)
    ) STRICT)",
};

} // namespace

SchemaPart reviewPart()
{
    SchemaPart part;
    for (const char *const statement : reviewStatements)
        part.statements.append(writtenOut(statement));
    part.records = {{u"decision_basis"_s, {u"decision = NEW.decision"_s}},
                    {u"reopening_signature"_s, {u"reopening = NEW.reopening"_s}}};
    return part;
}

} // namespace plateau::notebook
