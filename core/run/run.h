// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"

#include <QDate>
#include <QDateTime>
#include <QString>

#include <map>
#include <optional>
#include <variant>
#include <vector>

namespace plateau::run {

/// take_mL made up to makeUpTo_mL: a factor of makeUpTo / take. 0 < take <= makeUpTo.
struct DilutionStep {
    double take_mL = 0;
    double makeUpTo_mL = 0;
    /// Relative standard uncertainty (k = 1) of the step's factor, from the glass it is made with; absent:
    /// the run's dilution_percent.
    std::optional<double> uncertainty_percent{};
    bool operator==(const DilutionStep &) const = default;
};

/// The product of makeUpTo / take over the steps; 1 with none.
double dilutionFactor(const std::vector<DilutionStep> &steps);

enum class Form { Liquid, Solid };

struct Sample {
    QString id;
    Form form = Form::Liquid;
    /// Solids only: what was weighed, and the volume it was extracted into.
    std::optional<double> mass_g;
    std::optional<double> extract_mL;
    std::vector<DilutionStep> dilution;
    /// Id of the sample of the same run that this one repeats (at another dilution, say); empty: none.
    QString repeats{};
    bool operator==(const Sample &) const = default;
};

/// What 1 g/L (of a solid: of its undiluted extract) is in the unit reported: 1 g/L of a liquid, or extract
/// (L) / mass (g) x 100 in g/100 g of a solid.
double reportedPer_g_per_L(const Sample &sample);

/// A standard as used in the run. With preparedAt and usedAt its concentration is that when made, else it is
/// worth what is stated.
struct Standard {
    QString id;
    double concentration_g_per_L = 0;
    /// The only measurand it holds; empty: all of the method's, at this concentration each.
    QString measurand;
    std::optional<QDateTime> preparedAt;
    std::optional<QDateTime> usedAt;
    /// Fraction lost per hour, 0 <= p < 1.
    double lossPerHour = 0;
    /// Relative standard uncertainty (k = 1) of its concentration, from its recipe or its certificate.
    /// Standards of a run that hold the same are taken to come from one stock and to be off together. Absent:
    /// 0.
    std::optional<double> uncertainty_percent{};
    bool operator==(const Standard &) const = default;
};

/// Hours from preparation to use; 0 where either time is missing.
double ageAtUse_h(const Standard &standard);
/// c0 (1 - p)^h in g/L.
double concentrationAtUse_g_per_L(const Standard &standard);

/// One of a series of readings at a point.
struct TimedAbsorbance {
    /// Minutes since the starter was added.
    double at_min = 0;
    double absorbance = 0;
    bool operator==(const TimedAbsorbance &) const = default;
};
using ReadingSeries = std::vector<TimedAbsorbance>;
/// A single absorbance, or a series in the order of time (never empty).
using Reading = std::variant<double, ReadingSeries>;

enum class Role { Blank, SampleBlank, Standard, Control, Sample, Spiked };

struct Spike {
    QString standard;
    double volume_mL = 0;
    bool operator==(const Spike &) const = default;
};

struct Tube {
    Role role = Role::Sample;
    /// Sample id: for sample, sampleBlank and spiked; a control names either a sample or a standard.
    QString sample;
    /// Standard id: for standard and for a control with a known value.
    QString standard;
    /// Volume of sample (or of standard in its place); the method's default where absent.
    std::optional<double> sampleVolume_mL;
    std::optional<Spike> spike;
    /// What was really pipetted where it was not what the method and the tube's plan say, by component id.
    /// The diluent does not make up for it: the tube's volume is what went in.
    std::map<QString, double> pipetted_mL{};
    /// Why the tube does not count; empty: it does. Its readings are kept, and no result rests on it.
    QString spoilt{};
    /// By reading name; one not taken yet is absent.
    std::map<QString, Reading> readings{};
    /// When it was done, in minutes on the run's own clock, which begins with the first thing that was
    /// marked: additions by component id, readings by name (of a series, the last). Absent where nobody
    /// marked it.
    std::map<QString, double> addedAt_min{};
    std::map<QString, double> readAt_min{};
    bool operator==(const Tube &) const = default;
};

/// A reagent lot used in the run.
struct LotUse {
    QString component;
    QString lot;
    std::optional<QDate> expires;
    bool operator==(const LotUse &) const = default;
};

enum class Calibration { Absorptivity, Standard, Line };

/// Standard uncertainties (k = 1). Absorbance is independent for every single reading; the others are
/// relative, in percent, and common to all tubes of the run.
struct UncertaintyInputs {
    double absorbance = 0;
    double absorptivity_percent = 0;
    double pathLength_percent = 0;
    double totalVolume_percent = 0;
    double sampleVolume_percent = 0;
    double dilution_percent = 0;
    double extract_percent = 0;
    bool operator==(const UncertaintyInputs &) const = default;
};

/// One method over one rack. The method itself travels beside the run.
struct Run {
    QString title;
    /// Id of the method it belongs to.
    QString method;
    /// Absent: the method's.
    std::optional<int> wavelength_nm;
    std::optional<double> pathLength_mm;
    Calibration calibration = Calibration::Absorptivity;
    std::optional<QDateTime> startedAt;
    /// Absent: no uncertainty can be stated.
    std::optional<UncertaintyInputs> uncertainty;
    std::vector<Standard> standards;
    std::vector<Sample> samples;
    std::vector<Tube> tubes;
    std::vector<LotUse> lots;
    bool operator==(const Run &) const = default;
};

const Sample *findSample(const Run &run, const QString &id);
const Standard *findStandard(const Run &run, const QString &id);

/// The words of the file contract: "blank", "sampleBlank", "standard", "control", "sample", "spiked".
QString roleWord(Role role);
std::optional<Role> roleFromWord(const QString &word);

} // namespace plateau::run
