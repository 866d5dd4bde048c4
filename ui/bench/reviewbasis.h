// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/decisionbasis.h"

#include <QDateTime>
#include <QString>

#include <map>
#include <vector>

namespace plateau::ui {

/// A standard's or control's recovery in a run that was decided.
struct PastRecovery {
    QDateTime at;
    QString standard;
    QString measurand;
    double recovery_percent = 0;
    bool operator==(const PastRecovery &) const = default;
};

/// What a run's results are read against beyond the run itself. Empty: the evaluation's units, no limits, no
/// history.
struct ReviewBasis : notebook::DecisionBasis {
    /// Of runs by the same method, oldest first.
    std::vector<PastRecovery> recoveries;
    /// Of the methods that derived results take a term from, by their ids.
    std::map<QString, QString> methodNames{};
};

} // namespace plateau::ui
