// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/compliance.h"

#include "core/evaluation/format.h"
#include "core/quality/distributions.h"

#include <QCoreApplication>

#include <cmath>
#include <limits>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

namespace {

struct ComplianceWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::evaluation::Compliance)
};

constexpr double infinite = std::numeric_limits<double>::infinity();

/// Where the result may lie: one point, or what a bound leaves open (then without its ends).
struct Extent {
    double from = -infinite;
    double to = infinite;
    bool open = false;
};

Extent extentOf(const Reported &reported)
{
    if (reported.lessThan || reported.greaterThan)
        return {reported.greaterThan.value_or(-infinite), reported.lessThan.value_or(infinite), true};
    return {*reported.value, *reported.value, false};
}

/// Inside from insideFrom to insideTo, outside below outsideBelow and above outsideAbove, the numbers
/// themselves inside; of a label threshold they belong to what lies above.
struct Zones {
    double insideFrom = -infinite;
    double insideTo = infinite;
    double outsideBelow = -infinite;
    double outsideAbove = infinite;
    bool limitBelongsOutside = false;
};

bool guardsAcceptance(DecisionRule rule)
{
    return rule == DecisionRule::GuardedAcceptance || rule == DecisionRule::GuardedBoth;
}

bool guardsRejection(DecisionRule rule)
{
    return rule == DecisionRule::GuardedRejection || rule == DecisionRule::GuardedBoth;
}

/// One-sided 95 % point of Student's t: two tails of 5 % each leave 90 % between them.
double oneSided95(const Reported &reported)
{
    return quality::studentTwoSided(0.90, reported.degreesOfFreedom.value_or(infinite));
}

/// Of one side; absent where the rule has none, or where it rests on an uncertainty that says nothing.
std::optional<double> guardBandOf(const Reported &reported, const Specification &specification)
{
    if (!specification.guard || specification.rule == DecisionRule::SimpleAcceptance)
        return std::nullopt;
    const GuardBand &guard = *specification.guard;
    if (guard.kind == GuardBand::Kind::Absolute)
        return guard.size;
    const std::optional<double> u = standardUncertainty(reported);
    if (!u || reported.greaterThan)
        return std::nullopt;
    return guard.kind == GuardBand::Kind::OneSided95 ? oneSided95(reported) * *u
                                                     : guard.size * *reported.expandedUncertainty;
}

Zones zonesOf(const Specification &specification, std::optional<double> guardBand)
{
    const auto shift = [&](bool guarded) { return guarded ? guardBand.value_or(infinite) : 0.0; };
    const double acceptance = shift(guardsAcceptance(specification.rule));
    const double rejection = shift(guardsRejection(specification.rule));
    Zones zones;
    if (specification.kind == LimitKind::Minimum || specification.kind == LimitKind::Range) {
        zones.insideFrom = *specification.lower + acceptance;
        zones.outsideBelow = *specification.lower - rejection;
    }
    if (specification.kind != LimitKind::Minimum) {
        zones.insideTo = *specification.upper - acceptance;
        zones.outsideAbove = *specification.upper + rejection;
    }
    zones.limitBelongsOutside = specification.kind == LimitKind::LabelThreshold;
    return zones;
}

/// At the number, as far as arithmetic in double precision can tell.
bool isAt(double value, double number)
{
    return std::isfinite(number) && std::abs(value - number) <= 1e-12 * std::abs(number);
}

bool endsUpTo(const Extent &extent, double number, bool numberBelongs)
{
    return isAt(extent.to, number) ? extent.open || numberBelongs : extent.to < number;
}

bool beginsFrom(const Extent &extent, double number, bool numberBelongs)
{
    return isAt(extent.from, number) ? extent.open || numberBelongs : extent.from > number;
}

/// True of a missing limit as well, whose zone is everything.
bool isInside(const Extent &extent, const Zones &zones)
{
    const bool above = zones.insideFrom == -infinite || beginsFrom(extent, zones.insideFrom, true);
    const bool below =
        zones.insideTo == infinite || endsUpTo(extent, zones.insideTo, !zones.limitBelongsOutside);
    return above && below;
}

