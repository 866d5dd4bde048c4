// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"
#include "core/notebook/benchclock.h"

namespace plateau::notebook {

/// What a run is worked out from, as it stands in the file.
struct Inputs {
    assay::Method method;
    /// Without readings and marks, with the tubes that were added since.
    run::Run plan;
    /// When it was put on the bench, and what it was planned with.
    QDateTime arrivedAt;
    RackSize planned;
    /// Oldest first.
    std::vector<StoredReading> readings;
    /// Oldest first.
    std::vector<StoredMark> marks;

    /// As it was when those readings, marks and tubes were the newest.
    run::Run runAsOf(const Seen &newest) const;
    /// With those that count now.
    run::Run run() const;
    Seen newest() const;
    /// With all that was done at the bench so far.
    BenchClock clock() const;
};
Inputs loadInputs(const Database &database, RunId run);

/// Throws Failure(Damaged) if a row that the run's audit entries cover, or its method, was changed since or
/// is gone: nothing may be decided on it.
void requireUnchanged(const Session &session, RunId run);

} // namespace plateau::notebook
