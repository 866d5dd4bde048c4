// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/stockschema.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

const char *const standardStatements[] = {
    "CREATE TABLE substance (id @ID) STRICT",

    // Fractions of 1; half widths as the certificate states them.
    R"(CREATE TABLE substance_version (
        id @ID,
        substance INTEGER NOT NULL REFERENCES substance (id),
        name TEXT NOT NULL CHECK (name <> ''),
        supplier TEXT NOT NULL,
        lot TEXT NOT NULL,
        certificate TEXT NOT NULL,
        purity REAL NOT NULL CHECK (purity @POSITIVE),
        purity_half_width REAL NOT NULL CHECK (purity_half_width @NOTNEGATIVE),
        water REAL NOT NULL CHECK (water @NOTNEGATIVE),
        water_half_width REAL NOT NULL CHECK (water_half_width @NOTNEGATIVE),
        molar_mass REAL NOT NULL CHECK (molar_mass @POSITIVE),
        density REAL CHECK (density @POSITIVE),
        expires TEXT CHECK (expires @DAY),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        reason TEXT NOT NULL,
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",
    "CREATE INDEX substance_version_of_substance ON substance_version (substance)",

    // name_key: by it, and by the time it was made, a run's standard is known to be this.
    R"(CREATE TABLE preparation (
        id @ID,
        substance_version INTEGER NOT NULL REFERENCES substance_version (id),
        name TEXT NOT NULL CHECK (name <> ''),
        name_key TEXT NOT NULL UNIQUE CHECK (name_key <> ''),
        measurand TEXT NOT NULL,
        analyte_molar_mass REAL NOT NULL CHECK (analyte_molar_mass @POSITIVE),
        analyte_per_molecule REAL NOT NULL CHECK (analyte_per_molecule @POSITIVE),
        mass_u_mg REAL NOT NULL CHECK (mass_u_mg @NOTNEGATIVE),
        flask_mL REAL NOT NULL CHECK (flask_mL @POSITIVE),
        flask TEXT NOT NULL,
        flask_u_mL REAL NOT NULL CHECK (flask_u_mL @NOTNEGATIVE),
        made_utc TEXT NOT NULL CHECK (made_utc @UTC),
        made_offset_min INTEGER NOT NULL CHECK (made_offset_min @OFFSET),
        loss_per_hour REAL NOT NULL CHECK (loss_per_hour @NOTNEGATIVE AND loss_per_hour < 1),
        use_by_utc TEXT CHECK (use_by_utc @UTC),
        use_by_offset_min INTEGER CHECK (use_by_offset_min @OFFSET),
        note TEXT NOT NULL,
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET),
        CHECK ((use_by_utc IS NULL) = (use_by_offset_min IS NULL))
    ) STRICT)",
    R"(CREATE TABLE preparation_portion (
        id @ID,
        preparation INTEGER NOT NULL REFERENCES preparation (id),
        position INTEGER NOT NULL CHECK (position >= 0),
        mass_mg REAL NOT NULL CHECK (mass_mg @POSITIVE),
        UNIQUE (preparation, position)
    ) STRICT)",
    R"(CREATE TABLE preparation_disposal (
        id @ID,
        preparation INTEGER NOT NULL UNIQUE REFERENCES preparation (id),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        reason TEXT NOT NULL CHECK (trim(reason, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",
};

} // namespace

SchemaPart standardTables()
{
    SchemaPart tables;
    for (const char *const statement : standardStatements)
        tables.statements.append(writtenOut(statement));
    tables.records = {
        {u"substance"_s, {}},
        {u"substance_version"_s, {}},
        {u"preparation"_s, {u"name_key = NEW.name_key"_s}},
        {u"preparation_portion"_s, {u"preparation = NEW.preparation AND position = NEW.position"_s}},
        {u"preparation_disposal"_s, {u"preparation = NEW.preparation"_s}},
    };
    return tables;
}

} // namespace plateau::notebook
