// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/localday.h"

#include <QLocale>
#include <QRegularExpression>

namespace plateau::assay {

using namespace Qt::StringLiterals;

namespace {

/// Order of the parts, "dMy" say, and the sign between them.
struct DayForm {
    QString order;
    QChar between;
};

const DayForm iso{u"yMd"_s, u'-'};

DayForm dayForm()
{
    const QLocale locale;
    const QString format = locale.dateFormat(QLocale::ShortFormat);
    if (locale.language() == QLocale::C || format.contains(u"MMM"_s))
        return iso;
    DayForm form;
    for (const QChar sign : format) {
        const bool isPart = sign == u'd' || sign == u'M' || sign == u'y';
        if (isPart && !form.order.contains(sign))
            form.order += sign;
        else if (!isPart && form.between.isNull() && sign.isPunct() && !form.order.isEmpty())
            form.between = sign;
    }
    return form.order.size() == 3 && !form.between.isNull() ? form : iso;
}

QString figures(int number, int count)
{
    return u"%1"_s.arg(number, count, 10, QChar(u'0'));
}

QString partOf(const QDate &day, QChar part)
{
    return part == u'y' ? figures(day.year(), 4) : figures(part == u'M' ? day.month() : day.day(), 2);
}

/// The parts that the order names.
QString written(const QDate &day, const DayForm &form)
{
    QString text;
    for (const QChar part : form.order)
        text += (text.isEmpty() ? QString() : QString(form.between)) + partOf(day, part);
    return text;
}

std::optional<QDate> real(const QDate &day)
{
    return day.isValid() ? std::optional(day) : std::nullopt;
}

std::optional<QDate> dayOf(const QString &year, const QString &month, const QString &day)
{
    const int number = year.toInt();
    return real(QDate(year.size() == 2 ? 2000 + number : number, month.toInt(), day.toInt()));
}

std::optional<QDate> dayOf(const QString &year, const QString &month, MonthAlone which)
{
    const QDate first(year.toInt(), month.toInt(), 1);
    if (which == MonthAlone::NoDay)
        return std::nullopt;
    return real(which == MonthAlone::FirstDay ? first : first.addMonths(1).addDays(-1));
}

} // namespace

QString shownDay(const QDate &day)
{
    return day.isValid() ? written(day, dayForm()) : QString();
}

QString shownMonth(const QDate &day)
{
    DayForm form = dayForm();
    form.order.remove(u'd');
    return day.isValid() ? written(day, form) : QString();
}

QString shownMoment(const QDateTime &moment)
{
    return moment.isValid() ? u"%1 %2"_s.arg(shownDay(moment.date()), moment.toString(u"HH:mm"_s)) : QString();
}

std::optional<QDate> readDay(const QString &text, MonthAlone month)
{
    static const QRegularExpression yearFirst(u"^(\\d{4})[-./](\\d{1,2})(?:[-./](\\d{1,2}))?$"_s);
    static const QRegularExpression monthAndYear(u"^(\\d{1,2})[-./](\\d{4})$"_s);
    static const QRegularExpression threeParts(u"^(\\d{1,2})[-./](\\d{1,2})[-./](\\d{2}|\\d{4})$"_s);
    const QString typed = text.trimmed();
    if (const auto found = yearFirst.match(typed); found.hasMatch())
        return found.captured(3).isEmpty() ? dayOf(found.captured(1), found.captured(2), month)
                                           : dayOf(found.captured(1), found.captured(2), found.captured(3));
    if (const auto found = monthAndYear.match(typed); found.hasMatch())
        return dayOf(found.captured(2), found.captured(1), month);
    const auto found = threeParts.match(typed);
    const QString order = dayForm().order;
    if (!found.hasMatch() || order.startsWith(u'y'))
        return std::nullopt;
    const bool dayIsFirst = order.indexOf(u'd') < order.indexOf(u'M');
    return dayOf(found.captured(3), found.captured(dayIsFirst ? 2 : 1), found.captured(dayIsFirst ? 1 : 2));
}

std::optional<QDate> readPastDay(const QString &text, const QDate &today)
{
    if (const std::optional<QDate> day = readDay(text, MonthAlone::NoDay))
        return day;
    static const QRegularExpression twoParts(u"^(\\d{1,2})[-./](\\d{1,2})[-./]?$"_s);
    const auto found = twoParts.match(text.trimmed());
    const QString order = dayForm().order;
    if (!found.hasMatch() || order.startsWith(u'y'))
        return std::nullopt;
    const bool dayIsFirst = order.indexOf(u'd') < order.indexOf(u'M');
    const int day = found.captured(dayIsFirst ? 1 : 2).toInt();
    const int month = found.captured(dayIsFirst ? 2 : 1).toInt();
    constexpr int mostYears = 8; // between two days of 29 February
    for (int year = today.year(); year >= today.year() - mostYears; --year) {
        if (const QDate such(year, month, day); such.isValid() && such <= today)
            return such;
    }
    return std::nullopt;
}

} // namespace plateau::assay
