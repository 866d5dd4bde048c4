// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "core/notebook/notebook.h"
#include "core/planning/rackrepeat.h"
#include "core/planning/reporting.h"
#include "ui/bench/beyondbook.h"
#include "ui/bench/nextaction.h"
#include "ui/bench/pipettesheet.h"
#include "ui/bench/places.h"
#include "ui/shared/clock.h"

#include <QObject>

#include <map>
#include <set>

namespace plateau::ui {

struct ReportContent;

/// One run on the bench, as the notebook has it, with the evaluation of what has been read so far.
struct Rack {
    notebook::RunId id;
    QString letter;
    notebook::StoredRun stored;
    evaluation::Evaluation evaluation;
    /// The worksheet with what is ticked on it.
    PipetteSheet sheet;
    /// What is next for each tube, and when.
    std::vector<timing::Due> due;
    /// The rhythm that is kept for a round of additions, if there is one.
    std::optional<Beat> beat;
};

/// The racks on the bench: every undecided run of the notebook, oldest first, each with a letter it keeps
/// while the program runs. All changes go through here into the notebook and are on disk when the call
/// returns; what is shown is read back from there. Whatever talks to the notebook throws notebook::Failure.
class BenchSession : public QObject
{
    Q_OBJECT

public:
    static constexpr int usualLead_s = 20;

    /// notebook and clock outlive it.
    explicit BenchSession(notebook::Notebook &notebook, QObject *parent = nullptr);
    BenchSession(notebook::Notebook &notebook, const Clock &clock, QObject *parent = nullptr);

    void reload();
    const std::vector<Rack> &racks() const { return m_racks; }
    /// nullptr if that run is not on the bench.
    const Rack *find(notebook::RunId id) const;
    /// See nextAction.
    std::optional<NextAction> next() const;
    /// The same of one rack alone.
    std::optional<NextAction> nextOf(const Rack &rack) const;
    /// See timedActions.
    std::vector<NextAction> timed() const;
    /// Minutes on the rack's own clock.
    double now_min(const Rack &rack) const;
    timing::Stamp now() const { return m_clock.stamp(); }
    /// How long before its time something is next already.
    void setLead(int lead_s);
    /// Seconds of the hands for one tube, as the laboratory has them now.
    void setHandling(const planning::HandlingTimes &times);
    /// Time went on: what is next may be another, and the clock on the wall may have been set, which is noted
    /// in the notebook and said by clockSet.
    void tick();
    /// Nothing: no rhythm any more. While the program runs.
    void keepBeat(notebook::RunId id, const std::optional<Beat> &beat);
    /// See BeyondBook.
    BeyondBook &beyondBook() { return m_beyondBook; }
    /// The rack that somebody works on.
    void takeInHand(notebook::RunId id);

    /// Who works at the bench now; every change carries it. Empty until somebody said so.
    QString person() const { return m_person; }
    void setPerson(const QString &person);

    notebook::RunId addRun(const run::Run &run, const assay::Method &method,
                           const std::optional<planning::PlanRecord> &plan = {});
    void storeReading(notebook::RunId id, const Place &place, double absorbance, const QString &typed,
                      const notebook::ReadingOrigin &origin = {});
    /// One more of a series at that point.
    void readAgain(notebook::RunId id, const Place &place, double absorbance, const QString &typed,
                   const notebook::ReadingOrigin &origin = {});
    /// Of a series, the last one.
    void correctReading(notebook::RunId id, const Place &place, double absorbance, const QString &typed,
                        const QString &reason);
    /// One act each, on disk together.
    /// Gives the lots that were opened by it, see notebook::Pipetting::markDone.
    std::vector<notebook::LotId> tick(notebook::RunId id, const std::vector<notebook::DoneDose> &doses);
    void untick(notebook::RunId id, const std::vector<notebook::Dose> &doses);
    void tickDilutions(notebook::RunId id, const std::vector<notebook::DilutionPlace> &steps);
    void untickDilutions(notebook::RunId id, const std::vector<notebook::DilutionPlace> &steps);
    void spoilTube(notebook::RunId id, int tube, const QString &reason);
    void restoreTube(notebook::RunId id, int tube, const QString &reason);
    /// Further tubes for a rack on the bench.
    void addRepeat(notebook::RunId id, const planning::RackRepeat &repeat);
    /// The additions are not ticked on screen: until the program ends nobody is asked for them. From its
    /// first reading on a rack says so itself.
    void takeFromPaper(notebook::RunId id);
    void decide(notebook::RunId id, notebook::DecisionKind kind, const QString &person,
                const QString &reason);
    /// As a whole or sample by sample, signed where persons are set up; see notebook::Notebook::decide.
    void decide(notebook::RunId id, const notebook::RunDecision &decision);
    void reopen(notebook::RunId id, const QString &person, const QString &reason,
                const QString &passphrase = {});
    /// See notebook::Notebook::decisionBasis.
    notebook::DecisionBasis decisionBasis(notebook::RunId id, std::optional<int> revision = {}) const
    {
        return m_notebook.decisionBasis(id, revision);
    }
    /// See notebook::Notebook::resultsOf; of names a run that holds the sample.
    notebook::SampleResults resultsOf(notebook::RunId of, const QString &sample,
                                      const QString &measurand) const
    {
        return m_notebook.resultsOf(sample, measurand, of);
    }
    void chooseReported(notebook::RunId of, const QString &sample, const QString &measurand,
                        const notebook::WantedChoice &choice);

