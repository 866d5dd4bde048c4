// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/notebook/records.h"
#include "ui/shared/sentencelist.h"

namespace plateau::ui {

/// What an analyst should know of a method before working by it: its cautions first, then where it comes from
/// and what happens in the tube.
std::vector<Sentence> methodSentences(const assay::Method &method);

/// That results rest on a template nobody made a method of the laboratory from: the run's own method, or that
/// of a run its derived quantities take from. Empty where there is none.
QString templateSentence(const notebook::StoredRun &stored);

} // namespace plateau::ui
