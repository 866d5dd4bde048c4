// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/reportcontent.h"

class QWidget;

namespace plateau::ui {

class Dialogs;
class Notice;
class Theme;

/// What leaves the notebook about a run.
enum class ReportKind { Results, Record, Table };

/// Asks for what the program cannot know (of the results' report only) and for the file, and writes it; the
/// notice says what became of it.
void saveReportAs(QWidget *parent, const Theme &theme, Dialogs &dialogs, Notice &notice,
                  ReportContent content, ReportKind kind, const QDateTime &now, const QString &person);

} // namespace plateau::ui
