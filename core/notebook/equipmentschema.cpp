// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/stockschema.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

const char *const equipmentStatements[] = {
    "CREATE TABLE equipment_item (id @ID) STRICT",

    // Sizes in mL, of pipettes and flasks only.
    R"(CREATE TABLE equipment_version (
        id @ID,
        item INTEGER NOT NULL REFERENCES equipment_item (id),
        kind TEXT NOT NULL CHECK (kind IN ('photometer', 'pistonPipette', 'bulbPipette', 'flask', 'balance', 'thermometer', 'cuvettes')),
        name TEXT NOT NULL CHECK (name <> ''),
        name_key TEXT NOT NULL CHECK (name_key <> ''),
        number TEXT NOT NULL,
        nominal_mL REAL CHECK (nominal_mL @POSITIVE),
        smallest_mL REAL CHECK (smallest_mL @POSITIVE),
        in_use INTEGER NOT NULL CHECK (in_use IN (0, 1)),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        reason TEXT NOT NULL,
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET),
        CHECK ((kind IN ('pistonPipette', 'bulbPipette', 'flask')) = (nominal_mL IS NOT NULL)),
        CHECK ((kind = 'pistonPipette') = (smallest_mL IS NOT NULL))
    ) STRICT)",
    "CREATE INDEX equipment_version_of_item ON equipment_version (item)",

    // What is checked of it, and how often.
    R"(CREATE TABLE equipment_duty (
        id @ID,
        version INTEGER NOT NULL REFERENCES equipment_version (id),
        aspect TEXT NOT NULL CHECK (aspect IN ('wavelength', 'absorbance', 'noise', 'volume', 'weighing', 'temperature', 'match')),
        every_days INTEGER NOT NULL CHECK (every_days >= 1),
        UNIQUE (version, aspect)
    ) STRICT)",

    // passed: as it was said when it was keyed; its numbers say it again.
    R"(CREATE TABLE equipment_check (
        id @ID,
        version INTEGER NOT NULL REFERENCES equipment_version (id),
        aspect TEXT NOT NULL CHECK (aspect IN ('wavelength', 'absorbance', 'noise', 'volume', 'weighing', 'temperature', 'match')),
        day TEXT NOT NULL CHECK (day @DAY),
        passed INTEGER NOT NULL CHECK (passed IN (0, 1)),
        source TEXT NOT NULL,
        note TEXT NOT NULL,
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",
    "CREATE INDEX equipment_check_of_version ON equipment_check (version)",

    R"(CREATE TABLE equipment_condition (
        id @ID,
        of_check INTEGER NOT NULL REFERENCES equipment_check (id),
        name TEXT NOT NULL CHECK (name <> ''),
        value REAL NOT NULL CHECK (value @FINITE),
        UNIQUE (of_check, name)
    ) STRICT)",

    // The cells that were keyed or given; place counts the rows from 0, rows without any do not end it:
    // equipment_extent says how many there are.
    R"(CREATE TABLE equipment_value (
        id @ID,
        of_check INTEGER NOT NULL REFERENCES equipment_check (id),
        place INTEGER NOT NULL CHECK (place >= 0),
        column_place INTEGER NOT NULL CHECK (column_place >= 0),
        value REAL NOT NULL CHECK (value @FINITE),
        UNIQUE (of_check, place, column_place)
    ) STRICT)",
    R"(CREATE TABLE equipment_extent (
        id @ID,
        of_check INTEGER NOT NULL UNIQUE REFERENCES equipment_check (id),
        row_count INTEGER NOT NULL CHECK (row_count >= 0),
        column_count INTEGER NOT NULL CHECK (column_count >= 1)
    ) STRICT)",

    // Keyed wrongly, so that it does not count.
    R"(CREATE TABLE equipment_withdrawal (
        id @ID,
        of_check INTEGER NOT NULL UNIQUE REFERENCES equipment_check (id),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        reason TEXT NOT NULL CHECK (trim(reason, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",
};

} // namespace

SchemaPart equipmentTables()
{
    SchemaPart tables;
    for (const char *const statement : equipmentStatements)
        tables.statements.append(writtenOut(statement));
    tables.records = {
        {u"equipment_item"_s, {}},
        {u"equipment_version"_s, {}},
        {u"equipment_duty"_s, {u"version = NEW.version AND aspect = NEW.aspect"_s}},
        {u"equipment_check"_s, {}},
        {u"equipment_condition"_s, {u"of_check = NEW.of_check AND name = NEW.name"_s}},
        {u"equipment_value"_s,
         {u"of_check = NEW.of_check AND place = NEW.place AND column_place = NEW.column_place"_s}},
        {u"equipment_extent"_s, {u"of_check = NEW.of_check"_s}},
        {u"equipment_withdrawal"_s, {u"of_check = NEW.of_check"_s}},
    };
    return tables;
}

} // namespace plateau::notebook
