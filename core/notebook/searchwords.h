// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/runsearch.h"

namespace plateau::notebook {

/// What the index of words is asked for, so that nothing somebody types is taken for its language; empty
/// where the filter has no words. At most 32 words of a text count, and of them the first thousand signs.
QString matchOf(const RunFilter &filter);

} // namespace plateau::notebook
