// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"

#include <QString>

namespace plateau::evaluation {

/// Why the stated uncertainty is much wider than the scatter of its tubes looks: two duplicates that differ
/// leave one degree of freedom, and k of about 14. Said where k is at least twice the usual 2 (common
/// practice, no source); empty where it is less, and of a bound, which has no uncertainty.
QString wideUncertaintyText(const Result &result);

/// What would narrow it: for the laboratory, not for its customer.
QString narrowerUncertaintyText(const Result &result);

} // namespace plateau::evaluation
