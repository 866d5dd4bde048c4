// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/limitswords.h"

#include "core/evaluation/format.h"
#include "ui/shared/shownnumbers.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using namespace evaluation;

namespace {

struct LimitsWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::LimitsWords)
};

} // namespace

QString limitKindText(LimitKind kind)
{
    switch (kind) {
    case LimitKind::Maximum:
        return LimitsWords::tr("Maximum");
    case LimitKind::Minimum:
        return LimitsWords::tr("Minimum");
    case LimitKind::Range:
        return LimitsWords::tr("Range");
    case LimitKind::LabelThreshold:
        break;
    }
    return LimitsWords::tr("Label threshold");
}

QString guardBandText(GuardBand::Kind kind)
{
    switch (kind) {
    case GuardBand::Kind::OneSided95:
        return LimitsWords::tr("one-sided 95 % (1.64 u, more for few readings)");
    case GuardBand::Kind::ExpandedUncertainty:
        return LimitsWords::tr("a multiple of the expanded uncertainty U");
    case GuardBand::Kind::Absolute:
        break;
    }
    return LimitsWords::tr("fixed, in the unit of the limit");
}

QString decisionRuleText(const Specification &limit)
{
    const QString name = decisionRuleName(limit.rule);
    if (!limit.guard)
        return name;
    switch (limit.guard->kind) {
    case GuardBand::Kind::OneSided95:
        return LimitsWords::tr("%1, one-sided 95 %").arg(name);
    case GuardBand::Kind::ExpandedUncertainty:
        return LimitsWords::tr("%1, %2 U").arg(name, shownNumber(plainText(limit.guard->size)));
    case GuardBand::Kind::Absolute:
        break;
    }
    return LimitsWords::tr("%1, %2").arg(name,
                                         withUnit(plainText(limit.guard->size), reportUnitWord(limit.unit)));
}

QString decisionRuleMeaning(DecisionRule rule)
{
    switch (rule) {
    case DecisionRule::SimpleAcceptance:
        return LimitsWords::tr(
            "Inside up to the limit itself, outside beyond it; the uncertainty does not move "
            "the line.");
    case DecisionRule::GuardedAcceptance:
        return LimitsWords::tr("Inside only up to the guard band before the limit, outside beyond the limit; "
                               "between the two it cannot be decided.");
    case DecisionRule::GuardedRejection:
        return LimitsWords::tr(
            "Inside up to the limit, outside only from the guard band beyond it; between the "
            "two it cannot be decided.");
    case DecisionRule::GuardedBoth:
        break;
    }
    return LimitsWords::tr(
        "Inside only up to the guard band before the limit, outside only from the guard band "
        "beyond it; between the two it cannot be decided.");
}

} // namespace plateau::ui
