// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "core/notebook/notebook.h"
#include "ui/bench/pipettesheet.h"
#include "ui/bench/places.h"

#include <QObject>

#include <map>
#include <set>

namespace plateau::ui {

/// One run on the bench, as the notebook has it, with the evaluation of what has been read so far.
struct Rack {
    notebook::RunId id;
    QString letter;
    notebook::StoredRun stored;
    evaluation::Evaluation evaluation;
    /// The worksheet with what is ticked on it.
    PipetteSheet sheet;
};

/// The next thing to do on the bench.
struct NextAction {
    enum class Kind { Pipette, Read, Review } kind = Kind::Read;
    notebook::RunId run;
    QString letter;
    /// Of Read only.
    Place place;
    int readingsTaken = 0;
    int readingsPlanned = 0;
    /// Of Pipette only, with how many tubes of its round are through.
    Dosing dosing;
    StepCount count;
    bool operator==(const NextAction &) const = default;
};

/// The racks on the bench: every undecided run of the notebook, oldest first, each with a letter it keeps
/// while the program runs. All changes go through here into the notebook and are on disk when the call
/// returns; what is shown is read back from there. Whatever talks to the notebook throws notebook::Failure.
class BenchSession : public QObject
{
    Q_OBJECT

public:
    explicit BenchSession(notebook::Notebook &notebook, QObject *parent = nullptr);

    void reload();
    const std::vector<Rack> &racks() const { return m_racks; }
    /// nullptr if that run is not on the bench.
    const Rack *find(notebook::RunId id) const;
    /// The oldest rack with an addition to make or a reading to take; else the one in hand if it waits for
    /// its decision, else the oldest that does; else nothing.
    std::optional<NextAction> next() const;
    /// The rack that somebody works on.
    void takeInHand(notebook::RunId id);

    /// Who works at the bench now; every change carries it. Empty until somebody said so.
    QString person() const { return m_person; }
    void setPerson(const QString &person);

    notebook::RunId addRun(const run::Run &run, const assay::Method &method,
                           const std::optional<planning::PlanRecord> &plan = {});
    void storeReading(notebook::RunId id, const Place &place, double absorbance, const QString &typed);
    void correctReading(notebook::RunId id, const Place &place, double absorbance, const QString &typed,
                        const QString &reason);
    /// One act each, on disk together.
    void tick(notebook::RunId id, const std::vector<notebook::DoneDose> &doses);
    void untick(notebook::RunId id, const std::vector<notebook::Dose> &doses);
    void spoilTube(notebook::RunId id, int tube, const QString &reason);
    void restoreTube(notebook::RunId id, int tube, const QString &reason);
    /// The additions are not ticked on screen: until the program ends nobody is asked for them. From its
    /// first reading on a rack says so itself.
    void takeFromPaper(notebook::RunId id);
    void decide(notebook::RunId id, notebook::DecisionKind kind, const QString &person,
                const QString &reason);
    void reopen(notebook::RunId id, const QString &reason);

    std::vector<notebook::RunSummary> allRuns() const { return m_notebook.runs(); }
    /// The run that is about to be stored twice.
    std::optional<notebook::RunSummary> findSameRun(const run::Run &run, const assay::Method &method) const
    {
        return m_notebook.findSameRun(run, method);
    }
    /// What the code of a printed sheet stands for.
    std::vector<notebook::RunId> findRuns(const QString &runCode) const { return m_notebook.findRuns(runCode); }
    notebook::StoredRun load(notebook::RunId id) const { return m_notebook.load(id); }

Q_SIGNALS:
    /// A rack came or went.
    void racksChanged();
    /// Something of this rack was read or corrected.
    void rackChanged(plateau::notebook::RunId id);
    /// After either of the above, and after decisions.
    void notebookChanged();
    /// What is next may be another.
    void nextChanged();
    void personChanged();

private:
    void refresh(notebook::RunId id);
    Rack rackOf(notebook::RunId id);
    QString letterFor(notebook::RunId id);

    notebook::Notebook &m_notebook;
    std::vector<Rack> m_racks;
    std::map<notebook::RunId, QString> m_letters;
    QString m_person;
    notebook::RunId m_inHand;
    std::set<notebook::RunId> m_fromPaper;
};

/// The evaluation as it would be with this absorbance at that place. Nothing is stored.
evaluation::Evaluation preview(const notebook::StoredRun &stored, const Place &place, double absorbance);
/// "A" to "Z", then "AA", "AB" and so on.
QString rackLetter(int index);

} // namespace plateau::ui
