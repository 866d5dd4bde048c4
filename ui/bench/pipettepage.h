// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/marks.h"
#include "core/planning/reagents.h"
#include "ui/bench/pipettenote.h"
#include "ui/bench/pipettepanel.h"
#include "ui/bench/pipettesheet.h"

#include <QWidget>

#include <functional>
#include <map>
#include <set>
#include <tuple>

namespace plateau::ui {

class BenchSession;
class PipetteGrid;
class PipetteKeys;
class PipetteModel;
class PipetteStepsModel;
class RhythmRow;
class Stores;
class Table;
class Theme;
class WhenSeen;
struct Rack;
struct WorksheetAct;

/// The worksheet of one rack on screen: one addition at a time over all tubes, in the method's order. A tick
/// is shown when the notebook has it, and the cursor moves on then.
class PipettePage : public QWidget
{
    Q_OBJECT

public:
    PipettePage(const Theme &theme, BenchSession &session, Stores &stores, QWidget *parent = nullptr);

    void showRack(notebook::RunId id);
    /// Puts the cursor on the next addition, or says what comes instead.
    void takeUp();
    /// Takes back the last act on the worksheet.
    void undo();
    /// What was typed for this rack and not stored: "tube 3: 150" each.
    QStringList unstored(notebook::RunId id) const;

Q_SIGNALS:
    void readWanted();
    void reviewWanted();
    /// A change needs somebody to answer for it, and nobody has given a name yet.
    void personWanted();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    struct LotChoice {
        std::optional<notebook::LotId> lot;
        /// Where it was chosen: of a ticked dose it is said for that one alone.
        Dosing at;
        /// Somebody knows better than the book, by which it did not hold the dose.
        bool isBeyondBook = false;
    };

    void build();
    void connectAll();
    const Rack *rack() const;
    /// The worksheet as the notebook has it, with the laboratory's pipettes and lots.
    void readAnew();
    Dosing atCursor() const;

    void goTo(const Dosing &dosing);
    void moveOnFrom(const Dosing &dosing);
    void goOn();
    void chooseStep(const QModelIndex &index);
    void refresh();
    void showAddition();
    void showPause();
    void fitStepRows();
    void takeFocus();
    void onRackChanged(notebook::RunId id);

    /// The dilution that the row of the steps is comes on show, or none where it is something else.
    void showDilutionOf(int row);
    void goToDilution(int step);
    void showDilution();
    /// What a key at the steps does to the dilution on show. False where it does nothing.
    bool actOnDilution(const QString &text);
    /// Ticks the dilution on show, or takes its tick back.
    void tickDilution();
    void tickDilutions();
    void storeDilutions(const std::vector<notebook::DilutionPlace> &steps);

    void tick(const std::vector<Dosing> &all);
    void tickAtCursor();
    void tickRow();
    void tickRound();
    void takeBack(const WorksheetAct &act);
    /// Where the hand is after that act was taken back.
    void goToUndone(const WorksheetAct &act);
    void takeFromPaper();
    /// Asks once before a tube gets what ends the chance of a reading it has not had.
    bool mayTick(const std::vector<Dosing> &dosings);
    /// Asks once before several tubes are ticked as started at one moment.
    bool mayTickTogether(const std::vector<Dosing> &dosings);
    notebook::DoneDose doneDose(const Dosing &dosing) const;
    /// Of lots that were opened by a tick, where opening begins a life of its own; and which lot comes next.
    void sayOfLots(const std::vector<notebook::LotId> &opened, const Dosing &ticked);

    void beginVolume(const QString &text);
    void beginSpoilt();
    /// Opens the note on the dose it is about.
    void openNote(const PipetteNote::Draft &draft);
    void keepDraft();
    void keepNote();
    void keepVolume();
    void keepSpoilt();
    void closeNote();

    void rememberSource();
    std::tuple<notebook::RunId, int, double> pipetteKey(const Dosing &dosing) const;
    PipettePanel::Source sourceOf(const Dosing &dosing) const;
    bool isEnough(const std::optional<notebook::LotId> &lot, const Dosing &dosing) const;
    /// nullptr where nobody chose a lot for it.
    const LotChoice *choiceFor(const Dosing &dosing) const;
    QString hintsAt(const Dosing &dosing, const PipettePanel::Source &source) const;
    /// The first of them, as many as the lot of the first holds: who takes another bottle ticks what comes from that.
    std::vector<Dosing> ofOneLot(const std::vector<Dosing> &dosings) const;
    /// Asks once before more is taken of a lot than it holds by the book, where no other one is fit.
    bool mayTake(const Dosing &dosing);
    /// What is ticked of a lot that does not hold it was asked about or chosen: the key that ticks from
    /// anywhere may go on.
    void confirmBeyondBook(const std::vector<Dosing> &dosings);
    QString lotName(const std::optional<notebook::LotId> &lot) const;
    QString shortWords(const PipettePanel::Source &source) const;

    /// Does it once somebody has given a name. False where it is not done: the notebook cannot, or it waits.
    bool store(const std::function<void()> &step);
    void withName(const std::function<void()> &step);
    void onPerson();

    const Theme &m_theme;
    BenchSession &m_session;
    Stores &m_stores;
    // As they stand on the page: so goes the focus.
    PipetteKeys *m_keys;
    PipetteNote *m_note;
    PipettePanel *m_panel;
    RhythmRow *m_rhythm;
    PipetteModel *m_tubes;
    PipetteGrid *m_grid;
    PipetteStepsModel *m_steps;
    Table *m_stepsTable;
    WhenSeen *m_update;
    notebook::RunId m_id;
    PipetteSheet m_sheet;
    planning::Laboratory m_laboratory;
    /// With those that this rack used up.
    std::vector<planning::Lot> m_inHand;
    /// The round on show; while something else is to be done, the one before it.
    int m_round = 0;
    bool m_paused = false;
    /// The step of the dilution that is on show in place of all that.
    std::optional<int> m_dilution;
    /// What the note that is open is about.
    Dosing m_noted;
    /// Notes that were begun and not kept, of the racks that are not on show.
    std::map<notebook::RunId, std::pair<Dosing, PipetteNote::Draft>> m_drafts;
    /// The volume that was questioned and may be kept now.
    std::optional<double> m_doubted;
    /// Rounds whose missing readings were asked about.
    std::set<std::pair<notebook::RunId, int>> m_asked;
    std::set<std::pair<notebook::RunId, int>> m_askedTogether;
    /// Chosen here: by run, what is pipetted and whether it was in (a correction says nothing of what comes); by run, round
    /// and volume.
    std::map<std::tuple<notebook::RunId, QString, bool>, LotChoice> m_chosenLots;
    std::map<std::tuple<notebook::RunId, int, double>, QString> m_chosenPipettes;
    /// Lots of which more may be taken than they hold, for want of another one. Once there is one, that is taken.
    std::set<std::tuple<notebook::RunId, QString, notebook::LotId>> m_askedShort;
    /// Waits until somebody has given a name.
    std::function<void()> m_waiting;
};

} // namespace plateau::ui