bool isOutside(const Extent &extent, const Zones &zones)
{
    return endsUpTo(extent, zones.outsideBelow, false) ||
           beginsFrom(extent, zones.outsideAbove, zones.limitBelongsOutside);
}

std::optional<BeyondLimit> beyondOf(const Reported &reported, const Specification &specification)
{
    const std::optional<double> u = standardUncertainty(reported);
    if (!u || !(*u > 0) || !reported.value || reported.lessThan || reported.greaterThan)
        return std::nullopt;
    BeyondLimit beyond{0, reported.degreesOfFreedom.value_or(infinite)};
    if (specification.upper)
        beyond.probability +=
            quality::studentAbove((*specification.upper - *reported.value) / *u, beyond.degreesOfFreedom);
    if (specification.lower)
        beyond.probability +=
            quality::studentAbove((*reported.value - *specification.lower) / *u, beyond.degreesOfFreedom);
    return beyond;
}

QString ruleText(const Reported &reported, const Specification &specification,
                 std::optional<double> guardBand)
{
    const QString name = decisionRuleName(specification.rule);
    if (specification.rule == DecisionRule::SimpleAcceptance)
        return reported.expandedUncertainty || !reported.value
                   ? name
                   : ComplianceWording::tr("%1; the result states no uncertainty").arg(name);
    if (!guardBand)
        return name;
    const GuardBand &guard = *specification.guard;
    if (guard.kind == GuardBand::Kind::Absolute)
        return ComplianceWording::tr("%1, %2").arg(
            name, withUnit(plainText(guard.size), reportUnitWord(specification.unit)));
    const QString width = withUnit(significantText(*guardBand, 2), reportUnitWord(specification.unit));
    if (guard.kind == GuardBand::Kind::OneSided95)
        return ComplianceWording::tr("%1, %2 u = %3")
            .arg(name, QString::number(oneSided95(reported), 'f', 2), width);
    return guard.size == 1 ? ComplianceWording::tr("%1, U = %2").arg(name, width)
                           : ComplianceWording::tr("%1, %2 U = %3").arg(name, plainText(guard.size), width);
}

/// The result with as many decimals as it takes to tell it from the limits.
QString comparedText(const Reported &reported, const Specification &specification)
{
    const QString usual = reportedText(reported);
    if (!reported.value || reported.lessThan || reported.greaterThan)
        return usual;
    std::vector<double> limits;
    for (const std::optional<double> &limit : {specification.lower, specification.upper}) {
        if (limit)
            limits.push_back(*limit);
    }
    const bool known = reported.expandedUncertainty && *reported.expandedUncertainty > 0;
    const int decimals =
        known ? decimalsFor(*reported.expandedUncertainty, 2) : decimalsFor(*reported.value, 3);
    const QString rounded = valueText(*reported.value, reported.expandedUncertainty);
    const QString text = comparedTexts(*reported.value, limits, decimals).front();
    if (text == rounded)
        return usual;
    const QString unit = reportUnitWord(reported.unit);
    if (!known)
        return withUnit(text, unit);
    // The uncertainty goes along to the decimals of the value (JCGM 100, 7.2.6).
    const int shown = static_cast<int>(text.section(u'.', 1, 1).size());
    const QString width = comparedTexts(*reported.expandedUncertainty, {}, shown).front();
    return withUnit(u"%1 ± %2"_s.arg(text, width), unit);
}

/// Why nothing can be said.
QString undecidedReason(const Reported &reported, const Specification &specification, const Zones &zones,
                        std::optional<double> guardBand)
{
    const bool bound = reported.lessThan || reported.greaterThan;
    if (specification.rule != DecisionRule::SimpleAcceptance && !guardBand)
        return bound ? ComplianceWording::tr(
                           "cannot be decided, because the rule needs an uncertainty and a bound has none")
                     : ComplianceWording::tr(
                           "cannot be decided, because the rule needs an uncertainty and the result states "
                           "none");
    if (bound)
        return ComplianceWording::tr("cannot be decided, because only a bound is known");
    if (zones.insideFrom > zones.insideTo)
        return ComplianceWording::tr(
            "cannot be decided at this uncertainty, which leaves nothing between the limits");
    return ComplianceWording::tr("cannot be decided at this uncertainty");
}

