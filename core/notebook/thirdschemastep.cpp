// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/schemawords.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

// A sample as it is told of on the shelf or in a plan. name_key, product_key: what names are compared by.
const char *const shelf[] = {
    R"(CREATE TABLE sample_detail (
        id @ID,
        name TEXT NOT NULL CHECK (name <> ''),
        name_key TEXT NOT NULL CHECK (name_key <> ''),
        matrix TEXT NOT NULL CHECK (matrix IN ('clear', 'coloured', 'turbid', 'carbonated', 'fatty', 'proteinRich', 'solid')),
        product TEXT NOT NULL,
        product_key TEXT NOT NULL,
        form TEXT NOT NULL CHECK (form IN ('liquid', 'solid')),
        received_utc TEXT CHECK (received_utc @UTC),
        received_offset_min INTEGER CHECK (received_offset_min @OFFSET),
        received_from TEXT NOT NULL,
        CHECK ((product = '') = (product_key = '')),
        CHECK ((received_utc IS NULL) = (received_offset_min IS NULL))
    ) STRICT)",
    "CREATE INDEX sample_detail_by_name ON sample_detail (name_key)",
    "CREATE INDEX sample_detail_by_product ON sample_detail (product_key)",

    // In g/L, of a solid in g/100 g.
    R"(CREATE TABLE sample_expected (
        id @ID,
        detail INTEGER NOT NULL REFERENCES sample_detail (id),
        measurand TEXT NOT NULL CHECK (measurand <> ''),
        amount REAL NOT NULL CHECK (amount @NOTNEGATIVE),
        UNIQUE (detail, measurand)
    ) STRICT)",

    // last_run: the newest run when it was registered, 0 for none; only a later one can have been made of it.
    R"(CREATE TABLE shelf_sample (
        id @ID,
        last_run INTEGER NOT NULL CHECK (last_run >= 0)
    ) STRICT)",

    R"(CREATE TABLE shelf_version (
        id @ID,
        sample INTEGER NOT NULL REFERENCES shelf_sample (id),
        detail INTEGER NOT NULL UNIQUE REFERENCES sample_detail (id),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",
    "CREATE INDEX shelf_version_of_sample ON shelf_version (sample)",

    R"(CREATE TABLE shelf_withdrawal (
        id @ID,
        sample INTEGER NOT NULL UNIQUE REFERENCES shelf_sample (id),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        reason TEXT NOT NULL CHECK (trim(reason, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",

    // The samples a decision says are to be repeated, and the repeats that somebody did without.
    R"(CREATE TABLE decision_repeat (
        id @ID,
        decision INTEGER NOT NULL REFERENCES decision (id),
        sample TEXT NOT NULL CHECK (sample <> ''),
        UNIQUE (decision, sample)
    ) STRICT)",
    R"(CREATE TABLE repeat_waiver (
        id @ID,
        run INTEGER NOT NULL,
        sample TEXT NOT NULL,
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        reason TEXT NOT NULL CHECK (trim(reason, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET),
        UNIQUE (run, sample),
        FOREIGN KEY (run, sample) REFERENCES sample (run, name)
    ) STRICT)",
    "CREATE INDEX sample_by_name ON sample (name)",
};

