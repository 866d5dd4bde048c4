// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "core/evaluation/reportunit.h"
#include "core/planning/uncertaintysources.h"
#include "ui/print/decimalsign.h"
#include "ui/print/paper.h"
#include "ui/print/reportfields.h"

#include <QByteArray>
#include <QDateTime>
#include <QString>

#include <optional>
#include <vector>

namespace plateau::ui {

/// Who reports. Empty members become a line to write on; the logo is a picture file's bytes, left out where
/// it cannot be read.
struct ReportLaboratory {
    QString name;
    QString address;
    QString contact;
    QByteArray logo;
};

/// Somebody did something, and why.
struct ReportAct {
    QString person;
    QString role;
    QString reason;
    QDateTime at;
    /// Signed with a passphrase, or a name that was typed; absent: the records do not say.
    std::optional<bool> isSigned;
};

struct ReportDecision {
    /// "accepted", "rejected", "to be repeated", as a person reads it.
    QString what;
    /// Of these samples; empty: of the run as a whole.
    QStringList samples;
    ReportAct act;
    /// Of what was reviewed: what `plateau verify` recomputes.
    QString contentHash;
    QString programVersion;
    std::optional<ReportAct> takenBack;
};

/// A reading as it was keyed.
struct ReportReading {
    int tube = 0;
    QString reading;
    run::Reading value;
    /// Character by character; empty: it came in a file.
    QString typed;
    ReportAct act;
    /// What it corrects.
    std::optional<run::Reading> replaces;
    /// "pasted", "from the file readings.csv"; empty: keyed, or it came with its run.
    QString origin{};
    /// What was pasted or sent, as it is kept.
    QString line{};
    /// One more reading of a series.
    bool again = false;
};

/// The clock on the wall was set while the run was on the bench.
struct ReportClockJump {
    /// By the clock as it was set.
    QDateTime at;
    /// Positive for forward.
    qint64 shift_ms = 0;
    QString person;
};

/// What was ticked on the worksheet, of one component and container.
struct ReportDosing {
    QString component;
    QString lot;
    std::optional<QDate> lotExpires;
    QString pipette;
    QString person;
    int tubes = 0;
    QDateTime first;
    QDateTime last;
};

/// A step of diluting a sample that was ticked as made.
struct ReportDilution {
    QString sample;
    /// From 1, of so many.
    int step = 1;
    int steps = 1;
    run::DilutionStep volumes;
    QString person;
    QDateTime at;
};

/// Replaced: a later revision of the run counts.
enum class ReportState { Draft, Accepted, Rejected, Replaced };

/// What only a notebook knows of a run.
struct ReportRecord {
    qint64 run = 0;
    /// The notebook's file name.
    QString notebook;
    ReportState state = ReportState::Draft;
    /// 1 until it was put back on the bench for the first time.
    int revision = 1;
    QDateTime addedAt;
    /// Oldest first.
    std::vector<ReportReading> readings;
    std::vector<ReportDosing> dosings;
    /// In the order of the samples.
    std::vector<ReportDilution> dilutions{};
    std::vector<ReportClockJump> clockJumps{};
    std::vector<ReportDecision> decisions;
    int auditEntries = 0;
    QString auditHead;
};

/// What becomes of one result: which of several is reported, or why it is not.
struct ReportedResult {
    QString sample;
    QString measurand;
    bool isReported = true;
    /// The rule and the reason, one sentence.
    QString remark;
    /// Absent: the evaluation's.
    std::optional<evaluation::ReportUnit> unit{};
    /// What the rule puts in place of this run's own result, such as a mean over runs.
    std::optional<evaluation::Result> inPlace{};
    /// Why it was accepted, where that was said of its sample alone; empty: the run's reason holds.
    QString reason{};
};

/// A result against a limit, by a rule with a name.
struct ReportCompliance {
    QString sample;
    QString measurand;
    QString specification;
    QString rule;
    QString statement;
};

/// A run whose results derived quantities take from.
struct ReportCompanion {
    assay::Method method;
    run::Run run;
    evaluation::Evaluation evaluation;
    /// Its number in the notebook.
    std::optional<qint64> number;
    /// As ReportContent::inputs.
    std::vector<planning::OwnedInput> inputs{};
};

/// What is known of a sample beyond the run.
struct ReportItem {
    QString sample;
    QString product;
    std::optional<QDateTime> receivedAt;
    QString receivedFrom;
};

/// All that a report of one run says. Plain values: what the notebook does not give stays empty.
struct ReportContent {
    assay::Method method;
    run::Run run;
    evaluation::Evaluation evaluation;
    evaluation::Rules rules;
    std::vector<ReportCompanion> companions;
    /// Who answers for each uncertainty: as the run's plan keeps it, else in the laboratory that reports; empty
    /// where neither is known.
    std::vector<planning::OwnedInput> inputs{};
    std::vector<ReportItem> items;
    std::optional<ReportRecord> record;
    std::vector<ReportedResult> reported;
    std::vector<ReportCompliance> compliance;
    ReportLaboratory laboratory;
    ReportFields fields;
    /// Twelve digits (core/run/runcode.h): those of the rack as it was planned.
    QString runCode;
    /// SHA-256 of the run and its method as plateau-run/1: exchange::runContentHash.
    QString contentHash;
    QString programVersion;
    /// When and by whom the pages are made.
    QDateTime madeAt;
    QString madeBy;
    DecimalSign decimalSign = DecimalSign::Point;
};

/// Of a run that stands in no notebook, evaluated here with its companions.
ReportContent reportOf(const assay::Method &method, const run::Run &run,
                       const std::vector<evaluation::Companion> &companions = {});

ReportState stateOf(const ReportContent &content);
/// The decision that counts: the last one that was not taken back; nullptr: there is none.
const ReportDecision *decisionOf(const ReportContent &content);
/// nullptr: reported as it is.
const ReportedResult *reportedAs(const ReportContent &content, const evaluation::Result &result);
/// The result in the unit it is reported in; in the evaluation's where it cannot be given in that one.
evaluation::Reported reportedOf(const ReportContent &content, const evaluation::Result &result);
/// What the customer is told: the result, or what the rule puts in its place.
const evaluation::Result &finalOf(const ReportContent &content, const evaluation::Result &result);
/// What one unit of the evaluation's is in the one reported; 1 where they are the same.
double reportingFactor(const ReportContent &content, const evaluation::Result &result);
const ReportItem *findItem(const ReportContent &content, const QString &sample);

/// "Report 4096 2231 7785": the run's code, which stays what it is.
QString reportNumber(const ReportContent &content);
int revisionOf(const ReportContent &content);

/// Names that may hold what looks like a number: ids of samples and standards, lots, the title; the method's
/// and its components'.
QStringList namesIn(const run::Run &run);
QStringList namesIn(const assay::Method &method);
/// The text with the content's decimal sign.
QString local(const ReportContent &content, const QString &text);

} // namespace plateau::ui
