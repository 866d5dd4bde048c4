// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/sixthschemastep.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

const char *const charts[] = {
    // How a chart is drawn and where its limits come from; the newest row of a subject counts. name: empty
    // for all standards, controls or samples of it. rules: words with a blank between them.
    R"(CREATE TABLE chart_setting (
        id @ID,
        quantity TEXT NOT NULL CHECK (quantity <> ''),
        method_id TEXT NOT NULL CHECK (method_id <> ''),
        measurand TEXT NOT NULL CHECK (measurand <> ''),
        name TEXT NOT NULL,
        kind TEXT NOT NULL CHECK (kind <> ''),
        first_run INTEGER REFERENCES run (id),
        earlier_values INTEGER CHECK (earlier_values BETWEEN 2 AND 10000),
        spread TEXT CHECK (spread IN ('movingRange', 'standardDeviation')),
        centre REAL CHECK (centre @FINITE),
        deviation REAL CHECK (deviation @POSITIVE),
        source TEXT CHECK (trim(source, @BLANKS) <> ''),
        source_day TEXT CHECK (source_day @DAY),
        constants TEXT NOT NULL CHECK (constants IN ('computed', 'printedTable')),
        rules TEXT NOT NULL,
        subgroup INTEGER NOT NULL CHECK (subgroup BETWEEN 2 AND 25),
        lambda REAL NOT NULL CHECK (lambda > 0 AND lambda <= 1),
        width REAL NOT NULL CHECK (width @POSITIVE),
        k REAL NOT NULL CHECK (k @NOTNEGATIVE),
        h REAL NOT NULL CHECK (h @POSITIVE),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET),
        CHECK ((earlier_values IS NULL) = (spread IS NULL)),
        CHECK ((earlier_values IS NULL) = (deviation IS NOT NULL)),
        CHECK ((centre IS NULL) = (deviation IS NULL)),
        CHECK ((source IS NULL) = (deviation IS NULL)),
        CHECK ((source_day IS NULL) = (deviation IS NULL)),
        CHECK (first_run IS NULL OR earlier_values IS NOT NULL)
    ) STRICT)",
    "CREATE INDEX chart_setting_of_subject ON chart_setting (quantity, method_id, measurand, name, id)",

    // A value that does not count for limits and rules, or counts again; the newest row of a value counts.
    // name: of the standard, control or sample; empty for blanks.
    R"(CREATE TABLE chart_omission (
        id @ID,
        quantity TEXT NOT NULL CHECK (quantity <> ''),
        run INTEGER NOT NULL REFERENCES run (id),
        measurand TEXT NOT NULL CHECK (measurand <> ''),
        name TEXT NOT NULL,
        is_left_out INTEGER NOT NULL CHECK (is_left_out IN (0, 1)),
        reason TEXT NOT NULL CHECK (trim(reason, @BLANKS) <> ''),
        person TEXT NOT NULL CHECK (trim(person, @BLANKS) <> ''),
        at_utc TEXT NOT NULL CHECK (at_utc @UTC),
        at_offset_min INTEGER NOT NULL CHECK (at_offset_min @OFFSET)
    ) STRICT)",
    "CREATE INDEX chart_omission_of_quantity ON chart_omission (quantity, measurand, run, name)",
};

} // namespace

SchemaPart chartsPart()
{
    SchemaPart part;
    for (const char *const statement : charts)
        part.statements.append(writtenOut(statement));
    part.records = {{u"chart_setting"_s, {}}, {u"chart_omission"_s, {}}};
    return part;
}

} // namespace plateau::notebook
