// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>
#include <QStringList>

#include <vector>

namespace plateau::ui {

/// What a spreadsheet puts on the clipboard: a line for each row, cells apart by tabs, or by semicolons where
/// there is no tab. A cell in quotation marks may hold line breaks and separators (as in RFC 4180), unless a
/// mark has no partner. Outer blanks are dropped, blank lines too.
struct DelimitedLine {
    /// Of the text, counted from 1: where it begins.
    int number = 0;
    QStringList cells;
    bool operator==(const DelimitedLine &) const = default;
};
std::vector<DelimitedLine> splitDelimited(const QString &text);

} // namespace plateau::ui
