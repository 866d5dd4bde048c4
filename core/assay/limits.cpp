// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/limits.h"

#include "core/assay/label.h"

#include <QCoreApplication>

namespace plateau::assay {

using namespace Qt::StringLiterals;

namespace {

struct LimitsWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::assay::Limits)
};

QString withUnit(double value, const QString &unit)
{
    return unit.isEmpty() ? shown(value) : shown(value) + u' ' + unit;
}

} // namespace

void checkAbove(Problems &problems, const QString &pointer, double value, double above, double atMost,
                const QString &unit)
{
    if (value > above && value <= atMost)
        return;
    problems.push_back(error(pointer, LimitsWording::tr("must be greater than %1 and at most %2, not %3")
                                          .arg(shown(above), withUnit(atMost, unit), shown(value))));
}

void checkWithin(Problems &problems, const QString &pointer, double value, double lower, double upper,
                 const QString &unit)
{
    if (value >= lower && value <= upper)
        return;
    problems.push_back(error(pointer, LimitsWording::tr("must lie between %1 and %2, not %3")
                                          .arg(shown(lower), withUnit(upper, unit), shown(value))));
}

void checkInterval(Problems &problems, const QString &pointer, const Interval &interval, double lower,
                   double upper, const QString &unit)
{
    if (interval.lower > interval.upper) {
        problems.push_back(
            error(pointer, LimitsWording::tr("the smaller number comes first: %1 is larger than %2")
                               .arg(shown(interval.lower), shown(interval.upper))));
        return;
    }
    checkWithin(problems, pointerTo(pointer, 0), interval.lower, lower, upper, unit);
    checkWithin(problems, pointerTo(pointer, 1), interval.upper, lower, upper, unit);
}

void checkLabel(Problems &problems, const QString &pointer, const QString &text, const QString &what)
{
    if (const auto fault = labelFault(text))
        problems.push_back(error(pointer, LimitsWording::tr("%1 cannot be used: %2").arg(what, *fault)));
}

void checkProse(Problems &problems, const QString &pointer, const QString &text, const QString &what)
{
    if (const auto fault = proseFault(text))
        problems.push_back(error(pointer, LimitsWording::tr("%1 cannot be used: %2").arg(what, *fault)));
}

} // namespace plateau::assay
