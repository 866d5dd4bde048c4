// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

namespace plateau::test {

/// A made-up cidery's notebook of any size. A few dozen runs are made by the acts that people make them by;
/// the others are copies of those on later days, written in a few statements, with the rows that the acts
/// would have given them.
struct LargeNotebook {
    int runs = 1000;
    /// How many of them are made by acts.
    int made = 120;
    /// Nothing of the copies but what the search and the charts read. Such a notebook can be read, but not
    /// opened for writing.
    bool searchOnly = false;
    /// Of the copies none is on the bench, as in a laboratory that works; else one in twelve is, for the search.
    bool allDecided = false;
};

/// At a path where no file is. With copies the entries of the audit trail cover the rows they were copied
/// from: the chain holds, but what it says of the copies is not looked for there.
void makeLargeNotebook(const QString &path, const LargeNotebook &wanted);

} // namespace plateau::test
