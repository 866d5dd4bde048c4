// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/limits.h"
#include "core/notebook/audit.h"
#include "core/notebook/lots.h"

namespace plateau::notebook {

inline constexpr double largestContainer_mL = assay::limit::flaskVolume_mL;
inline constexpr int longestKeeping_days = 36525;

/// "Buffer, lot B-17"
QString nameOf(const LotLabel &label);

/// Each throws Failure(Refused) where it is not so.
void requireLabel(const LotLabel &label);
void requireVolume(double volume_mL, const QString &lot);
/// 0: on that day only.
void requireKeeping(const std::optional<int> &days, const QString &lot);
/// It exists and is not to come.
void requireDay(const Act &act, const QDate &day, const QString &lot);
/// That much is in it by the ledger; it is not dry.
void requireLeft(const Act &act, LotId lot, const LotLabel &label, double volume_mL);
void requireLiquid(const Act &act, LotId lot, const LotLabel &label);
void requirePlace(const planning::StoragePlace &place, const QString &lot);
/// May be empty, but not blank.
void requireNote(const QString &note);

double leftIn_mL(const Act &act, LotId lot);

} // namespace plateau::notebook
