// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/specification.h"
#include "core/notebook/charts.h"
#include "core/notebook/decisionbasis.h"
#include "core/notebook/equipment.h"
#include "core/notebook/keeping.h"
#include "core/notebook/lots.h"
#include "core/notebook/persons.h"
#include "core/notebook/pipetting.h"
#include "core/notebook/progress.h"
#include "core/notebook/records.h"
#include "core/notebook/reporting.h"
#include "core/notebook/runhistory.h"
#include "core/notebook/runsearch.h"
#include "core/notebook/shelf.h"
#include "core/notebook/standards.h"
#include "core/planning/laboratory.h"
#include "core/timing/stamp.h"

#include <exception>
#include <functional>
#include <memory>

namespace plateau::notebook {

/// What went wrong with the notebook, in one sentence for a person: what happened, what it means for the
/// data, what to do. details holds the engine's own words for a closer look.
class Failure : public std::exception
{
public:
    enum class Kind {
        NotFound,     ///< no file of that name
        NotANotebook, ///< a file, but not one of ours
        NewerVersion, ///< written by a newer program
        Damaged,      ///< integrity, foreign keys or audit chain are broken
        Locked,       ///< another program holds it
        Storage,      ///< disk full, read-only, input/output error: nothing of the step was stored
        Unconfirmed,  ///< the disk failed at the very end of a step: it may be stored or not, so look first
        Refused       ///< a rule of the records forbids it (a decided run, a correction without a reason), or
                      ///< there is no such run, tube or reading
    };
    Failure(Kind kind, QString sentence, QString details = {});
    Kind kind() const { return m_kind; }
    const QString &sentence() const { return m_sentence; }
    const QString &details() const { return m_details; }
    const char *what() const noexcept override { return m_utf8.constData(); }

private:
    Kind m_kind;
    QString m_sentence;
    QString m_details;
    QByteArray m_utf8;
};

/// Refused, since the passphrase is wrong or could not be tried: it has to be typed again. Whatever else is refused
/// leaves it as good as it was.
class WrongPassphrase : public Failure
{
public:
    explicit WrongPassphrase(QString sentence);
};

enum class Access { ReadWrite, ReadOnly };

/// How hard it is to try out what a new passphrase's hash stands for. Least: for made-up persons, whose
/// passphrase everybody knows.
enum class PassphraseWork { Interactive, Least };

/// What is stored beside every act without being asked for: the program's version, the operating system's
/// account and host name, and the clocks.
struct Surroundings {
    QString programVersion;
    QString account;
    QString host;
    std::function<QDateTime()> now;
    /// The clock that nobody can set; left out: there is none, and times rest on the one on the wall.
    std::function<timing::BootTime()> boot{};
    PassphraseWork passphraseWork = PassphraseWork::Interactive;
    static Surroundings ofThisProgram();
};

/// The SQLite file that holds runs with what was done at the bench, decisions, methods, the shelf and the
/// lots, and their audit. One object, one connection, one thread. Every function that adds something has it
/// on disk when it returns (synchronous=EXTRA), together with its audit entry, or throws Failure and has
/// stored nothing (but see Failure::Kind::Unconfirmed).
class Notebook
{
public:
    /// A new file, readable by its owner alone; throws if one of that name exists.
    static std::unique_ptr<Notebook> create(const QString &path,
                                            const Surroundings &surroundings = Surroundings::ofThisProgram());
    /// The same with all that fill adds, or no file at all: the disk is waited for once, at the end. Throws
    /// what fill throws, too.
    static void createFilled(const QString &path, const Surroundings &surroundings,
                             const std::function<void(Notebook &)> &fill);
    /// An existing one, migrated to the present schema if it is older (after a dated copy beside it). For
    /// writing it is checked first (integrity, foreign keys, schema, audit chain) and belongs to this object
    /// alone until it goes; for reading it is taken as it is, damaged or not, and nothing is changed.
    static std::unique_ptr<Notebook> open(const QString &path, Access access = Access::ReadWrite,
                                          const Surroundings &surroundings = Surroundings::ofThisProgram());
    static std::unique_ptr<Notebook> openOrCreate(const QString &path);
    ~Notebook();
    Notebook(const Notebook &) = delete;
    Notebook &operator=(const Notebook &) = delete;

