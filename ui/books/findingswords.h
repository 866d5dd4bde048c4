// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/equipment/outcome.h"

#include <QStringList>

#include <set>

namespace plateau::ui {

/// The columns of a check's findings: what, found, limit, verdict, where the limit comes from.
QStringList findingTitles();
/// Those of them that hold texts.
std::set<int> findingTexts();
std::vector<QStringList> findingRows(const equipment::Outcome &outcome);

} // namespace plateau::ui
