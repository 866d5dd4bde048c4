// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/bookentries.h"

#include <map>

class QAction;
class QMainWindow;
class QMenu;

namespace plateau::ui {

/// What the menu bar offers. Owned by the window they are put on.
struct WindowActions {
    explicit WindowActions(QMainWindow &window);

    QAction *newRun;
    QAction *openFile;
    QAction *anotherNotebook;
    QAction *saveCopy;
    QAction *saveWorksheet;
    QAction *saveLabels;
    QAction *saveReport;
    QAction *saveRecord;
    QAction *saveTable;
    QAction *quit;
    QAction *done;
    QAction *undoMark;
    QAction *pasteReadings;
    QAction *fileReadings;
    QAction *listen;
    QAction *stopListening;
    QAction *benchSettings;
    QAction *next;
    QAction *pipette;
    QAction *read;
    QAction *review;
    QAction *nextRack;
    QAction *previousRack;
    std::map<Book, QAction *> books;
    QAction *help;
    QAction *firstRack;
    QAction *aboutChecks;
    QAction *keys;
    QAction *about;
    /// Where more is to be chosen about looks.
    QMenu *view;
};

} // namespace plateau::ui
