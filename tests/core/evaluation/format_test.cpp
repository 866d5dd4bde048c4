// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/format.h"

#include "tests/support/print.h"

#include <gtest/gtest.h>

using namespace plateau::evaluation;
using namespace Qt::StringLiterals;

TEST(Format, AbsorbanceHasThreeDecimalsAndNoNegativeZero)
{
    EXPECT_EQ(absorbanceText(0.5), u"0.500"_s);
    EXPECT_EQ(absorbanceText(-0.0001), u"0.000"_s);
    EXPECT_EQ(absorbanceText(-0.012), u"-0.012"_s);
}

TEST(Format, ValueGoesAsFarAsTwoFiguresOfItsUncertainty)
{
    EXPECT_EQ(valueText(0.168253968, 0.00456), u"0.1683"_s);
    EXPECT_EQ(uncertaintyText(0.00456), u"0.0046"_s);
    EXPECT_EQ(valueText(123.456, 4.2), u"123.5"_s);
    EXPECT_EQ(valueText(12345.6, 230.0), u"12350"_s);
    EXPECT_EQ(uncertaintyText(234.0), u"230"_s);
    EXPECT_EQ(valueText(0.168253968), u"0.168"_s);
    EXPECT_EQ(valueText(0.168253968, 0.0), u"0.168"_s);
}

TEST(Format, AStandardHasTheFiguresThatItsUncertaintyBears)
{
    EXPECT_EQ(strengthText(0.201999, 0.3), u"0.2020"_s); // U = 0.0012
    EXPECT_EQ(strengthText(0.201999, 0.02), u"0.201999"_s); // U = 0.000081
    EXPECT_EQ(strengthText(0.201999, 3.0), u"0.202"_s); // U = 0.012
    EXPECT_EQ(strengthText(0.5, 0.3), u"0.5000"_s); // U = 0.0030
    EXPECT_EQ(strengthText(0.5, 1e-6), u"0.5"_s);
    EXPECT_EQ(strengthText(0.2, std::nullopt), u"0.2"_s);
    EXPECT_EQ(strengthText(0.20199912, 0.0), u"0.201999"_s);
}

TEST(Format, RoundingUpKeepsTheFigures)
{
    EXPECT_EQ(significantText(0.0996, 2), u"0.10"_s);
    EXPECT_EQ(significantText(9.96, 2), u"10"_s);
    EXPECT_EQ(significantText(0.0994, 2), u"0.099"_s);
    EXPECT_EQ(significantText(0, 3), u"0.00"_s);
    EXPECT_EQ(significantText(-0.0456, 2), u"-0.046"_s);
}

TEST(Format, PlainNumbersAreAsShortAsTheyWereKeyed)
{
    EXPECT_EQ(plainText(0.1), u"0.1"_s);
    EXPECT_EQ(plainText(50), u"50"_s);
    EXPECT_EQ(plainText(0.00005), u"0.00005"_s) << "as it would be keyed";
    EXPECT_EQ(plainText(-1e-7), u"-0.0000001"_s);
    EXPECT_EQ(plainText(2.5e6), u"2500000"_s);
    EXPECT_EQ(plainText(1e-300), u"1e-300"_s);
}

TEST(Format, NumberAndUnitStayTogether)
{
    EXPECT_EQ(withUnit(u"95"_s, u"%"_s), u"95\u00a0%"_s);
    EXPECT_EQ(withUnit(u"0.013"_s, u"g/100 g"_s), u"0.013\u00a0g/100\u00a0g"_s);
}

TEST(Format, AValueNeverLooksLikeTheLimitItMissed)
{
    EXPECT_EQ(comparedTexts(90, {95, 105}, 1), (QStringList{u"90.0"_s, u"95.0"_s, u"105.0"_s}));
    EXPECT_EQ(comparedTexts(94.98, {95, 105}, 1), (QStringList{u"94.98"_s, u"95.00"_s, u"105.00"_s}));
    EXPECT_EQ(comparedTexts(0.0998, {0.1}, 3), (QStringList{u"0.0998"_s, u"0.1000"_s}));
    EXPECT_EQ(comparedTexts(0.6 - 0.5, {0.1}, 3), (QStringList{u"0.100"_s, u"0.100"_s}));
}

