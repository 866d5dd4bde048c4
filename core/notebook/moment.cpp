// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/moment.h"

#include "core/notebook/notebook.h"
#include "core/notebook/sentence.h"

namespace plateau::notebook {

namespace {

constexpr int secondsPerMinute = 60;

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
    return QDateTime::fromString(moment.utc, Qt::ISODateWithMs)
        .toOffsetFromUtc(moment.offset_min * secondsPerMinute);
}

} // namespace plateau::notebook
