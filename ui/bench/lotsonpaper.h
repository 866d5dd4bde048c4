// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/lot.h"
#include "ui/bench/pipettesheet.h"
#include "ui/print/lotstretch.h"

namespace plateau::ui {

/// By round, from which lots its tubes take where the lot that the run names is not the one container for
/// all: of a tube that is ticked its own, of what is due what the bench will go on with if nothing else is
/// taken (planning::lotsInTurn).
std::map<int, std::vector<LotStretch>>
lotsOnPaper(const PipetteSheet &sheet, const std::vector<planning::Lot> &inHand, const QDateTime &at);

} // namespace plateau::ui
