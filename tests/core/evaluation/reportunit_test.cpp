// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/reportunit.h"

#include "core/evaluation/unitsinwords.h"

#include "tests/support/benches.h"
#include "tests/support/print.h"

#include <gtest/gtest.h>

using namespace plateau;
using namespace plateau::evaluation;
using namespace Qt::StringLiterals;

namespace {

constexpr double glucose_g_per_mol = 180.16;

Result glucose(double value, const QString &unit = u"g/L"_s)
{
    Result result;
    result.measurand = u"glucose"_s;
    result.value = value;
    result.unit = unit;
    result.expandedUncertainty = value / 50;
    result.coverageFactor = 2;
    result.degreesOfFreedom = 40;
    return result;
}

assay::Method sugars()
{
    assay::Method method = test::sequentialMethod();
    method.id = u"sugars"_s;
    method.measurands[0].id = u"glucose"_s;
    method.measurands[0].molarMass_g_per_mol = glucose_g_per_mol;
    method.measurands[1].id = u"fructose"_s;
    method.measurands[1].molarMass_g_per_mol = glucose_g_per_mol;
    method.derived = {
        {u"hexoses"_s, u"Hexoses"_s, {{{}, u"glucose"_s, 1}, {{}, u"fructose"_s, 1}}},
        {u"starch"_s, u"Starch"_s, {{{}, u"glucose"_s, 0.9}}},
        {u"bound"_s, u"Bound"_s, {{{}, u"glucose"_s, 1}, {u"free"_s, u"glucose"_s, -1}}},
    };
    return method;
}

assay::Method freeSugar(double molarMass_g_per_mol)
{
    assay::Method method = test::risingMethod();
    method.id = u"free"_s;
    method.measurands[0].id = u"glucose"_s;
    method.measurands[0].molarMass_g_per_mol = molarMass_g_per_mol;
    return method;
}

} // namespace

TEST(ReportUnit, WordsReadBack)
{
    EXPECT_EQ(reportUnits().size(), 7U);
    for (const ReportUnit unit : reportUnits())
        EXPECT_EQ(reportUnitFromWord(reportUnitWord(unit)), unit) << reportUnitWord(unit).toStdString();
    EXPECT_EQ(reportUnitFromWord(u" mg/100\u00a0mL "_s), ReportUnit::MilligramPer100mL);
    EXPECT_EQ(reportUnitFromWord(u"g/l"_s), std::nullopt);
    EXPECT_EQ(reportUnitFromWord(u"ppm"_s), std::nullopt);
    EXPECT_EQ(reportUnitFromWord({}), std::nullopt);
}

TEST(ReportUnit, EachFormHasItsUnitsAndMmolNeedsAMolarMass)
{
    using enum ReportUnit;
    EXPECT_EQ(unitsFor(run::Form::Liquid, true),
              (std::vector{GramPerLitre, MilligramPerLitre, MillimolPerLitre, MilligramPer100mL}));
    EXPECT_EQ(unitsFor(run::Form::Liquid, false),
              (std::vector{GramPerLitre, MilligramPerLitre, MilligramPer100mL}));
    EXPECT_EQ(unitsFor(run::Form::Solid, true),
              (std::vector{GramPer100g, GramPerKilogram, MilligramPerKilogram}));
    for (const run::Form form : {run::Form::Liquid, run::Form::Solid})
        EXPECT_EQ(unitsFor(form, true).front(), evaluationUnit(form));
}

TEST(ReportUnit, FactorsAreThoseOfTheUnits)
{
    using enum ReportUnit;
    struct Row {
        ReportUnit from;
        ReportUnit to;
        double factor;
    };
    for (const Row &row :
         {Row{GramPerLitre, MilligramPerLitre, 1000}, Row{GramPerLitre, MilligramPer100mL, 100},
          Row{GramPerLitre, MillimolPerLitre, 1000 / glucose_g_per_mol},
          Row{MillimolPerLitre, MilligramPerLitre, glucose_g_per_mol},
          Row{MilligramPerLitre, MilligramPer100mL, 0.1}, Row{GramPer100g, GramPerKilogram, 10},
          Row{GramPer100g, MilligramPerKilogram, 10000}, Row{MilligramPerKilogram, GramPerKilogram, 0.001},
          Row{GramPer100g, GramPer100g, 1}}) {
        const auto factor = conversionFactor(row.from, row.to, glucose_g_per_mol);
        ASSERT_TRUE(factor.value) << factor.obstacle.toStdString();
        EXPECT_DOUBLE_EQ(*factor.value, row.factor);
        EXPECT_DOUBLE_EQ(*conversionFactor(row.to, row.from, glucose_g_per_mol).value, 1 / row.factor);
    }
}

TEST(ReportUnit, WhatNeedsADensityIsRefused)
{
    for (const ReportUnit from : reportUnits()) {
        for (const ReportUnit to : reportUnits()) {
            const auto factor = conversionFactor(from, to, glucose_g_per_mol);
            EXPECT_EQ(factor.value.has_value(), formOf(from) == formOf(to));
            EXPECT_EQ(factor.obstacle.contains(u"density"_s), formOf(from) != formOf(to));
        }
    }
    const auto refused = reportedAs(glucose(0.2), sugars(), ReportUnit::MilligramPerKilogram);
    EXPECT_FALSE(refused.value);
    EXPECT_EQ(refused.obstacle, u"a result in g/L cannot be given in mg/kg without the density, which nobody "
                                "stated; choose a unit per volume"_s);
}

