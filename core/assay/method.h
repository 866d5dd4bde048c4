// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

#include <map>
#include <optional>
#include <variant>
#include <vector>

namespace plateau::assay {

/// Whether the measured reaction makes the chromophore or uses it up.
enum class Direction { Rising, Falling };

/// Whether readings are brought to the tube's volume at the measurand's later reading before signals are
/// formed. A method says which; "none" leaves readings as read.
enum class VolumeCorrection { None, ToFinalVolume };

/// A closed interval; lower <= upper.
struct Interval {
    double lower = 0;
    double upper = 0;
    bool operator==(const Interval &) const = default;
};

/// One thing pipetted: a reagent, the diluent, the sample, the starter.
struct Component {
    QString id;
    QString name;
    double volume_mL = 0;
    /// The volumes that may be pipetted instead; in practice only the sample has one.
    std::optional<Interval> range_mL;
    /// Settles on standing: swirl before use.
    bool suspension = false;
    bool operator==(const Component &) const = default;
};

struct AddStep {
    QString component;
    bool operator==(const AddStep &) const = default;
};
struct MixStep {
    bool operator==(const MixStep &) const = default;
};
struct WaitStep {
    Interval wait_min;
    std::optional<Interval> temperature_C;
    bool operator==(const WaitStep &) const = default;
};
struct ReadStep {
    QString reading;
    bool operator==(const ReadStep &) const = default;
};
using Step = std::variant<AddStep, MixStep, WaitStep, ReadStep>;

/// later - earlier where the chromophore is made, earlier - later where it is used up.
struct DifferenceSignal {
    QString from;
    QString to;
    bool operator==(const DifferenceSignal &) const = default;
};
/// A preceding equilibrium takes part of the coenzyme: (A2 - A0) - (A1 - A0)^2 / (A2 - A0).
struct CoupledIndicatorSignal {
    QString base;
    QString middle;
    QString final;
    bool operator==(const CoupledIndicatorSignal &) const = default;
};
using Signal = std::variant<DifferenceSignal, CoupledIndicatorSignal>;

/// The names of the readings a signal uses, in the order they are taken.
std::vector<QString> readingsOf(const Signal &signal);
/// The last of them: its tube volume is the V of the calculation.
QString laterReading(const Signal &signal);

struct Measurand {
    QString id;
    QString name;
    double molarMass_g_per_mol = 0;
    /// Chromophore molecules formed or used per analyte molecule.
    double chromophorePerMolecule = 1;
    Signal signal;
    /// What samples usually hold, as received; a help for planning, never a limit.
    std::optional<Interval> typicalRange_g_per_L{};
    bool operator==(const Measurand &) const = default;
};

/// One part of a derived result: a measurand of this method, or of another one run on the same sample.
struct DerivedTerm {
    /// Id of the other method, any version; empty: this method.
    QString method;
    QString measurand;
    /// What one g/L of it counts, with its sign: -1 to subtract, a ratio of molar masses to convert.
    double factor = 1;
    bool operator==(const DerivedTerm &) const = default;
};

/// A quantity that is not measured but comes from others: bound = total - free, sucrose = (glucose after
/// inversion - free glucose) x ratio of molar masses. The value is the sum of factor x result.
struct Derived {
    QString id;
    QString name;
    std::vector<DerivedTerm> terms;
    bool operator==(const Derived &) const = default;
};

/// What a sample may be like, as far as its preparation depends on it.
enum class Matrix { Clear, Coloured, Turbid, Carbonated, Fatty, ProteinRich, Solid };

struct Preparation {
    Matrix matrix = Matrix::Clear;
    QString text;
    bool operator==(const Preparation &) const = default;
};

/// What a run of the method usually has for a standard. Absent members: to be asked for.
struct UsualStandard {
    std::optional<double> concentration_g_per_L;
    /// Fraction of its strength per hour, 0 to below 1. Zero only where it is known to keep for the day.
    std::optional<double> lossPerHour;
    bool operator==(const UsualStandard &) const = default;
};

/// How many tubes of each kind a rack of this method has at least.
struct UsualTubes {
    int blanks = 0;
    /// Of each sample.
    int replicates = 1;
    int standards = 0;
    bool operator==(const UsualTubes &) const = default;
};

/// Smallest and largest net signal that may be reported, the largest absorbance the photometer may show,
/// and the absorbance that must remain of a falling reagent. Absent: not judged.
struct Window {
    double minSignal = 0;
    double maxSignal = 0;
    std::optional<double> maxAbsorbance;
    std::optional<double> reserveAbsorbance;
    bool operator==(const Window &) const = default;
};

/// Repeatability limit r = constant + proportional x mean, in the unit of the concentration (g/L).
struct Repeatability {
    double constant_g_per_L = 0;
    double proportional = 0;
    bool operator==(const Repeatability &) const = default;
};

/// What a run has to keep to be accepted. Absent limits are not judged, but for the duplicates, where the
/// laboratory's own relative limit stands in (evaluation::Rules).
struct Acceptance {
    std::optional<double> maxBlankSignal;
    std::optional<Interval> standardRecovery_percent;
    std::optional<Interval> spikeRecovery_percent;
    std::optional<Repeatability> repeatability;
    bool operator==(const Acceptance &) const = default;
};

/// The reading is taken as a series; its value is a straight line through the last readings, extrapolated
/// to the moment the starter was added.
struct Extrapolation {
    QString reading;
    int lastReadings = 0;
    bool operator==(const Extrapolation &) const = default;
};

/// The versioned recipe of one assay. A Method that came through exchange::readMethod, or that
/// assay::problemsOf finds nothing wrong with, satisfies every rule named there; the evaluation relies on it.
struct Method {
    QString id;
    int version = 1;
    QString name;
    QString source;
    QString principle;
    QString chromophore;
    /// Molar absorptivity in L/(mol cm) by wavelength in nm.
    std::map<int, double> absorptivity_L_per_mol_cm;
    int wavelength_nm = 340;
    double pathLength_mm = 10;
    Direction direction = Direction::Rising;
    VolumeCorrection volumeCorrection = VolumeCorrection::None;
    std::vector<Component> components;
    /// Ids of the components with a part of their own.
    QString sample;
    QString diluent;
    QString starter;
    std::vector<Step> steps;
    std::vector<Measurand> measurands;
    Window window;
    Acceptance acceptance;
    std::optional<Extrapolation> extrapolate;
    std::vector<Derived> derived;
    std::optional<UsualStandard> standard;
    std::optional<UsualTubes> tubes;
    /// The reactions with their stoichiometry, one a line.
    std::vector<QString> reactions;
    std::vector<QString> interferences;
    /// At most one for each matrix.
    std::vector<Preparation> samplePreparation;
    std::vector<QString> cautions;
    bool operator==(const Method &) const = default;
};

/// nullptr if the method has no component of that id.
const Component *findComponent(const Method &method, const QString &id);
/// nullptr if the method has no measurand of that id.
const Measurand *findMeasurand(const Method &method, const QString &id);
/// The names of all readings in the order of the steps.
std::vector<QString> readingsInOrder(const Method &method);
/// The wait right before the named reading and after the last addition, in minutes, or nothing where the
/// method states none.
std::optional<Interval> waitBefore(const Method &method, const QString &reading);
/// Whether its volumes are a pattern that nobody has confirmed yet: it says so in its name, by "(template)",
/// or at the beginning of its source, by "Template:", in a language that the window has.
bool isTemplate(const Method &method);
/// What of its source names something published, for a customer: without the remarks of the shipped methods on
/// what is from memory, common practice or our own. Empty where nothing is left.
QString publishedSource(const Method &method);
/// Whether its source says, in a language that the window has, that something is from memory.
bool isPartlyFromMemory(const Method &method);
/// Molar absorptivity at the wavelength; nothing if the method's table has none. A method without a table
/// whose chromophore is NADH or NADPH is worth 6300 L/(mol cm) at 340 nm.
std::optional<double> absorptivity(const Method &method, int wavelength_nm);

} // namespace plateau::assay
