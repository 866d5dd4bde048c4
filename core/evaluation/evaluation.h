// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/run/run.h"

#include <QString>

#include <optional>
#include <span>
#include <vector>

namespace plateau::evaluation {

/// The checks of the file contract, in the order of its list.
enum class CheckId {
    ReadingMissing,
    ReadingImplausible,
    WrongDirection,
    SignalLow,
    SignalHigh,
    AbsorbanceHigh,
    ReserveLow,
    BlankMissing,
    BlankHigh,
    BlankSpread,
    DuplicateSpread,
    StandardRecovery,
    StandardTooOld,
    SpikeRecovery,
    VolumeProportionality,
    ReactionUnfinished,
    ReadingEarly,
    ReadingLate,
    LotExpired,
    SampleVolumeOutsideRange,
};
/// "reading-missing" and so on.
QString checkWord(CheckId id);

/// What a check is about. measurand is empty where it does not matter or there is only one.
struct Scope {
    enum class Kind { Run, Sample, Standard } kind = Kind::Run;
    QString id;
    QString measurand;
    bool operator==(const Scope &) const = default;
};
/// "run", "sample P-104", "sample P-104, fructose", "standard STD".
QString scopeWord(const Scope &scope);

/// How to repeat a sample. Dilute: factor is the total one for the repeat, steps a chain of common glassware
/// that makes it; atLeast where the reagent was used up and the true value is only known to be larger.
struct Advice {
    enum class Kind { Dilute, IncreaseVolume } kind = Kind::Dilute;
    double factor = 1;
    bool atLeast = false;
    std::vector<run::DilutionStep> steps;
    double sampleVolume_mL = 0;
    bool operator==(const Advice &) const = default;
};

struct Check {
    CheckId id = CheckId::ReadingMissing;
    Scope scope;
    bool passed = true;
    /// What was found, in whole sentences with the number and the limit: what a customer can be told.
    QString finding;
    /// For the bench, in whole sentences: what to do. Empty where it passed, or where nothing is to be done.
    QString whatToDo{};
    std::optional<Advice> advice;
    /// Indexes of the tubes concerned; empty: all of the scope.
    std::vector<int> tubes;
    /// Both, one behind the other: what screens and files say.
    QString message() const;
    bool operator==(const Check &) const = default;
};

struct Factor {
    QString measurand;
    /// Concentration that one unit of net signal stands for at the default sample volume.
    double factor_g_per_L = 0;
    bool operator==(const Factor &) const = default;
};

struct BlankMean {
    QString measurand;
    /// Absent while no blank can be computed.
    std::optional<double> mean;
    int n = 0;
    bool operator==(const BlankMean &) const = default;
};

/// One tube and one measurand. Values are absent while a reading they need is missing or implausible; a tube
/// whose signal runs in the wrong direction has no concentration.
struct TubeValue {
    int index = 0;
    run::Role role = run::Role::Sample;
    QString measurand;
    std::optional<double> signal;
    /// Less the mean blank, and less the sample blank where there is one. Absent for blanks.
    std::optional<double> netSignal;
    /// In the sample as pipetted.
    std::optional<double> pipetted_g_per_L;
    /// In the sample as received: times the dilution factor; of a solid's extract.
    std::optional<double> concentration_g_per_L;
    /// What the window's smallest net signal would stand for in this tube, in the sample as received.
    std::optional<double> quantificationLimit_g_per_L;
    /// V of the calculation.
    double totalVolume_mL = 0;
    double sampleVolume_mL = 0;
    bool operator==(const TubeValue &) const = default;
};

enum class Verdict { Reportable, Repeat, Investigate };
QString verdictWord(Verdict verdict);

struct BudgetTerm {
    QString term;
    /// In the result's unit.
    double standardUncertainty = 0;
    /// Of the variance, 0 to 1.
    double share = 0;
    bool operator==(const BudgetTerm &) const = default;
};

/// One part of a derived result, as it entered.
struct ResultTerm {
    /// Where it was measured.
    QString method;
    int methodVersion = 1;
    QString measurand;
    /// What one unit of it counts, with its sign.
    double factor = 1;
    /// In the derived result's unit; absent where there is no result.
    std::optional<double> value;
    bool operator==(const ResultTerm &) const = default;
};

struct Result {
    QString sample;
    /// Of a measurand, or of a derived quantity of the method.
    QString measurand;
    /// Mean over the tubes that gave a value; absent while there is none. Of a derived quantity, the sum of
    /// factor x result over its terms.
    std::optional<double> value;
    /// "g/L" or "g/100 g".
    QString unit;
    /// Of a derived quantity, the smallest of its terms.
    int n = 0;
    /// max - min over the tubes, in the result's unit. Absent of a derived quantity, whose terms may come from
    /// different tubes.
    std::optional<double> spread;
    /// Set where the signal is too low and no repeat would help, or where a derived quantity is not different
    /// from zero or what it takes off is only known to be larger: report as less than this, in the result's
    /// unit.
    std::optional<double> lessThan;
    /// Set where the reagent was used up in a tube, so that the value is only known to be larger than this:
    /// its uncertainty says nothing then. Of a derived quantity, where that is so of what it adds up.
    std::optional<double> greaterThan{};
    /// Absent where the run states no uncertainties.
    std::optional<double> expandedUncertainty;
    std::optional<double> coverageFactor;
    /// Welch-Satterthwaite; infinite where every term has infinitely many.
    std::optional<double> degreesOfFreedom;
    /// Largest first.
    std::vector<BudgetTerm> budget;
    Verdict verdict = Verdict::Investigate;
    /// Of a derived quantity: what failed with its terms, in its own scope.
    std::vector<Check> checks;
    /// Empty of what is measured.
    std::vector<ResultTerm> terms{};
    bool operator==(const Result &) const = default;
};

struct StandardRecovery {
    QString standard;
    QString measurand;
    double expected_g_per_L = 0;
    std::optional<double> found_g_per_L;
    std::optional<double> recovery_percent;
    bool operator==(const StandardRecovery &) const = default;
};

struct SpikeRecovery {
    QString sample;
    QString measurand;
    std::optional<double> recovery_percent;
    bool operator==(const SpikeRecovery &) const = default;
};

/// The fitted line of a series: slope per minute with its standard error (absent with two points), and the
/// value at the moment the starter was added.
struct SeriesFit {
    int tube = 0;
    QString reading;
    double atStart = 0;
    double slope_per_min = 0;
    std::optional<double> slopeStandardError_per_min;
    int points = 0;
    bool ended = false;
    bool operator==(const SeriesFit &) const = default;
};

/// The line of calibration "line": net signal = intercept + slope x amount (mg in the tube).
struct CalibrationLine {
    QString measurand;
    double intercept = 0;
    double slope_per_mg = 0;
    /// Residual standard deviation; absent with fewer than three points.
    std::optional<double> residual;
    int points = 0;
    bool operator==(const CalibrationLine &) const = default;
};

struct Evaluation {
    QString methodId;
    int methodVersion = 1;
    std::vector<Factor> factors;
    std::vector<BlankMean> blanks;
    /// In the run's order, for each tube every measurand of the method.
    std::vector<TubeValue> tubes;
    /// In the order of the samples, for each every measurand and then every derived quantity whose terms are
    /// all at hand; none for a sample that is in no tube.
    std::vector<Result> results;
    std::vector<StandardRecovery> standards;
    std::vector<SpikeRecovery> spikes;
    std::vector<SeriesFit> series;
    std::vector<CalibrationLine> lines;
    /// All checks: those of the run and its standards, then those of the samples.
    std::vector<Check> checks;
    /// Every result is reportable and nothing of the run or its standards failed.
    bool acceptable = false;
    bool operator==(const Evaluation &) const = default;
};

/// The laboratory's own rules, for what neither method nor run says. Defaults: common practice, no source.
struct Rules {
    /// Limit of the spread of duplicates relative to their mean, where the method publishes none.
    double relativeRepeatability = 0.05;
    /// Blanks further apart than this (absorbance) are questioned.
    double maxBlankSpread = 0.010;
    assay::Interval spikeRecovery_percent{90, 110};
    /// A standard that loses strength is too old when less than this is left of it, or after so many hours.
    double minStandardRemaining = 0.85;
    double maxStandardAge_h = 24;
    /// A reading outside is not one a photometer shows of a cuvette.
    assay::Interval plausibleAbsorbance{-0.1, 4.0};
    /// Uncertainty of one absorbance reading (k = 1), for the checks of a run that states none.
    double assumedAbsorbanceUncertainty = 0.002;
    /// First readings of tubes with the same reagents and a like matrix agree within this (absorbance), or
    /// within 3 % where that is more.
    double firstReadingScatter = 0.030;
    bool operator==(const Rules &) const = default;
};

/// Another run of the same samples, by another method, that derived quantities take results from.
struct Companion {
    assay::Method method;
    run::Run run;
};

/// The whole calculation: signals, blanks, concentrations, uncertainty, checks and verdicts. Pure: the same
/// input gives the same bits. Expects a method and a run that assay::problemsOf and run::problemsOf find no
/// error in; readings may be missing (a run that is being keyed). Formulas: DEVELOPERS.md, "The arithmetic".
/// A derived quantity that takes from another method is formed for the samples that a companion of that
/// method holds as well (of several the first), and left out for the others: without companions the run stands
/// on its own. A companion holds a sample by its id, by that of the sample it repeats, or as a repeat of that
/// (run::Sample::repeats); of several the first that is reportable there counts.
Evaluation evaluate(const assay::Method &method, const run::Run &run, const Rules &rules = {},
                    std::span<const Companion> companions = {});

} // namespace plateau::evaluation
