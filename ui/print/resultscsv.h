// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/reportcontent.h"

#include <QByteArray>

namespace plateau::ui {

/// Safe: a text that a spreadsheet would take for a formula (it begins with = + - @, a tab or a carriage
/// return) gets an apostrophe before it; numbers stay numbers. Exact: every text as it is, for programs.
enum class CsvCells { Safe, Exact };

/// One row a result below a row of column names, RFC 4180 (quotes where needed, CRLF), UTF-8, days and times
/// as ISO 8601. With a decimal point cells are separated by a comma, with a decimal comma by a semicolon, so
/// that a program tells the two apart by what stands behind the first column's name and reads either without
/// a guess: no cell is grouped, and digits are 0 to 9. Numbers are complete to the last digit, not rounded as
/// on paper.
/// Columns: report, revision, state, run, method, method_version, sample, quantity, measurand, value,
/// expanded_uncertainty, coverage_factor, unit, less_than, greater_than, tubes, spread, verdict, reported,
/// remark, started, decided, decided_by, content_sha256, program.
QByteArray resultsCsv(const ReportContent &content, CsvCells cells);

/// "results Perry tanks, morning.csv"
QString resultsCsvFileName(const ReportContent &content);

} // namespace plateau::ui