    QString path() const;

    /// Puts a run on the bench: the method as it is, samples, standards, tubes, and the readings it already
    /// has. plan: what was planned beyond that.
    RunId addRun(const run::Run &run, const assay::Method &method, const QString &person,
                 const std::optional<planning::PlanRecord> &plan = {});
    /// A reading of a tube that has none at that point yet. typed: as keyed, or the number as it stands in
    /// the line it came in.
    ReadingId addReading(RunId run, int tube, const QString &reading, const run::Reading &value,
                         const QString &typed, const QString &person, const ReadingOrigin &origin = {});
    /// One more reading at a point that has one: the two or more are a series, whose minutes count from the
    /// last addition before that point (as a rule the starter's). Refused where the time of that addition, or
    /// of the reading before, is not known.
    ReadingId readAgain(RunId run, int tube, const QString &reading, double absorbance, const QString &typed,
                        const QString &person, const ReadingOrigin &origin = {});
    /// Replaces the current value of a reading, a series as a whole; needs a reason that is more than blanks.
    /// When it was read stays as it was.
    ReadingId correctReading(RunId run, int tube, const QString &reading, const run::Reading &value,
                             const QString &typed, const QString &person, const QString &reason);
    /// The same of what was read last at that point, be it the last of a series or the only one.
    ReadingId correctLastOfSeries(RunId run, int tube, const QString &reading, double absorbance,
                                  const QString &typed, const QString &person, const QString &reason);
    /// Further tubes of a run on the bench, behind those it has: a repeat of a sample at a stronger dilution,
    /// say, while the rack still stands there. samples: those that the run does not hold yet; one that
    /// repeats another of the run says so (run::Sample::repeats). planned: what is known of them, in any
    /// order. Tubes come as planned, without readings, marks and times.
    void addTubes(RunId run, const std::vector<run::Sample> &samples, const std::vector<run::Tube> &tubes,
                  const std::vector<planning::PlannedSample> &planned, const QString &person);
    /// Somebody, or something, set the clock on the wall by so much (timing::jump_ms) while the program ran.
    /// Kept on the notebook as a whole and with every run that is on the bench.
    void noteClockJump(qint64 shift_ms, const QString &person);
    /// Locks the run. The evaluation is made here, from what is stored. Rejecting needs a reason; accepting
    /// needs one where the evaluation is not acceptable.
    ///
    /// Once persons are set up a decision is signed with a passphrase; until then it is unsigned. Refused,
    /// each in one sentence: whoever Persons::check refuses, an analyst where the laboratory wants a
    /// reviewer, somebody who worked on the run where it wants a second person, and sample decisions that
    /// make no sense.
    void decide(RunId run, const RunDecision &decision);
    /// The whole run, unsigned.
    void decide(RunId run, DecisionKind kind, const QString &person, const QString &reason);
    /// Back on the bench, with a reason; the decision stays readable. Signed where a decision is, by somebody
    /// whose role may decide.
    void reopen(RunId run, const QString &person, const QString &reason, const QString &passphrase = {});
    /// What the results of the run are read against: of a decided run as it held at its decision, of one on
    /// the bench as it holds now. revision: at the first (1), second (2) … decision; refused if there is
    /// none.
    DecisionBasis decisionBasis(RunId run, std::optional<int> revision = {}) const;

    /// Each a part of the notebook, that goes with it.
    Pipetting &pipetting();
    Lots &lots();
    const Lots &lots() const;
    StandardBook &standards();
    const StandardBook &standards() const;
    EquipmentBook &equipment();
    const EquipmentBook &equipment() const;
    Shelf &shelf();
    const Shelf &shelf() const;
    Persons &persons();
    const Persons &persons() const;
    const RunSearch &search() const;
    const RunHistory &runHistory() const;
    Charts &charts();
    const Charts &charts() const;
    const Keeping &keeping() const;

