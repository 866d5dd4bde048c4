// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/recoveryhistory.h"

#include "core/assay/localday.h"
#include "core/notebook/notebook.h"
#include "ui/bench/benchsession.h"


#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QDateTime beginOf(const notebook::StoredRun &stored)
{
    return stored.run.startedAt.value_or(stored.summary.createdAt);
}

/// A standard that calibrates its own run recovers itself to the last digit; no other comes as near.
bool isItself(double recovery_percent)
{
    return std::abs(recovery_percent - 100) < 1e-6;
}

QString dayText(const QDateTime &moment)
{
    return assay::shownDay(moment.toLocalTime().date());
}

} // namespace

ReviewBasis reviewBasisOf(const BenchSession &session, const notebook::StoredRun &stored,
                          std::optional<int> revision)
{
    ReviewBasis basis{session.decisionBasis(stored.summary.id, revision), {}};
    for (const assay::Derived &derived : stored.method.derived) {
        for (const assay::DerivedTerm &term : derived.terms) {
            if (!term.method.isEmpty())
                basis.methodNames.try_emplace(term.method, session.methodName(term.method));
        }
    }
    notebook::HistoryFilter filter;
    filter.method = stored.summary.methodId;
    filter.rejectedToo = true;
    filter.until = beginOf(stored);
    // The run itself may be among them.
    filter.newestRuns = mostRuns + 1;
    for (const notebook::RecoveryPoint &point : session.runHistory().recoveries(filter)) {
        if (point.of.run != stored.summary.id)
            basis.recoveries.push_back(
                {point.of.at, point.standard, point.measurand, point.recovery_percent});
    }
    return basis;
}

std::vector<evaluation::StandardRecovery> tellingRecoveries(const run::Run &run,
                                                            const evaluation::Evaluation &evaluation)
{
    std::vector<evaluation::StandardRecovery> telling;
    for (const evaluation::StandardRecovery &recovery : evaluation.standards) {
        if (!recovery.recovery_percent || !std::isfinite(*recovery.recovery_percent))
            continue;
        if (run.calibration != run::Calibration::Standard || !isItself(*recovery.recovery_percent))
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
