// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/decimal.h"

#include "tests/support/print.h"

#include <QLocale>

#include <gtest/gtest.h>

#include <clocale>
#include <cmath>

namespace plateau::exchange {

using namespace Qt::StringLiterals;

namespace {

std::optional<double> number(std::string_view text)
{
    const auto parsed = parseDecimal(text);
    const double *value = std::get_if<double>(&parsed);
    return value ? std::optional(*value) : std::nullopt;
}

} // namespace

TEST(Decimal, PointAndCommaAreTheSameMark)
{
    struct Row {
        const char *text;
        double value;
    };
    const Row rows[] = {
        {"2,5", 2.5},
        {"2.5", 2.5},
        {"0,512", 0.512},
        {"0.512", 0.512},
        {".512", 0.512},
        {",512", 0.512},
        {"1,", 1},
        {"1.", 1},
        {"12.5", 12.5},
        {"12,5", 12.5},
        {"1,500", 1.5},
        {"1.500", 1.5},
        {"0,001", 0.001},
        {"0.001", 0.001},
        {"62,5", 62.5},
        {"-1", -1},
        {"\xE2\x88\x92"
         "1",
         -1},
        {"-0,013", -0.013},
        {"+1", 1},
        {"12", 12},
        {"007", 7},
        {" 0.5 ", 0.5},
        {"\t0.5\r\n", 0.5},
        {"\xC2\xA0"
         "0.5",
         0.5},
        {"0", 0},
        {"-0", 0},
    };
    for (const Row &row : rows) {
        const auto value = number(row.text);
        ASSERT_TRUE(value) << row.text;
        EXPECT_EQ(*value, row.value) << row.text;
    }
}

TEST(Decimal, WhatCouldBeMisunderstoodIsRefusedWithItsReason)
{
    struct Row {
        const char *text;
        DecimalFault fault;
    };
    const Row rows[] = {
        {"", DecimalFault::Empty},
        {"   ", DecimalFault::Empty},
        {"1,500.2", DecimalFault::Grouping},
        {"1.500,2", DecimalFault::Grouping},
        {"1 500", DecimalFault::Grouping},
        {"1\xC2\xA0"
         "500",
         DecimalFault::Grouping},
        {"1'500", DecimalFault::Grouping},
        {"1\xE2\x80\x99"
         "500",
         DecimalFault::Grouping},
        {"0..5", DecimalFault::TwoDecimalMarks},
        {"1,500,000", DecimalFault::Grouping},
        {"12.345.678,9", DecimalFault::Grouping},
        // A second reading typed behind the first, not thousands.
        {"1.0886,31", DecimalFault::TwoDecimalMarks},
        {"0.12,5", DecimalFault::TwoDecimalMarks},
        {"0,631.", DecimalFault::Grouping},
        {"1.50.200", DecimalFault::TwoDecimalMarks},
        {".,", DecimalFault::TwoDecimalMarks},
        {"1.2.3", DecimalFault::TwoDecimalMarks},
        {"1e-3", DecimalFault::Letter},
        {"1E3", DecimalFault::Letter},
        {"nan", DecimalFault::Letter},
        {"inf", DecimalFault::Letter},
        {"0x1F", DecimalFault::Letter},
        {"0.5 mL", DecimalFault::Letter},
        {"0.5mL", DecimalFault::Letter},
        {"--1", DecimalFault::Letter},
        {"1-", DecimalFault::Letter},
        {"=1+1", DecimalFault::Letter},
        {"\xD9\xA1\xD9\xA2", DecimalFault::OtherDigits}, // Arabic-Indic 12
        {"1\xD9\xAB"
         "5",
         DecimalFault::OtherDigits},                 // Arabic decimal mark
        {"\xEF\xBC\x91", DecimalFault::OtherDigits}, // full-width 1
        {"1\xC2\xB2", DecimalFault::OtherDigits},    // superscript 2
        {".", DecimalFault::NoDigits},
        {",", DecimalFault::NoDigits},
        {"-", DecimalFault::NoDigits},
        {"-.", DecimalFault::NoDigits},
        {"1234567890123456789012345678901", DecimalFault::TooLong},
    };
    for (const Row &row : rows) {
        const auto parsed = parseDecimal(std::string_view(row.text));
        const DecimalFault *fault = std::get_if<DecimalFault>(&parsed);
        ASSERT_TRUE(fault) << row.text;
        EXPECT_EQ(*fault, row.fault) << row.text;
    }
}

TEST(Decimal, NeitherQtNorCLocaleChangesTheValue)
{
    const QLocale before;
    for (const char *name : {"C", "en_US", "de_DE", "de_CH", "fr_FR", "ar_EG", "hi_IN", "fa_IR"}) {
        QLocale::setDefault(QLocale(QString::fromLatin1(name)));
        std::setlocale(LC_ALL, (std::string(name) + ".UTF-8").c_str());
        EXPECT_EQ(number("0,512"), 0.512) << name;
        EXPECT_EQ(number("0.512"), 0.512) << name;
        EXPECT_FALSE(number("1.500,2")) << name;
    }
    std::setlocale(LC_ALL, "C.UTF-8");
    QLocale::setDefault(before);
}

TEST(Decimal, TextAndBytesAreReadAlike)
{
    EXPECT_EQ(std::get<double>(parseDecimal(u"\u22120,5"_s)), -0.5);
    EXPECT_EQ(std::get<DecimalFault>(parseDecimal(u"½"_s)), DecimalFault::OtherDigits);
}

TEST(Decimal, WhatIsPrintedIsReadBack)
{
    for (int i = -40'000; i <= 40'000; i += 7) {
        const QString text = QString::number(i / 10'000.0, 'f', 4);
        QString comma = text;
        comma.replace(u'.', u',');
        EXPECT_EQ(std::get<double>(parseDecimal(text)), text.toDouble());
        EXPECT_EQ(std::get<double>(parseDecimal(comma)), text.toDouble());
    }
}

TEST(Decimal, MalformedBytesAreRefusedNotFollowed)
{
    for (const char *text : {"\xFF", "1\xC2", "\xE2\x88", "1\xF0\x9F"})
        EXPECT_FALSE(number(text));
    EXPECT_FALSE(number(std::string_view("1\0002", 3)));
}

TEST(Decimal, EveryFaultHasASentence)
{
    for (const DecimalFault fault :
         {DecimalFault::Empty, DecimalFault::TwoDecimalMarks, DecimalFault::Grouping, DecimalFault::Letter,
          DecimalFault::OtherDigits, DecimalFault::NoDigits, DecimalFault::TooLong})
        EXPECT_TRUE(faultSentence(fault).endsWith(u'.'));
}

} // namespace plateau::exchange
