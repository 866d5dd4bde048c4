// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "core/planning/laboratory.h"
#include "core/planning/lot.h"
#include "ui/print/worksheetcontent.h"

class QWidget;

namespace plateau::ui {

class Dialogs;
class Notice;

/// The sheet of a stored run as it was planned, without a time of its start while nothing of it was done,
/// with the rack and the start interval of its plan, and when each reading is due where the laboratory's
/// handling times still give that interval. inHand: lotsFor the run; at: when it is printed.
WorksheetContent worksheetOf(const notebook::StoredRun &stored, const planning::Laboratory &laboratory,
                             const QString &person, const std::vector<planning::Lot> &inHand,
                             const QDateTime &at);

/// Asks where the PDF goes, writes it, and says in the page what became of it. A file to be looked at,
/// printed and kept by whatever the desktop has for that. True where it was written.
bool savePdfAs(QWidget *parent, Dialogs &dialogs, Notice &notice, const QString &suggestedName,
               const QByteArray &pdf);

} // namespace plateau::ui
