// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "ui/shared/sentencelist.h"

#include <vector>

namespace plateau::ui {

/// What somebody wants of one sample while its run is being decided.
enum class SampleChoice { Undecided, AsRun, Accepted, Rejected, Repeat };

/// One sample of a run that is being decided.
struct SampleChoiceRow {
    QString sample;
    /// The worst of its results.
    Sentence verdict;
    SampleChoice choice = SampleChoice::AsRun;
    QString reason{};
    /// How the evaluation advises to repeat it: "dilute 10-fold"; empty where it does not say.
    QString advice{};
    /// How somebody wants it repeated instead, as typed (repeathow.h); empty: as advised, else as in the run.
    QString how{};
    /// Left to an accepted run, it is repeated, since the evaluation says so.
    bool repeatAdvised = false;
    /// Somebody chose; else it follows the evaluation.
    bool touched = false;
    bool operator==(const SampleChoiceRow &) const = default;
};

/// Before anybody chose: what is to be repeated is; what was repeated in the same rack is rejected for that
/// reason; what has to be investigated is undecided; the rest follows the run.
std::vector<SampleChoiceRow> startingChoices(const run::Run &run, const evaluation::Evaluation &evaluation);
/// Fresh rows with what somebody chose of the same samples before.
std::vector<SampleChoiceRow> withKept(std::vector<SampleChoiceRow> fresh,
                                      const std::vector<SampleChoiceRow> &kept);

/// What that decision of the run makes of the sample; Undecided or AsRun never comes out of a rejected run,
/// and AsRun of none.
SampleChoice outcomeOf(const SampleChoiceRow &row, notebook::DecisionKind ofRun);
/// Names of those that an accepted run does not settle.
QStringList undecidedSamples(const std::vector<SampleChoiceRow> &rows);
/// Names of those of which an accepted run answers what did not pass: rejected, repeated, or accepted by
/// themselves for a reason.
QStringList answeredSamples(const std::vector<SampleChoiceRow> &rows);
/// The first that is to be repeated in a way that cannot be read; -1: none.
int unreadableRepeat(const std::vector<SampleChoiceRow> &rows);
/// What is handed to the notebook beside the decision of the run.
std::vector<notebook::SampleDecision> sampleDecisions(const std::vector<SampleChoiceRow> &rows);

/// "accepted", "as the run"; lower case, a word of a table.
QString choiceText(SampleChoice choice);
/// What becomes of it where the run is accepted: "reported", "waits on the shelf: dilute 10-fold".
QString consequenceText(const SampleChoiceRow &row);
/// "If the run is accepted: 5 samples will be reported. 1 sample will be rejected."
QString whatHappens(const std::vector<SampleChoiceRow> &rows, notebook::DecisionKind ofRun);

} // namespace plateau::ui
