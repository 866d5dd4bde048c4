// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/exchange/library.h"
#include "core/notebook/notebook.h"
#include "ui/bookentries.h"
#include "ui/runpapers.h"
#include "ui/shared/helpcall.h"
#include "ui/shared/whenwanted.h"
#include "ui/windowactions.h"

#include <QMainWindow>
#include <QTimer>

#include <memory>
#include <utility>
#include <vector>

class QLabel;
class QStackedWidget;

namespace plateau::ui {

class BenchSession;
class BenchSettings;
class BenchSounds;
class BookPage;
class BookPages;
class ChartsPage;
class Clock;
class Colours;
class Dialogs;
class HelpRoute;
class InstrumentIntake;
class Keeper;
class LastBackup;
class MethodBook;
class MethodsPage;
class NextStrip;
class Notice;
class NotebookPage;
class PlanPage;
class RackPage;
class RunFilePage;
class SideBar;
class Sounder;
class Stores;
class Theme;
class TodayPage;

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

    /// What the title calls the notebook, instead of its laboratory and the name of its file.
    void setNotebookName(const QString &name);
    /// From now on the notebook is backed up by itself (ui/books/keeper.h).
    void keepBackups();
    /// Who is at the bench, as if the name had been typed.
    void setPerson(const QString &name);
    /// Its file was not there before.
    void sayNotebookIsNew();
    /// As by File, Open run file.
    void openRunFile(const QString &path);
    /// A method file joins the laboratory's methods, whatever else is read as a run file.
    void openFile(const QString &path);
    /// The help at that place, as by the menu Help.
    void openHelp(const HelpPlace &place);
    /// The window as it is when it is worked in, before all others as far as the desktop lets it.
    void comeForward();

Q_SIGNALS:
    /// As by File, Another notebook: this one stays.
    void anotherNotebookWanted();

protected:
    void changeEvent(QEvent *event) override;
    void closeEvent(QCloseEvent *event) override;

private:
    void build();
    void addBooks();
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
    void showKeys();
    void sayNotKept();
    void connectInstrument();
    void showListening();
    void goToRack(notebook::RunId id);
    /// So many further in the list than the one that was looked at last.
    void goToRackBeside(int step);
    void goToBook(Book book);
    void goToChart(const charts::Subject &subject);
    /// Its rack where it is on the bench, else its record.
    void goToRun(notebook::RunId id);
    void goToRecord(notebook::RunId id);
    void goToNewRun();
    void chooseFile();
    /// What was typed anywhere and is nowhere stored, in words; empty if all is.
    QStringList unstored() const;
    /// Of the rack that is being left.
    void sayUnstored();
    void onRacksChanged();
    void updateActions();
    void updateTitle();
    void followLaboratory();
    PlanPage *makePlan();
    RunFilePage *makeRunFile();
    RackPage *makeRack();
    /// nullptr while another page is on show.
    RackPage *rackOnShow() const;
    /// The run of the page on show, if it has one.
    std::optional<notebook::RunId> runOnShow() const;

    std::unique_ptr<Dialogs> m_dialogs;
    std::unique_ptr<Clock> m_clock;
    std::unique_ptr<Sounder> m_sounder;
    Colours *m_colours;
    Theme *m_theme;
    BenchSession *m_session;
    BenchSettings *m_settings;
    BenchSounds *m_sounds;
    notebook::Notebook &m_open;
    QString m_notebookName;
    bool m_isNamedOtherwise = false;
    QString m_laboratoryName;
    WindowActions m_actions;
    NextStrip *m_strip;
    SideBar *m_side;
    Notice *m_notice;
    QStackedWidget *m_pages;
    Stores *m_stores;
    Keeper *m_keeper;
    /// Only where backups are kept.
    LastBackup *m_lastBackup = nullptr;
    WhenWanted<PlanPage> m_plan;
    WhenWanted<RunFilePage> m_runFile;
    WhenWanted<RackPage> m_rack;
    RunPapers m_papers;
    /// Null until it is wanted.
    NotebookPage *m_notebook = nullptr;
    MethodBook *m_methodBook;
    TodayPage *m_today;
    BookPages *m_books;
    InstrumentIntake *m_instrument;
    HelpRoute *m_help;
    QLabel *m_listening;
    QTimer m_heart;
};

} // namespace plateau::ui
