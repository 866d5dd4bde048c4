// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/evaluation/evaluation.h"
#include "core/run/run.h"

#include <optional>
#include <span>
#include <vector>

namespace plateau::evaluation {

/// One reading of one tube as a weighted sum of absorbances: weight 1 on a single reading or on the last of a
/// series; the weights of a straight line read at the starter's addition where the method asks for it.
struct ReadingTerm {
    /// Index of the first absorbance in Layout::absorbances.
    int first = 0;
    std::vector<double> weights;
    /// Tube volume at this reading / at the measurand's later reading; 1 without volume correction.
    double volumeRatio = 1;
};

/// One tube as one measurand sees it.
struct TubeTerm {
    int tube = 0;
    run::Role role = run::Role::Sample;
    /// In the order of the signal's readings; empty while one of them is missing or implausible, and of a
    /// spoilt tube.
    std::vector<ReadingTerm> readings;
    /// Marked as not to count: it has no signal, whatever was read.
    bool spoilt = false;
    /// One of them is nothing a photometer shows: it counts as not taken.
    bool implausible = false;
    /// The signal runs against the method's direction by more than noise: no result rests on this tube.
    bool wrongDirection = false;
    /// What would be taken off as its blank is implausible or spoilt: it has a signal, but no net signal.
    bool blankLost = false;
    double totalVolume_mL = 0;
    double sampleVolume_mL = 0;
    /// Computable sample blanks that belong to it: those of its sample volume, else all of its sample.
    std::vector<int> sampleBlanks;
    bool computable() const { return !readings.empty(); }
    bool hasNetSignal() const { return computable() && !blankLost; }
    /// Fit to be judged, and for a result to rest on.
    bool trusted() const { return !spoilt && !implausible && !wrongDirection; }
};

/// A tube of known content that the calibration rests on.
struct CalibrationPoint {
    int tube = 0;
    /// Standard in the tube: concentration at use x volume.
    double amount_mg = 0;
    /// Of run().standards.
    size_t standard = 0;
};

struct MeasurandTerms {
    const assay::Measurand *measurand = nullptr;
    /// One for each tube of the run.
    std::vector<TubeTerm> tubes;
    /// Computable blanks, by tube index.
    std::vector<int> blanks;
    /// Blanks were read, but none plausibly; or there are blanks, and all of them are spoilt.
    bool blanksLost = false;
    /// Computable tubes that calibrate (empty for calibration "absorptivity", or while they are not read).
    std::vector<CalibrationPoint> calibration;
    /// V at the default sample volume.
    double defaultVolume_mL = 0;
    /// M / (e d n): g/L in the cuvette for one unit of signal.
    double cuvette_g_per_L = 0;
    /// Standards or their levels are read well enough for concentrations to be computed.
    bool calibrated = false;
};

/// What the arithmetic needs of method and run, laid out once: which absorbances make up which reading, with
/// which volumes, calibrated by what. Holds references: method and run must outlive it.
class Layout
{
public:
    Layout(const assay::Method &method, const run::Run &run, const Rules &rules);

    const assay::Method &method() const { return m_method; }
    const run::Run &run() const { return m_run; }
    const std::vector<double> &absorbances() const { return m_absorbances; }
    const std::vector<MeasurandTerms> &measurands() const { return m_measurands; }
    /// Of one reading (k = 1): the run's, else the rules' assumption.
    double absorbanceUncertainty() const;
    /// The tubes that give a result of the sample: roles sample and control.
    std::vector<int> resultTubes(const QString &sample) const;
    std::vector<int> tubesWith(run::Role role, const QString &sample) const;
    /// Known strength of a standard when it was used; startedAt stands in for a missing usedAt.
    double strength_g_per_L(const run::Standard &standard) const;
    /// Whether the standard holds the measurand.
    static bool holds(const run::Standard &standard, const assay::Measurand &measurand);

private:
    MeasurandTerms termsOf(const assay::Measurand &measurand) const;
    TubeTerm termOf(const assay::Measurand &measurand, int tube) const;
    std::optional<ReadingTerm> readingTerm(int tube, const QString &reading) const;
    bool isPlausible(const ReadingTerm &reading) const;
    void findSampleBlanks(MeasurandTerms &terms) const;
    void findWrongDirections(MeasurandTerms &terms) const;
    void findCalibration(MeasurandTerms &terms) const;

    const assay::Method &m_method;
    const run::Run &m_run;
    const Rules m_rules;
    std::vector<double> m_absorbances;
    /// Index of a tube's first absorbance, by tube.
    std::vector<int> m_firstOfTube;
    std::vector<MeasurandTerms> m_measurands;
};

/// Weights of a straight line through readings at these times, read at time 0. At least two different times.
std::vector<double> extrapolationWeights(std::span<const double> times);

} // namespace plateau::evaluation