// What was planned of a run; a run that came without a plan has none of these rows.
const char *const plans[] = {
    R"(CREATE TABLE plan (
        id @ID,
        run INTEGER NOT NULL UNIQUE REFERENCES run (id),
        rack_rows INTEGER NOT NULL CHECK (rack_rows BETWEEN 1 AND 96),
        rack_columns INTEGER NOT NULL CHECK (rack_columns BETWEEN 1 AND 96),
        interval_s INTEGER CHECK (interval_s >= 0)
    ) STRICT)",

    R"(CREATE TABLE plan_sample (
        id @ID,
        sample INTEGER NOT NULL UNIQUE REFERENCES sample (id),
        detail INTEGER NOT NULL UNIQUE REFERENCES sample_detail (id),
        position INTEGER NOT NULL CHECK (position >= 0),
        repeats INTEGER REFERENCES run (id)
    ) STRICT)",

    R"(CREATE TABLE plan_step (
        id @ID,
        dilution INTEGER NOT NULL UNIQUE REFERENCES dilution (id),
        pipette TEXT NOT NULL CHECK (pipette <> ''),
        flask TEXT NOT NULL CHECK (flask <> '')
    ) STRICT)",

    // Relative standard uncertainty (k = 1) of a step that states its own.
    R"(CREATE TABLE dilution_uncertainty (
        id @ID,
        dilution INTEGER NOT NULL UNIQUE REFERENCES dilution (id),
        percent REAL NOT NULL CHECK (percent @NOTNEGATIVE)
    ) STRICT)",

    R"(CREATE TABLE laboratory (
        id @ID,
        content TEXT NOT NULL CHECK (content @DOCUMENT),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",
};

// One container of a reagent, what is known of it in versions, and its ledger. What pipetting took stands in
// the marks.
const char *const lots[] = {
    "CREATE TABLE lot (id @ID) STRICT",

    R"(CREATE TABLE lot_version (
        id @ID,
        lot INTEGER NOT NULL REFERENCES lot (id),
        reagent TEXT NOT NULL CHECK (reagent <> ''),
        reagent_key TEXT NOT NULL CHECK (reagent_key <> ''),
        name TEXT NOT NULL CHECK (name <> ''),
        expires TEXT CHECK (expires @DAY),
        keeps_opened_days INTEGER CHECK (keeps_opened_days >= 1),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        reason TEXT NOT NULL,
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",
    "CREATE INDEX lot_version_of_lot ON lot_version (lot)",
    "CREATE INDEX lot_version_by_reagent ON lot_version (reagent_key)",

    R"(CREATE TABLE lot_opening (
        id @ID,
        lot INTEGER NOT NULL UNIQUE REFERENCES lot (id),
        day TEXT NOT NULL CHECK (day @DAY),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",

    // change_mL: received more than nothing, used and discarded less, corrected either.
    R"(CREATE TABLE lot_movement (
        id @ID,
        lot INTEGER NOT NULL REFERENCES lot (id),
        kind TEXT NOT NULL CHECK (kind IN ('received', 'used', 'discarded', 'corrected')),
        change_mL REAL NOT NULL CHECK (change_mL @FINITE),
        note TEXT NOT NULL,
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET),
        CHECK (change_mL <> 0),
        CHECK (kind = 'corrected' OR (kind = 'received') = (change_mL > 0)),
        CHECK (kind NOT IN ('discarded', 'corrected') OR trim(note, @BLANKS) <> '')
    ) STRICT)",
    "CREATE INDEX lot_movement_of_lot ON lot_movement (lot)",
};

