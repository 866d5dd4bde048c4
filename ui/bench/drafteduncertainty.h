// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/uncertaintysources.h"
#include "ui/bench/rundraft.h"
#include "ui/shared/numberreader.h"

#include <vector>

namespace plateau::ui {

/// A number of the form, as short as it is known; what is still shown like this is the number itself to its
/// last digit.
QString uncertaintyText(double value);
/// "photometer P1: check record 7, 2026-09-14"
QString ownerText(const planning::OwnedInput &owned);

/// The sources with what was typed in their place: that is the person's, and says what it stands in place of.
/// What cannot be read goes to the reader's problems.
std::vector<planning::OwnedInput> withTyped(std::vector<planning::OwnedInput> sources, const RunDraft &draft,
                                            const NumberReader &reader);
run::UncertaintyInputs inputsOf(const std::vector<planning::OwnedInput> &owned);

} // namespace plateau::ui
