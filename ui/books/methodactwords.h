// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "ui/shared/sentencelist.h"

namespace plateau::ui {

/// What people did with a method, newest first; where nobody saved or imported it, where it comes from.
std::vector<Sentence> methodActSentences(const notebook::StoredMethod &method);

} // namespace plateau::ui
