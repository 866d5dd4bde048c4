// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/planning/laboratory.h"
#include "core/run/run.h"

#include <optional>

namespace plateau::planning {

/// What a dilution step is made with, and how well: relative standard uncertainty (k = 1) of its factor.
struct GlassForStep {
    QString pipette;
    QString flask;
    double uncertainty_percent = 0;
    /// The checks that say so; empty: the list.
    QString source{};
    bool operator==(const GlassForStep &) const = default;
};

/// The pipette of the smallest uncertainty that makes the volume taken, with the flask of the volume made up
/// to. Nothing where the laboratory's list has none, or the step does not dilute.
std::optional<GlassForStep> glassFor(const run::DilutionStep &step, const Glassware &glassware);

/// Whether the pipette can be set to the volume.
bool makes(const Pipette &pipette, double volume_mL);
/// Whether any pipette of the list can be set to it, or nothing is to be pipetted.
bool isDelivered(double volume_mL, const Glassware &glassware);

/// What a tube with so much sample gets of the diluent, which makes up for it (mL); 0 where there is none or it cannot.
double diluentBeside_mL(const assay::Method &method, double sampleVolume_mL);

} // namespace plateau::planning
