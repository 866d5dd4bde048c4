// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/equipment/standing.h"
#include "core/planning/laboratory.h"
#include "core/planning/planrecord.h"

#include <QStringList>

namespace plateau::planning {

/// The laboratory with what valid checks found in place of what its lists say, for budgets of that day:
/// pipettes and flasks by their names, the photometer by its name (or the only one in use where the
/// laboratory names none), its path length by the cuvettes and, as it acts alike, its absorbance scale. Not
/// for saving.
Laboratory withChecks(const Laboratory &laboratory, const std::vector<equipment::HeldItem> &items,
                      const QDate &today);

/// The glass that a run is made with, by the names of the laboratory's list: of its dilutions as they were
/// planned, and every pipette that can make one of its doses, since a plan does not say which is taken.
QStringList glassOf(const assay::Method &method, const Laboratory &laboratory, const run::Run &run,
                    const PlanRecord &plan);
/// Something is weighed for it: a solid, or a standard that was made.
bool isWeighedFor(const run::Run &run);

/// An item that a run cannot rely on, and why, in one sentence.
struct EquipmentDoubt {
    qint64 item = 0;
    /// Only that nobody checked it yet or that a check is late; it did not fail.
    bool late = false;
    QString sentence;
    bool operator==(const EquipmentDoubt &) const = default;
};
/// Of a run on that day with this glass (by names, in any case): photometer, cuvettes and thermometers in
/// use, balances where something is weighed for it, and the glass. After that day: known by then. A check of
/// a later day that failed throws doubt on what was done since the last one before it.
std::vector<EquipmentDoubt> equipmentDoubts(const Laboratory &laboratory, const QStringList &glass,
                                            bool weighs, const std::vector<equipment::HeldItem> &items,
                                            const QDate &day, const QDate &today);

} // namespace plateau::planning
