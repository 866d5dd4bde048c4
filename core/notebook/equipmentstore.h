// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"
#include "core/notebook/equipment.h"

namespace plateau::notebook {

ItemId storeItem(Act &act);
void storeItemVersion(Act &act, ItemId id, const equipment::Item &item, const QString &reason);
/// With the item's newest description.
CheckId storeCheck(Act &act, ItemId id, const equipment::Check &check, bool passed);
void storeCheckWithdrawal(Act &act, CheckId id, const QString &reason);

std::vector<equipment::HeldItem> loadEquipment(const Database &database);

} // namespace plateau::notebook
