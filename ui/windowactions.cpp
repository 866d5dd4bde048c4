// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/windowactions.h"

#include <QAction>
#include <QCoreApplication>
#include <QKeySequence>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::WindowActions)
};

QAction *add(QMenu *menu, const QString &text, const QString &name, const QKeySequence &keys = {})
{
    QAction *action = menu->addAction(text);
    action->setObjectName(name);
    action->setShortcut(keys);
    return action;
}

} // namespace

// Ctrl with E, D, K or U is left alone: line edits take these keys for themselves.
WindowActions::WindowActions(QMainWindow &window)
{
    QMenu *file = window.menuBar()->addMenu(Words::tr("&File"));
    newRun = add(file, Words::tr("&New run"), u"actionNewRun"_s, QKeySequence::New);
    openFile = add(file, Words::tr("&Open run file…"), u"actionOpenFile"_s, QKeySequence::Open);
    file->addSeparator();
    saveCopy = add(file, Words::tr("&Save a copy of the run as file…"), u"actionSaveCopy"_s,
                   QKeySequence(u"Ctrl+Shift+S"_s));
    saveWorksheet =
        add(file, Words::tr("&Worksheet as PDF…"), u"actionSaveWorksheet"_s, QKeySequence(u"Ctrl+P"_s));
    saveLabels = add(file, Words::tr("&Labels as PDF…"), u"actionSaveLabels"_s);
    file->addSeparator();
    saveReport =
        add(file, Words::tr("&Report of results as PDF…"), u"actionSaveReport"_s, QKeySequence(u"Ctrl+R"_s));
    saveRecord = add(file, Words::tr("R&un record as PDF…"), u"actionSaveRecord"_s);
    saveTable = add(file, Words::tr("Results as &CSV…"), u"actionSaveTable"_s);
    file->addSeparator();
    quit = add(file, Words::tr("&Quit"), u"actionQuit"_s, QKeySequence(u"Ctrl+Q"_s));
    quit->setMenuRole(QAction::QuitRole);

    QMenu *bench = window.menuBar()->addMenu(Words::tr("Bench"));
    done = add(bench, Words::tr("What is next is &done now"), u"actionDone"_s, QKeySequence(u"F9"_s));
    undoMark =
        add(bench, Words::tr("&Take back the last mark"), u"actionUndoMark"_s, QKeySequence(u"Ctrl+T"_s));
    bench->addSeparator();
    pasteReadings =
        add(bench, Words::tr("&Paste readings…"), u"actionPasteReadings"_s, QKeySequence(u"Ctrl+Shift+V"_s));
    fileReadings = add(bench, Words::tr("Readings from a &file…"), u"actionFileReadings"_s);
    listen = add(bench, Words::tr("&Listen to the photometer…"), u"actionListen"_s);
    stopListening = add(bench, Words::tr("St&op listening"), u"actionStopListening"_s);
    bench->addSeparator();
    benchSettings = add(bench, Words::tr("&Sound, lead time and keying…"), u"actionBenchSettings"_s);

    QMenu *view = window.menuBar()->addMenu(Words::tr("&View"));
    next = add(view, Words::tr("&Go to what is next"), u"actionNext"_s, QKeySequence(u"Ctrl+G"_s));
    view->addSeparator();
    pipette = add(view, Words::tr("P&ipette"), u"actionPipette"_s, QKeySequence(u"Ctrl+1"_s));
    read = add(view, Words::tr("&Read"), u"actionRead"_s, QKeySequence(u"Ctrl+2"_s));
    review = add(view, Words::tr("Re&view"), u"actionReview"_s, QKeySequence(u"Ctrl+3"_s));
    view->addSeparator();
    nextRack = add(view, Words::tr("Ne&xt rack"), u"actionNextRack"_s, QKeySequence(u"Ctrl+PgDown"_s));
    previousRack =
        add(view, Words::tr("&Previous rack"), u"actionPreviousRack"_s, QKeySequence(u"Ctrl+PgUp"_s));
    view->addSeparator();
    for (const BookEntry &entry : bookEntries())
        books[entry.book] = add(view, entry.menuText, entry.actionName, entry.keys);

    QMenu *help = window.menuBar()->addMenu(Words::tr("&Help"));
    about = add(help, Words::tr("&About Plateau"), u"actionAbout"_s);
    about->setMenuRole(QAction::AboutRole);
}

} // namespace plateau::ui