// What was done at the bench. A mark without component is of the whole tube; the last one of a dose, or of a
// tube, counts.
const char *const marks[] = {
    R"(CREATE TABLE pipetting_mark (
        id @ID,
        tube INTEGER NOT NULL REFERENCES tube (id),
        kind TEXT NOT NULL CHECK (kind IN ('done', 'undone', 'spoilt', 'unspoilt')),
        component TEXT CHECK (component <> ''),
        spike INTEGER NOT NULL CHECK (spike IN (0, 1)),
        volume_mL REAL CHECK (volume_mL @NOTNEGATIVE),
        planned_mL REAL CHECK (planned_mL @NOTNEGATIVE),
        lot_version INTEGER REFERENCES lot_version (id),
        pipette TEXT NOT NULL,
        note TEXT NOT NULL,
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET),
        CHECK ((kind IN ('done', 'undone')) = (component IS NOT NULL)),
        CHECK (component IS NOT NULL OR spike = 0),
        CHECK ((kind = 'done') = (volume_mL IS NOT NULL)),
        CHECK ((kind = 'done') = (planned_mL IS NOT NULL)),
        CHECK (kind = 'done' OR (lot_version IS NULL AND pipette = '')),
        CHECK (component IS NOT NULL OR trim(note, @BLANKS) <> '')
    ) STRICT)",
    "CREATE INDEX pipetting_mark_of_tube ON pipetting_mark (tube, component, spike)",
    "CREATE INDEX pipetting_mark_of_lot ON pipetting_mark (lot_version) WHERE lot_version IS NOT NULL",
    "CREATE INDEX pipetting_mark_spoiling ON pipetting_mark (tube) WHERE component IS NULL",
    R"(CREATE TRIGGER pipetting_mark_on_bench BEFORE INSERT ON pipetting_mark WHEN EXISTS (
        SELECT 1 FROM tube JOIN decision ON decision.run = tube.run WHERE tube.id = NEW.tube
        AND decision.id NOT IN (SELECT decision FROM reopening))
        BEGIN SELECT RAISE(ABORT, 'the run is decided'); END)",
    R"(CREATE TRIGGER pipetting_mark_changes_something BEFORE INSERT ON pipetting_mark
        WHEN NEW.kind <> 'done' AND (NEW.kind = 'spoilt') = coalesce((
        SELECT kind IN ('done', 'spoilt') FROM pipetting_mark WHERE tube = NEW.tube
        AND component IS NEW.component AND spike = NEW.spike ORDER BY id DESC LIMIT 1), 0)
        BEGIN SELECT RAISE(ABORT, 'the mark is so already'); END)",

    // The newest mark that a decision rested on, 0 for none: of its own run, and of those that derived
    // results come from.
    R"(CREATE TABLE decision_mark (
        id @ID,
        decision INTEGER NOT NULL REFERENCES decision (id),
        run INTEGER NOT NULL REFERENCES run (id),
        last_mark INTEGER NOT NULL CHECK (last_mark >= 0),
        UNIQUE (decision, run)
    ) STRICT)",
};

const std::vector<ProtectedTable> &thirdKeys()
{
    static const std::vector<ProtectedTable> list{
        {u"sample_detail"_s, {}},
        {u"sample_expected"_s, {u"detail = NEW.detail AND measurand = NEW.measurand"_s}},
        {u"shelf_sample"_s, {}},
        {u"shelf_version"_s, {u"detail = NEW.detail"_s}},
        {u"shelf_withdrawal"_s, {u"sample = NEW.sample"_s}},
        {u"decision_repeat"_s, {u"decision = NEW.decision AND sample = NEW.sample"_s}},
        {u"repeat_waiver"_s, {u"run = NEW.run AND sample = NEW.sample"_s}},
        {u"plan"_s, {u"run = NEW.run"_s}},
        {u"plan_sample"_s, {u"sample = NEW.sample"_s, u"detail = NEW.detail"_s}},
        {u"plan_step"_s, {u"dilution = NEW.dilution"_s}},
        {u"dilution_uncertainty"_s, {u"dilution = NEW.dilution"_s}},
        {u"laboratory"_s, {}},
        {u"lot"_s, {}},
        {u"lot_version"_s, {}},
        {u"lot_opening"_s, {u"lot = NEW.lot"_s}},
        {u"lot_movement"_s, {}},
        {u"pipetting_mark"_s, {}},
        {u"decision_mark"_s, {u"decision = NEW.decision AND run = NEW.run"_s}},
    };
    return list;
}

} // namespace

SchemaStep thirdSchemaStep()
{
    SchemaStep step{3, u"the shelf, plans, lots, and what was done at the bench"_s, {}};
    const auto append = [&step](const auto &statements) {
        for (const char *const statement : statements)
            step.statements.append(writtenOut(statement));
    };
    append(shelf);
    append(plans);
    append(lots);
    append(marks);
    for (const ProtectedTable &table : thirdKeys())
        step.statements.append(protectionOf(table.table, table.keys));
    return step;
}

} // namespace plateau::notebook