    /// As it was saved last, or planning::usualLaboratory.
    planning::Laboratory laboratory() const;
    /// Nothing where nobody saved it yet.
    std::optional<LaboratorySaving> laboratorySaving() const;
    /// False where the notebook has exactly this already; nothing is stored then.
    bool saveLaboratory(const planning::Laboratory &laboratory, const QString &person);

    /// The limits of the laboratory's products, as they were saved last; none where nobody saved any.
    std::vector<evaluation::Specification> specifications() const;
    std::optional<LaboratorySaving> specificationsSaving() const;
    /// In place of the last ones, with a reason. False where the notebook has exactly these already.
    bool saveSpecifications(const std::vector<evaluation::Specification> &specifications,
                            const QString &person, const QString &reason);

    /// All accepted results of a sample and which one is reported. of: a run that holds the sample meant,
    /// where its name is or was another sample's too; without it the newest one of that name.
    SampleResults resultsOf(const QString &sample, const QString &measurand,
                            std::optional<RunId> of = {}) const;
    /// Which one from now on, by what rule and why. Refused where the rule cannot be followed, and as a
    /// decision is where a signature is needed.
    void chooseReported(const QString &sample, const QString &measurand, const WantedChoice &choice,
                        std::optional<RunId> of = {});

    /// Stores the method as the next version of its id: one more than the highest known, here or shipped,
    /// whatever version it states. What equals a newest version of its id but for the version is not stored
    /// again; where that one only came with a run, it joins the laboratory's methods as it is.
    MethodOutcome saveMethod(const assay::Method &method, const QString &person, const QString &note,
                             const std::vector<assay::Method> &shipped);
    /// Stores the method as it stands in the file. What is shipped, or was saved or imported before, is not
    /// stored again; another content of the same id and version is kept apart from it.
    MethodOutcome importMethod(const assay::Method &method, const QString &fileName, const QString &person,
                               const std::vector<assay::Method> &shipped);
    /// The method of exactly this content, a shipped one that the notebook does not hold yet too. Needs a
    /// reason, and that it is not retired yet.
    void retireMethod(const assay::Method &method, const QString &person, const QString &reason);
    /// Needs a reason, and that it is retired.
    void reinstateMethod(const assay::Method &method, const QString &person, const QString &reason);
    /// Every method the notebook holds, by id and version, then as they came. See methodcatalogue.h for these
    /// and the shipped ones in one list, and for what a new run is offered.
    std::vector<StoredMethod> methods() const;

    /// All of them, newest first, read from the records themselves: of a large notebook that takes its time,
    /// see search().
    std::vector<RunSummary> runs() const;
    /// Throws Refused if there is no such run, Damaged if it can't be put together again.
    StoredRun load(RunId run) const;
    /// As it stood when it was decided for the first (1), second (2) … time, with what was keyed and decided
    /// until then. Throws Refused if it was not decided so often.
    StoredRun loadRevision(RunId run, int revision) const;
    /// The newest run that came with exactly this content, if there is one: somebody is about to store it
    /// twice. See samerun.h.
    std::optional<RunSummary> findSameRun(const run::Run &run, const assay::Method &method) const;
    /// The runs that this code stands for on paper (core/run/runcode.h), newest first; several where they
    /// were planned alike to the last sign.
    std::vector<RunId> findRuns(const QString &runCode) const;
    /// The acts on one run, and the jumps of the clock while it was on the bench, oldest first.
    std::vector<AuditEntry> history(RunId run) const;
    AuditHead auditHead() const;

    /// File integrity, foreign keys, audit chain against the records, and every decided run evaluated again
    /// from its stored inputs and compared with what was stored then, but for the wording of sentences; so is
    /// every check of equipment.
    /// watch: may stop it, and verify throws Stopped then (progress.h).
    Verification verify(const Watch &watch = {}) const;

private:
    class Private;
    explicit Notebook(std::unique_ptr<Private> d);
    std::unique_ptr<Private> d;
};

} // namespace plateau::notebook
