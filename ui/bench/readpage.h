// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "core/planning/rackrepeat.h"
#include "core/timing/due.h"
#include "ui/bench/entrypanel.h"
#include "ui/bench/places.h"
#include "ui/bench/reviewbasis.h"
#include "ui/bench/submission.h"

#include <QStringList>
#include <QWidget>

#include <deque>
#include <functional>
#include <map>

class QLabel;
class QStackedWidget;

namespace plateau::ui {

class AbsorbanceChart;
class BenchSession;
class BenchSettings;
class RackTimes;
class ReadingsModel;
class RepeatOffer;
class ResultsModel;
class SentenceList;
class Stores;
class Table;
class Theme;
struct Rack;

/// Keying the readings of one rack: the entry on the tube that is due, or on the one chosen in the table;
/// what comes of it is shown with every keystroke. Enter stores in the notebook and moves on.
class ReadPage : public QWidget
{
    Q_OBJECT

public:
    ReadPage(const Theme &theme, BenchSession &session, Stores &stores, const BenchSettings &settings,
             QWidget *parent = nullptr);

    void showRack(notebook::RunId id);
    /// Puts the entry there: first reading or correction.
    void goTo(const Place &place);
    /// Puts the entry on the next place without a reading.
    void goOn();
    /// Puts the entry where something typed waits to be stored, else on the next place without a reading.
    void takeUp();
    /// Readings that an instrument sent or that were pasted: one after the other into the tubes that are due,
    /// as if they were keyed. What speaks against one is asked, and the others wait for the answer.
    void take(const std::vector<Submission> &readings);
    /// What came waits for an answer, or for the entry to be free.
    bool hasWaiting() const { return m_questioned.has_value() || !m_taken.empty(); }
    /// Nothing is typed and nothing asked, so that the entry may be put elsewhere.
    bool isIdle() const;
    /// What was typed for this rack and not stored: "tube 3, A1: 0.512" each.
    QStringList unstored(notebook::RunId id) const;
    /// The same without the place the entry stands on.
    QStringList unstoredElsewhere() const;

Q_SIGNALS:
    void reviewWanted();
    /// Something has to be pipetted before the next reading.
    void pipetteWanted();
    /// A change needs somebody to answer for it, and nobody has given a name yet.
    void personWanted();
    /// What is typed and not stored may be another.
    void unstoredChanged();
    /// What the bench has next, on whatever rack, is done.
    void doneWanted();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void build();
    void connectAll();
    const Rack *rack() const;
    /// The place that is due, else the next one whose tube has all it is to have by then.
    std::optional<Place> nextPlace() const;
    std::optional<Place> duePlace() const;
    void showWayOn();
    /// When the series at the place goes on; empty where it does not.
    QString againTimes(double now_min) const;
    void showTimes();
    /// What is next of the place, where that has a time.
    std::optional<timing::Due> timedDue(const Place &place) const;
    /// Why it is too early for the reading; empty where it is not.
    QString earlyWords(const Place &place) const;
    void showPicture();
    void updatePreview();
    void onTick();
    void onRackChanged(notebook::RunId id);
    void chooseCell(const QModelIndex &index);
    void stepInTable(int rows);
    /// The number begun on a cell of the table goes into the entry for that cell.
    void typeFor(const QModelIndex &cell, const QString &text);
    void leave();
    /// Where something typed and not stored waits in this rack.
    std::optional<Place> waitingPlace() const;
    QStringList unstored(notebook::RunId id, bool withEntry) const;
    void keepDraft();
    QString faultOf(int tube) const;
    EntryPanel::Subject subjectOf(const Place &place) const;

    /// What the first tube of a rack is held against; nothing where another one is read there.
    std::optional<double> usualBlankOf(const Place &place);
    void takeOver(Submission submission);
    void store(const Place &place, const Submission &submission);
    void remark();
    void changeSpoilt(const QString &reason);
    void addRepeat(const planning::RackRepeat &repeat);
    void takeUnits();
    void offerRepeat();
    void takeWaiting();
    /// Does it once somebody has given a name, as long as the entry stays as it is.
    void withName(const QString &sentence, const std::function<void()> &step);
    void onPerson();

    const Theme &m_theme;
    BenchSession &m_session;
    Stores &m_stores;
    const BenchSettings &m_settings;
    EntryPanel *m_panel;
    RepeatOffer *m_repeat;
    RackTimes *m_times;
    AbsorbanceChart *m_series;
    QStackedWidget *m_pictures;
    ReadingsModel *m_readings;
    ResultsModel *m_results;
    ReviewBasis m_units;
    Table *m_table;
    Table *m_resultsTable;
    SentenceList *m_failures;
    QLabel *m_basis = nullptr;
    notebook::RunId m_id;
    std::optional<Place> m_place;
    /// What was typed and not yet stored, by run and place.
    std::map<std::pair<notebook::RunId, Place>, EntryPanel::Draft> m_drafts;
    /// Somebody went there; else the entry follows what is due.
    bool m_chosen = false;
    /// Waits until somebody has given a name.
    std::function<void()> m_waitsForName;
    /// What came and is not stored yet; the first of it may stand in the entry with a question.
    std::deque<Submission> m_taken;
    std::optional<Submission> m_questioned;
    /// It is said under the field that it is too early for what is typed there.
    bool m_remarkedEarly = false;
    bool m_taking = false;
};

} // namespace plateau::ui
