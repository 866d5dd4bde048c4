// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/specification.h"

#include "core/evaluation/format.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <utility>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

namespace {

struct SpecificationWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::evaluation::Specification)
};

constexpr std::array limitKinds{
    std::pair{LimitKind::Maximum, "maximum"_L1},
    std::pair{LimitKind::Minimum, "minimum"_L1},
    std::pair{LimitKind::Range, "range"_L1},
    std::pair{LimitKind::LabelThreshold, "labelThreshold"_L1},
};

constexpr std::array decisionRules{
    std::pair{DecisionRule::SimpleAcceptance, "simpleAcceptance"_L1},
    std::pair{DecisionRule::GuardedAcceptance, "guardedAcceptance"_L1},
    std::pair{DecisionRule::GuardedRejection, "guardedRejection"_L1},
    std::pair{DecisionRule::GuardedBoth, "guardedBoth"_L1},
};

template <class Words, class Value> QString wordOf(const Words &words, Value value)
{
    return std::ranges::find(words, value, [](const auto &entry) { return entry.first; })->second;
}

template <class Value, class Words> std::optional<Value> valueOf(const Words &words, const QString &word)
{
    for (const auto &[value, own] : words) {
        if (own == word)
            return value;
    }
    return std::nullopt;
}

} // namespace

QString limitKindWord(LimitKind kind)
{
    return wordOf(limitKinds, kind);
}

std::optional<LimitKind> limitKindFromWord(const QString &word)
{
    return valueOf<LimitKind>(limitKinds, word);
}

QString decisionRuleWord(DecisionRule rule)
{
    return wordOf(decisionRules, rule);
}

std::optional<DecisionRule> decisionRuleFromWord(const QString &word)
{
    return valueOf<DecisionRule>(decisionRules, word);
}

QString decisionRuleName(DecisionRule rule)
{
    switch (rule) {
    case DecisionRule::SimpleAcceptance:
        return SpecificationWording::tr("simple acceptance");
    case DecisionRule::GuardedAcceptance:
        return SpecificationWording::tr("guard band for acceptance");
    case DecisionRule::GuardedRejection:
        return SpecificationWording::tr("guard band for rejection");
    case DecisionRule::GuardedBoth:
        break;
    }
    return SpecificationWording::tr("guard band for acceptance and rejection");
}

QString guardBandWord(GuardBand::Kind kind)
{
    switch (kind) {
    case GuardBand::Kind::OneSided95:
        return u"oneSided95"_s;
    case GuardBand::Kind::ExpandedUncertainty:
        return u"expandedUncertainty"_s;
    case GuardBand::Kind::Absolute:
        break;
    }
    return u"absolute"_s;
}

QString limitText(const Specification &specification)
{
    const auto number = [&](const std::optional<double> &limit) {
        return limit ? plainText(*limit) : u"?"_s;
    };
    const QString unit = reportUnitWord(specification.unit);
    switch (specification.kind) {
    case LimitKind::Maximum:
        return SpecificationWording::tr("at most %1").arg(withUnit(number(specification.upper), unit));
    case LimitKind::Minimum:
        return SpecificationWording::tr("at least %1").arg(withUnit(number(specification.lower), unit));
    case LimitKind::Range:
        return SpecificationWording::tr("%1 to %2")
            .arg(number(specification.lower), withUnit(number(specification.upper), unit));
    case LimitKind::LabelThreshold:
        break;
    }
    return SpecificationWording::tr("a label threshold of %1")
        .arg(withUnit(number(specification.upper), unit));
}

std::vector<Specification> specificationsFor(const std::vector<Specification> &all, const QString &product,
                                             const QString &measurandId, const assay::Method &method)
{
    const auto key = [](const QString &text) {
        return text.normalized(QString::NormalizationForm_C).simplified().toCaseFolded();
    };
    QString name;
    if (const assay::Measurand *measurand = assay::findMeasurand(method, measurandId))
        name = measurand->name;
    const auto derived = std::ranges::find(method.derived, measurandId, &assay::Derived::id);
    if (derived != method.derived.end())
        name = derived->name;

    std::vector<Specification> fitting;
    for (const Specification &specification : all) {
        const QString wanted = key(specification.measurand);
        const bool same = wanted == key(measurandId) || (!name.isEmpty() && wanted == key(name));
        if (same && key(specification.product) == key(product))
            fitting.push_back(specification);
    }
    return fitting;
}

} // namespace plateau::evaluation
