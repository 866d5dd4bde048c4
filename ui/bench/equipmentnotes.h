// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/equipment/standing.h"
#include "core/notebook/records.h"
#include "core/planning/laboratory.h"
#include "ui/shared/sentencelist.h"

namespace plateau::ui {

/// What failed its check, or was late with it, of the equipment that this run was made and read with: by what
/// was known on the day it was begun, and what failed afterwards. Pipettes are those that were ticked; where
/// none was, all that can make its doses.
std::vector<Sentence> equipmentSentences(const notebook::StoredRun &stored,
                                         const planning::Laboratory &laboratory,
                                         const std::vector<equipment::HeldItem> &items, const QDate &today);
/// The day that the run was begun, else that it was stored.
QDate dayOf(const notebook::StoredRun &stored);

} // namespace plateau::ui