Judgement undecided(const QString &reason, const Specification &specification)
{
    return {Standing::Undecided,
            ComplianceWording::tr("cannot be decided against %1: %2").arg(limitText(specification), reason)};
}

} // namespace

QString standingWord(Standing standing)
{
    switch (standing) {
    case Standing::Inside:
        return u"inside"_s;
    case Standing::Outside:
        return u"outside"_s;
    case Standing::Undecided:
        break;
    }
    return u"undecided"_s;
}

QString standingName(Standing standing, LimitKind kind)
{
    const bool label = kind == LimitKind::LabelThreshold;
    switch (standing) {
    case Standing::Inside:
        return label ? ComplianceWording::tr("below the threshold") : ComplianceWording::tr("inside");
    case Standing::Outside:
        return label ? ComplianceWording::tr("at or above the threshold") : ComplianceWording::tr("outside");
    case Standing::Undecided:
        break;
    }
    return ComplianceWording::tr("cannot be decided");
}

QString beyondLimitText(const BeyondLimit &beyond)
{
    const double percent = 100 * beyond.probability;
    const QString number =
        percent < 0.1    ? ComplianceWording::tr("less than %1").arg(withUnit(u"0.1"_s, u"%"_s))
        : percent > 99.9 ? ComplianceWording::tr("more than %1").arg(withUnit(u"99.9"_s, u"%"_s))
                         : withUnit(QString::number(percent, 'f', percent < 10 ? 1 : 0), u"%"_s);
    if (std::isinf(beyond.degreesOfFreedom))
        return ComplianceWording::tr("probability %1 that the true value lies beyond the limit, if it is "
                                     "normally distributed about the result")
            .arg(number);
    return ComplianceWording::tr(
               "probability %1 that the true value lies beyond the limit, if it is distributed about the "
               "result as Student's t with %2 degrees of freedom")
        .arg(number, significantText(beyond.degreesOfFreedom, 2));
}

Judgement judge(const Reported &reported, const Specification &specification)
{
    if (reported.unit != specification.unit)
        return undecided(
            ComplianceWording::tr("the result is given in %1").arg(reportUnitWord(reported.unit)),
            specification);
    if (!reported.value && !reported.lessThan && !reported.greaterThan)
        return undecided(ComplianceWording::tr("the result has no value"), specification);

    const std::optional<double> guardBand = guardBandOf(reported, specification);
    const Zones zones = zonesOf(specification, guardBand);
    const Extent extent = extentOf(reported);
    Judgement judgement;
    judgement.reported = reported;
    judgement.guardBand = guardBand;
    judgement.beyond = beyondOf(reported, specification);
    if (isInside(extent, zones))
        judgement.standing = Standing::Inside;
    else if (isOutside(extent, zones))
        judgement.standing = Standing::Outside;
    const QString head = judgement.standing == Standing::Undecided
                             ? undecidedReason(reported, specification, zones, guardBand)
                             : standingName(judgement.standing, specification.kind);
    judgement.sentence = ComplianceWording::tr("%1: %2 against %3 (%4)")
                             .arg(head, comparedText(reported, specification), limitText(specification),
                                  ruleText(reported, specification, guardBand));
    return judgement;
}

Judgement judge(const Result &result, const assay::Method &method, const Specification &specification,
                std::span<const assay::Method> others)
{
    const Converted<Reported> reported = reportedAs(result, method, specification.unit, others);
    return reported.value ? judge(*reported.value, specification)
                          : undecided(reported.obstacle, specification);
}

} // namespace plateau::evaluation
