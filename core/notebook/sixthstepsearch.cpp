// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/sixthschemastep.h"

namespace plateau::notebook {

namespace {

// What runs are found by. All of it follows from the records (runfacts.h), can be made anew at any time and
// stands outside the audit chain; what a column says of a decision is said by the one that stands.
const char *const runs[] = {
    // started_*: the run's own start, else when it was put into the notebook. day: of that, as on the wall.
    // *_key: what is compared and ordered by (caseless). code: what its printed sheets say.
    // decision: the row that stands; decided_utc is
    // empty without one.
    R"(CREATE TABLE search_run (
        run INTEGER PRIMARY KEY REFERENCES run (id),
        title TEXT NOT NULL,
        title_key TEXT NOT NULL,
        method INTEGER NOT NULL REFERENCES method (id),
        method_id TEXT NOT NULL,
        method_name TEXT NOT NULL,
        method_key TEXT NOT NULL,
        method_version INTEGER NOT NULL,
        code TEXT NOT NULL,
        created_utc TEXT NOT NULL,
        created_offset_min INTEGER NOT NULL,
        started_utc TEXT NOT NULL,
        started_offset_min INTEGER NOT NULL,
        day TEXT NOT NULL,
        state TEXT NOT NULL CHECK (state IN ('onBench', 'accepted', 'rejected')),
        revision INTEGER NOT NULL,
        tubes INTEGER NOT NULL,
        readings_taken INTEGER NOT NULL,
        readings_planned INTEGER NOT NULL,
        decision INTEGER REFERENCES decision (id),
        decided_by TEXT NOT NULL,
        decided_utc TEXT NOT NULL,
        decided_offset_min INTEGER NOT NULL,
        acceptable INTEGER NOT NULL,
        is_signed INTEGER NOT NULL,
        samples_rejected INTEGER NOT NULL,
        samples_to_repeat INTEGER NOT NULL
    ) STRICT)",
    "CREATE INDEX search_run_by_title ON search_run (title_key, run)",
    "CREATE INDEX search_run_by_method ON search_run (method_key, run)",
    "CREATE INDEX search_run_by_method_id ON search_run (method_id, run)",
    "CREATE INDEX search_run_by_day ON search_run (day, run)",
    "CREATE INDEX search_run_by_code ON search_run (code, run)",
    "CREATE INDEX search_run_by_state ON search_run (state, run)",
    "CREATE INDEX search_run_by_decision ON search_run (decided_utc, run)",

    // product: as it was planned, empty where that was not known.
    R"(CREATE TABLE search_sample (
        run INTEGER NOT NULL REFERENCES run (id),
        position INTEGER NOT NULL,
        name TEXT NOT NULL,
        name_key TEXT NOT NULL,
        product TEXT NOT NULL,
        product_key TEXT NOT NULL,
        PRIMARY KEY (run, position)
    ) STRICT, WITHOUT ROWID)",
    "CREATE INDEX search_sample_by_name ON search_sample (name_key, run)",
    "CREATE INDEX search_sample_by_product ON search_sample (product_key, run) WHERE product_key <> ''",

    // Everybody who did something on it.
    R"(CREATE TABLE search_person (
        run INTEGER NOT NULL REFERENCES run (id),
        person TEXT NOT NULL,
        PRIMARY KEY (run, person)
    ) STRICT, WITHOUT ROWID)",
    "CREATE INDEX search_person_by_person ON search_person (person, run)",

    // What was pipetted from, and what a run says it took. lot: of a container the notebook keeps, else 0.
    R"(CREATE TABLE search_lot (
        run INTEGER NOT NULL REFERENCES run (id),
        component TEXT NOT NULL,
        name TEXT NOT NULL,
        lot INTEGER NOT NULL,
        PRIMARY KEY (run, component, name, lot)
    ) STRICT, WITHOUT ROWID)",
    "CREATE INDEX search_lot_by_container ON search_lot (lot, run) WHERE lot > 0",
    "CREATE INDEX search_lot_by_name ON search_lot (name, run)",
};

