// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/moment.h"

#include <QTime>

namespace plateau::exchange {

namespace {

/// Reads fixed-width digits and single signs from the front of a text; after the first mismatch nothing fits.
class Scanner
{
public:
    explicit Scanner(const QString &text)
        : m_text(text)
    {
    }

    int digits(int count)
    {
        int value = 0;
        for (int i = 0; i < count; ++i) {
            const QChar sign = next();
            if (sign < u'0' || sign > u'9')
                m_fits = false;
            else
                value = 10 * value + (sign.unicode() - u'0');
        }
        return value;
    }

    void expect(QChar sign)
    {
        if (next() != sign)
            m_fits = false;
    }

    bool accept(QChar sign)
    {
        if (!m_fits || m_at >= m_text.size() || m_text[m_at] != sign)
            return false;
        ++m_at;
        return true;
    }

    /// One to nine digits of a fraction, as milliseconds.
    int milliseconds()
    {
        int value = 0;
        int count = 0;
        for (; m_at < m_text.size() && m_text[m_at] >= u'0' && m_text[m_at] <= u'9'; ++m_at, ++count) {
            if (count < 3)
                value = 10 * value + (m_text[m_at].unicode() - u'0');
        }
        if (count < 1 || count > 9)
            m_fits = false;
        for (; count < 3; ++count)
            value *= 10;
        return value;
    }

    bool complete() const { return m_fits && m_at == m_text.size(); }

private:
    QChar next() { return m_fits && m_at < m_text.size() ? m_text[m_at++] : QChar(); }

    const QString &m_text;
    qsizetype m_at = 0;
    bool m_fits = true;
};

QDate scanDate(Scanner &scanner)
{
    const int year = scanner.digits(4);
    scanner.expect(u'-');
    const int month = scanner.digits(2);
    scanner.expect(u'-');
    return {year, month, scanner.digits(2)};
}

QTime scanTime(Scanner &scanner)
{
    const int hour = scanner.digits(2);
    scanner.expect(u':');
    const int minute = scanner.digits(2);
    int second = 0;
    int millisecond = 0;
    if (scanner.accept(u':')) {
        second = scanner.digits(2);
        if (scanner.accept(u'.'))
            millisecond = scanner.milliseconds();
    }
    return {hour, minute, second, millisecond};
}

/// Seconds east of UTC; nothing if it is none.
std::optional<int> scanOffset(Scanner &scanner)
{
    if (scanner.accept(u'Z'))
        return 0;
    const bool west = scanner.accept(u'-');
    if (!west)
        scanner.expect(u'+');
    const int hours = scanner.digits(2);
    scanner.expect(u':');
    const int minutes = scanner.digits(2);
    const int seconds = (60 * hours + minutes) * 60;
    if (minutes > 59 || seconds > 14 * 3600)
        return std::nullopt;
    return west ? -seconds : seconds;
}

} // namespace

std::optional<QDateTime> parseMoment(const QString &text)
{
    Scanner scanner(text);
    const QDate date = scanDate(scanner);
    scanner.expect(u'T');
    const QTime time = scanTime(scanner);
    const auto offset = scanOffset(scanner);
    if (!scanner.complete() || !date.isValid() || !time.isValid() || !offset)
        return std::nullopt;
    return *offset == 0 ? QDateTime(date, time, Qt::UTC) : QDateTime(date, time, Qt::OffsetFromUTC, *offset);
}

QString momentText(const QDateTime &moment)
{
    const QDateTime withOffset = moment.toOffsetFromUtc(moment.offsetFromUtc());
    return withOffset.toString(withOffset.time().msec() == 0 ? Qt::ISODate : Qt::ISODateWithMs);
}

std::optional<QDate> parseDate(const QString &text)
{
    Scanner scanner(text);
    const QDate date = scanDate(scanner);
    if (!scanner.complete() || !date.isValid())
        return std::nullopt;
    return date;
}

QString dateText(const QDate &date)
{
    return date.toString(Qt::ISODate);
}

} // namespace plateau::exchange
