// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/evaluation/evaluation.h"
#include "core/notebook/dilutionmarks.h"
#include "core/notebook/ids.h"
#include "core/notebook/marks.h"
#include "core/notebook/persons.h"
#include "core/planning/planrecord.h"
#include "core/run/run.h"
#include "core/timing/timeline.h"

#include <QDateTime>
#include <QString>

#include <optional>
#include <vector>

namespace plateau::notebook {

/// A run is on the bench until it is decided; a decision is never edited, only followed by another.
enum class RunState { OnBench, Accepted, Rejected };

/// One line of the list of runs.
struct RunSummary {
    RunId id;
    QString title;
    QString methodId;
    QString methodName;
    int methodVersion = 1;
    /// Stored in UTC with the offset they were made in.
    QDateTime createdAt;
    RunState state = RunState::OnBench;
    /// Person of the last decision; empty while on the bench.
    QString decidedBy;
    QDateTime decidedAt;
    QStringList samples;
    int tubes = 0;
    /// Both without those of spoilt tubes.
    int readingsTaken = 0;
    int readingsPlanned = 0;
    /// Of a decided run which of its decisions stands, from 1; on the bench the one that is made next.
    int revision = 1;
    /// Of the decision that stands: what its evaluation said, whether somebody signed it, and how many
    /// samples it says are rejected each by itself, or to be repeated.
    bool acceptable = false;
    bool isSigned = false;
    int samplesRejected = 0;
    int samplesToRepeat = 0;
};

/// How a number came into the notebook.
struct ReadingOrigin {
    enum class Kind { Keyed, Pasted, File, Serial, Network } kind = Kind::Keyed;
    /// The file's name without its folder, or the line or address that was listened to; empty where there is
    /// none, as with what was keyed.
    QString source{};
    /// What came, as rawLine (rawline.h) shows it.
    QString line{};
    bool operator==(const ReadingOrigin &) const = default;
};

/// A reading as it was keyed. Only ever added; a correction names the one it replaces, and so does one more
/// reading of a series.
struct StoredReading {
    ReadingId id;
    int tube = 0;
    QString reading;
    /// Of a series all that was read so far.
    run::Reading value;
    /// What was typed, character by character; empty for a reading that came in a file.
    QString typed;
    QString person;
    QDateTime at;
    std::optional<ReadingId> corrects;
    /// Of a correction, never blank; else empty.
    QString reason;
    /// Read once more: nothing is corrected, though corrects names the one before.
    bool again = false;
    /// The place among all that was marked and read at the bench of the notebook's runs, one after the other;
    /// 0 where it is not known.
    qint64 order = 0;
    /// id is empty where it is not known, as for a reading that came with its run.
    timing::BootTime boot{};
    ReadingOrigin origin{};
};

enum class DecisionKind { Accepted, Rejected };

/// Accepted and Rejected as of a run; Repeat is not reported either and waits on the shelf.
enum class SampleDecisionKind { Accepted, Rejected, Repeat };

/// What is decided of one sample of a run.
struct SampleDecision {
    QString sample;
    SampleDecisionKind kind = SampleDecisionKind::Accepted;
    /// Never blank for Rejected.
    QString reason{};
    /// Of Repeat, how; absent: as the evaluation advises. Of Dilute the steps count, its factor is theirs.
    std::optional<evaluation::Advice> advice{};
    bool operator==(const SampleDecision &) const = default;
};

/// What Notebook::decide is asked for.
struct RunDecision {
    DecisionKind kind = DecisionKind::Accepted;
    QString person;
    /// Needed once persons are set up: it signs the decision. Kept nowhere.
    QString passphrase{};
    QString reason{};
    /// Those that are decided otherwise than the run, or for a reason of their own; the others follow it.
    std::vector<SampleDecision> samples{};
};

struct Decision {
    DecisionKind kind = DecisionKind::Accepted;
    QString person;
    QString reason;
    QDateTime at;
    /// SHA-256 of what was reviewed (the run and its method as plateau-run/1), hexadecimal.
    QString contentHash;
    /// The evaluation as it was, plateau-evaluation/1.
    QByteArray evaluation;
    bool acceptable = false;
    QString programVersion;
    /// In the order of the run's samples; without those that follow the run.
    std::vector<SampleDecision> samples{};
    /// Those that are to be repeated, be it that somebody said so or that the evaluation did.
    QStringList repeats{};
    /// The role that the person signed with; absent where the decision is unsigned.
    std::optional<PersonRole> signedAs{};
};
/// What the decision says of that sample of its run.
SampleDecisionKind decidedOf(const Decision &decision, const QString &sample);
/// Whether it accepts this result of its evaluation. Where nobody decided the sample by itself, a result that
/// is to be repeated is not accepted, while another measurand of the same sample may be.
bool acceptsResult(const Decision &decision, const evaluation::Result &result);

/// Takes a decision back: the run is on the bench again. The decision stays readable.
struct Reopening {
    /// Index into StoredRun::decisions.
    int decision = 0;
    QString person;
    QString reason;
    QDateTime at;
    /// The role that the person signed with; absent where it is unsigned.
    std::optional<PersonRole> signedAs{};
};

/// The clock on the wall was set while the run was on the bench.
struct ClockJump {
    /// By the clock as it was set.
    QDateTime at;
    /// Positive for forward.
    qint64 shift_ms = 0;
    QString person;
};

/// A run as it stands in the notebook.
struct StoredRun {
    RunSummary summary;
    /// With the current readings, and with what the marks say of it: what was pipetted otherwise, spoilt
    /// tubes, the lots that were taken, and when each dose and reading was done.
    run::Run run;
    /// run::runCode of the rack as it was planned, which stands on what was printed of it then.
    QString runCode;
    /// What it was planned with; samples and tubes behind those were added at the bench.
    int plannedSamples = 0;
    int plannedTubes = 0;
    /// The run's clock, up to the last thing that was marked or read at the bench: minutesOf tells what is
    /// now on it. Empty before the first one, and for good where the run came with times but without its
    /// start.
    timing::Timeline clock;
    /// Oldest first.
    std::vector<ClockJump> clockJumps;
    /// As it was when the run began.
    assay::Method method;
    /// The runs by other methods that derived quantities take from: those of the last decision, or on the
    /// bench those that would be taken now.
    std::vector<evaluation::Companion> companions;
    /// Which runs of the notebook those are, one for each.
    std::vector<RunId> companionRuns;
    /// Absent where the run came without one.
    std::optional<planning::PlanRecord> plan;
    /// Every reading ever keyed, oldest first.
    std::vector<StoredReading> readings;
    /// Every mark ever made, oldest first. See marks.h for what counts.
    std::vector<StoredMark> marks;
    /// Every tick of a dilution and what took it back, oldest first.
    std::vector<StoredDilutionMark> dilutionMarks;
    /// Oldest first; the last one counts, unless it was taken back.
    std::vector<Decision> decisions;
    /// Oldest first.
    std::vector<Reopening> reopenings;
};

enum class MethodActKind { Saved, Imported, Retired, Reinstated };

/// What somebody did with a method of the laboratory.
struct MethodAct {
    MethodActKind kind = MethodActKind::Saved;
    QString person;
    QDateTime at;
    /// For retired and reinstated the reason, which is never blank.
    QString note;
    /// For imported: the file's name without its folder.
    QString fileName;
};

/// Where a method comes from. OnRecord: nobody saved or imported it, but a run came with it, or the program
/// shipped it once.
enum class MethodOrigin { Shipped, Saved, Imported, OnRecord };

/// One content of a method. Two of the same id and version with other content are two of these.
struct StoredMethod {
    /// 0 for a shipped one that the notebook does not hold.
    MethodId id;
    assay::Method method;
    /// SHA-256 of the method as plateau-method/1, hexadecimal; its beginning tells apart what has the same id
    /// and version.
    QString contentHash;
    MethodOrigin origin = MethodOrigin::OnRecord;
    /// Not offered for new runs; runs that have it keep it.
    bool retired = false;
    /// Oldest first; empty for one that only shipped or only came with a run.
    std::vector<MethodAct> acts;
    /// Runs that used exactly this content.
    int runs = 0;

