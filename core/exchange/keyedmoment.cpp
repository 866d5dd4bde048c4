// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/keyedmoment.h"

#include "core/assay/localday.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace plateau::exchange {

using namespace Qt::StringLiterals;

namespace {

struct KeyedMomentWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::KeyedMoment)
};

/// The local time of that day, with the offset that holds then; invalid where the clocks skip it.
QDateTime localMoment(const QDate &date, const QTime &time)
{
    const QDateTime local(date, time, Qt::LocalTime);
    if (!local.isValid() || local.time() != time)
        return {};
    return local.toOffsetFromUtc(local.offsetFromUtc());
}

bool isIsoDay(const QString &text)
{
    static const QRegularExpression iso(u"^\\d{4}-\\d{2}-\\d{2}$"_s);
    return iso.match(text).hasMatch();
}

} // namespace

std::variant<QDateTime, MomentFault> parseKeyedMoment(const QString &text, const QDateTime &now)
{
    static const QRegularExpression form(u"^(?:([\\d./-]+)(?:T|,?\\s+))?(\\d{1,2})[:.](\\d{2})$"_s);
    const QString given = text.trimmed();
    if (given.isEmpty())
        return MomentFault::Empty;
    const QRegularExpressionMatch match = form.match(given);
    if (!match.hasMatch())
        return MomentFault::NotATime;
    const QTime time(match.captured(2).toInt(), match.captured(3).toInt());
    const bool dated = !match.captured(1).isEmpty();
    const QDate today = now.toLocalTime().date();
    const std::optional<QDate> date =
        dated ? assay::readPastDay(match.captured(1), today) : today;
    if (!date && !isIsoDay(match.captured(1)))
        return MomentFault::NotATime; // most likely in another order
    if (!date || !time.isValid())
        return MomentFault::NoSuchTime;
    QDateTime moment = localMoment(*date, time);
    if (!dated && moment.isValid() && moment > now)
        moment = localMoment(today.addDays(-1), time);
    if (!moment.isValid())
        return MomentFault::NoSuchTime;
    if (moment > now)
        return MomentFault::InTheFuture;
    return moment;
}

std::variant<QDateTime, MomentFault> parseKeyedDayOrMoment(const QString &text, const QDateTime &now)
{
    const auto moment = parseKeyedMoment(text, now);
    if (std::holds_alternative<QDateTime>(moment))
        return moment;
    const std::optional<QDate> day = assay::readPastDay(text, now.toLocalTime().date());
    return day ? parseKeyedMoment(assay::shownDay(*day) + u" 0:00"_s, now) : moment;
}

QString dayOrMomentText(const QDateTime &moment)
{
    const QDateTime local = moment.toLocalTime();
    return local.isValid() && local.time() == QTime(0, 0) ? assay::shownDay(local.date()) : assay::shownMoment(local);
}

QString faultSentence(MomentFault fault)
{
    const QString day = assay::shownDay({2026, 12, 31});
    switch (fault) {
    case MomentFault::Empty:
        return KeyedMomentWording::tr("Enter a time, such as 8:10, or with the date, such as %1 8:10.").arg(day);
    case MomentFault::NotATime:
        return KeyedMomentWording::tr(
                   "That is not a time: write it as 8:10, or with the date, as %1 8:10.")
            .arg(day);
    case MomentFault::NoSuchTime:
        return KeyedMomentWording::tr(
            "There is no such time: write hours up to 23 and minutes up to 59, of a day that exists.");
    case MomentFault::InTheFuture:
        return KeyedMomentWording::tr("That time is still to come; give the time when it was done.");
    }
    return {};
}

} // namespace plateau::exchange
