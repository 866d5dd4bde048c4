// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/run/run.h"
#include "ui/print/labels.h"

class QWidget;

namespace plateau::ui {

class Dialogs;
class Notice;
class Theme;

/// Asks for the sheet and for the file, writes the labels of the run, and says in the page what became of
/// it. The sheet is kept for the next time, and so is the label that is then the first free one.
void saveLabelsAs(QWidget *parent, const Theme &theme, Dialogs &dialogs, Notice &notice, const run::Run &run,
                  const QString &person);
/// The same of any labels; whoever is named in the form has made them.
void saveLabelsAs(QWidget *parent, const Theme &theme, Dialogs &dialogs, Notice &notice,
                  std::vector<Label> labels, const QString &person);

} // namespace plateau::ui
