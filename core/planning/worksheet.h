// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/planning/laboratory.h"
#include "core/run/run.h"

#include <optional>
#include <vector>

namespace plateau::planning {

/// One component's addition across all tubes.
struct Round {
    /// Index of the method's add step.
    int step = 0;
    /// The sample's in a round of spikes.
    QString component;
    QString name;
    /// Swirl before use.
    bool suspension = false;
    struct Dose {
        double volume_mL = 0;
        /// What goes in where it is not the component itself: the sample or standard by name, or the diluent
        /// that stands in.
        QString content;
        /// Another volume than most tubes of this round get.
        bool odd = false;
        bool operator==(const Dose &) const = default;
    };
    /// By tube in the rack's order; absent where the tube is to get none.
    std::vector<std::optional<Dose>> doses;
    /// The volume most tubes get; of volumes that as many get, the component's own, else the smallest.
    double usualVolume_mL = 0;
    /// Lot of the component in this run, empty where none is chosen; spikes have none.
    QString lot;
    /// The smallest pipette of the laboratory that makes the usual volume, of two as large the one that can
    /// be set; behind it those for the odd volumes, where they are others. Empty where none makes any.
    QString pipette;
    bool operator==(const Round &) const = default;
};

/// Rounds in the order of the method's steps; readings, mixing and waits are the method's steps between them.
/// A spike is a round of its own after the sample, where there is any. Volumes are those of run::additions,
/// so that what was really pipetted stands in place of what was planned; a dose that was left out stays, with
/// 0 mL.
std::vector<Round> roundsOf(const assay::Method &method, const run::Run &run, const Glassware &glassware);

/// What is pipetted: the sample, standard or stand-in by name, else the component.
const QString &contentName(const Round &round, const Round::Dose &dose);
/// What goes in is the tube's sample, standard or spike, not a reagent.
bool isTubesOwn(const Round::Dose &dose, const run::Tube &tube);

/// A dose that takes from a container.
struct ReagentDose {
    /// Indices from 0 into the rounds and the tubes.
    int round = 0;
    int tube = 0;
    double volume_mL = 0;
    bool operator==(const ReagentDose &) const = default;
};
/// All of a reagent, also where it stands in for something else, in the order of the bench: round after
/// round, each over all tubes.
std::vector<ReagentDose> dosesOf(const QString &reagent, const std::vector<Round> &rounds,
                                 const run::Run &run);

/// The smallest pipette of the laboratory that makes the volume; empty where none does.
QString pipetteFor(double volume_mL, const Glassware &glassware);

} // namespace plateau::planning
