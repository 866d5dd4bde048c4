// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/planning/laboratory.h"
#include "core/planning/lot.h"
#include "core/planning/worksheet.h"
#include "core/run/run.h"

#include <QDateTime>
#include <QString>

#include <optional>
#include <vector>

namespace plateau::planning {

struct LotShare {
    qint64 lot = 0;
    double volume_mL = 0;
    bool operator==(const LotShare &) const = default;
};

struct ReagentNeed {
    QString component;
    QString reagent;
    /// What the tubes take, and with the laboratory's overage.
    double tubes_mL = 0;
    double withOverage_mL = 0;
    /// Lots of that reagent in the order they should be used: good ones first, by last good day, then opened
    /// before unopened, then as they came; then the unfit ones.
    std::vector<std::pair<qint64, LotFitness>> lots;
    /// From which lots it is taken; together less than withOverage_mL where they fall short.
    std::vector<LotShare> shares;
    double short_mL = 0;
    /// Tubes of the method's usual volume that the good lots serve in all, those of this run included,
    /// without overage.
    int tubesServed = 0;
    /// The same of each good lot by itself, in the order they should be used.
    std::vector<std::pair<qint64, int>> servedByLot;
    /// What takes from its lots, one dose after another.
    std::vector<ReagentDose> doses{};
    /// Round of its own addition.
    int round = 0;
    bool operator==(const ReagentNeed &) const = default;
};

/// Every component but the sample, in the method's order: what the tubes take, as planned or as it was really
/// pipetted; diluent in place of something else counts as diluent, a standard and a spike not at all. Two
/// components of one name share the lots of that reagent.
std::vector<ReagentNeed> reagentNeeds(const assay::Method &method, const run::Run &run,
                                      double overage_percent, const std::vector<Lot> &lots,
                                      const QDateTime &from, const QDateTime &to);

} // namespace plateau::planning
