// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/run/run.h"

namespace plateau::run {

/// What goes into one tube, in the order of the method's steps.
struct Addition {
    QString component;
    /// What is pipetted there: the component itself, or the diluent that stands in for it, or the standard.
    enum class Content { Component, Diluent, Standard, Spike } content = Content::Component;
    double volume_mL = 0;
    bool operator==(const Addition &) const = default;
};

/// The sample's (or standard's) volume in the tube, in mL, as it was really pipetted; 0 in a blank.
double sampleVolume_mL(const assay::Method &method, const Tube &tube);
/// The same as the tube says beforehand, or else the method.
double plannedSampleVolume_mL(const assay::Method &method, const Tube &tube);

/// The additions of the tube as planned. The diluent makes up for the sample: a tube with another sample
/// volume gets more or less diluent, a blank gets diluent in place of the sample, a sample blank in place of
/// the starter, a spiked tube so much less diluent as the spike takes. Never negative: where the diluent
/// can't make up for it, the tube's volume changes. A spike goes in right after the sample.
std::vector<Addition> plannedAdditions(const assay::Method &method, const Tube &tube);

/// The additions as they were really made: those planned, but for the volumes in pipetted_mL, which nothing
/// makes up for. What stands in for a component (diluent in a blank, the standard) goes by its id; a spike
/// keeps its own volume.
std::vector<Addition> additions(const assay::Method &method, const Tube &tube);

/// Volume in the tube (mL) when the named reading is taken; 0 if the method never takes it.
double volumeAt_mL(const assay::Method &method, const Tube &tube, const QString &reading);

} // namespace plateau::run
