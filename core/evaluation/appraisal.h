// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/assay/problem.h"

#include <QString>

#include <map>
#include <optional>
#include <vector>

namespace plateau::evaluation {

/// What the laboratory puts in.
struct AppraisalInputs {
    /// Smallest difference of two absorbances that can be told apart. Common practice, no source.
    double smallestAbsorbance = 0.005;
    /// Contents of a bottle by component id; a component without one is not counted.
    std::map<QString, double> bottle_mL;
};

/// Concentration that one unit of net signal stands for at the method's path length and usual sample volume.
struct WavelengthFactor {
    int wavelength_nm = 0;
    /// One for each measurand; absent while the method does not say enough.
    std::vector<std::optional<double>> factors_g_per_L;
    bool operator==(const WavelengthFactor &) const = default;
};

/// What the measuring window means in the undiluted sample.
struct ConcentrationRange {
    double lower_g_per_L = 0;
    double upper_g_per_L = 0;
    bool operator==(const ConcentrationRange &) const = default;
};

/// One sample volume.
struct VolumeRange {
    double sampleVolume_mL = 0;
    /// At the last reading.
    double tubeVolume_mL = 0;
    /// False where the diluent cannot make up for it, so that the tube's volume is another than usual.
    bool madeUp = true;
    /// One for each measurand, at the method's wavelength.
    std::vector<std::optional<ConcentrationRange>> ranges;
    bool operator==(const VolumeRange &) const = default;
};

/// The least that can be detected and reported, of one measurand in the undiluted sample, at the largest
/// sample volume.
struct Limits {
    double detection_g_per_L = 0;
    double quantification_g_per_L = 0;
    bool operator==(const Limits &) const = default;
};

struct ComponentNeed {
    QString component;
    double perTube_mL = 0;
    /// Tubes that a bottle serves; absent where no bottle is given.
    std::optional<int> tubes;
    bool operator==(const ComponentNeed &) const = default;
};

/// What a method means at the bench, in the numbers that evaluate() would use.
struct Appraisal {
    /// By wavelength: those of the absorptivity table, and the method's.
    std::vector<WavelengthFactor> factors;
    /// By sample volume: the ends of its range, the usual one, and steps of 1-2-5 between.
    std::vector<VolumeRange> volumes;
    /// The smallest net signal that counts as quantified: the window's, else 10/3.3 of the smallest
    /// difference.
    double quantificationSignal = 0;
    bool quantificationByWindow = false;
    std::vector<std::optional<Limits>> limits;
    /// In the tube after each step, at the usual sample volume.
    std::vector<double> volumeAfterStep_mL;
    /// Every component but the sample, in their order.
    std::vector<ComponentNeed> needs;
    /// What speaks against the method: a window that starts below what can be told apart, and that it is a
    /// template still.
    assay::Problems remarks;
};

/// Pure; takes unfinished methods too and leaves out what they do not say. Factor: V x M / (e x d x v x n),
/// with V of a tube that the diluent makes up (run::volumeAt_mL). Detection limit: the smallest
/// distinguishable difference x factor at the largest allowed sample volume; quantification limit: the
/// window's minSignal x that factor, as evaluate() reports nothing below it. Without a minSignal 10/3.3 of
/// the detection limit, the ratio of the usual multiples of a standard deviation (common practice, no
/// source).
Appraisal appraise(const assay::Method &method, const AppraisalInputs &inputs = {});

/// The volumes that Appraisal::volumes has; the usual one alone where the sample has no range.
std::vector<double> usualSampleVolumes_mL(const assay::Component &sample);

} // namespace plateau::evaluation