    /// Empty while none are set up: nothing is signed then.
    std::vector<notebook::Person> persons() const { return std::as_const(m_notebook).persons().all(); }
    /// RunHistory::usualBlank of the rack's method; kept until a run is decided.
    std::optional<double> usualBlank(notebook::RunId id, const QString &reading) const;
    planning::ReviewRules reviewRules() const { return m_notebook.laboratory().review; }
    /// planning::reportUnitOf of the laboratory.
    std::optional<evaluation::ReportUnit> reportUnitOf(const QString &product, const QString &measurand,
                                                       run::Form form) const
    {
        return planning::reportUnitOf(m_notebook.laboratory(), product, measurand, form);
    }
    std::vector<notebook::AuditEntry> history(notebook::RunId id) const { return m_notebook.history(id); }
    notebook::StoredRun loadRevision(notebook::RunId id, int revision) const
    {
        return m_notebook.loadRevision(id, revision);
    }

    /// Names of methods that no run in the notebook has had yet, by their ids.
    void setMethodNames(std::map<QString, QString> names) { m_methodNames = std::move(names); }
    /// As its newest version is called; the id where nobody knows it.
    QString methodName(const QString &id) const;

    const notebook::RunSearch &search() const { return std::as_const(m_notebook).search(); }
    const notebook::RunHistory &runHistory() const { return m_notebook.runHistory(); }
    /// The run that is about to be stored twice.
    std::optional<notebook::RunSummary> findSameRun(const run::Run &run, const assay::Method &method) const
    {
        return m_notebook.findSameRun(run, method);
    }
    /// What the code of a printed sheet stands for.
    std::vector<notebook::RunId> findRuns(const QString &runCode) const
    {
        return m_notebook.findRuns(runCode);
    }
    notebook::StoredRun load(notebook::RunId id) const { return m_notebook.load(id); }
    /// Everything that a report of it says.
    ReportContent report(notebook::RunId id) const;

Q_SIGNALS:
    /// A rack came or went.
    void racksChanged();
    /// Something of this rack was read or corrected.
    void rackChanged(plateau::notebook::RunId id);
    /// After either of the above, and after decisions.
    void notebookChanged();
    /// What is next may be another.
    void nextChanged();
    /// A second or so has passed.
    void ticked();
    /// Somebody, or the system, set the clock on the wall: by so much, positive for forward.
    void clockSet(qint64 shift_ms);
    void personChanged();

private:
    void refresh(notebook::RunId id);
    Rack rackOf(notebook::RunId id);
    QString letterFor(notebook::RunId id);
    std::vector<double> nowOfRacks_min() const;
    void noteJump();

    notebook::Notebook &m_notebook;
    std::map<QString, QString> m_methodNames;
    /// By method and reading.
    mutable std::map<std::pair<QString, QString>, std::optional<double>> m_usualBlanks;
    const Clock &m_clock;
    std::vector<Rack> m_racks;
    std::map<notebook::RunId, QString> m_letters;
    QString m_person;
    notebook::RunId m_inHand;
    std::set<notebook::RunId> m_fromPaper;
    std::map<notebook::RunId, Beat> m_beats;
    BeyondBook m_beyondBook;
    Hands m_hands{usualLead_s, {}};
    std::optional<timing::Stamp> m_lastTick;
};

/// The window's heart beats at it.
inline constexpr int tick_ms = 500;

/// The evaluation as it would be with this absorbance at that place. Nothing is stored.
evaluation::Evaluation preview(const notebook::StoredRun &stored, const Place &place, double absorbance);
/// "A" to "Z", then "AA", "AB" and so on.
QString rackLetter(int index);

} // namespace plateau::ui
