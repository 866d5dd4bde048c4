// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/reagents.h"
#include "ui/bench/pipettepanel.h"
#include "ui/bench/pipettesheet.h"

namespace plateau::ui {

/// From which lot and with which pipette a dose is taken as long as nobody says otherwise: the lot that was
/// ticked last of the same reagent in this run, else the one the run names; the pipette likewise of
/// that volume in that round, else the smallest that makes it. Of samples and standards there are no lots.
PipettePanel::Source plannedSource(const PipetteSheet &sheet, const Dosing &dosing,
                                   const std::vector<planning::Lot> &inHand,
                                   const planning::Glassware &glassware);

} // namespace plateau::ui
