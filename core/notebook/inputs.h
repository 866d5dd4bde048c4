// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"

namespace plateau::notebook {

/// What a run is worked out from, as it stands in the file.
struct Inputs {
    assay::Method method;
    /// Without readings and marks.
    run::Run plan;
    /// Oldest first.
    std::vector<StoredReading> readings;
    /// Oldest first.
    std::vector<StoredMark> marks;

    /// With the readings and marks that counted when those were the newest.
    run::Run runAsOf(const Seen &newest) const;
    /// With those that count now.
    run::Run run() const;
    Seen newest() const;
};
Inputs loadInputs(const Database &database, RunId run);

/// Throws Failure(Damaged) if a row that the run's audit entries cover, or its method, was changed since or
/// is gone: nothing may be decided on it.
void requireUnchanged(const Session &session, RunId run);

} // namespace plateau::notebook
