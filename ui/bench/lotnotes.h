// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "core/planning/lot.h"
#include "ui/shared/sentencelist.h"

namespace plateau::ui {

/// What speaks against the containers that this run's ticked doses took from, on the day that they did, and
/// which of them end soon (planning::usedLotText); each once, in the order of the book.
std::vector<Sentence> lotSentences(const notebook::StoredRun &stored, const std::vector<planning::Lot> &lots,
                                   const QDate &today);

} // namespace plateau::ui
