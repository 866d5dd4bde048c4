// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/exchange/library.h"
#include "core/notebook/notebook.h"
#include "ui/destinationsmodel.h"
#include "ui/windowactions.h"

#include <QMainWindow>
#include <QTimer>

#include <memory>

class QLabel;
class QStackedWidget;

namespace plateau::ui {

class BenchSession;
class BenchSettings;
class BenchSounds;
struct TakenReading;
class Clock;
class Dialogs;
class InstrumentIntake;
class LaboratoryPage;
class LimitsPage;
class LotsPage;
class MethodBook;
class MethodsPage;
class NextStrip;
class Notice;
class NotebookPage;
class PersonsPage;
class PlanPage;
class RackPage;
enum class ReportKind;
class RunFilePage;
class SamplesPage;
class SideBar;
class Sounder;
class Stores;
class Theme;

/// The window: what is next above everything, the racks and books on the left, the page of the one that is
/// chosen. notebook and methods outlive it.
class MainWindow : public QMainWindow
{
    Q_OBJECT

public:
    MainWindow(notebook::Notebook &notebook, const exchange::MethodLibrary &methods,
               QWidget *parent = nullptr);
    /// With other dialogs, another clock and other sounds than the desktop's.
    MainWindow(notebook::Notebook &notebook, const exchange::MethodLibrary &methods,
               std::unique_ptr<Dialogs> dialogs, std::unique_ptr<Clock> clock,
               std::unique_ptr<Sounder> sounder, QWidget *parent = nullptr);
    ~MainWindow() override;

    /// What the title calls the notebook, instead of the name of its file.
    void setNotebookName(const QString &name);
    /// As by File, Open run file.
    void openRunFile(const QString &path);

protected:
    void changeEvent(QEvent *event) override;
    void closeEvent(QCloseEvent *event) override;

private:
    void build();
    void connectPages();
    void connectActions();
    void start(const exchange::MethodLibrary &methods);

    void refreshMethods();
    void showPage(QWidget *page);
    /// Marks in the side list where the window is.
    void markPage();
    void goToNext();
    /// The strip's addition was made just now; its reading is gone to.
    void doneNow();
    void sayClockSet(qint64 shift_ms);
    void chooseBenchSettings();
    void connectInstrument();
    /// Into the tube that is due, on whatever rack, unless somebody is in the middle of something there.
    void takeReadings(const std::vector<TakenReading> &readings);
    void showListening();
    void goToRack(notebook::RunId id);
    void goToBook(Destination::Kind book);
    void goToNotebook();
    void goToRecord(notebook::RunId id);
    void goToMethods();
    void goToNewRun();
    void chooseFile();
    void saveCopy();
    void saveWorksheet();
    void saveLabels();
    void saveReport(ReportKind kind);
    /// What was typed anywhere and is nowhere stored, in words; empty if all is.
    QStringList unstored() const;
    /// Of the rack that is being left.
    void sayUnstored();
    void onRacksChanged();
    void updateActions();
    void updateTitle();
    /// The run of the page on show, if it has one.
    std::optional<notebook::RunId> runOnShow() const;

    std::unique_ptr<Dialogs> m_dialogs;
    std::unique_ptr<Clock> m_clock;
    std::unique_ptr<Sounder> m_sounder;
    Theme *m_theme;
    BenchSession *m_session;
    BenchSettings *m_settings;
    BenchSounds *m_sounds;
    QString m_notebookName;
    WindowActions m_actions;
    NextStrip *m_strip;
    SideBar *m_side;
    Notice *m_notice;
    QStackedWidget *m_pages;
    QLabel *m_emptyBench;
    Stores *m_stores;
    PlanPage *m_plan;
    RunFilePage *m_runFile;
    RackPage *m_rack;
    NotebookPage *m_notebook;
    MethodBook *m_methodBook;
    MethodsPage *m_methods;
    SamplesPage *m_samples;
    LotsPage *m_lots;
    LaboratoryPage *m_laboratory;
    PersonsPage *m_persons;
    LimitsPage *m_limits;
    InstrumentIntake *m_instrument;
    QLabel *m_listening;
    QTimer m_heart;
};

} // namespace plateau::ui
