// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "ui/bench/reviewbasis.h"
#include "ui/shared/pointchart.h"

#include <map>

namespace plateau::ui {

class BenchSession;

/// What standards and controls recovered in the decided runs of the notebook, accepted or rejected. A decided
/// run does not change, so each is evaluated once while the program runs.
class RecoveryHistory
{
public:
    /// As many runs back as a chart shows with sense.
    static constexpr int mostRuns = 60;

    /// session outlives it.
    explicit RecoveryHistory(const BenchSession &session);
    /// Fills in recoveries and obstacles: of the newest runs by the method of this one, begun before it.
    void addTo(ReviewBasis &basis, const notebook::StoredRun &stored);

private:
    struct Known {
        int revision = 0;
        QDateTime at;
        std::vector<PastRecovery> recoveries;
        QString obstacle;
    };
    const Known &knownOf(const notebook::RunSummary &summary);

    const BenchSession &m_session;
    std::map<notebook::RunId, Known> m_known;
};

/// What a run is read against: as it holds now while it is on the bench, else as it held when it was decided
/// (revision: for that time, from 1). Throws notebook::Failure.
ReviewBasis reviewBasisOf(const BenchSession &session, RecoveryHistory &recoveries,
                          const notebook::StoredRun &stored, std::optional<int> revision = {});

/// The recoveries that say something: those of standards that do not calibrate their own run.
std::vector<evaluation::StandardRecovery> tellingRecoveries(const run::Run &run,
                                                            const evaluation::Evaluation &evaluation);

/// The one that is shown of this measurand: the first outside the method's limits, else the first; nullptr:
/// none was measured.
const evaluation::StandardRecovery *shownRecovery(const std::vector<evaluation::StandardRecovery> &recoveries,
                                                  const assay::Method &method, const QString &measurand);

/// What was recovered so far, and this recovery behind it, against the method's limits.
PointHistory historyOf(const evaluation::StandardRecovery &newest, const notebook::StoredRun &stored,
                       const ReviewBasis &basis);

} // namespace plateau::ui
