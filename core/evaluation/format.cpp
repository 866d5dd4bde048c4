// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/format.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

namespace {

QString fixed(double value, int decimals)
{
    if (decimals < 0) {
        const double unit = std::pow(10.0, -decimals);
        value = std::round(value / unit) * unit;
        decimals = 0;
    }
    // Half a unit of the last decimal, which a binary number only comes near, goes away from zero like any other half.
    constexpr double hair = 1e-12;
    const QString text = QString::number(value * (1 + hair), 'f', decimals);
    const bool isZero = std::ranges::none_of(text, [](QChar c) { return c >= u'1' && c <= u'9'; });
    return isZero && text.startsWith(u'-') ? text.mid(1) : text;
}

/// The window is English where it is not in the language of the desk.
QLocale spoken(const QLocale &locale)
{
    switch (locale.language()) {
    case QLocale::English:
    case QLocale::German:
    case QLocale::French:
    case QLocale::Spanish:
        return locale;
    default:
        return QLocale(QLocale::English, QLocale::UnitedKingdom);
    }
}

/// In Spanish "y" is "e" before the sound of an i.
bool soundsLikeI(const QString &name)
{
    const QString low = name.toLower();
    const bool isGlide = low.startsWith("hia"_L1) || low.startsWith("hie"_L1) || low.startsWith("hio"_L1);
    return !isGlide && (low.startsWith(u'i') || low.startsWith(u'í') || low.startsWith("hi"_L1) || low.startsWith("hí"_L1));
}

} // namespace

/// Decimals that show so many significant figures of the value, as it will stand after rounding (0.0996 to
/// two figures is 0.10, not 0.100).
int decimalsFor(double value, int figures)
{
    const double size = std::abs(value);
    if (size == 0 || !std::isfinite(size))
        return figures - 1;
    int exponent = static_cast<int>(std::floor(std::log10(size)));
    const double unit = std::pow(10.0, exponent - figures + 1);
    if (std::round(size / unit) * unit >= std::pow(10.0, exponent + 1) * (1 - 1e-12))
        ++exponent;
    return figures - 1 - exponent;
}

QString absorbanceText(double absorbance)
{
    return fixed(absorbance, 3);
}

QString significantText(double value, int figures)
{
    return fixed(value, decimalsFor(value, figures));
}

QString uncertaintyText(double expandedUncertainty)
{
    return significantText(expandedUncertainty, 2);
}

QString valueText(double value, std::optional<double> expandedUncertainty)
{
    if (expandedUncertainty && *expandedUncertainty > 0)
        return fixed(value, decimalsFor(*expandedUncertainty, 2));
    return significantText(value, 3);
}

QString strengthText(double concentration_g_per_L, std::optional<double> uncertainty_percent)
{
    constexpr int mostFigures = 6;
    constexpr double coverage = 2;
    const double expanded = coverage * concentration_g_per_L * uncertainty_percent.value_or(0) / 100;
    if (expanded > 0 && decimalsFor(expanded, 2) < decimalsFor(concentration_g_per_L, mostFigures))
        return valueText(concentration_g_per_L, expanded);
    return roundedText(concentration_g_per_L, mostFigures);
}

QStringList comparedTexts(double value, const std::vector<double> &limits, int decimals)
{
    constexpr int mostDecimals = 9;
    const auto looksLike = [&](double limit) {
        return std::abs(value - limit) > 1e-9 * std::abs(limit) &&
               fixed(value, decimals) == fixed(limit, decimals);
    };
    while (decimals < mostDecimals && std::ranges::any_of(limits, looksLike))
        ++decimals;
    QStringList texts{fixed(value, decimals)};
    for (const double limit : limits)
        texts.append(fixed(limit, decimals));
    return texts;
}

QString withUnit(const QString &number, const QString &unit)
{
    constexpr QChar noBreakSpace(0x00a0);
    QString together = unit;
    together.replace(u' ', noBreakSpace);
    return number + noBreakSpace + together;
}

QString minutesText(double time_min)
{
    const qint64 seconds = std::llround(std::abs(time_min) * 60);
    return withUnit(u"%1:%2"_s.arg(seconds / 60).arg(seconds % 60, 2, 10, QChar(u'0')), u"min"_s);
}

QString spreadText(double spread, double value, int figures)
{
    // None: to as many decimals as the value has to four figures, which a spread of it would be read to.
    return spread <= 1e-9 * std::abs(value) ? QString::number(0.0, 'f', value == 0 ? 0 : decimalsFor(value, 4))
                                            : significantText(spread, figures);
}

QString lowerBoundText(double bound, int figures)
{
    const int decimals = decimalsFor(bound, figures);
    const double unit = std::pow(10, -decimals);
    return significantText(std::floor(bound / unit * (1 + 1e-12)) * unit, figures);
}

QString upperBoundText(double bound, int figures)
{
    const int decimals = decimalsFor(bound, figures);
    const double unit = std::pow(10, -decimals);
    return significantText(std::ceil(bound / unit * (1 - 1e-12)) * unit, figures);
}

QString plainText(double value)
{
    const QString text = QString::number(value, 'g', QLocale::FloatingPointShortest);
    // What somebody may have to key is no power of ten; what no bench has stays short.
    constexpr double least = 1e-12;
    constexpr double most = 1e15;
    const bool isReadable = std::abs(value) > least && std::abs(value) < most;
    return text.contains(u'e') && isReadable ? QString::number(value, 'f', QLocale::FloatingPointShortest) : text;
}

QStringList pairedTexts(double value, double width)
{
    const auto decimalsKeyed = [](double number) {
        const QString text = plainText(number);
        const qsizetype point = text.indexOf(u'.');
        return point < 0 || text.contains(u'e') ? qsizetype(0) : text.size() - point - 1;
    };
    const int decimals = static_cast<int>(std::max(decimalsKeyed(value), decimalsKeyed(width)));
    return {fixed(value, decimals), fixed(width, decimals)};
}

QString roundedText(double value, int figures)
{
    return plainText(significantText(value, figures).toDouble());
}

QString capitalised(const QString &sentence)
{
    return sentence.left(1).toUpper() + sentence.mid(1);
}

QString afterColon(const QString &sentence, const QLocale &locale)
{
    if (sentence.size() < 2 || spoken(locale).language() == QLocale::German)
        return sentence;
    const bool isWord = sentence[1].isLower() || sentence[1] == u' ' || sentence[1] == u'\u2019' || sentence[1] == u'\'';
    return isWord ? sentence.left(1).toLower() + sentence.mid(1) : sentence;
}

QString andJoined(const QStringList &names, const QLocale &locale)
{
    const QLocale language = spoken(locale);
    QString list = language.createSeparatedList(names);
    if (language.language() == QLocale::Spanish && names.size() > 1 && soundsLikeI(names.last())) {
        const qsizetype joined = list.size() - names.last().size() - 3;
        if (joined > 0 && QStringView(list).mid(joined, 3) == " y "_L1)
            list.replace(joined, 3, u" e "_s);
    }
    return list;
}

} // namespace plateau::evaluation
