// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/database.h"
#include "core/notebook/statement.h"

namespace plateau::notebook {

/// One table of what runs are found by; the first column is the run.
struct DerivedTable {
    QString name;
    QStringList columns;
};
/// All of them but the index of words; the last is search_words, which that is made from.
const std::vector<DerivedTable> &derivedTables();

/// For each derived table the rows of one run, sorted.
using RunFacts = std::vector<std::vector<std::vector<Cell>>>;

/// As the records say now. What of them cannot be read any more is left out: that is for a verification to
/// say, and nobody is to lose the rest for it.
RunFacts factsOf(const Database &database, const RunSummary &summary);

/// As they stand in the file.
RunFacts storedFacts(const Database &database, RunId run);

} // namespace plateau::notebook
