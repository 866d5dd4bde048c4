// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/schemawords.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

// Who may sign. What is known of a person in versions; the last one counts, as does the last passphrase. Of a
// passphrase only its hash is kept. Retired and reinstated by turns.
const char *const persons[] = {
    "CREATE TABLE person (id @ID) STRICT",

    R"(CREATE TABLE person_version (
        id @ID,
        person INTEGER NOT NULL REFERENCES person (id),
        name TEXT NOT NULL CHECK (trim(name, @BLANKS) <> ''),
        name_key TEXT NOT NULL CHECK (name_key <> ''),
        role TEXT NOT NULL CHECK (role IN ('analyst', 'reviewer', 'head')),
        changed_by TEXT NOT NULL CHECK (trim(changed_by, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",
    "CREATE INDEX person_version_of_person ON person_version (person)",
    "CREATE INDEX person_version_by_name ON person_version (name_key)",
    R"(CREATE TRIGGER person_version_has_its_name BEFORE INSERT ON person_version WHEN EXISTS (
        SELECT 1 FROM person_version WHERE name_key = NEW.name_key AND person <> NEW.person)
        BEGIN SELECT RAISE(ABORT, 'the name is another person''s'); END)",

    R"(CREATE TABLE person_passphrase (
        id @ID,
        person INTEGER NOT NULL REFERENCES person (id),
        hash TEXT NOT NULL CHECK (hash GLOB '$argon2id$*'),
        changed_by TEXT NOT NULL CHECK (trim(changed_by, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",
    "CREATE INDEX person_passphrase_of_person ON person_passphrase (person)",

    R"(CREATE TABLE person_standing (
        id @ID,
        person INTEGER NOT NULL REFERENCES person (id),
        kind TEXT NOT NULL CHECK (kind IN ('retired', 'reinstated')),
        reason TEXT NOT NULL CHECK (trim(reason, @BLANKS) <> ''),
        changed_by TEXT NOT NULL CHECK (trim(changed_by, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",
    "CREATE INDEX person_standing_of_person ON person_standing (person)",
    R"(CREATE TRIGGER person_standing_changes_something BEFORE INSERT ON person_standing
        WHEN (NEW.kind = 'retired') = coalesce((SELECT kind = 'retired' FROM person_standing
        WHERE person = NEW.person ORDER BY id DESC LIMIT 1), 0)
        BEGIN SELECT RAISE(ABORT, 'the person is so already'); END)",

    // A passphrase that was not the person's.
    R"(CREATE TABLE wrong_passphrase (
        id @ID,
        person INTEGER NOT NULL REFERENCES person (id),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",
    "CREATE INDEX wrong_passphrase_of_person ON wrong_passphrase (person, at_utc)",
};

const char *const decisionTables[] = {
    // The version of the person is the name and role that was signed with. A decision without such a row is
    // unsigned.
    R"(CREATE TABLE decision_signature (
        id @ID,
        decision INTEGER NOT NULL UNIQUE REFERENCES decision (id),
        person_version INTEGER NOT NULL REFERENCES person_version (id)
    ) STRICT)",

    // What was decided of a sample otherwise than of its run, or with words of its own. A repeat may say how:
    // with this much sample in the tube, or with the steps of decision_step.
    R"(CREATE TABLE decision_sample (
        id @ID,
        decision INTEGER NOT NULL REFERENCES decision (id),
        sample TEXT NOT NULL CHECK (sample <> ''),
        kind TEXT NOT NULL CHECK (kind IN ('accepted', 'rejected', 'repeat')),
        reason TEXT NOT NULL,
        sample_volume_mL REAL CHECK (sample_volume_mL @POSITIVE),
        UNIQUE (decision, sample),
        CHECK (kind <> 'rejected' OR trim(reason, @BLANKS) <> ''),
        CHECK (kind = 'repeat' OR sample_volume_mL IS NULL)
    ) STRICT)",

    R"(CREATE TABLE decision_step (
        id @ID,
        decision_sample INTEGER NOT NULL REFERENCES decision_sample (id),
        position INTEGER NOT NULL CHECK (position >= 0),
        take_mL REAL NOT NULL CHECK (take_mL @POSITIVE),
        make_up_to_mL REAL NOT NULL CHECK (make_up_to_mL @POSITIVE),
        UNIQUE (decision_sample, position),
        CHECK (take_mL <= make_up_to_mL)
    ) STRICT)",
    R"(CREATE TRIGGER decision_step_is_of_a_repeat BEFORE INSERT ON decision_step WHEN NOT EXISTS (
        SELECT 1 FROM decision_sample WHERE id = NEW.decision_sample AND kind = 'repeat'
        AND sample_volume_mL IS NULL)
        BEGIN SELECT RAISE(ABORT, 'steps are of a repeat by dilution'); END)",

    // Which of several results of a sample is reported. sample_key: what names are compared by; since_run:
    // only
    // later runs are of this sample, earlier ones of another one of its name. last_decision: the newest one
    // when this was chosen. named, named_sample: the decision whose result it is, and the sample's name
    // there, of
    // the rule 'named'.
    R"(CREATE TABLE report_choice (
        id @ID,
        sample_key TEXT NOT NULL CHECK (sample_key <> ''),
        since_run INTEGER NOT NULL CHECK (since_run >= 0),
        measurand TEXT NOT NULL CHECK (measurand <> ''),
        rule TEXT NOT NULL CHECK (rule IN ('lastAccepted', 'meanOfAccepted', 'named')),
        named INTEGER REFERENCES decision (id),
        named_sample TEXT CHECK (named_sample <> ''),
        last_decision INTEGER NOT NULL CHECK (last_decision >= 0),
        reason TEXT NOT NULL CHECK (trim(reason, @BLANKS) <> ''),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        person_version INTEGER REFERENCES person_version (id),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET),
        CHECK ((rule = 'named') = (named IS NOT NULL)),
        CHECK ((rule = 'named') = (named_sample IS NOT NULL))
    ) STRICT)",
    "CREATE INDEX report_choice_of_sample ON report_choice (sample_key, measurand)",
};

