// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"
#include "core/planning/inputowner.h"
#include "core/planning/shelf.h"
#include "core/run/run.h"

#include <optional>
#include <vector>

namespace plateau::planning {

/// What one step of a dilution is made with, by the names of the laboratory's list.
struct StepGlass {
    QString pipette;
    QString flask;
    bool operator==(const StepGlass &) const = default;
};

/// What is known of one sample of a run beyond what the run says itself.
struct PlannedSample {
    /// Id and form are those of the run's sample.
    ShelfSample sample;
    /// Of each dilution step of the run's sample; empty: not chosen.
    std::vector<StepGlass> glass;
    /// Number of the run that this one repeats the sample of.
    std::optional<qint64> repeats;
    bool operator==(const PlannedSample &) const = default;
};

/// What was planned of a run and is not in run::Run.
struct PlanRecord {
    /// In any order, each sample of the run at most once.
    std::vector<PlannedSample> samples;
    int rackRows = 4;
    int rackColumns = 6;
    /// Between the starts of two tubes; absent where no schedule was made.
    std::optional<int> interval_s;
    /// Of the run's uncertainties: each input, and each standard, at most once. Empty: nobody said.
    std::vector<InputOwner> owners{};
    bool operator==(const PlanRecord &) const = default;
};

/// Where the plan and its run do not fit together, or cannot be. Places are JSON pointers with the names of
/// the members above.
assay::Problems problemsOf(const PlanRecord &plan, const run::Run &run);

} // namespace plateau::planning
