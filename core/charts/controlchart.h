// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/charts/series.h"
#include "core/charts/settings.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace plateau::charts {

/// What a panel plots.
enum class Plotted { Values, MovingRanges, Means, Ranges, WeightedAverages, CumulativeSums, Results };

/// One mark of a panel and the points of the series it stands for: one, the two of a moving range, or those
/// of a subgroup.
struct Mark {
    double value = 0;
    std::uint32_t first = 0;
    std::uint32_t last = 0;
    /// Cumulative sums: value is the sum above, this the sum below as a number not above 0.
    double below = 0;
    /// Weighted averages: the limits that hold here.
    double lower = 0;
    double upper = 0;
};

/// Something that speaks against the marks first to last (indices into Panel::marks): a pattern that goes on
/// is one of these.
struct Finding {
    enum class Kind { Rule, AverageAbove, AverageBelow, SumAbove, SumBelow, OutsideLimit } kind = Kind::Rule;
    /// Of Kind::Rule.
    quality::RunRule rule = quality::RunRule::OneBeyond3;
    std::size_t first = 0;
    std::size_t last = 0;
    /// The marks that complete it: those from here to last are out of control.
    std::size_t completed = 0;
    /// On which side of the centre the mark completed lies.
    bool isAbove = true;
    bool operator==(const Finding &) const = default;
};
bool isWarning(const Finding &finding);

struct Panel {
    Plotted plotted = Plotted::Values;
    std::vector<Mark> marks;
    /// Absent while there is nothing to make limits of; of results always.
    std::optional<quality::ControlBaseline> baseline;
    /// Of cumulative sums: +- this, in the values' unit.
    std::optional<double> decisionLimit;
    /// In the order of completed.
    std::vector<Finding> findings;
};

/// From what the limits come.
struct Basis {
    bool isFixed = false;
    /// Of earlier runs: how many values, and the runs of the first and the last of them.
    int values = 0;
    qint64 firstRun = 0;
    qint64 lastRun = 0;
    /// Fewer values than wanted so far.
    bool isIncomplete = false;
    /// Of earlier runs: fewer values than valuesForVerdict.
    bool isProvisional = false;
    /// Centre and standard deviation of a single value; of ranges the mean range and what it says of one.
    double centre = 0;
    double deviation = 0;
};

struct ControlChart {
    /// What is shown: of all series, those that pass the filter. Points left out are among them and in no
    /// mark.
    SharedSeries series;
    Settings settings;
    std::vector<Panel> panels;
    std::vector<Change> changes;
    /// Absent where there is nothing to make limits of.
    std::optional<Basis> basis;
    /// Values of several materials that no limits hold for: there are none, and no findings.
    bool isMixed = false;
    /// Ranges of many samples, which limits hold for where the amounts are alike.
    bool joinsSamples = false;
};

/// Whether a chart without findings may say that nothing is out of control: not without limits, nor with
/// provisional ones. Of a trend never.
bool hasVerdict(const ControlChart &chart);

/// whole: the series without a filter, in the order of time; limits from earlier runs come from its accepted
/// runs, so that looking at a part of the chart does not move them. Rules look at what is shown, in its
/// order. Expects settings that problemsOf finds nothing wrong with.
ControlChart controlChart(const Subject &subject, const SharedSeries &whole, const Filter &filter,
                          const Settings &settings);

/// Adds what lies beyond a limit to the findings of a trend; in the unit of the series. What cannot be
/// decided at its uncertainty is not asked here.
void holdAgainst(ControlChart &chart, std::optional<double> lower, std::optional<double> upper);

} // namespace plateau::charts
