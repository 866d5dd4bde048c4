// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/persons.h"
#include "core/notebook/reporting.h"

namespace plateau::notebook {

class OpenNotebook;

/// Notebook::chooseReported.
void chooseReported(OpenNotebook &open, Persons &persons, const QString &sample, const QString &measurand,
                    const WantedChoice &choice, std::optional<RunId> of);

} // namespace plateau::notebook
