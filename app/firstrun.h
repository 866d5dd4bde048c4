// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/helpcall.h"

#include <QString>
#include <QStringList>

#include <optional>

class QWidget;

namespace plateau::app {

/// What the first start led to: a notebook that is there now, or the sample notebook.
struct FirstRun {
    bool isSample = false;
    QString notebook;
    /// Who is at the bench; empty where the notebook was there before.
    QString person;
    /// What is read of the help meanwhile, to be read on beside the window; without a page: nothing.
    ui::HelpPlace help;
};

/// Asks until there is a notebook or the person leaves (nothing). missing: the chosen notebook that is not
/// there, or empty.
std::optional<FirstRun> beginFirstRun(const QString &missing);

/// The same from a window, which stays open: what is chosen opens in another one. over: the window.
void openAnotherNotebook(QWidget *over);
/// What follows the program's name where it is to open that beside a window that is open.
QStringList startWords(const FirstRun &run);
/// In that folder, and not there yet.
QString freeNotebook(const QString &folder);

/// A new notebook of that laboratory. Throws notebook::Failure; its folder is made where it is not there.
void makeNotebook(const QString &path, const QString &laboratory, const QString &person);

} // namespace plateau::app
