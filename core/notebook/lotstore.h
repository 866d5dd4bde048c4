// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"
#include "core/notebook/lots.h"

namespace plateau::notebook {

/// A label as it was noted, and the row it stands in.
struct LotVersion : LotLabel {
    qint64 row = 0;
};
/// Throws Failure(Refused) if there is no such lot.
LotVersion currentLotVersion(const Database &database, LotId lot);

LotId storeLot(Act &act);
void storeLotVersion(Act &act, LotId lot, const LotLabel &label, const QString &reason);
void storeLotOpening(Act &act, LotId lot, const QDate &day);
/// Of one that was noted as opened; without a day it is not opened. Only what is opened anew has no reason.
void storeLotOpeningChange(Act &act, LotId lot, const std::optional<QDate> &day, const QString &reason);
void storeLotMovement(Act &act, LotId lot, LotMovementKind kind, double change_mL, const QString &note);

/// The first day on which a tick that counts or a hand took from it, or it was dissolved, divided or another
/// was dissolved in it.
std::optional<QDate> firstTakenFrom(const Database &database, LotId lot);

/// Every lot as it stands, or the one.
std::vector<planning::Lot> loadLots(const Database &database, std::optional<LotId> which = {});
std::vector<LotMovement> loadMovements(const Database &database, LotId lot);
std::vector<LotTaking> loadTakings(const Database &database, LotId lot);

} // namespace plateau::notebook
