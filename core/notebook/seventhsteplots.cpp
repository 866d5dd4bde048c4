// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/seventhschemastep.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

const char *const lotKeepingStatements[] = {
    // A container that came dry; its ledger begins with what it is dissolved in. mass_mg: as the label says.
    R"(CREATE TABLE lot_dry (
        id @ID,
        lot INTEGER NOT NULL UNIQUE REFERENCES lot (id),
        mass_mg REAL CHECK (mass_mg @POSITIVE),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",

    // A dry one that was thrown away as it came.
    R"(CREATE TABLE lot_dry_disposal (
        id @ID,
        lot INTEGER NOT NULL UNIQUE REFERENCES lot_dry (lot),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        reason TEXT NOT NULL CHECK (trim(reason, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",

    // Belongs to a version of the label: how long it keeps once dissolved.
    R"(CREATE TABLE lot_keeping (
        id @ID,
        version INTEGER NOT NULL UNIQUE REFERENCES lot_version (id),
        dissolved_days INTEGER NOT NULL CHECK (dissolved_days >= 0)
    ) STRICT)",

    // volume_mL: of the solution. solvent_version: where the solvent is a container of the book; it gave that
    // volume.
    R"(CREATE TABLE lot_dissolving (
        id @ID,
        lot INTEGER NOT NULL UNIQUE REFERENCES lot (id),
        volume_mL REAL NOT NULL CHECK (volume_mL @POSITIVE),
        solvent TEXT NOT NULL CHECK (trim(solvent, @BLANKS) <> ''),
        solvent_version INTEGER REFERENCES lot_version (id),
        day TEXT NOT NULL CHECK (day @DAY),
        note TEXT NOT NULL,
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",
    R"(CREATE TRIGGER lot_dry_disposal_of_a_dry_one BEFORE INSERT ON lot_dry_disposal WHEN EXISTS (
        SELECT 1 FROM lot_dissolving WHERE lot = NEW.lot)
        BEGIN SELECT RAISE(ABORT, 'it is dissolved'); END)",
    "CREATE INDEX lot_dissolving_in_lot ON lot_dissolving (solvent_version) WHERE solvent_version IS NOT "
    "NULL",
    R"(CREATE TRIGGER lot_dissolving_of_a_dry_one BEFORE INSERT ON lot_dissolving WHEN NOT EXISTS (
        SELECT 1 FROM lot_dry WHERE lot = NEW.lot)
        OR EXISTS (SELECT 1 FROM lot_dry_disposal WHERE lot = NEW.lot)
        BEGIN SELECT RAISE(ABORT, 'only what came dry is dissolved'); END)",

    // A container divided into aliquots of one volume each, which are containers themselves. keeps_days: how
    // long they keep after that day as they are stored.
    R"(CREATE TABLE lot_division (
        id @ID,
        source INTEGER NOT NULL REFERENCES lot (id),
        aliquots INTEGER NOT NULL CHECK (aliquots >= 1),
        volume_mL REAL NOT NULL CHECK (volume_mL @POSITIVE),
        keeps_days INTEGER CHECK (keeps_days >= 0),
        day TEXT NOT NULL CHECK (day @DAY),
        note TEXT NOT NULL,
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",
    "CREATE INDEX lot_division_of_lot ON lot_division (source)",
    R"(CREATE TABLE lot_aliquot (
        id @ID,
        division INTEGER NOT NULL REFERENCES lot_division (id),
        lot INTEGER NOT NULL UNIQUE REFERENCES lot (id),
        number INTEGER NOT NULL CHECK (number >= 1),
        UNIQUE (division, number)
    ) STRICT)",
    R"(CREATE TRIGGER lot_division_not_of_an_aliquot BEFORE INSERT ON lot_division WHEN EXISTS (
        SELECT 1 FROM lot_aliquot WHERE lot = NEW.source)
        BEGIN SELECT RAISE(ABORT, 'an aliquot is not divided'); END)",
    R"(CREATE TRIGGER lot_aliquot_is_announced BEFORE INSERT ON lot_aliquot WHEN
        (SELECT count(*) FROM lot_aliquot WHERE division = NEW.division) >=
        (SELECT aliquots FROM lot_division WHERE id = NEW.division)
        OR EXISTS (SELECT 1 FROM lot_division WHERE id = NEW.division AND source = NEW.lot)
        BEGIN SELECT RAISE(ABORT, 'the division is complete'); END)",

    // Where a container is; the last one counts.
    R"(CREATE TABLE lot_place (
        id @ID,
        lot INTEGER NOT NULL REFERENCES lot (id),
        place TEXT NOT NULL CHECK (trim(place, @BLANKS) <> ''),
        lowest_C REAL CHECK (lowest_C @FINITE),
        highest_C REAL CHECK (highest_C @FINITE),
        note TEXT NOT NULL,
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET),
        CHECK (lowest_C IS NULL OR highest_C IS NULL OR lowest_C <= highest_C)
    ) STRICT)",
    "CREATE INDEX lot_place_of_lot ON lot_place (lot)",

    R"(CREATE TABLE lot_note (
        id @ID,
        lot INTEGER NOT NULL REFERENCES lot (id),
        note TEXT NOT NULL CHECK (trim(note, @BLANKS) <> ''),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",
    "CREATE INDEX lot_note_of_lot ON lot_note (lot)",
};

} // namespace

SchemaPart lotKeepingPart()
{
    SchemaPart part;
    for (const char *const statement : lotKeepingStatements)
        part.statements.append(writtenOut(statement));
    part.records = {
        {u"lot_dry"_s, {u"lot = NEW.lot"_s}},
        {u"lot_dry_disposal"_s, {u"lot = NEW.lot"_s}},
        {u"lot_keeping"_s, {u"version = NEW.version"_s}},
        {u"lot_dissolving"_s, {u"lot = NEW.lot"_s}},
        {u"lot_division"_s, {}},
        {u"lot_aliquot"_s, {u"lot = NEW.lot"_s, u"division = NEW.division AND number = NEW.number"_s}},
        {u"lot_place"_s, {}},
        {u"lot_note"_s, {}},
    };
    return part;
}

} // namespace plateau::notebook
