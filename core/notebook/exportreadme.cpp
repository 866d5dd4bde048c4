// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/exportreadme.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

const char *const layout = R"(
What lies here
--------------
manifest.json         The format (plateau-export/1), the program and its version, the number of the schema, the
                      head of the audit, and every table with its columns, its number of rows and the SHA-256
                      of its JSON file.
tables/NAME.json      Every row of one table: {"table": NAME, "columns": [...], "rows": [[...], ...]}, a row a
                      line, in the order of the ids. Whole numbers have no decimal point, others have one and are
                      written in the shortest form that reads back to the same IEEE 754 double; null is nothing.
tables/NAME.csv       The same rows as CSV (RFC 4180, UTF-8, comma, CR LF, a first line of column names). Texts
                      always stand in quotation marks, a quotation mark in them is doubled; "" is an empty text,
                      and nothing between two commas is nothing. Texts are exactly as they were entered: one
                      that begins with = + - or @ is taken for a formula by some spreadsheets, so import the
                      columns as text there.
documents/runs/       Every run as it stands now, with its method in it: a plateau-run/1 document.
documents/evaluations/  What was decided on, RUN-REVISION.json: a plateau-evaluation/1 document as it was then.
documents/laboratory.json, documents/limits.json   As they were saved last: plateau-laboratory/1,
                      plateau-specifications/1.
documents/results.csv A row for each result of each decision, decimal point, units beside the numbers.

What the tables are
-------------------
A row is never changed and never removed; a later row says what was changed. id is the number of a row in its
table. A column that is named like a table holds the id of a row there. Units are in the names: _mL, _g, _min,
_ms, _nm, _mm, _g_per_L, _percent. Times: NAME_utc is UTC (ISO 8601, milliseconds), NAME_offset_min the offset of
the clock on the wall in minutes.

run, sample, dilution, standard, tube, lot_use, uncertainty   a run as it was put on the bench
reading, reading_point      what was read; "corrects" names the reading that one replaces, "reason" says why
reading_origin, reading_again, bench_stamp   where a reading came from, that it continues a series, when it was made
pipetting_mark, mark_lot_day   what was ticked, taken back or spoilt in a tube; how long the container was good
                            that it was taken from, where its label says otherwise
dilution_mark               steps of diluting a sample that were ticked as made, or taken back; last_mark is the
                            newest pipetting_mark of the run then
decision, decision_sample, decision_companion, reopening   what was decided, by whom, why, and what was taken back
lot, lot_version, lot_keeping, lot_opening, lot_opening_change   containers of reagents, their labels as they were
                            noted, when they were opened, and what was said of that later: the last word counts, a
                            row without a day says that it is not opened
lot_movement, lot_dry, lot_dry_disposal, lot_dissolving, lot_division, lot_aliquot, lot_place, lot_note   what
                            happened to them: their volume is the sum of movements, solutions and aliquots filled,
                            less what was divided, given as solvent and ticked in pipetting_mark
method, method_act          methods as documents, and what was done with them
laboratory, specifications  settings and limits as documents, one row for each time they were saved
chart_setting, chart_omission   limits and rules of control charts, values that count in them no more or again
person, person_version, person_passphrase   who signs; passphrases as Argon2id hashes only
audit                       one row for each act: who, when, under which account, with which program
audit_record                the rows that each act added, each with the hash of its content

The audit chain, to check without the program
---------------------------------------------
A hash is SHA-256, written as 64 hexadecimal digits. "Field" means: the length of the bytes as 8 bytes, most
significant first, then the bytes; texts as UTF-8, whole numbers as decimal digits.
A row's hash (audit_record.content_hash) is that of the fields: the text plateau-record/1, the table's name, then for
every column but id, in the order of the table: its name, its kind (null, integer, real or text) and its value
(nothing, the decimal digits, the 8 bytes of the IEEE 754 double with the most significant first, or the text).
The columns are those the table had in the schema of the audit entry (audit.schema_version).
An entry's hash (audit.hash) is that of the fields: the text plateau-audit/1, previous_hash, id, at_utc,
at_offset_min, person, account, host, program_version, schema_version, action, run (an empty field for none),
details, the number of its audit_record rows, then for each of those in the order of position: record_table,
record_id, content_hash.
previous_hash is the hash of the entry before; that of the first entry is 64 zeros. The head is the hash of the
last entry: kept elsewhere (it stands on every report) it shows whether anything was changed since.

Back into a notebook
--------------------
plateau import NEW-NOTEBOOK THIS-FOLDER makes a notebook of tables/*.json with the same rows, the same chain and
the same hashes. What follows from the records (the index that runs are searched with) is made anew.
)";

} // namespace

QByteArray exportReadme(const ExportManifest &manifest)
{
    return u"Export of the notebook %1, made %2 with Plateau %3.\nAudit: %4 entries, head %5\n"_s
               .arg(manifest.notebook, manifest.exportedAt, manifest.program)
               .arg(manifest.head.entries)
               .arg(manifest.head.hash)
               .toUtf8() +
           layout;
}

} // namespace plateau::notebook
