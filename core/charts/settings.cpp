// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/charts/settings.h"

#include "core/assay/label.h"
#include "core/charts/wording.h"

#include <QLatin1StringView>

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace plateau::charts {

using namespace Qt::StringLiterals;
using quality::RunRule;

namespace {

template <class Value> using Words = std::span<const std::pair<Value, QLatin1StringView>>;

constexpr std::array<std::pair<Quantity, QLatin1StringView>, 8> quantityWords{{
    {Quantity::StandardRecovery, "standardRecovery"_L1},
    {Quantity::StandardStrength, "standardStrength"_L1},
    {Quantity::ControlMaterial, "controlMaterial"_L1},
    {Quantity::Blank, "blank"_L1},
    {Quantity::DuplicateRange, "duplicateRange"_L1},
    {Quantity::RelativeDuplicateRange, "relativeDuplicateRange"_L1},
    {Quantity::SampleResult, "sampleResult"_L1},
    {Quantity::ProductResult, "productResult"_L1},
}};

constexpr std::array<std::pair<Kind, QLatin1StringView>, 6> kindWords{{
    {Kind::Individuals, "individuals"_L1},
    {Kind::MeanAndRange, "meanAndRange"_L1},
    {Kind::Ranges, "ranges"_L1},
    {Kind::WeightedAverage, "weightedAverage"_L1},
    {Kind::CumulativeSum, "cumulativeSum"_L1},
    {Kind::Trend, "trend"_L1},
}};

constexpr std::array<std::pair<RunRule, QLatin1StringView>, 15> ruleWords{{
    {RunRule::OneBeyond3, "oneBeyond3"_L1},
    {RunRule::TwoOfThreeBeyond2, "twoOfThreeBeyond2"_L1},
    {RunRule::FourOfFiveBeyond1, "fourOfFiveBeyond1"_L1},
    {RunRule::NineOnOneSide, "nineOnOneSide"_L1},
    {RunRule::SixRisingOrFalling, "sixRisingOrFalling"_L1},
    {RunRule::FourteenAlternating, "fourteenAlternating"_L1},
    {RunRule::FifteenWithin1, "fifteenWithin1"_L1},
    {RunRule::EightBeyond1OnBothSides, "eightBeyond1OnBothSides"_L1},
    {RunRule::EightOnOneSide, "eightOnOneSide"_L1},
    {RunRule::SevenOnOneSide, "sevenOnOneSide"_L1},
    {RunRule::TenOnOneSide, "tenOnOneSide"_L1},
    {RunRule::OneBeyond2, "oneBeyond2"_L1},
    {RunRule::TwoInARowBeyond2, "twoInARowBeyond2"_L1},
    {RunRule::OppositeBeyond2, "oppositeBeyond2"_L1},
    {RunRule::FourInARowBeyond1, "fourInARowBeyond1"_L1},
}};

template <class Table, class Value> QString wordIn(const Table &table, Value value)
{
    for (const auto &[known, word] : table) {
        if (known == value)
            return word;
    }
    return {};
}

template <class Value, class Table> std::optional<Value> valueIn(const Table &table, const QString &word)
{
    for (const auto &[value, known] : table) {
        if (known == word)
            return value;
    }
    return std::nullopt;
}

void check(assay::Problems &problems, bool isRight, const QString &place, const QString &message)
{
    if (!isRight)
        problems.push_back(assay::error(place, message));
}

void checkFixed(assay::Problems &problems, const FixedLimits &limits)
{
    check(problems, std::isfinite(limits.centre), u"centre"_s, Wording::tr("The centre has to be a number."));
    check(problems, std::isfinite(limits.deviation) && limits.deviation > 0, u"deviation"_s,
          Wording::tr("The standard deviation has to be greater than 0."));
    check(problems, !limits.source.trimmed().isEmpty() && !assay::labelFault(limits.source), u"source"_s,
          Wording::tr(
              "Limits that are fixed need a source: say where centre and standard deviation come from."));
    check(problems, limits.date.isValid(), u"date"_s,
          Wording::tr("Limits that are fixed need a date: say as of when they hold."));
}

void checkSubgroup(assay::Problems &problems, const Settings &settings)
{
    const int largest = settings.constants == ConstantsFrom::PrintedTable ? quality::largestPrintedSubgroup
                                                                          : quality::largestSubgroup;
    check(problems, settings.subgroup >= 2 && settings.subgroup <= largest, u"subgroup"_s,
          Wording::tr("A subgroup has 2 to %1 values.").arg(largest));
}

void checkEarlier(assay::Problems &problems, const EarlierRuns &earlier, int fewest)
{
    check(problems, earlier.values >= fewest && earlier.values <= mostValues, u"values"_s,
          Wording::tr("Limits from earlier runs need %1 to %2 values.").arg(fewest).arg(mostValues));
}

/// How many values are plotted as one. What no subgroup can be is told as such and counts as the nearest that
/// can.
int valuesOfOne(const Settings &settings)
{
    return settings.kind == Kind::MeanAndRange ? std::clamp(settings.subgroup, 1, quality::largestSubgroup)
                                               : 1;
}

} // namespace

std::span<const Quantity> allQuantities()
{
    static constexpr std::array all{
        Quantity::StandardRecovery, Quantity::StandardStrength,
        Quantity::ControlMaterial,  Quantity::Blank,
        Quantity::DuplicateRange,   Quantity::RelativeDuplicateRange,
        Quantity::SampleResult,     Quantity::ProductResult,
    };
    return all;
}

QString quantityWord(Quantity quantity)
{
    return wordIn(quantityWords, quantity);
}

std::optional<Quantity> quantityFromWord(const QString &word)
{
    return valueIn<Quantity>(quantityWords, word);
}

bool isTrend(Quantity quantity)
{
    return quantity == Quantity::SampleResult || quantity == Quantity::ProductResult;
}

bool isRange(Quantity quantity)
{
    return quantity == Quantity::DuplicateRange || quantity == Quantity::RelativeDuplicateRange;
}

bool isOfOneMaterial(Quantity quantity)
{
    return quantity == Quantity::StandardRecovery || quantity == Quantity::StandardStrength ||
           quantity == Quantity::ControlMaterial;
}

QString kindWord(Kind kind)
{
    return wordIn(kindWords, kind);
}

std::optional<Kind> kindFromWord(const QString &word)
{
    return valueIn<Kind>(kindWords, word);
}

std::vector<Kind> kindsFor(Quantity quantity)
{
    if (isTrend(quantity))
        return {Kind::Trend};
    if (isRange(quantity))
        return {Kind::Ranges};
    return {Kind::Individuals, Kind::MeanAndRange, Kind::WeightedAverage, Kind::CumulativeSum};
}

std::optional<quality::ChartConstants> constantsOf(ConstantsFrom from, int n)
{
    return from == ConstantsFrom::Computed ? quality::chartConstants(n) : quality::printedChartConstants(n);
}

Settings usualSettings(Quantity quantity)
{
    Settings settings;
    settings.kind = kindsFor(quantity).front();
    return settings;
}

int valuesForLimits(const Settings &settings)
{
    return fewestForLimits * valuesOfOne(settings);
}

int valuesForVerdict(const Settings &settings)
{
    return fewestForVerdict * valuesOfOne(settings);
}

Settings withEnoughValues(Settings settings)
{
    const int fewest = valuesForLimits(settings);
    if (auto *earlier = std::get_if<EarlierRuns>(&settings.limits))
        earlier->values = std::max(earlier->values, fewest);
    return settings;
}

bool holdsForEach(Quantity quantity, const Settings &settings)
{
    // What is found of what is expected has one centre, whatever the strength.
    return quantity == Quantity::StandardRecovery || std::holds_alternative<EarlierRuns>(settings.limits);
}

assay::Problems problemsOf(const Settings &settings)
{
    assay::Problems problems;
    if (const auto *fixed = std::get_if<FixedLimits>(&settings.limits))
        checkFixed(problems, *fixed);
    else
        checkEarlier(problems, std::get<EarlierRuns>(settings.limits), valuesForLimits(settings));
    if (settings.kind == Kind::MeanAndRange)
        checkSubgroup(problems, settings);
    check(problems, settings.lambda > 0 && settings.lambda <= 1, u"lambda"_s,
          Wording::tr("The weight of the newest value must be above 0 and at most 1."));
    check(problems, settings.width > 0 && settings.width <= 10, u"width"_s,
          Wording::tr("The width of the limits must be above 0 s and at most 10 s."));
    check(problems, settings.k >= 0 && settings.k <= 10, u"k"_s,
          Wording::tr("The reference value must lie between 0 s and 10 s."));
    check(problems, settings.h > 0 && settings.h <= 100, u"h"_s,
          Wording::tr("The decision limit must be above 0 s and at most 100 s."));
    return problems;
}

QString ruleWord(RunRule rule)
{
    return wordIn(ruleWords, rule);
}

std::optional<RunRule> ruleFromWord(const QString &word)
{
    return valueIn<RunRule>(ruleWords, word);
}

} // namespace plateau::charts
