// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/recordparts.h"

namespace plateau::ui {

/// Whose numbers the budgets are made of, and where each comes from. Of the reported run alone; nothing where
/// its owners are not in the content.
void writeOwners(PageFlow &flow, const RecordPart &part);

} // namespace plateau::ui
