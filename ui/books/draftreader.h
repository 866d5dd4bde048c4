// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/methoddraft.h"
#include "ui/shared/numberreader.h"

#include <optional>

namespace plateau::ui {

/// Reads the texts of a method draft; what cannot be read goes to the problems with its place and stands as
/// 0.
class DraftReader : public NumberReader
{
public:
    using NumberReader::NumberReader;

    /// The fraction that a text in per cent stands for, 0 to 1; nothing as above.
    std::optional<double> optionalFraction(const QString &percent, const QString &pointer) const;
    /// Nothing while both are blank; one end alone is a problem.
    std::optional<assay::Interval> interval(const QString &from, const QString &to,
                                            const QString &pointer) const;
    assay::Interval neededInterval(const QString &from, const QString &to, const QString &pointer) const;
    bool hasComplainedOf(const QString &pointer) const;
    /// Those whose place has nothing wrong with it yet: a text that could not be read is said once, not again
    /// as a wrong number.
    void addUnsaid(const assay::Problems &problems) const;

    static QString nothingAdded();
    static QString wavelengthTwice();
};

/// The ids of the rows: the key of what had one, else made from the name in the first cell, each once.
std::vector<QString> idsOf(const std::vector<CellRow> &rows);
/// One text a line; blank lines do not count.
std::vector<QString> linesOf(const LinesDraft &draft);

} // namespace plateau::ui
