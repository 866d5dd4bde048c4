// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/moment.h"

#include "core/notebook/notebook.h"
#include "core/notebook/sentence.h"

namespace plateau::notebook {

namespace {

constexpr int secondsPerMinute = 60;

/// Of so many digits from that place on; -1: there is something else among them.
int digits(QStringView text, qsizetype from, int count)
{
    int value = 0;
    for (qsizetype i = from; i < from + count; ++i) {
        const int digit = text[i].unicode() - u'0';
        if (digit < 0 || digit > 9)
            return -1;
        value = 10 * value + digit;
    }
    return value;
}

/// As momentOf writes it, a dozen times as fast as the general reader: a list of runs has three of them in
/// each row.
std::optional<qint64> sinceEpoch_ms(QStringView utc)
{
    constexpr QStringView form = u"    -  -  T  :  :  .   Z";
    if (utc.size() != form.size())
        return std::nullopt;
    for (qsizetype i = 0; i < form.size(); ++i) {
        if (form[i] != u' ' && utc[i] != form[i])
            return std::nullopt;
    }
    const QDate day(digits(utc, 0, 4), digits(utc, 5, 2), digits(utc, 8, 2));
    const QTime time(digits(utc, 11, 2), digits(utc, 14, 2), digits(utc, 17, 2), digits(utc, 20, 3));
    if (!day.isValid() || !time.isValid())
        return std::nullopt;
    constexpr qint64 epochDay = 2440588; // 1970-01-01 as a Julian day
    constexpr qint64 perDay_ms = 86'400'000;
    return (day.toJulianDay() - epochDay) * perDay_ms + time.msecsSinceStartOfDay();
}

} // namespace

Moment momentOf(const QDateTime &time)
{
    const QString utc = time.toUTC().toString(Qt::ISODateWithMs);
    if (!time.isValid() || utc.isEmpty())
        throw Failure(
            Failure::Kind::Refused,
            Sentence::tr("Nothing was stored: a time in it is not one that exists (in the hour the clocks "
                         "go forward, say); give a time with its offset from UTC."));
    return {utc, time.offsetFromUtc() / secondsPerMinute};
}

std::optional<Moment> optionalMoment(const std::optional<QDateTime> &time)
{
    return time ? std::optional(momentOf(*time)) : std::nullopt;
}

QDateTime timeOf(const Moment &moment)
{
    if (const auto since_ms = sinceEpoch_ms(moment.utc))
        return QDateTime::fromMSecsSinceEpoch(*since_ms, Qt::OffsetFromUTC,
                                              moment.offset_min * secondsPerMinute);
    return QDateTime::fromString(moment.utc, Qt::ISODateWithMs)
        .toOffsetFromUtc(moment.offset_min * secondsPerMinute);
}

} // namespace plateau::notebook
