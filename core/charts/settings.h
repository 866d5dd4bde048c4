// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"
#include "core/quality/chartconstants.h"
#include "core/quality/controlbaseline.h"
#include "core/quality/runrules.h"

#include <QDate>
#include <QString>

#include <optional>
#include <set>
#include <span>
#include <variant>
#include <vector>

namespace plateau::charts {

/// What is watched over the runs, one value a run and name.
///   StandardRecovery        found / expected at use, in %
///   StandardStrength        what was found in a standard, g/L
///   ControlMaterial         result of a sample that stands in the rack as a control
///   Blank                   mean signal of the blanks (absorbance)
///   DuplicateRange          range of a sample that was measured twice, in the result's unit
///   RelativeDuplicateRange  the same in % of its mean, for samples that hold very different amounts
///   SampleResult            result of one sample, against the limits of its product
///   ProductResult           results of all samples of a product, against its limits
enum class Quantity {
    StandardRecovery,
    StandardStrength,
    ControlMaterial,
    Blank,
    DuplicateRange,
    RelativeDuplicateRange,
    SampleResult,
    ProductResult,
};
std::span<const Quantity> allQuantities();
/// As it stands in the notebook: "standardRecovery" and so on.
QString quantityWord(Quantity quantity);
std::optional<Quantity> quantityFromWord(const QString &word);
/// A trend has a product's limits, no control limits.
bool isTrend(Quantity quantity);
bool isRange(Quantity quantity);
/// Its control chart is of one material, named by the subject: two materials have two centres, and no limits
/// hold for both. Ranges say how the work scatters and may come from many samples; blanks have no name.
bool isOfOneMaterial(Quantity quantity);

/// What a chart is of. name: of the standard, control, sample or product, or, of recoveries, of the substance
/// that standards were made of, which stands for all of them; empty: whatever has been measured (never of a
/// trend; no limits where isOfOneMaterial). Blanks have none.
struct Subject {
    Quantity quantity = Quantity::StandardRecovery;
    QString methodId;
    QString measurand;
    QString name{};
    bool operator==(const Subject &) const = default;
};

/// Individuals come with their moving range, means with the range of their subgroup.
enum class Kind { Individuals, MeanAndRange, Ranges, WeightedAverage, CumulativeSum, Trend };
QString kindWord(Kind kind);
std::optional<Kind> kindFromWord(const QString &word);
/// Those that make sense of a quantity, the usual one first.
std::vector<Kind> kindsFor(Quantity quantity);

/// Limits from earlier runs: so many values that were not left out, from this run on (0: from the first of
/// the series). A run that is not in the series stands for the first with a greater number.
struct EarlierRuns {
    qint64 firstRun = 0;
    int values = 20;
    quality::SpreadFrom spread = quality::SpreadFrom::MovingRange;
    bool operator==(const EarlierRuns &) const = default;
};

/// Limits that the laboratory has fixed, in the quantity's unit: centre and standard deviation of a single
/// value, where they come from, and as of when. Of ranges the deviation alone counts.
struct FixedLimits {
    double centre = 0;
    double deviation = 0;
    QString source;
    QDate date;
    bool operator==(const FixedLimits &) const = default;
};

/// Factors for limits: as computed, or as the usual table prints them.
enum class ConstantsFrom { Computed, PrintedTable };
std::optional<quality::ChartConstants> constantsOf(ConstantsFrom from, int n);

struct Settings {
    Kind kind = Kind::Individuals;
    std::variant<EarlierRuns, FixedLimits> limits{};
    ConstantsFrom constants = ConstantsFrom::Computed;
    std::set<quality::RunRule> rules = quality::usualRunRules();
    /// Values of a subgroup, of means and ranges.
    int subgroup = 2;
    /// Weight of the newest value, and the limits' width in standard deviations.
    double lambda = 0.2;
    double width = 3;
    /// Reference value and decision limit of the cumulative sums, in standard deviations.
    double k = 0.5;
    double h = 5;
    bool operator==(const Settings &) const = default;
};
Settings usualSettings(Quantity quantity);

/// With fewer values, of means with fewer subgroups, there are no limits: from ten the standard deviation
/// itself is known to a quarter, 1/sqrt(2(n - 1)). Common practice, no source.
inline constexpr int fewestForLimits = 10;
/// With fewer the limits are provisional and nobody is told that nothing is out of control. ISO 7870-2
/// (Shewhart control charts) takes 20 to 25 subgroups for the first limits, CLSI C24 20 values of a control
/// material on as many days; both from memory.
inline constexpr int fewestForVerdict = 20;
inline constexpr int mostValues = 10000;

/// The same in values: of means a subgroup counts once.
int valuesForLimits(const Settings &settings);
int valuesForVerdict(const Settings &settings);
/// The same settings with as many earlier runs as limits need: a notebook may hold fewer.
Settings withEnoughValues(Settings settings);
/// Whether what was saved for all materials together holds for each by itself: all but a fixed centre that is
/// another for each of them.
bool holdsForEach(Quantity quantity, const Settings &settings);

/// Places: "values", "centre", "deviation", "source", "date", "subgroup", "lambda", "width", "k", "h",
/// "rules".
assay::Problems problemsOf(const Settings &settings);

/// "oneBeyond3" and so on, as it stands in the notebook.
QString ruleWord(quality::RunRule rule);
std::optional<quality::RunRule> ruleFromWord(const QString &word);

} // namespace plateau::charts
