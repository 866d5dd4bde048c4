// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"
#include "core/notebook/standards.h"

namespace plateau::notebook {

SubstanceId storeSubstance(Act &act);
void storeSubstanceVersion(Act &act, SubstanceId id, const planning::Substance &substance,
                           const QString &reason);
/// Of the substance as it is known now.
PreparationId storePreparation(Act &act, SubstanceId of, const planning::Preparation &preparation);
void storeDisposal(Act &act, PreparationId id, const QString &reason);

std::vector<planning::HeldSubstance> loadSubstances(const Database &database);
/// In the order they came.
std::vector<planning::HeldPreparation> loadPreparations(const Database &database);
std::vector<RunId> loadRunsOf(const Database &database, const planning::HeldPreparation &held);

} // namespace plateau::notebook
