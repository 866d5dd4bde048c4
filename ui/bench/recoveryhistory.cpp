// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/recoveryhistory.h"

#include "core/notebook/notebook.h"
#include "ui/bench/benchsession.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct RecoveryHistoryWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::RecoveryHistory)
};

QDateTime beginOf(const notebook::StoredRun &stored)
{
    return stored.run.startedAt.value_or(stored.summary.createdAt);
}

QString dayText(const QDateTime &moment)
{
    return moment.toLocalTime().date().toString(Qt::ISODate);
}

} // namespace

RecoveryHistory::RecoveryHistory(const BenchSession &session)
    : m_session(session)
{
}

const RecoveryHistory::Known &RecoveryHistory::knownOf(const notebook::RunSummary &summary)
{
    Known &known = m_known[summary.id];
    if (known.revision == summary.revision)
        return known;
    known = {summary.revision, summary.createdAt, {}, {}};
    try {
        const notebook::StoredRun stored = m_session.load(summary.id);
        known.at = beginOf(stored);
        for (const evaluation::StandardRecovery &recovery :
             tellingRecoveries(stored.run, notebook::evaluationOf(stored)))
            known.recoveries.push_back(
                {known.at, recovery.standard, recovery.measurand, *recovery.recovery_percent});
    } catch (const notebook::Failure &failure) {
        known.obstacle = RecoveryHistoryWords::tr("The recoveries of \"%1\" are not among the history: %2")
                             .arg(summary.title, failure.sentence());
    }
    return known;
}

void RecoveryHistory::addTo(ReviewBasis &basis, const notebook::StoredRun &stored)
{
    std::vector<const Known *> runs;
    for (const notebook::RunSummary &summary : m_session.allRuns()) {
        if (summary.methodId != stored.summary.methodId || summary.id == stored.summary.id ||
            summary.state == notebook::RunState::OnBench || runs.size() == mostRuns)
            continue;
        const Known &known = knownOf(summary);
        if (!known.obstacle.isEmpty())
            basis.obstacles << known.obstacle;
        else if (known.at <= beginOf(stored))
            runs.push_back(&known);
    }
    std::ranges::stable_sort(runs, {}, [](const Known *known) { return known->at; });
    for (const Known *known : runs)
        basis.recoveries.insert(basis.recoveries.end(), known->recoveries.begin(), known->recoveries.end());
}

ReviewBasis reviewBasisOf(const BenchSession &session, RecoveryHistory &recoveries,
                          const notebook::StoredRun &stored, std::optional<int> revision)
{
    ReviewBasis basis{session.decisionBasis(stored.summary.id, revision), {}, {}};
    recoveries.addTo(basis, stored);
    return basis;
}

std::vector<evaluation::StandardRecovery> tellingRecoveries(const run::Run &run,
                                                            const evaluation::Evaluation &evaluation)
{
    std::vector<evaluation::StandardRecovery> telling;
    for (const evaluation::StandardRecovery &recovery : evaluation.standards) {
        if (!recovery.recovery_percent || !std::isfinite(*recovery.recovery_percent))
            continue;
        // A standard recovers itself to the last digit.
        const bool isItself = run.calibration == run::Calibration::Standard &&
                              std::abs(*recovery.recovery_percent - 100) < 1e-6;
        if (!isItself)
            telling.push_back(recovery);
    }
    return telling;
}

const evaluation::StandardRecovery *shownRecovery(const std::vector<evaluation::StandardRecovery> &recoveries,
                                                  const assay::Method &method, const QString &measurand)
{
    const auto &limits = method.acceptance.standardRecovery_percent;
    const evaluation::StandardRecovery *shown = nullptr;
    for (const evaluation::StandardRecovery &recovery : recoveries) {
        if (recovery.measurand != measurand)
            continue;
        if (limits &&
            (*recovery.recovery_percent < limits->lower || *recovery.recovery_percent > limits->upper))
            return &recovery;
        shown = shown ? shown : &recovery;
    }
    return shown;
}

PointHistory historyOf(const evaluation::StandardRecovery &newest, const notebook::StoredRun &stored,
                       const ReviewBasis &basis)
{
    PointHistory history;
    history.quantity = RecoveryHistoryWords::tr("Recovery (%)");
    if (const auto &limits = stored.method.acceptance.standardRecovery_percent) {
        history.lower = limits->lower;
        history.upper = limits->upper;
    }
    for (const PastRecovery &past : basis.recoveries) {
        if (past.measurand == newest.measurand)
            history.points.push_back({dayText(past.at), past.recovery_percent});
    }
    history.points.push_back({dayText(beginOf(stored)), *newest.recovery_percent});
    return history;
}

} // namespace plateau::ui