TEST(ReportUnit, EverythingOfAResultIsConverted)
{
    Result result = glucose(0.2);
    result.lessThan = 0.3;
    result.greaterThan = 0.1;
    const auto mg = reportedAs(result, sugars(), ReportUnit::MilligramPerLitre);
    ASSERT_TRUE(mg.value);
    EXPECT_DOUBLE_EQ(*mg.value->value, 200);
    EXPECT_DOUBLE_EQ(*mg.value->expandedUncertainty, 4);
    EXPECT_DOUBLE_EQ(*standardUncertainty(*mg.value), 2);
    EXPECT_DOUBLE_EQ(*mg.value->lessThan, 300);
    EXPECT_DOUBLE_EQ(*mg.value->greaterThan, 100);
    EXPECT_EQ(mg.value->degreesOfFreedom, 40);
    EXPECT_EQ(mg.value->coverageFactor, 2);

    const auto solid = reportedAs(glucose(1.5, u"g/100 g"_s), sugars(), ReportUnit::MilligramPerKilogram);
    ASSERT_TRUE(solid.value);
    EXPECT_DOUBLE_EQ(*solid.value->value, 15000);
    EXPECT_FALSE(solid.value->lessThan);
    EXPECT_FALSE(reportedAs(glucose(1.5, u"g/100 g"_s), sugars(), ReportUnit::GramPerLitre).value);
}

TEST(ReportUnit, MmolComesFromTheMeasurandsMolarMass)
{
    const auto mmol = reportedAs(glucose(0.18016), sugars(), ReportUnit::MillimolPerLitre);
    ASSERT_TRUE(mmol.value);
    EXPECT_DOUBLE_EQ(*mmol.value->value, 1);
}

TEST(ReportUnit, ADerivedResultHasAMolarMassOnlyWhereAllOfItIsOneSubstance)
{
    const assay::Method method = sugars();
    EXPECT_EQ(molarMassOf(u"hexoses"_s, method), glucose_g_per_mol);
    EXPECT_EQ(molarMassOf(u"starch"_s, method), std::nullopt) << "counts 0.9 of it";
    EXPECT_EQ(molarMassOf(u"bound"_s, method), std::nullopt) << "the other method is not at hand";
    const assay::Method same[]{freeSugar(glucose_g_per_mol)};
    const assay::Method other[]{freeSugar(342.3)};
    EXPECT_EQ(molarMassOf(u"bound"_s, method, same), glucose_g_per_mol);
    EXPECT_EQ(molarMassOf(u"bound"_s, method, other), std::nullopt);
    EXPECT_EQ(molarMassOf(u"nothing"_s, method), std::nullopt);

    Result starch = glucose(0.9);
    starch.measurand = u"starch"_s;
    EXPECT_TRUE(reportedAs(starch, method, ReportUnit::MilligramPerLitre).value);
    const auto refused = reportedAs(starch, method, ReportUnit::MillimolPerLitre);
    EXPECT_FALSE(refused.value);
    EXPECT_TRUE(refused.obstacle.contains(u"molar mass"_s)) << refused.obstacle.toStdString();
}

TEST(ReportUnit, AResultWithoutValueOrBoundIsRefused)
{
    Result result = glucose(0.2);
    result.value.reset();
    result.expandedUncertainty.reset();
    EXPECT_FALSE(reportedAs(result, sugars(), ReportUnit::MilligramPerLitre).value);
    result.lessThan = 0.01;
    const auto bound = reportedAs(result, sugars(), ReportUnit::MilligramPerLitre);
    ASSERT_TRUE(bound.value);
    EXPECT_FALSE(bound.value->value);
    EXPECT_DOUBLE_EQ(*bound.value->lessThan, 10);
    result.unit = u"ppm"_s;
    EXPECT_FALSE(reportedAs(result, sugars(), ReportUnit::MilligramPerLitre).value);
}

TEST(ReportUnit, TextRoundsToTheUncertaintyAndABoundStandsFirst)
{
    Reported reported{152.34, 9.06, 2, 40, {}, {}, ReportUnit::MilligramPerLitre};
    EXPECT_EQ(reportedText(reported), u"152.3 \u00b1 9.1\u00a0mg/L"_s);
    reported.expandedUncertainty.reset();
    EXPECT_EQ(reportedText(reported), u"152\u00a0mg/L"_s);
    reported.lessThan = 10;
    EXPECT_EQ(reportedText(reported), u"< 10\u00a0mg/L"_s);
    reported.lessThan.reset();
    reported.greaterThan = 300;
    EXPECT_EQ(reportedText(reported), u"> 300\u00a0mg/L"_s);
    EXPECT_EQ(reportedText({}), u"no value"_s);
}

TEST(UnitsInWords, AmountsAreGivenInTheOtherUnitWithAsManyFigures)
{
    using enum ReportUnit;
    EXPECT_EQ(inUnit(u"The replicates are 0.0118\u00a0g/L apart, more than 0.0110\u00a0g/L (5\u00a0%)."_s, GramPerLitre,
                     MilligramPerLitre),
              u"The replicates are 11.8\u00a0mg/L apart, more than 11.0\u00a0mg/L (5\u00a0%)."_s);
    EXPECT_EQ(inUnit(u"0.2\u00a0g/L"_s, GramPerLitre, MilligramPerLitre), u"200\u00a0mg/L"_s);
    EXPECT_EQ(inUnit(u"0.0034\u00a0g/100\u00a0g"_s, GramPer100g, MilligramPerKilogram), u"34\u00a0mg/kg"_s);
    EXPECT_EQ(inUnit(u"0.0118\u00a0g/L"_s, GramPerLitre, MillimolPerLitre), u"0.0118\u00a0g/L"_s)
        << "no molar mass is known to it";
    EXPECT_EQ(inUnit(u"0.0118\u00a0g/L of the extract"_s, GramPer100g, MilligramPerKilogram),
              u"0.0118\u00a0g/L of the extract"_s);
}
