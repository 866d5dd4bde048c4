// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "ui/bench/reviewbasis.h"

namespace plateau::ui {

/// One thing that two runs are held against each other by, as a person reads it; a dash where a run has none.
struct ComparedLine {
    QString section;
    QString what;
    QString one;
    QString other;
    bool differs() const { return one != other; }
    bool operator==(const ComparedLine &) const = default;
};

/// Conditions, standards, lots, signals, results and checks; what differs first, else in that order.
/// Results stand in the units of their products, as the bases name them.
std::vector<ComparedLine> compareRuns(const notebook::StoredRun &one, const ReviewBasis &basisOfOne,
                                      const notebook::StoredRun &other, const ReviewBasis &basisOfOther);

} // namespace plateau::ui
