// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/schemawords.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

const char *const tables[] = {
    // A method as it was used: plateau-method/1, one row for each distinct content.
    R"(CREATE TABLE method (
        id @ID,
        method_id TEXT NOT NULL CHECK (method_id <> ''),
        version INTEGER NOT NULL CHECK (version >= 1),
        content_hash TEXT NOT NULL UNIQUE CHECK (content_hash @HASH),
        content TEXT NOT NULL CHECK (content @DOCUMENT)
    ) STRICT)",

    R"(CREATE TABLE run (
        id @ID,
        title TEXT NOT NULL,
        method INTEGER NOT NULL REFERENCES method (id),
        wavelength_nm INTEGER CHECK (wavelength_nm BETWEEN 1 AND 100000),
        path_length_mm REAL CHECK (path_length_mm @POSITIVE),
        calibration TEXT NOT NULL CHECK (calibration IN ('absorptivity', 'standard', 'line')),
        started_utc TEXT CHECK (started_utc @UTC),
        started_offset_min INTEGER CHECK (started_offset_min @OFFSET),
        created_utc TEXT NOT NULL CHECK (created_utc @UTC),
        created_offset_min INTEGER NOT NULL CHECK (created_offset_min @OFFSET),
        CHECK ((started_utc IS NULL) = (started_offset_min IS NULL))
    ) STRICT)",

    // Standard uncertainties (k = 1); a run that states none has no row.
    R"(CREATE TABLE uncertainty (
        id @ID,
        run INTEGER NOT NULL UNIQUE REFERENCES run (id),
        absorbance REAL NOT NULL CHECK (absorbance @NOTNEGATIVE),
        absorptivity_percent REAL NOT NULL CHECK (absorptivity_percent @NOTNEGATIVE),
        path_length_percent REAL NOT NULL CHECK (path_length_percent @NOTNEGATIVE),
        total_volume_percent REAL NOT NULL CHECK (total_volume_percent @NOTNEGATIVE),
        sample_volume_percent REAL NOT NULL CHECK (sample_volume_percent @NOTNEGATIVE),
        dilution_percent REAL NOT NULL CHECK (dilution_percent @NOTNEGATIVE),
        extract_percent REAL NOT NULL CHECK (extract_percent @NOTNEGATIVE)
    ) STRICT)",

    R"(CREATE TABLE standard (
        id @ID,
        run INTEGER NOT NULL REFERENCES run (id),
        position INTEGER NOT NULL CHECK (position >= 0),
        name TEXT NOT NULL CHECK (name <> ''),
        concentration_g_per_L REAL NOT NULL CHECK (concentration_g_per_L @NOTNEGATIVE),
        measurand TEXT NOT NULL,
        prepared_utc TEXT CHECK (prepared_utc @UTC),
        prepared_offset_min INTEGER CHECK (prepared_offset_min @OFFSET),
        used_utc TEXT CHECK (used_utc @UTC),
        used_offset_min INTEGER CHECK (used_offset_min @OFFSET),
        loss_per_hour REAL NOT NULL CHECK (loss_per_hour >= 0 AND loss_per_hour < 1),
        UNIQUE (run, position),
        UNIQUE (run, name),
        CHECK ((prepared_utc IS NULL) = (prepared_offset_min IS NULL)),
        CHECK ((used_utc IS NULL) = (used_offset_min IS NULL))
    ) STRICT)",

    R"(CREATE TABLE sample (
        id @ID,
        run INTEGER NOT NULL REFERENCES run (id),
        position INTEGER NOT NULL CHECK (position >= 0),
        name TEXT NOT NULL CHECK (name <> ''),
        form TEXT NOT NULL CHECK (form IN ('liquid', 'solid')),
        mass_g REAL CHECK (mass_g @POSITIVE),
        extract_mL REAL CHECK (extract_mL @POSITIVE),
        UNIQUE (run, position),
        UNIQUE (run, name)
    ) STRICT)",

    R"(CREATE TABLE dilution (
        id @ID,
        sample INTEGER NOT NULL REFERENCES sample (id),
        position INTEGER NOT NULL CHECK (position >= 0),
        take_mL REAL NOT NULL CHECK (take_mL @POSITIVE),
        make_up_to_mL REAL NOT NULL CHECK (make_up_to_mL @POSITIVE),
        UNIQUE (sample, position),
        CHECK (take_mL <= make_up_to_mL)
    ) STRICT)",

    R"(CREATE TABLE tube (
        id @ID,
        run INTEGER NOT NULL REFERENCES run (id),
        position INTEGER NOT NULL CHECK (position >= 0),
        role TEXT NOT NULL CHECK (role IN ('blank', 'sampleBlank', 'standard', 'control', 'sample', 'spiked')),
        sample TEXT,
        standard TEXT,
        sample_volume_mL REAL CHECK (sample_volume_mL @POSITIVE),
        spike_standard TEXT,
        spike_volume_mL REAL CHECK (spike_volume_mL @POSITIVE),
        UNIQUE (run, position),
        FOREIGN KEY (run, sample) REFERENCES sample (run, name),
        FOREIGN KEY (run, standard) REFERENCES standard (run, name),
        FOREIGN KEY (run, spike_standard) REFERENCES standard (run, name),
        CHECK ((spike_standard IS NULL) = (spike_volume_mL IS NULL))
    ) STRICT)",

    R"(CREATE TABLE lot_use (
        id @ID,
        run INTEGER NOT NULL REFERENCES run (id),
        position INTEGER NOT NULL CHECK (position >= 0),
        component TEXT NOT NULL CHECK (component <> ''),
        lot TEXT NOT NULL,
        expires TEXT CHECK (expires @DAY),
        UNIQUE (run, position)
    ) STRICT)",

    // A single absorbance, or as many rows of reading_point as points says. typed: as keyed, empty for a
    // reading
    // that came in a file. A correction names the reading it replaces and why.
    R"(CREATE TABLE reading (
        id @ID,
        tube INTEGER NOT NULL REFERENCES tube (id),
        name TEXT NOT NULL CHECK (name <> ''),
        absorbance REAL CHECK (absorbance @FINITE),
        points INTEGER NOT NULL CHECK (points >= 0),
        typed TEXT NOT NULL,
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET),
        corrects INTEGER REFERENCES reading (id),
        reason TEXT NOT NULL,
        CHECK ((points = 0) = (absorbance IS NOT NULL)),
        CHECK ((corrects IS NOT NULL) = (trim(reason, @BLANKS) <> ''))
    ) STRICT)",
    "CREATE UNIQUE INDEX reading_first ON reading (tube, name) WHERE corrects IS NULL",
    "CREATE UNIQUE INDEX reading_corrected_once ON reading (corrects) WHERE corrects IS NOT NULL",
    "CREATE INDEX reading_of_tube ON reading (tube)",

    R"(CREATE TABLE reading_point (
        id @ID,
        reading INTEGER NOT NULL REFERENCES reading (id),
        position INTEGER NOT NULL CHECK (position >= 0),
        at_min REAL NOT NULL CHECK (at_min @FINITE),
        absorbance REAL NOT NULL CHECK (absorbance @FINITE),
        UNIQUE (reading, position)
    ) STRICT)",

    // content_hash: SHA-256 of the run and its method as plateau-run/1. last_reading: the run's newest
    // reading at
    // that moment, 0 for none; with it the decision can be checked after later corrections.
    R"(CREATE TABLE decision (
        id @ID,
        run INTEGER NOT NULL REFERENCES run (id),
        kind TEXT NOT NULL CHECK (kind IN ('accepted', 'rejected')),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        reason TEXT NOT NULL,
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET),
        last_reading INTEGER NOT NULL CHECK (last_reading >= 0),
        content_hash TEXT NOT NULL CHECK (content_hash @HASH),
        acceptable INTEGER NOT NULL CHECK (acceptable IN (0, 1)),
        evaluation TEXT NOT NULL CHECK (evaluation @DOCUMENT),
        program_version TEXT NOT NULL CHECK (program_version <> ''),
        CHECK ((kind = 'accepted' AND acceptable) OR trim(reason, @BLANKS) <> '')
    ) STRICT)",
    "CREATE INDEX decision_of_run ON decision (run)",

    R"(CREATE TABLE reopening (
        id @ID,
        decision INTEGER NOT NULL UNIQUE REFERENCES decision (id),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        reason TEXT NOT NULL CHECK (trim(reason, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",

    // One row for each act; its hash covers the entry before it, its own fields and its audit_record rows.
    // schema_version: the columns a record had when it was hashed.
    R"(CREATE TABLE audit (
        id @ID,
        previous_hash TEXT NOT NULL CHECK (previous_hash @HASH),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        account TEXT NOT NULL,
        host TEXT NOT NULL,
        program_version TEXT NOT NULL CHECK (program_version <> ''),
        schema_version INTEGER NOT NULL CHECK (schema_version >= 1),
        action TEXT NOT NULL CHECK (action <> ''),
        run INTEGER REFERENCES run (id),
        details TEXT NOT NULL,
        hash TEXT NOT NULL CHECK (hash @HASH)
    ) STRICT)",
    "CREATE INDEX audit_of_run ON audit (run)",

    // The rows an act added, each with the hash of its content.
    R"(CREATE TABLE audit_record (
        id @ID,
        audit INTEGER NOT NULL REFERENCES audit (id),
        position INTEGER NOT NULL CHECK (position >= 0),
        record_table TEXT NOT NULL CHECK (record_table <> ''),
        record_id INTEGER NOT NULL CHECK (record_id > 0),
        content_hash TEXT NOT NULL CHECK (content_hash @HASH),
        UNIQUE (audit, position)
    ) STRICT)",
    "CREATE INDEX audit_record_of_record ON audit_record (record_table, record_id)",
};

