// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/timewords.h"

#include <QCoreApplication>

#include <cmath>
#include <cstdlib>

namespace plateau::ui {

using namespace Qt::StringLiterals;

namespace {

struct TimeWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::TimeWords)
};

constexpr qint64 minute_s = 60;
constexpr qint64 hour_s = 3600;

QString twoDigits(qint64 number)
{
    return QString::number(number).rightJustified(2, u'0');
}

} // namespace

QString countText(double seconds)
{
    const auto whole_s = static_cast<qint64>(std::floor(std::abs(seconds)));
    const QString rest = twoDigits(whole_s % minute_s);
    if (whole_s < hour_s)
        return u"%1:%2"_s.arg(whole_s / minute_s).arg(rest);
    return u"%1:%2:%3"_s.arg(whole_s / hour_s).arg(twoDigits(whole_s % hour_s / minute_s), rest);
}

QString countdownText(double opens_s, std::optional<double> closes_s)
{
    if (opens_s > 0)
        return TimeWords::tr("in %1").arg(countText(std::ceil(opens_s)));
    if (!closes_s)
        return opens_s > -1 ? TimeWords::tr("now") : TimeWords::tr("since %1").arg(countText(opens_s));
    if (*closes_s >= 0)
        return TimeWords::tr("now, %1 left").arg(countText(std::ceil(*closes_s)));
    return TimeWords::tr("late by %1").arg(countText(*closes_s));
}

QString shiftText(qint64 shift_ms)
{
    const qint64 whole_s = std::llabs(std::llround(static_cast<double>(shift_ms) / 1000.0));
    const QString length =
        whole_s < hour_s
            ? TimeWords::tr("%1 min %2 s").arg(whole_s / minute_s).arg(twoDigits(whole_s % minute_s))
            : TimeWords::tr("%1 h %2 min").arg(whole_s / hour_s).arg(twoDigits(whole_s % hour_s / minute_s));
    return shift_ms < 0 ? TimeWords::tr("%1 back").arg(length) : TimeWords::tr("%1 forward").arg(length);
}

} // namespace plateau::ui
