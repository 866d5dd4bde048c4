// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/windowactions.h"

#include <QAction>
#include <QCoreApplication>
#include <QKeySequence>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>
#include <QShortcut>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct WindowActionsWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::WindowActions)
};

QAction *add(QMenu *menu, const QString &text, const QString &name, const QKeySequence &keys = {})
{
    QAction *action = menu->addAction(text);
    action->setObjectName(name);
    action->setShortcut(keys);
    return action;
}

/// Into the first menu, where the keys lead on; some styles leave that key alone.
void openMenusByKey(QMainWindow &window)
{
    auto *key = new QShortcut(QKeySequence(Qt::Key_F10), &window);
    QObject::connect(key, &QShortcut::activated, window.menuBar(), [bar = window.menuBar()] {
        QAction *first = bar->actions().front();
        bar->setActiveAction(first);
        first->menu()->setActiveAction(first->menu()->actions().front());
    });
}

} // namespace

// Ctrl with E, D, K or U is left alone: line edits take these keys for themselves.
WindowActions::WindowActions(QMainWindow &window)
{
    QMenu *file = window.menuBar()->addMenu(WindowActionsWords::tr("&File"));
    newRun = add(file, WindowActionsWords::tr("&New run"), u"actionNewRun"_s, QKeySequence::New);
    openFile = add(file, WindowActionsWords::tr("&Open run file…"), u"actionOpenFile"_s, QKeySequence::Open);
    anotherNotebook = add(file, WindowActionsWords::tr("Another note&book…"), u"actionAnotherNotebook"_s,
                          QKeySequence(u"Ctrl+Shift+O"_s));
    file->addSeparator();
    saveCopy = add(file, WindowActionsWords::tr("&Save a copy of the run as a file…"), u"actionSaveCopy"_s,
                   QKeySequence(u"Ctrl+Shift+S"_s));
    saveWorksheet = add(file, WindowActionsWords::tr("&Worksheet as PDF…"), u"actionSaveWorksheet"_s,
                        QKeySequence(u"Ctrl+P"_s));
    saveLabels = add(file, WindowActionsWords::tr("&Labels as PDF…"), u"actionSaveLabels"_s);
    file->addSeparator();
    saveReport = add(file, WindowActionsWords::tr("&Report of results as PDF…"), u"actionSaveReport"_s,
                     QKeySequence(u"Ctrl+R"_s));
    saveRecord = add(file, WindowActionsWords::tr("R&un record as PDF…"), u"actionSaveRecord"_s);
    saveTable = add(file, WindowActionsWords::tr("Results as &CSV…"), u"actionSaveTable"_s);
    file->addSeparator();
    quit = add(file, WindowActionsWords::tr("&Quit"), u"actionQuit"_s, QKeySequence(u"Ctrl+Q"_s));
    quit->setMenuRole(QAction::QuitRole);

    QMenu *bench = window.menuBar()->addMenu(WindowActionsWords::tr("&Bench"));
    done = add(bench, WindowActionsWords::tr("Mark what is next as &done"), u"actionDone"_s,
               QKeySequence(u"F9"_s));
    undoMark = add(bench, WindowActionsWords::tr("&Take back the last mark"), u"actionUndoMark"_s,
                   QKeySequence(u"Ctrl+T"_s));
    bench->addSeparator();
    pasteReadings = add(bench, WindowActionsWords::tr("&Paste readings…"), u"actionPasteReadings"_s,
                        QKeySequence(u"Ctrl+Shift+V"_s));
    fileReadings = add(bench, WindowActionsWords::tr("Readings from a &file…"), u"actionFileReadings"_s);
    listen = add(bench, WindowActionsWords::tr("&Listen to the photometer…"), u"actionListen"_s);
    stopListening = add(bench, WindowActionsWords::tr("St&op listening"), u"actionStopListening"_s);
    bench->addSeparator();
    benchSettings =
        add(bench, WindowActionsWords::tr("&Sound, lead time and keying…"), u"actionBenchSettings"_s);

    view = window.menuBar()->addMenu(WindowActionsWords::tr("&View"));
    next =
        add(view, WindowActionsWords::tr("&Go to what is next"), u"actionNext"_s, QKeySequence(u"Ctrl+G"_s));
    view->addSeparator();
    pipette = add(view, WindowActionsWords::tr("P&ipette"), u"actionPipette"_s, QKeySequence(u"Ctrl+1"_s));
    read = add(view, WindowActionsWords::tr("&Read"), u"actionRead"_s, QKeySequence(u"Ctrl+2"_s));
    review = add(view, WindowActionsWords::tr("Re&view"), u"actionReview"_s, QKeySequence(u"Ctrl+3"_s));
    view->addSeparator();
    nextRack =
        add(view, WindowActionsWords::tr("Ne&xt rack"), u"actionNextRack"_s, QKeySequence(u"Ctrl+PgDown"_s));
    previousRack = add(view, WindowActionsWords::tr("&Previous rack"), u"actionPreviousRack"_s,
                       QKeySequence(u"Ctrl+PgUp"_s));
    view->addSeparator();
    for (const BookEntry &entry : bookEntries())
        books[entry.book] = add(view, entry.menuText, entry.actionName, entry.keys);

    QMenu *helpMenu = window.menuBar()->addMenu(WindowActionsWords::tr("&Help"));
    help = add(helpMenu, WindowActionsWords::tr("&Help for what is in front"), u"actionHelp"_s,
               QKeySequence(u"F1"_s));
    firstRack = add(helpMenu, WindowActionsWords::tr("A &first rack in ten minutes"), u"actionFirstRack"_s);
    aboutChecks = add(helpMenu, WindowActionsWords::tr("&What to do about a check"), u"actionAboutChecks"_s);
    helpMenu->addSeparator();
    keys = add(helpMenu, WindowActionsWords::tr("&Keys…"), u"actionKeys"_s, QKeySequence(u"Ctrl+F1"_s));
    about = add(helpMenu, WindowActionsWords::tr("&About Plateau"), u"actionAbout"_s);
    about->setMenuRole(QAction::AboutRole);
    openMenusByKey(window);
}

} // namespace plateau::ui