// The rules of the records that reach over more than one row; Notebook says them in words first.
const char *const rules[] = {
    R"(CREATE TRIGGER reading_on_bench BEFORE INSERT ON reading WHEN EXISTS (
        SELECT 1 FROM tube JOIN decision ON decision.run = tube.run WHERE tube.id = NEW.tube
        AND decision.id NOT IN (SELECT decision FROM reopening))
        BEGIN SELECT RAISE(ABORT, 'the run is decided'); END)",
    R"(CREATE TRIGGER reading_corrects_its_like BEFORE INSERT ON reading WHEN NEW.corrects IS NOT NULL AND NOT EXISTS (
        SELECT 1 FROM reading WHERE id = NEW.corrects AND tube = NEW.tube AND name = NEW.name)
        BEGIN SELECT RAISE(ABORT, 'a correction names a reading of its own tube and point'); END)",
    R"(CREATE TRIGGER reading_point_is_announced BEFORE INSERT ON reading_point WHEN NOT EXISTS (
        SELECT 1 FROM reading WHERE id = NEW.reading AND NEW.position < points)
        BEGIN SELECT RAISE(ABORT, 'the series is complete'); END)",
    R"(CREATE TRIGGER decision_on_bench BEFORE INSERT ON decision WHEN EXISTS (
        SELECT 1 FROM decision WHERE run = NEW.run AND id NOT IN (SELECT decision FROM reopening))
        BEGIN SELECT RAISE(ABORT, 'the run is decided'); END)",
    R"(CREATE TRIGGER audit_continues BEFORE INSERT ON audit WHEN
        NEW.id <> (SELECT coalesce(max(id), 0) + 1 FROM audit) OR
        NEW.previous_hash <> coalesce((SELECT hash FROM audit ORDER BY id DESC LIMIT 1), lower(hex(zeroblob(32))))
        BEGIN SELECT RAISE(ABORT, 'an audit entry continues the chain'); END)",
};

