// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/lots.h"
#include "core/notebook/records.h"

#include <QByteArray>

namespace plateau::ui {

/// A run that took from a container, with what was found in it.
struct TracedRun {
    notebook::LotTaking taking;
    notebook::StoredRun stored;
};

/// What a container touched, for the day its supplier recalls it: one row for each result of every run that
/// took from it, a row without a result for a run that has none yet. RFC 4180, UTF-8, decimal points, days
/// and times as ISO 8601; a text that a spreadsheet would take for a formula gets an apostrophe.
/// Columns: reagent, lot, run, title, method, method_version, begun, state, decided, decided_by, taken_mL,
/// tubes, sample, measurand, value, expanded_uncertainty, less_than, greater_than, unit, verdict, decision,
/// by_way_of (the aliquot, or what was dissolved in it, that the run took from).
QByteArray lotTraceCsv(const planning::Lot &lot, const std::vector<TracedRun> &runs);

} // namespace plateau::ui
