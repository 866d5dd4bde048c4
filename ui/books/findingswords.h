// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/equipment/outcome.h"
#include "ui/shared/theme.h"

#include <QStringList>

#include <map>
#include <set>

namespace plateau::ui {

/// The columns of a check's findings: what, found, limit, verdict, where the limit comes from.
QStringList findingTitles();
/// Those of them that hold texts.
std::set<int> findingTexts();
/// The one with the verdict, and how its words stand.
constexpr int findingVerdict = 3;
std::map<QString, State> findingMarks();
std::vector<QStringList> findingRows(const equipment::Outcome &outcome);

} // namespace plateau::ui
