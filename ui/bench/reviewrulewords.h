// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "core/planning/reporting.h"

#include <QStringList>

#include <vector>

namespace plateau::ui {

/// Who may not decide the run by the laboratory's rules, and who may, said before anybody tries; empty where
/// everybody may. history: of the run. Whether somebody may is the notebook's to say
/// (notebook::Notebook::decide).
QString whoMayNotDecide(const planning::ReviewRules &rules, const std::vector<notebook::Person> &persons,
                        const std::vector<notebook::AuditEntry> &history);

/// Names of those who are set up and may decide the run by the laboratory's rules.
QStringList whoMayDecide(const planning::ReviewRules &rules, const std::vector<notebook::Person> &persons,
                         const std::vector<notebook::AuditEntry> &history);

/// What is usually said where something is accepted though not all of it passed (common practice, no source). Each
/// begins with "accepted", so that it is not taken for a reason to reject.
QStringList acceptanceReasons();

} // namespace plateau::ui
