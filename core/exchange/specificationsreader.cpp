// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/documentformat.h"
#include "core/exchange/methodreader.h"
#include "core/exchange/readers.h"

#include <utility>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using namespace plateau::evaluation;

namespace {

template <class Value> using Words = std::vector<std::pair<QString, Value>>;

const Words<LimitKind> &kindWords()
{
    static const Words<LimitKind> words = [] {
        Words<LimitKind> list;
        for (const LimitKind kind :
             {LimitKind::Maximum, LimitKind::Minimum, LimitKind::Range, LimitKind::LabelThreshold})
            list.emplace_back(limitKindWord(kind), kind);
        return list;
    }();
    return words;
}

const Words<DecisionRule> &ruleWords()
{
    static const Words<DecisionRule> words = [] {
        Words<DecisionRule> list;
        for (const DecisionRule rule : {DecisionRule::SimpleAcceptance, DecisionRule::GuardedAcceptance,
                                        DecisionRule::GuardedRejection, DecisionRule::GuardedBoth})
            list.emplace_back(decisionRuleWord(rule), rule);
        return list;
    }();
    return words;
}

const Words<ReportUnit> &unitWords()
{
    static const Words<ReportUnit> words = [] {
        Words<ReportUnit> list;
        for (const ReportUnit unit : reportUnits())
            list.emplace_back(reportUnitWord(unit), unit);
        return list;
    }();
    return words;
}

const Words<GuardBand::Kind> &guardWords()
{
    static const Words<GuardBand::Kind> words = [] {
        Words<GuardBand::Kind> list;
        for (const GuardBand::Kind kind :
             {GuardBand::Kind::OneSided95, GuardBand::Kind::ExpandedUncertainty, GuardBand::Kind::Absolute})
            list.emplace_back(guardBandWord(kind), kind);
        return list;
    }();
    return words;
}

/// What a kind or a rule that cannot be read leaves to be said of the fields that depend on it: nothing.
const Consequences &specificationConsequences()
{
    static const Consequences all = {
        {u"/specifications/#/kind"_s, u"/specifications/#/lower"_s},
        {u"/specifications/#/kind"_s, u"/specifications/#/upper"_s},
        {u"/specifications/#/kind"_s, u"/specifications/#/guard"_s},
        {u"/specifications/#/lower"_s, u"/specifications/#/upper"_s},
        {u"/specifications/#/lower"_s, u"/specifications/#/guard"_s},
        {u"/specifications/#/upper"_s, u"/specifications/#/guard"_s},
        {u"/specifications/#/unit"_s, u"/specifications/#/guard"_s},
        {u"/specifications/#/rule"_s, u"/specifications/#/guard"_s},
        {u"/specifications/#/guard/kind"_s, u"/specifications/#/guard"_s},
        {u"/specifications/*/product"_s, u"/specifications/*/$"_s},
        {u"/specifications/*/measurand"_s, u"/specifications/*/$"_s},
        {u"/specifications/*/kind"_s, u"/specifications/*/$"_s},
        {u"/specifications/*/source"_s, u"/specifications/*/$"_s},
    };
    return all;
}

GuardBand takeGuard(const Place &place)
{
    GuardBand guard;
    Fields fields(place);
    bool known = false;
    if (const auto kind = fields.need(u"kind"_s))
        known = takeWord(*kind, guardWords(), guard.kind);
    // One-sided 95 % has no size: done() refuses one. Of a kind that cannot be read nothing is said.
    if (!known)
        fields.find(u"size"_s);
    else if (guard.kind != GuardBand::Kind::OneSided95)
        fields.needed(u"size"_s, guard.size);
    fields.done();
    return guard;
}

Specification takeSpecification(const Place &place)
{
    Specification specification;
    Fields fields(place);
    fields.needed(u"product"_s, specification.product);
    fields.needed(u"measurand"_s, specification.measurand);
    if (const auto kind = fields.need(u"kind"_s))
        takeWord(*kind, kindWords(), specification.kind);
    fields.optional(u"lower"_s, specification.lower);
    fields.optional(u"upper"_s, specification.upper);
    if (const auto unit = fields.need(u"unit"_s))
        takeWord(*unit, unitWords(), specification.unit);
    fields.needed(u"source"_s, specification.source);
    fields.needed(u"date"_s, specification.date);
    if (const auto rule = fields.need(u"rule"_s))
        takeWord(*rule, ruleWords(), specification.rule);
    if (const auto guard = fields.find(u"guard"_s))
        specification.guard = takeGuard(*guard);
    fields.done();
    return specification;
}

void takeSpecifications(const Place &place, std::vector<Specification> &specifications)
{
    Fields fields(place);
    if (!fields.usable() || !takeFormat(fields, QString::fromUtf16(specificationsFormat)))
        return;
    if (const auto list = fields.need(u"specifications"_s))
        forEach(*list, [&](const Place &element) { specifications.push_back(takeSpecification(element)); });
    fields.done();
    place.findings.meaning(problemsOf(specifications), place.pointer, specificationConsequences());
}

} // namespace

Read<std::vector<Specification>> readSpecifications(const QByteArray &json)
{
    const json::Document document = json::parse(json);
    Findings findings;
    for (const assay::Problem &problem : document.problems)
        findings.remark(problem);
    std::vector<Specification> specifications;
    if (document.root)
        takeSpecifications({*document.root, {}, findings}, specifications);
    if (findings.hasErrors())
        return {std::nullopt, findings.problems()};
    return {std::move(specifications), findings.problems()};
}

} // namespace plateau::exchange
