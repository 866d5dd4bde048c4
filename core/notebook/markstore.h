// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"

#include <limits>

namespace plateau::notebook {

/// id, person, time, order and what is known of the lot are not read; lotVersion names the lot instead.
MarkId storeMark(Act &act, RunId run, const StoredMark &mark, std::optional<qint64> lotVersion);

/// The last good day of the lot that the mark names, where it is not its label's.
void storeLotDay(Act &act, MarkId mark, const QDate &lastGood);

/// All marks of the run, oldest first.
std::vector<StoredMark> loadMarks(const Database &database, RunId run);

/// Puts into the run what counted when the mark with that id was the newest.
void placeMarks(run::Run &run, const assay::Method &method, const std::vector<StoredMark> &marks,
                MarkId newest = {std::numeric_limits<qint64>::max()});

/// The component whose container a dose is taken from: its own, or the diluent that stands in for it; empty
/// for a sample or a standard. planned: what is to go into the tube.
QString takenFrom(const assay::Method &method, const run::Tube &planned, const Dose &dose);
/// What method and tube say of the dose, in mL; nothing where the tube gets none.
std::optional<double> plannedVolume_mL(const assay::Method &method, const run::Tube &planned,
                                       const Dose &dose);

} // namespace plateau::notebook
