// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"
#include "core/notebook/lots.h"
#include "core/notebook/lotstore.h"

namespace plateau::notebook {

void storeDryLot(Act &act, LotId lot, std::optional<double> mass_mg);
void storeDryDisposal(Act &act, LotId lot, const QString &reason);
/// Of a version of the label.
void storeLotKeeping(Act &act, qint64 version, int dissolved_days);
/// solvent: the label of the container it came from, where it came from one.
void storeDissolving(Act &act, LotId lot, const LotDissolving &how, const std::optional<LotVersion> &solvent);
/// The row that its aliquots name.
qint64 storeDivision(Act &act, LotId source, const LotDivision &how);
void storeAliquot(Act &act, qint64 division, LotId lot, int number);
void storePlace(Act &act, LotId lot, const planning::StoragePlace &place, const QString &note);
void storeLotNote(Act &act, LotId lot, const QString &text);
/// The number of the last aliquot that was ever filled from it; 0 for none.
int lastAliquotOf(const Database &database, LotId source);

/// What happened to containers beside their label, opening and movements; goes into lots that know those.
/// Aliquots take over the days of their source.
void placeKeeping(const Database &database, std::vector<planning::Lot> &lots);

} // namespace plateau::notebook
