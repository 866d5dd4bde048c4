// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "core/planning/laboratory.h"
#include "ui/bench/pipettesheet.h"

namespace plateau::ui {

/// The worksheet of a stored run as it was planned, with what its marks say. fromPaper: somebody said that
/// the additions are not ticked here.
PipetteSheet sheetOf(const notebook::StoredRun &stored, const planning::Glassware &glassware, bool fromPaper);

/// The dose as the notebook names it.
notebook::Dose doseOf(const PipetteSheet &sheet, const Dosing &dosing);

/// Of the rack that was planned for it, else the laboratory's.
int rackColumns(const notebook::StoredRun &stored, const planning::Laboratory &laboratory);

/// The ticks that were made last by one act and still count, in the order they were made; empty where none
/// does.
std::vector<Dosing> lastTicks(const PipetteSheet &sheet, const notebook::StoredRun &stored);

} // namespace plateau::ui