TEST(Format, AValueAndItsHalfWidthHaveTheSameDecimals)
{
    EXPECT_EQ(pairedTexts(98, 0.5), (QStringList{u"98.0"_s, u"0.5"_s}));
    EXPECT_EQ(pairedTexts(99.75, 0.5), (QStringList{u"99.75"_s, u"0.50"_s}));
    EXPECT_EQ(pairedTexts(10, 2), (QStringList{u"10"_s, u"2"_s}));
    EXPECT_EQ(valueText(98, 0.5), u"98.00"_s);
    EXPECT_EQ(uncertaintyText(0.5), u"0.50"_s);
    EXPECT_EQ(valueText(97.96, 1.2), u"98.0"_s);
}

TEST(Format, ASpreadOfTheLastBitsIsNone)
{
    EXPECT_EQ(spreadText(2.8e-17, 0.136, 2), u"0.0000"_s);
    EXPECT_EQ(spreadText(0, 0, 2), u"0"_s);
    EXPECT_EQ(spreadText(0.000338, 0.1487, 2), u"0.00034"_s);
}

TEST(Format, ABoundIsRoundedToItsSafeSide)
{
    EXPECT_EQ(lowerBoundText(2.2539, 2), u"2.2"_s);
    EXPECT_EQ(lowerBoundText(2.2539, 3), u"2.25"_s);
    EXPECT_EQ(lowerBoundText(0.45, 2), u"0.45"_s);
    EXPECT_EQ(upperBoundText(0.00672, 2), u"0.0068"_s);
    EXPECT_EQ(upperBoundText(0.0067, 2), u"0.0067"_s);
    EXPECT_EQ(upperBoundText(9.96, 2), u"10"_s);
    EXPECT_EQ(lowerBoundText(1234, 2), u"1200"_s);
}

TEST(Format, ASentenceBehindAColonBeginsSmall)
{
    const QLocale english(u"en_GB"_s);
    EXPECT_EQ(afterColon(u"Only digits make a number."_s, english), u"only digits make a number."_s);
    EXPECT_EQ(afterColon(u"A number is needed."_s, english), u"a number is needed."_s);
    for (const QString &kept : {u"A2 is missing."_s, u"NADH is used up."_s, u"L-malic acid"_s, u"8 h"_s})
        EXPECT_EQ(afterColon(kept, english), kept);
    EXPECT_EQ(afterColon(u"L\u2019échantillon manque."_s, QLocale(u"fr_FR"_s)), u"l\u2019échantillon manque."_s);
    EXPECT_EQ(afterColon(u"À saisir."_s, QLocale(u"fr_FR"_s)), u"à saisir."_s);
    EXPECT_EQ(afterColon(u"Solo cifras."_s, QLocale(u"es_ES"_s)), u"solo cifras."_s);
    EXPECT_EQ(afterColon(u"Nur Ziffern ergeben eine Zahl."_s, QLocale(u"de_DE"_s)), u"Nur Ziffern ergeben eine Zahl."_s);
    EXPECT_EQ(afterColon(u"Only digits."_s, QLocale(u"nl_NL"_s)), u"only digits."_s) << "the window is English there";
}

TEST(Format, NamesAreJoinedAsTheLanguageDoes)
{
    const QStringList two{u"Ansa Velmer"_s, u"Ilka Brodovin"_s};
    const QStringList three{u"A1"_s, u"A2"_s, u"A3"_s};
    EXPECT_EQ(andJoined({}, QLocale(u"en_GB"_s)), QString());
    EXPECT_EQ(andJoined({u"A1"_s}, QLocale(u"en_GB"_s)), u"A1"_s);
    EXPECT_EQ(andJoined(two, QLocale(u"en_GB"_s)), u"Ansa Velmer and Ilka Brodovin"_s);
    EXPECT_EQ(andJoined(three, QLocale(u"en_GB"_s)), u"A1, A2 and A3"_s);
    EXPECT_EQ(andJoined(two, QLocale(u"de_DE"_s)), u"Ansa Velmer und Ilka Brodovin"_s);
    EXPECT_EQ(andJoined(three, QLocale(u"de_DE"_s)), u"A1, A2 und A3"_s);
    EXPECT_EQ(andJoined(two, QLocale(u"fr_FR"_s)), u"Ansa Velmer et Ilka Brodovin"_s);
    EXPECT_EQ(andJoined(two, QLocale(u"es_ES"_s)), u"Ansa Velmer e Ilka Brodovin"_s) << "y before the sound of an i";
    EXPECT_EQ(andJoined(three, QLocale(u"es_ES"_s)), u"A1, A2 y A3"_s);
    EXPECT_EQ(andJoined({u"Ana"_s, u"Hielo"_s}, QLocale(u"es_ES"_s)), u"Ana y Hielo"_s);
    EXPECT_EQ(andJoined(two, QLocale::c()), u"Ansa Velmer and Ilka Brodovin"_s);
}
