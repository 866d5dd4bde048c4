// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "ui/bench/entrypanel.h"
#include "ui/bench/places.h"

#include <QStringList>
#include <QWidget>

#include <map>

class QLabel;

namespace plateau::ui {

class BenchSession;
class ReadingsModel;
class ResultsModel;
class SentenceList;
class Table;
class Theme;
struct Rack;

/// Keying the readings of one rack: the entry on the tube that is next, or on the one chosen in the table;
/// what comes of it is shown with every keystroke. Enter stores in the notebook and moves on.
class ReadPage : public QWidget
{
    Q_OBJECT

public:
    ReadPage(const Theme &theme, BenchSession &session, QWidget *parent = nullptr);

    void showRack(notebook::RunId id);
    /// Puts the entry there: first reading or correction.
    void goTo(const Place &place);
    /// Puts the entry on the next place without a reading.
    void goOn();
    /// Puts the entry where something typed waits to be stored, else on the next place without a reading.
    void takeUp();
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

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    struct Submission {
        double absorbance = 0;
        QString typed;
        QString reason;
        bool asked = false;
    };
    void build();
    const Rack *rack() const;
    /// The next place whose tube has all it is to have by then.
    std::optional<Place> nextPlace() const;
    void showWayOn();
    void updatePreview();
    void takeOver(const Submission &submission);
    void onRackChanged(notebook::RunId id);
    void chooseCell(const QModelIndex &index);
    void stepInTable(int rows);
    /// The number begun on a cell of the table goes into the entry for that cell.
    void typeFor(const QModelIndex &cell, const QString &text);
    void onPerson();
    void leave();
    /// Where something typed and not stored waits in this rack.
    std::optional<Place> waitingPlace() const;
    QStringList unstored(notebook::RunId id, bool withEntry) const;
    void keepDraft();
    QString faultOf(int tube) const;
    EntryPanel::Subject subjectOf(const Place &place) const;

    const Theme &m_theme;
    BenchSession &m_session;
    EntryPanel *m_panel;
    ReadingsModel *m_readings;
    ResultsModel *m_results;
    Table *m_table;
    Table *m_resultsTable;
    SentenceList *m_failures;
    QLabel *m_basis = nullptr;
    notebook::RunId m_id;
    std::optional<Place> m_place;
    /// What was typed and not yet stored, by run and place.
    std::map<std::pair<notebook::RunId, Place>, EntryPanel::Draft> m_drafts;
    /// Enter was pressed on it before anybody had given a name; the name stores it.
    std::optional<Submission> m_waitsForName;
};

} // namespace plateau::ui
