// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/schemawords.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

// When things were done at the bench.
const char *const times[] = {
    // The clock that nobody can set, beside the time of a reading or a mark that was made at the bench; in
    // the
    // order they were made. boot_id: of the machine's start, empty where there is no such clock.
    R"(CREATE TABLE bench_stamp (
        id @ID,
        reading INTEGER UNIQUE REFERENCES reading (id),
        mark INTEGER UNIQUE REFERENCES pipetting_mark (id),
        boot_id TEXT NOT NULL,
        boot_ms INTEGER NOT NULL,
        CHECK ((reading IS NULL) <> (mark IS NULL))
    ) STRICT)",

    // What a run that came in a file says of its times, in minutes on its own clock.
    R"(CREATE TABLE tube_time (
        id @ID,
        tube INTEGER NOT NULL REFERENCES tube (id),
        kind TEXT NOT NULL CHECK (kind IN ('added', 'read')),
        name TEXT NOT NULL CHECK (name <> ''),
        at_min REAL NOT NULL CHECK (at_min @NOTNEGATIVE),
        UNIQUE (tube, kind, name)
    ) STRICT)",

    // The clock on the wall was set, and the runs that were on the bench then.
    R"(CREATE TABLE clock_jump (
        id @ID,
        shift_ms INTEGER NOT NULL CHECK (shift_ms <> 0),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET),
        boot_id TEXT NOT NULL,
        boot_ms INTEGER NOT NULL
    ) STRICT)",
    R"(CREATE TABLE clock_jump_run (
        id @ID,
        jump INTEGER NOT NULL REFERENCES clock_jump (id),
        run INTEGER NOT NULL REFERENCES run (id),
        UNIQUE (jump, run)
    ) STRICT)",
    "CREATE INDEX clock_jump_of_run ON clock_jump_run (run)",
};

// How readings came.
const char *const readings[] = {
    // One more reading of a series: it names the one before as a correction does, and corrects nothing.
    R"(CREATE TABLE reading_again (
        id @ID,
        reading INTEGER NOT NULL UNIQUE REFERENCES reading (id)
    ) STRICT)",
    R"(CREATE TRIGGER reading_again_is_a_series BEFORE INSERT ON reading_again WHEN NOT EXISTS (
        SELECT 1 FROM reading WHERE id = NEW.reading AND corrects IS NOT NULL AND points > 1)
        BEGIN SELECT RAISE(ABORT, 'only a series is read again'); END)",

    // A reading without such a row was keyed, or came with its run.
    R"(CREATE TABLE reading_origin (
        id @ID,
        reading INTEGER NOT NULL UNIQUE REFERENCES reading (id),
        kind TEXT NOT NULL CHECK (kind IN ('pasted', 'file', 'serial', 'network')),
        source TEXT NOT NULL,
        line TEXT NOT NULL CHECK (length(line) <= 1000)
    ) STRICT)",
};

// A rack that grew at the bench.
const char *const racks[] = {
    // How many samples and tubes the run had before; those behind were added, at once.
    R"(CREATE TABLE tube_addition (
        id @ID,
        run INTEGER NOT NULL REFERENCES run (id),
        samples_before INTEGER NOT NULL CHECK (samples_before >= 0),
        tubes_before INTEGER NOT NULL CHECK (tubes_before >= 0),
        UNIQUE (run, tubes_before)
    ) STRICT)",
    R"(CREATE TRIGGER tube_addition_on_bench BEFORE INSERT ON tube_addition WHEN EXISTS (
        SELECT 1 FROM decision WHERE run = NEW.run AND id NOT IN (SELECT decision FROM reopening))
        BEGIN SELECT RAISE(ABORT, 'the run is decided'); END)",

    R"(CREATE TABLE sample_repeat (
        id @ID,
        sample INTEGER NOT NULL UNIQUE REFERENCES sample (id),
        repeats INTEGER NOT NULL REFERENCES sample (id),
        CHECK (sample <> repeats)
    ) STRICT)",
    R"(CREATE TRIGGER sample_repeat_within_run BEFORE INSERT ON sample_repeat WHEN NOT EXISTS (
        SELECT 1 FROM sample AS own JOIN sample AS other ON other.run = own.run
        WHERE own.id = NEW.sample AND other.id = NEW.repeats)
        OR EXISTS (SELECT 1 FROM sample_repeat WHERE sample = NEW.repeats OR repeats = NEW.sample)
        BEGIN SELECT RAISE(ABORT, 'a repeat is of a sample of its run that repeats none'); END)",

    // How many samples and tubes the run, or one that derived results come from, had when it was decided. A
    // decision without such a row was made before times at the bench counted.
    R"(CREATE TABLE decision_size (
        id @ID,
        decision INTEGER NOT NULL REFERENCES decision (id),
        run INTEGER NOT NULL REFERENCES run (id),
        samples INTEGER NOT NULL CHECK (samples >= 0),
        tubes INTEGER NOT NULL CHECK (tubes >= 0),
        UNIQUE (decision, run)
    ) STRICT)",
};

const std::vector<ProtectedTable> &fifthKeys()
{
    static const std::vector<ProtectedTable> list{
        {u"bench_stamp"_s, {u"reading = NEW.reading"_s, u"mark = NEW.mark"_s}},
        {u"tube_time"_s, {u"tube = NEW.tube AND kind = NEW.kind AND name = NEW.name"_s}},
        {u"clock_jump"_s, {}},
        {u"clock_jump_run"_s, {u"jump = NEW.jump AND run = NEW.run"_s}},
        {u"reading_again"_s, {u"reading = NEW.reading"_s}},
        {u"reading_origin"_s, {u"reading = NEW.reading"_s}},
        {u"tube_addition"_s, {u"run = NEW.run AND tubes_before = NEW.tubes_before"_s}},
        {u"sample_repeat"_s, {u"sample = NEW.sample"_s}},
        {u"decision_size"_s, {u"decision = NEW.decision AND run = NEW.run"_s}},
    };
    return list;
}

} // namespace

SchemaStep fifthSchemaStep()
{
    SchemaStep step{5, u"when things were done at the bench, series, and racks that grew"_s, {}};
    const auto append = [&step](const auto &statements) {
        for (const char *const statement : statements)
            step.statements.append(writtenOut(statement));
    };
    append(times);
    append(readings);
    append(racks);
    for (const ProtectedTable &table : fifthKeys())
        step.statements.append(protectionOf(table.table, table.keys));
    return step;
}

} // namespace plateau::notebook
