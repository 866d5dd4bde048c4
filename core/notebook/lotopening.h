// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"
#include "core/notebook/inputs.h"

namespace plateau::notebook {

/// Whoever takes from a container has opened it. Of those that are neither opened nor dry each is noted as
/// opened on that day, in an audit entry of its own (Act::bringsAbout): so this comes last in an act. Gives
/// those.
std::vector<LotId> openTaken(Act &act, const std::vector<LotId> &taken, const QDate &day);

/// Whether the run names a lot that stands in the book on a container that is neither opened nor dry. Asks
/// little of the notebook, so that it may be asked at every reading.
bool namesClosedLot(const Database &database, RunId run);
/// The container that a component of the run comes from where no tick says one: the run names one lot for it,
/// and of the containers of that lot in the book it is the one that is used first (planning::isUsedBefore).
/// What came after the day is none of them.
std::optional<LotId> plannedLot(const Database &database, const assay::Method &method, const run::Run &plan,
                                const QString &component, const std::optional<QDate> &day = {});
/// What a reading of a tube shows to have gone in, as planned: the containers of all that comes ahead of it,
/// but for doses that are ticked, which speak for themselves.
std::vector<LotId> lotsTakenUntil(const Database &database, const Inputs &inputs, int tube,
                                  const QString &reading);
/// The same of all readings that a run of that day came with, and of the volumes it says were pipetted.
std::vector<LotId> lotsTakenIn(const Database &database, const assay::Method &method, const run::Run &run,
                               const QDate &day);

} // namespace plateau::notebook
