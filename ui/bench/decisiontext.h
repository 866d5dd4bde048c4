// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "ui/shared/sentencelist.h"

namespace plateau::ui {

/// What was decided about a run and what was taken back, in that order, each with person, time and reason.
std::vector<Sentence> decisionSentences(const notebook::StoredRun &stored);

} // namespace plateau::ui
