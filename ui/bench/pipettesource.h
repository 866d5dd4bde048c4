// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/lotturns.h"
#include "core/planning/reagents.h"
#include "ui/bench/pipettepanel.h"
#include "ui/bench/pipettesheet.h"

namespace plateau::notebook {
struct StoredRun;
}

namespace plateau::ui {

class Stores;

/// Those in hand, and those that the run took from and that are used up: what is ticked is told by their
/// names, and what comes is held against them.
std::vector<planning::Lot> lotsFor(const notebook::StoredRun &stored, const Stores &stores);

/// From which lot and with which pipette a dose is taken as long as nobody says otherwise: the lot that was
/// ticked last of the same reagent in this run, else the one the run names, whatever it holds (of a ticked dose its
/// own); the pipette likewise of that volume in that round, else the smallest that makes it. Of samples and standards
/// there are no lots.
PipettePanel::Source plannedSource(const PipetteSheet &sheet, const Dosing &dosing,
                                   const std::vector<planning::Lot> &inHand,
                                   const planning::Glassware &glassware);

/// The lot that was ticked last of that reagent in this run, else the one the run names; nothing where
/// neither is in hand.
std::optional<notebook::LotId> lotInUse(const PipetteSheet &sheet, const QString &reagent,
                                        const std::vector<planning::Lot> &inHand);

/// Where its lot does not hold the dose by the book, the one that the plan goes on with (planning::goOnWith).
void goOnWithNextLot(PipettePanel::Source &source, const PipetteSheet &sheet, const Dosing &dosing,
                     const std::vector<planning::Lot> &inHand, const QDateTime &at);

/// nullptr for one that is not in hand.
const planning::Lot *lotOf(const std::optional<notebook::LotId> &id, const std::vector<planning::Lot> &inHand);

/// For how many tubes of this addition the lot is enough by the book, from that one on, and what comes then: a sentence; empty
/// where it is enough for all that are due.
QString lotHint(const PipettePanel::Source &source, const PipetteSheet &sheet, const Dosing &dosing,
                const std::vector<planning::Lot> &inHand, const QDateTime &at);

} // namespace plateau::ui
