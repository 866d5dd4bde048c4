// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/database.h"
#include "core/notebook/runsearch.h"
#include "core/notebook/statement.h"

namespace plateau::notebook {

/// One statement and what is put into its places.
struct Query {
    QString sql;
    std::vector<Cell> values;
};

/// How many rows of a condition are looked up one by one rather than walking the runs in their order until
/// the page is full: what is more frequent is met soon.
inline constexpr int fewRows = 2000;

/// Of search_run, and the key of the order behind the columns of runColumns(). Looks into the notebook which
/// condition is the rarest. after: see RunSearch::page.
Query pageQuery(const Database &database, const RunFilter &filter, RunOrder order, int limit,
                const std::optional<PageEnd> &after);
/// One number: how many there are, counted up to that many.
Query countQuery(const Database &database, const RunFilter &filter, int limit);

/// "r.run, r.title …", in the order foundRun reads.
QString runColumns();
FoundRun foundRun(const Statement &row);
/// The place of the key.
inline constexpr int keyColumn = 23;

} // namespace plateau::notebook
