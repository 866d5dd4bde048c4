// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "ui/shared/sentencelist.h"

namespace plateau::ui {

/// What was decided about a run and its samples and what was taken back, in that order, each with person,
/// time, reason and revision.
std::vector<Sentence> decisionSentences(const notebook::StoredRun &stored);
/// One of its revisions, counted from 1: "2: accepted 2026-03-02 10:10 by M. Lindqvist (stands)".
QString revisionText(const notebook::StoredRun &stored, int revision);

} // namespace plateau::ui