const char *const benchWords[] = {
    R"(CREATE TABLE specifications (
        id @ID,
        content TEXT NOT NULL CHECK (content @DOCUMENT),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        reason TEXT NOT NULL CHECK (trim(reason, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",

    // Relative standard uncertainty (k = 1) of the concentration of a standard that states its own.
    R"(CREATE TABLE standard_uncertainty (
        id @ID,
        standard INTEGER NOT NULL UNIQUE REFERENCES standard (id),
        percent REAL NOT NULL CHECK (percent @NOTNEGATIVE)
    ) STRICT)",
};

const std::vector<ProtectedTable> &fourthKeys()
{
    static const std::vector<ProtectedTable> list{
        {u"person"_s, {}},
        {u"person_version"_s, {}},
        {u"person_passphrase"_s, {}},
        {u"person_standing"_s, {}},
        {u"wrong_passphrase"_s, {}},
        {u"decision_signature"_s, {u"decision = NEW.decision"_s}},
        {u"decision_sample"_s, {u"decision = NEW.decision AND sample = NEW.sample"_s}},
        {u"decision_step"_s, {u"decision_sample = NEW.decision_sample AND position = NEW.position"_s}},
        {u"report_choice"_s, {}},
        {u"specifications"_s, {}},
        {u"standard_uncertainty"_s, {u"standard = NEW.standard"_s}},
    };
    return list;
}

} // namespace

SchemaStep fourthSchemaStep()
{
    SchemaStep step{
        4, u"persons who sign, what is decided of single samples, which result is reported, limits"_s, {}};
    const auto append = [&step](const auto &statements) {
        for (const char *const statement : statements)
            step.statements.append(writtenOut(statement));
    };
    append(persons);
    append(decisionTables);
    append(benchWords);
    for (const ProtectedTable &table : fourthKeys())
        step.statements.append(protectionOf(table.table, table.keys));
    return step;
}

} // namespace plateau::notebook
