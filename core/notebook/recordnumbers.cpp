// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/recordnumbers.h"

#include "core/evaluation/format.h"

#include <QStringList>

#include <algorithm>
#include <cmath>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

/// Without what the last bits of a conversion make of it.
double withoutLastBits(double value)
{
    constexpr int figures = 12;
    return QString::number(value, 'g', figures).toDouble();
}

int figuresOf(const QString &number)
{
    const auto isCounted = [](QChar sign) { return sign.isDigit(); };
    const auto first = std::ranges::find_if(number, [](QChar sign) { return sign.isDigit() && sign != u'0'; });
    return static_cast<int>(std::count_if(first, number.end(), isCounted));
}

} // namespace

QString recordNumber(double value)
{
    // Nobody keys more.
    constexpr int mostKeyed = 9;
    const double near = withoutLastBits(value);
    const QString text = evaluation::plainText(near);
    if (figuresOf(text) <= mostKeyed)
        return text;
    constexpr int workedOut = 4;
    const int beforeThePoint = static_cast<int>(std::floor(std::log10(std::abs(near)))) + 1;
    return evaluation::roundedText(near, std::max(workedOut, beforeThePoint));
}

bool isKeyedInPercent(const QString &field)
{
    static const QStringList fractions{u"purity"_s, u"purity_half_width"_s, u"water"_s, u"water_half_width"_s,
                                       u"loss_per_hour"_s};
    return fractions.contains(field);
}

QString recordPercent(double fraction, double beside)
{
    const double percent = withoutLastBits(100 * fraction);
    if (fraction == 0 || beside == 0)
        return recordNumber(percent);
    return evaluation::pairedTexts(percent, withoutLastBits(100 * beside)).front();
}

} // namespace plateau::notebook
