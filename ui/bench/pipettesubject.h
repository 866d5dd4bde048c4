// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/bench/benchworksheet.h"
#include "ui/bench/pipettepanel.h"
#include "ui/bench/pipettesheet.h"

namespace plateau::ui {

/// What the panel says of an addition that is due, done, or not made.
PipettePanel::Subject subjectOf(const PipetteSheet &sheet, const Dosing &dosing);

/// What is to be done before the next addition, or instead of it.
struct PipettePause {
    QString title;
    QString text;
    /// On the button that leads there.
    QString goOn;
};
/// isWaiting: no tube may be read yet.
PipettePause pauseOf(const PipetteSheet &sheet, bool isWaiting);

/// What the panel says of that dilution, a step of the sheet; nothing leads on from there.
PipettePause dilutionSubject(const PipetteSheet &sheet, int step);

/// "Tube 7: what went in instead of 100 µL P-104?"
QString volumeQuestion(const PipetteSheet &sheet, const Dosing &dosing);
/// "Tube 7 is to be left out. What happened to it?", or of a spoilt one why it counts after all.
QString spoiltQuestion(const PipetteSheet &sheet, const Dosing &dosing);
/// What speaks against a volume that is typed, and that Enter keeps it all the same; empty for nothing.
QString doubtAbout(double volume_mL, double planned_mL);

/// How a spoilt tube comes back.
QString spoiltHint(int tube);
/// "Taken back: 20 µL starter in tubes 2, 3.", "Taken back: the dilution of P-104."
QString takenBackWords(const PipetteSheet &sheet, const WorksheetAct &act);

} // namespace plateau::ui
