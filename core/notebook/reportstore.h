// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"
#include "core/notebook/reporting.h"

namespace plateau::notebook {

/// The runs that hold one sample; see SampleResults for which these are.
struct SampleRuns {
    /// Of the name, as names are compared.
    QString key;
    /// The newest run when the sample came, 0 where nobody registered it: tells apart samples of one name.
    qint64 sinceRun = 0;
    QString product;
    /// Oldest first.
    std::vector<RunId> runs;
};
/// of: a run whose sample of that name is meant; without it the sample of the newest run.
SampleRuns sampleRuns(const Database &database, const QString &sample, std::optional<RunId> of);

SampleResults loadSampleResults(const Database &database, const QString &sample, const QString &measurand,
                                std::optional<RunId> of);

/// The choice has been found to be possible. personVersion: who signed; absent: unsigned.
void storeReportChoice(Act &act, const SampleRuns &sample, const QString &measurand,
                       const WantedChoice &choice, std::optional<qint64> personVersion);

} // namespace plateau::notebook
