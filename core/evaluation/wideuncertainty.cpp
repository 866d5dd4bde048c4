// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/wideuncertainty.h"

#include "core/evaluation/uncertainty.h"

#include <QCoreApplication>

namespace plateau::evaluation {

namespace {

struct WideUncertaintyWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::evaluation::WideUncertainty)
};

constexpr double wideFactor = 4;

} // namespace

QString wideUncertaintyText(const Result &result)
{
    const bool isStated =
        result.value && result.expandedUncertainty && !result.lessThan && !result.greaterThan;
    if (!isStated || result.budget.empty() || result.coverageFactor.value_or(0) < wideFactor)
        return {};
    const QString &largest = result.budget.front().term;
    if (result.terms.empty() && largest == repeatabilityName())
        return WideUncertaintyWords::tr( // a scatter is of two tubes at least
                   "The uncertainty is wide because it rests on the scatter of only %1 tubes: so few "
                   "degrees of freedom make a large coverage factor k.")
            .arg(result.n);
    return WideUncertaintyWords::tr(
               "The uncertainty is wide because its largest part (%1) rests on the scatter of few tubes: so "
               "few degrees of freedom make a large coverage factor k.")
        .arg(largest);
}

QString narrowerUncertaintyText(const Result &result)
{
    return result.terms.empty() && !result.budget.empty() && result.budget.front().term == repeatabilityName()
               ? WideUncertaintyWords::tr("A repeat of the sample with more tubes would narrow it.")
               : WideUncertaintyWords::tr("More tubes of what that part comes from would narrow it.");
}

} // namespace plateau::evaluation