    /// The act that brought it here; nullptr where nobody saved or imported it.
    const MethodAct *arrival() const;
    /// First eight digits of contentHash.
    QString mark() const { return contentHash.left(8); }
};

/// What became of a method that was handed to the notebook.
struct MethodOutcome {
    /// False where the notebook, or the program, has exactly this already.
    bool stored = false;
    /// With the version it has now.
    assay::Method method;
    /// For a person, what happened.
    QString sentence;
    /// Another content has the same id and version, or it arrived but is not offered for new runs.
    bool needsAttention = false;
};

/// How the laboratory's settings, or its limits, came to be what they are.
struct LaboratorySaving {
    /// How often they were saved.
    int version = 1;
    /// Of the last time.
    QString person;
    QDateTime at;
};

/// The evaluation of what is stored, derived quantities and all.
evaluation::Evaluation evaluationOf(const StoredRun &stored);

/// Who did what, and when. account and host are those of the operating system, beside the person who is
/// named.
struct AuditEntry {
    qint64 number = 0;
    QDateTime at;
    QString person;
    QString account;
    QString host;
    QString programVersion;
    /// "notebookCreated", "schemaStep", "runAdded", "readingAdded", "readingCorrected", "runAccepted",
    /// "runRejected", "runReopened", "methodSaved", "methodImported", "methodRetired", "methodReinstated",
    /// "readingAgain", "tubesAdded", "clockJumped",
    /// "dosesDone", "dosesUndone", "tubeSpoilt", "tubeUnspoilt", "dilutionsDone", "dilutionsUndone",
    /// "sampleRegistered", "sampleChanged",
    /// "sampleWithdrawn", "repeatWaived", "lotReceived", "lotChanged", "lotOpened", "lotOpeningCorrected", "lotUsed",
    /// "lotDiscarded", "lotCorrected", "equipmentAdded", "equipmentChanged", "equipmentChecked",
    /// "equipmentCheckWithdrawn", "substanceAdded", "substanceChanged", "standardPrepared",
    /// "standardDiscarded", "laboratorySaved", "personAdded", "personChanged",
    /// "passphraseChanged", "passphraseRefused", "personRetired", "personReinstated", "reportChosen",
    /// "specificationsSaved", "chartSettingsSaved", "chartValueLeftOut", "chartValueTakenBack".
    QString action;
    /// Absent for an act on the notebook as a whole.
    std::optional<RunId> run;
    QString details;
    /// SHA-256, hexadecimal.
    QString hash;
};

/// Number of audit entries and the hash of the last: kept outside the file (on a report, say), they show
/// whether entries were taken off the end since.
struct AuditHead {
    int entries = 0;
    QString hash;
};

/// One finding of a verification: what, and where.
struct Finding {
    QString place;
    QString message;
};

struct Verification {
    std::vector<Finding> findings;
    int runsChecked = 0;
    int decisionsChecked = 0;
    /// Checks of equipment.
    int equipmentChecked = 0;
    int auditEntries = 0;
    /// Hash of the last audit entry, hexadecimal.
    QString auditHead;
    bool sound() const { return findings.empty(); }
};

} // namespace plateau::notebook