const char *const findings[] = {
    // kind: accepted where the decision accepts this result, else rejected or repeat. bound: a value only
    // known to be less or greater than bound_value.
    R"(CREATE TABLE search_result (
        run INTEGER NOT NULL REFERENCES run (id),
        position INTEGER NOT NULL,
        sample TEXT NOT NULL,
        sample_key TEXT NOT NULL,
        measurand TEXT NOT NULL,
        unit TEXT NOT NULL,
        value REAL,
        expanded_uncertainty REAL,
        bound TEXT CHECK (bound IN ('less', 'greater')),
        bound_value REAL,
        n INTEGER NOT NULL,
        spread REAL,
        verdict TEXT NOT NULL,
        kind TEXT NOT NULL CHECK (kind IN ('accepted', 'rejected', 'repeat')),
        PRIMARY KEY (run, position)
    ) STRICT, WITHOUT ROWID)",
    "CREATE INDEX search_result_by_value ON search_result (measurand, unit, value, run)",
    "CREATE INDEX search_result_by_sample ON search_result (sample_key, measurand, run)",

    // Failed checks, each once: check_word as evaluation::checkWord gives it, scope and its id and measurand.
    R"(CREATE TABLE search_flag (
        run INTEGER NOT NULL REFERENCES run (id),
        check_word TEXT NOT NULL,
        scope TEXT NOT NULL,
        PRIMARY KEY (run, check_word, scope)
    ) STRICT, WITHOUT ROWID)",
    "CREATE INDEX search_flag_by_check ON search_flag (check_word, run)",

    // Every standard of a run, decided or not. age_h: since it was made, at its use; absent where that is not
    // known. expected to recovery: of the decision that stands, one row for each measurand it holds; a run on
    // the bench, and a standard that nothing is expected of, has one row with an empty measurand.
    R"(CREATE TABLE search_standard (
        run INTEGER NOT NULL REFERENCES run (id),
        name TEXT NOT NULL,
        measurand TEXT NOT NULL,
        prepared_utc TEXT,
        age_h REAL,
        expected_g_per_L REAL,
        found_g_per_L REAL,
        recovery_percent REAL,
        PRIMARY KEY (run, name, measurand)
    ) STRICT, WITHOUT ROWID)",
    "CREATE INDEX search_standard_by_name ON search_standard (name, run)",
    "CREATE INDEX search_standard_by_measurand ON search_standard (measurand, run) WHERE recovery_percent IS "
    "NOT NULL",

    R"(CREATE TABLE search_blank (
        run INTEGER NOT NULL REFERENCES run (id),
        measurand TEXT NOT NULL,
        mean REAL NOT NULL,
        n INTEGER NOT NULL,
        PRIMARY KEY (run, measurand)
    ) STRICT, WITHOUT ROWID)",
    "CREATE INDEX search_blank_by_measurand ON search_blank (measurand, run)",
};

// Words. The index of FTS5 keeps no text of its own; search_words is what it was made from.
const char *const words[] = {
    R"(CREATE TABLE search_words (
        run INTEGER PRIMARY KEY REFERENCES run (id),
        title TEXT NOT NULL,
        sample TEXT NOT NULL,
        product TEXT NOT NULL,
        method TEXT NOT NULL,
        person TEXT NOT NULL,
        lot TEXT NOT NULL,
        standard TEXT NOT NULL,
        notes TEXT NOT NULL
    ) STRICT)",
    R"(CREATE VIRTUAL TABLE search_text USING fts5 (title, sample, product, method, person, lot, standard, notes,
        content='search_words', content_rowid='run', columnsize=0, prefix='1 2 3',
        tokenize='unicode61 remove_diacritics 2'))",
};

} // namespace

SchemaPart searchPart()
{
    SchemaPart part;
    const auto append = [&part](const auto &statements) {
        for (const char *const statement : statements)
            part.statements.append(writtenOut(statement));
    };
    append(runs);
    append(findings);
    append(words);
    return part;
}

} // namespace plateau::notebook
