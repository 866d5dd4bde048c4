// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/shelf.h"
#include "ui/books/shelfdraft.h"

#include <QWidget>

#include <set>

class QLabel;
class QPushButton;

namespace plateau::ui {

class CellsModel;
class CellsTable;
class Clock;
class Notice;
class SentenceList;
class Theme;

/// Where samples are put on the shelf: keyed or pasted into a table that shows what was understood, and
/// stored all or none; or where one that stands there is changed. Whoever opened it stores what stored()
/// brings and answers with markStored() or refuse().
class RegisterView : public QWidget
{
    Q_OBJECT

public:
    RegisterView(const Theme &theme, const Clock &clock, QWidget *parent = nullptr);

    /// What waits, and what the methods measure.
    void setSurroundings(const std::vector<notebook::WaitingSample> &waiting, MeasurandNames measurands);
    /// With the samples there are to begin with, as for a repeat that nobody registered.
    void startNew(const std::vector<planning::ShelfSample> &samples = {});
    void startChange(notebook::ShelfId id, const planning::ShelfSample &sample);
    void takeFocus();
    void paste(const QString &text);
    bool hasUnsavedChanges() const;
    /// The one that is being changed, if one is.
    std::optional<notebook::ShelfId> changing() const { return m_changing; }
    void markStored();
    void refuse(const QString &sentence);
    Notice &notice() { return *m_notice; }

Q_SIGNALS:
    void stored(const std::vector<plateau::planning::ShelfSample> &samples);
    void closed();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    CellsModel *newModel();
    QWidget *buildHeader();
    QWidget *buildFooter();
    void start(std::vector<CellRow> rows);
    void onEdited();
    /// What is wrong with the rows beside what waits already.
    void checkAgainstShelf();
    void showProblems();
    void goToProblem(int row);
    void pasteClipboard();
    void store();
    void leave();

    const Theme &m_theme;
    const Clock &m_clock;
    MeasurandNames m_measurands;
    /// Folded ids of what stands on the shelf; of the repeats that wait.
    std::set<QString> m_onShelf;
    std::set<QString> m_repeats;
    std::optional<notebook::ShelfId> m_changing;
    QString m_ownId;
    CellsModel *m_model;
    CellsTable *m_table;
    QLabel *m_heading;
    QLabel *m_how;
    Notice *m_notice;
    QLabel *m_summary;
    SentenceList *m_problems;
    QPushButton *m_paste = nullptr;
    QPushButton *m_store = nullptr;
    std::vector<CellRow> m_kept;
    ShelfReading m_reading;
    bool m_askedToLeave = false;
};

} // namespace plateau::ui
