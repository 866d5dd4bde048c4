// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "core/notebook/ids.h"

#include <QDateTime>
#include <QString>

#include <optional>
#include <vector>

namespace plateau::notebook {

/// Where a result stands: in a decision of a run, by its number among the run's decisions (from 1), and there
/// by the sample's name, since a run may hold a sample again under another name (run::Sample::repeats).
struct ResultSource {
    RunId run;
    int revision = 1;
    QString sample;
    bool operator==(const ResultSource &) const = default;
};

/// A result that an accepted run found of a sample, as it stood when that was decided.
struct AcceptedResult {
    ResultSource from;
    QString methodId;
    int methodVersion = 1;
    QDateTime decidedAt;
    QString decidedBy;
    bool isSigned = false;
    /// Of the sample in that run.
    double dilutionFactor = 1;
    /// Read from the decision's own evaluation; without its budget and its checks.
    evaluation::Result result;
};

/// Which of several results of a sample is reported.
enum class ReportRule { LastAccepted, MeanOfAccepted, Named };

struct ReportChoice {
    ReportRule rule = ReportRule::LastAccepted;
    /// Of Named.
    std::optional<ResultSource> named{};
    QString reason{};
    QString person{};
    QDateTime at{};
    bool isSigned = false;
    /// A result was accepted since: somebody should look again.
    bool olderThanResults = false;
};

/// What Notebook::chooseReported is asked for.
struct WantedChoice {
    ReportRule rule = ReportRule::LastAccepted;
    std::optional<ResultSource> named{};
    QString person;
    /// Needed once persons are set up, as for a decision.
    QString passphrase{};
    QString reason{};
};

/// The results of one sample and one measurand, or derived quantity, over all runs.
///
/// A run holds the same sample where the name is the same (as names are compared), and the products are where
/// both are known; also where it repeats that name. A name that was registered anew, or that was received on another
/// day where both days are known, is another sample from then on, unless a run says that it repeats an earlier one.
struct SampleResults {
    QString sample;
    /// Empty where nobody told it.
    QString product;
    QString measurand;
    /// In the order of their decisions; none of a rejected run, none that was rejected or is to be repeated.
    std::vector<AcceptedResult> accepted;
    /// The last one that was stored; without one the rule is LastAccepted.
    std::optional<ReportChoice> choice;
    ReportRule rule = ReportRule::LastAccepted;
    /// What the rule gives: one of the accepted ones, or their mean. Absent where there is none accepted, or
    /// where the rule cannot be followed, as obstacle says in one sentence.
    std::optional<evaluation::Result> reported;
    /// Of what it was taken.
    std::vector<ResultSource> reportedFrom;
    QString obstacle;
};

/// What the rule gives of the accepted results, put into reported, reportedFrom and obstacle.
///
/// The mean of accepted results needs plain values in one unit. Its expanded uncertainty is the mean of
/// theirs, which is never smaller than that of independent results would be: how much of it the runs have in
/// common (absorptivity, pipettes, standard) is not known. Common practice, no source. Its coverage factor is
/// theirs where all have the same. n is their number.
void followRule(SampleResults &results);

} // namespace plateau::notebook