const std::vector<ProtectedTable> &firstKeys()
{
    static const std::vector<ProtectedTable> list{
        {u"method"_s, {u"content_hash = NEW.content_hash"_s}},
        {u"run"_s, {}},
        {u"uncertainty"_s, {u"run = NEW.run"_s}},
        {u"standard"_s, {u"run = NEW.run AND (position = NEW.position OR name = NEW.name)"_s}},
        {u"sample"_s, {u"run = NEW.run AND (position = NEW.position OR name = NEW.name)"_s}},
        {u"dilution"_s, {u"sample = NEW.sample AND position = NEW.position"_s}},
        {u"tube"_s, {u"run = NEW.run AND position = NEW.position"_s}},
        {u"lot_use"_s, {u"run = NEW.run AND position = NEW.position"_s}},
        {u"reading"_s,
         {u"corrects = NEW.corrects"_s,
          u"tube = NEW.tube AND name = NEW.name AND corrects IS NULL AND NEW.corrects IS NULL"_s}},
        {u"reading_point"_s, {u"reading = NEW.reading AND position = NEW.position"_s}},
        {u"decision"_s, {}},
        {u"reopening"_s, {u"decision = NEW.decision"_s}},
        {u"audit"_s, {}},
        {u"audit_record"_s, {u"audit = NEW.audit AND position = NEW.position"_s}},
    };
    return list;
}

} // namespace

SchemaStep firstSchemaStep()
{
    SchemaStep step{1, u"the first schema"_s, {}};
    for (const char *const statement : tables)
        step.statements.append(writtenOut(statement));
    for (const char *const statement : rules)
        step.statements.append(writtenOut(statement));
    for (const ProtectedTable &table : firstKeys())
        step.statements.append(protectionOf(table.table, table.keys));
    return step;
}

} // namespace plateau::notebook
