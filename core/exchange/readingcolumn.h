// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/exchange/readingtext.h"

#include <optional>
#include <vector>

namespace plateau::exchange {

/// What may stand between two cells of a line.
enum class Delimiter { Tab, Semicolon, Comma, Blanks };
QString wordOf(Delimiter delimiter);
/// Nothing for an unknown word.
std::optional<Delimiter> delimiterFromWord(const QString &word);

/// Where in a pasted text or a file the absorbances stand. Columns count from 1.
struct ColumnMapping {
    TextEncoding encoding = TextEncoding::Utf8;
    Delimiter delimiter = Delimiter::Tab;
    DecimalSign decimal = DecimalSign::Either;
    int absorbanceColumn = 1;
    /// The column that names the tube, by number or name; 0: the order tells.
    int tubeColumn = 0;
    /// Lines at the top that are no readings.
    int headerLines = 0;
    bool isReversed = false;
    /// Lines without a sign in them are left out. Else one between readings is a fault: the readings behind
    /// it would move up by a tube.
    bool leavesOutBlankLines = false;
    bool operator==(const ColumnMapping &) const = default;
};
inline constexpr int mostColumns = 200;
inline constexpr int mostHeaderLines = 1000;
inline constexpr int mostReadings = 10000;
inline constexpr qsizetype longestCell = 500;
inline constexpr qsizetype longestColumnText = qsizetype{4} * 1024 * 1024;

/// What keeps the mapping from being used, in one sentence; empty if nothing does.
QString faultOf(const ColumnMapping &mapping);

struct ColumnRow {
    enum class Kind { Reading, LeftOut, Fault };
    Kind kind = Kind::Reading;
    /// Of the text, counted from 1.
    int line = 0;
    /// As it stands in the text.
    QString raw;
    /// Of a reading.
    double absorbance = 0;
    /// As the cell has it, blanks around dropped; absent without a tube column.
    std::optional<QString> tube;
    /// Why it is left out, or what is wrong with its place: "line 5, column 2: ...".
    QString sentence;
    bool operator==(const ColumnRow &) const = default;
};

struct ReadingColumn {
    /// Every line up to the last that is not blank, in the order of the text.
    std::vector<ColumnRow> rows;
    /// What is wrong with the text as a whole, in one sentence; then there are no rows.
    QString fault;

    int readings() const;
    int faults() const;
    /// All or nothing: some reading, and no fault.
    bool isAccepted() const { return fault.isEmpty() && faults() == 0 && readings() > 0; }
};

/// Reads every line by itself; cells may stand in quotation marks (as in RFC 4180, but within one line). The
/// mapping is sound.
ReadingColumn readColumn(const QString &text, const ColumnMapping &mapping);
/// The readings of an accepted column in the order of the mapping; none of any other.
std::vector<ColumnRow> readingsOf(const ReadingColumn &column, const ColumnMapping &mapping);

/// What a text that nobody has described yet is shown with: tabs where there are some, then semicolons; one
/// column else.
Delimiter likelyDelimiter(const QString &text);

} // namespace plateau::exchange
