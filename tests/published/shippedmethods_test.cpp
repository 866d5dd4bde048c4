// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// The shipped methods that name a published source give its figures. The sources, and which of their numbers
// were read and which are from memory, stand in factors_test.cpp. Where a printed figure and the arithmetic
// disagree, the test says which is right and why.

#include "core/exchange/library.h"
#include "core/run/volumes.h"
#include "tests/published/pipetting.h"
#include "tests/published/printed.h"

#include <gtest/gtest.h>

namespace plateau::published {

using namespace Qt::StringLiterals;

namespace {

exchange::MethodLibrary shippedMethods()
{
    return exchange::MethodLibrary::load(QStringLiteral(PLATEAU_SOURCE_DIR) + u"/resources/methods"_s);
}

assay::Method shipped(const QString &id)
{
    return shippedMethods().find(id).value();
}

/// A blank of no signal and the sample with this net signal, by the method.
double valueOfSignal(const assay::Method &method, run::Sample sample, double netSignal)
{
    run::Run run =
        runOf(std::move(sample), {tubeOf(run::Role::Blank, 0.1, 0.1), sampleTube(0.1, 0.1 + netSignal)});
    run.method = method.id;
    return valueOf(method, run);
}

/// What a net signal stands for in the solution pipetted, and how much of it is then in the tube.
double pipetted_g_per_L(const assay::Method &method, double netSignal)
{
    return netSignal * factor_g_per_L(method, method.wavelength_nm);
}
double sampleVolume_mL(const assay::Method &method)
{
    return assay::findComponent(method, method.sample)->volume_mL;
}
double inTheTube_ug(const assay::Method &method, double concentration_g_per_L)
{
    return concentration_g_per_L * sampleVolume_mL(method) * 1000;
}
double netSignalOf_ug(const assay::Method &method, double amount_ug)
{
    return amount_ug / 1000 / sampleVolume_mL(method) / factor_g_per_L(method, method.wavelength_nm);
}

} // namespace

TEST(ShippedMethods, AreAllRead)
{
    const auto library = shippedMethods();
    for (const auto &problem : library.problems())
        ADD_FAILURE() << problem.fileName.toStdString() << ": " << problem.problem.message.toStdString();
    EXPECT_GE(library.methods().size(), 23U);
    for (const auto &method : library.methods())
        EXPECT_FALSE(method.source.isEmpty()) << method.id.toStdString();
}

// A further published method belongs into this list once its figures are checked below.
TEST(ShippedMethods, EveryPublishedOneIsCheckedHere)
{
    QStringList published;
    for (const auto &method : shippedMethods().methods()) {
        if (!method.name.endsWith(u"(template)"_s))
            published.append(method.id);
    }
    EXPECT_EQ(published, (QStringList{u"citric-acid-wine"_s, u"d-sorbitol"_s,
                                      u"glucose-after-starch-digestion"_s, u"l-malic-acid"_s}));
}

TEST(ShippedMethods, MalicAcidHasTheFactorsOfItsSource)
{
    const auto method = shipped(u"l-malic-acid"_s);
    EXPECT_THAT(factor_g_per_L(method, 340), FromMemory("0.473"));
    EXPECT_THAT(factor_g_per_L(method, 334), FromMemory("0.482"));
    EXPECT_THAT(factor_g_per_L(method, 365), FromMemory("0.876"));
}

// Published in the same text: 30 to 350 mg/L in the solution pipetted.
TEST(ShippedMethods, MalicAcidWindowIsTheRangeOfItsSource)
{
    const auto method = shipped(u"l-malic-acid"_s);
    EXPECT_NEAR(method.window.minSignal * factor_g_per_L(method, 340), 0.030, 0.002);
    EXPECT_NEAR(method.window.maxSignal * factor_g_per_L(method, 340), 0.350, 0.002);
    // Published: 3 to 35 ug in the tube. Both agree with 0.10 mL.
    EXPECT_THAT(inTheTube_ug(method, 0.030), Published("3"));
    EXPECT_THAT(inTheTube_ug(method, 0.350), Published("35"));
    // Published: below 30 mg/L up to 1 mL of sample, with that much less water.
    EXPECT_EQ(assay::findComponent(method, method.sample)->range_mL->upper, 1.0);
    run::Tube large;
    large.sampleVolume_mL = 1.0;
    EXPECT_NEAR(run::volumeAt_mL(method, large, u"A2"_s), 2.22, 1e-12);
}

TEST(ShippedMethods, CitricAcidHasTheFactorsOfItsSource)
{
    const auto method = shipped(u"citric-acid-wine"_s);
    EXPECT_THAT(factor_g_per_L(method, 340), FromMemory("0.479"));
    EXPECT_THAT(factor_g_per_L(method, 334), FromMemory("0.488"));
    EXPECT_THAT(factor_g_per_L(method, 365), FromMemory("0.887"));
    // Published in the same text: 20 to 400 mg/L direct.
    EXPECT_NEAR(method.window.minSignal * factor_g_per_L(method, 340), 0.020, 0.002);
    EXPECT_NEAR(method.window.maxSignal * factor_g_per_L(method, 340), 0.400, 0.002);
}

// Published in the same text: 20 to 400 mg/L, and 5 to 80 ug in the tube. The upper ends agree with 0.20 mL.
// The lower ones do not: 20 mg/L are 4 ug. The concentration is right, since the text tells the analyst to
// dilute to it; 5 ug would be 25 mg/L.
TEST(ShippedMethods, CitricAcidRangeInTheTubeIsPrintedTooHighAtItsLowerEnd)
{
    const auto method = shipped(u"citric-acid-wine"_s);
    EXPECT_THAT(inTheTube_ug(method, 0.400), Published("80"));
    EXPECT_NEAR(inTheTube_ug(method, 0.020), 4, 1e-12);
    EXPECT_NEAR(inTheTube_ug(method, pipetted_g_per_L(method, method.window.minSignal)), 4, 0.2);
    EXPECT_NEAR(inTheTube_ug(method, 0.025), 5, 1e-12);
}

TEST(ShippedMethods, SorbitolHasTheFactorOfItsSource)
{
    const auto method = shipped(u"d-sorbitol"_s);
    EXPECT_THAT(factor_g_per_L(method, 492) * 1000, Published("279.2"));
    // Published in the same text: the optimum ends at 350 mg/100 g with 3 g in 100 mL, 10.5 mg/100 mL.
    EXPECT_NEAR(method.window.maxSignal * factor_g_per_L(method, 492), 0.105, 0.0005);
}

// Published in the same text: the optimum of 20 to 350 mg/100 g is 0.5 to 10 mg in the tube. With 3 g in 100
// mL and 0.1 mL of that it is 0.6 to 10.5 ug: micrograms are right, as milligrams would need a net signal
// no photometer shows.
TEST(ShippedMethods, SorbitolInTheTubeIsMicrogramsPrintedAsMilligrams)
{
    const auto method = shipped(u"d-sorbitol"_s);
    EXPECT_THAT(inTheTube_ug(method, 0.020 * 3 / 10), PublishedWithin("0.5", 1.0));
    EXPECT_THAT(inTheTube_ug(method, 0.350 * 3 / 10), PublishedWithin("10", 0.5));
    EXPECT_NEAR(inTheTube_ug(method, pipetted_g_per_L(method, method.window.maxSignal)), 10.5, 0.05);
    EXPECT_GT(netSignalOf_ug(method, 10 * 1000), 300);
}

// The printed factor of 279.2 over m is mg/L in the solution pipetted; for mg/100 g with m grams in 100 mL it
// has to be 2792 over m, which the stated optimum confirms: 350 mg/100 g lie within the photometer's reach.
TEST(ShippedMethods, SorbitolInAHundredGramsNeedsTenTimesThePrintedFactor)
{
    const auto method = shipped(u"d-sorbitol"_s);
    const double netSignal = 0.3;
    const double found_mg_per_100g = valueOfSignal(method, solidSample(3.0, 100), netSignal) * 1000;
    EXPECT_NEAR(found_mg_per_100g, 2792 * netSignal / 3.0, 0.02);
    EXPECT_GT(found_mg_per_100g, 20);
    EXPECT_LT(found_mg_per_100g, 350);
}

// No factor is printed: recomputed from the published volumes.
TEST(ShippedMethods, GlucoseAfterStarchDigestionHasTheVolumesOfItsSource)
{
    const auto method = shipped(u"glucose-after-starch-digestion"_s);
    EXPECT_NEAR(run::volumeAt_mL(method, run::Tube{}, u"A2"_s), 3.22, 1e-12);
    EXPECT_NEAR(factor_g_per_L(method, 340), 0.920818, 5e-7);
    EXPECT_NEAR(factor_g_per_L(method, 334), 0.938698, 5e-7);
    EXPECT_NEAR(factor_g_per_L(method, 365), 1.706221, 5e-7);
}

// Published in the same text: mass p and flask by starch content, with the factor f of each flask; the
// glucose in g/100 g is c x 100 / (f x p), that is f = 1000 mL / flask.
TEST(ShippedMethods, GlucoseAfterStarchDigestionFollowsTheFlasksOfItsSource)
{
    const auto method = shipped(u"glucose-after-starch-digestion"_s);
    const double netSignal = 0.5;
    struct Row {
        double mass_g;
        double flask_mL;
        double f;
    };
    for (const Row &row : {Row{0.4, 500, 2}, Row{0.5, 500, 2}, Row{1, 250, 4}, Row{2, 200, 5}}) {
        EXPECT_NEAR(valueOfSignal(method, solidSample(row.mass_g, row.flask_mL), netSignal),
                    0.920818 * netSignal * 100 / (row.f * row.mass_g), 1e-4)
            << row.flask_mL;
    }
}

// Published in the same text: where the reaction has not ended after 15 min, the rise of the readings every 5
// min is extrapolated to the addition. Numbers constructed: 0.001 a minute on an end point of 0.700.
TEST(ShippedMethods, GlucoseAfterStarchDigestionExtrapolatesToTheAddition)
{
    const auto method = shipped(u"glucose-after-starch-digestion"_s);
    auto sample = sampleTube(0.1, 0);
    sample.readings[u"A2"_s] = run::ReadingSeries{{15, 0.715}, {20, 0.720}, {25, 0.725}, {30, 0.730}};
    run::Run run = runOf(liquidSample(), {tubeOf(run::Role::Blank, 0.1, 0.1), sample});
    run.method = method.id;
    EXPECT_NEAR(valueOf(method, run), 0.600 * factor_g_per_L(method, 340), 1e-9);
}

// OIV-MA-AS313-12B, D-malic acid, low concentrations: sensitivity 0.0015 A per mg/L, published. The
// template's 2.95 and 0.10 mL are from memory and give 0.00159, one unit of the last printed digit more: the
// print is cut off, not rounded, or the tube held 3.1 mL.
TEST(ShippedMethods, DMalicAcidTemplateHasTheSensitivityOfTheStandard)
{
    const auto method = shipped(u"d-malic-acid"_s);
    EXPECT_NEAR(1 / factor_g_per_L(method, 340) / 1000, 0.00159, 5e-6);
    EXPECT_THAT(1 / factor_g_per_L(method, 340) / 1000, PublishedWithin("0.0015", 1.0));
}

// The same text, published: below 50 mg/L add 0.025 mL of 0.199 g/L, taken as 50 mg/L. In 0.10 mL of sample
// (from memory) it is 49.75, which is what the program adds.
TEST(ShippedMethods, DMalicAcidStandardAdditionIsFiftyMilligramsALitre)
{
    const auto method = shipped(u"d-malic-acid"_s);
    const double added_g_per_L = 0.199 * 0.025 / sampleVolume_mL(method);
    EXPECT_THAT(added_g_per_L * 1000, Published("50"));
    auto spiked = tubeOf(run::Role::Spiked, 0.1, 0.1 + 0.030 + 0.04975 / factor_g_per_L(method, 340));
    spiked.sample = u"S"_s;
    spiked.spike = run::Spike{u"STD"_s, 0.025};
    auto run = runOf(liquidSample(), {tubeOf(run::Role::Blank, 0.1, 0.1), sampleTube(0.1, 0.130), spiked});
    run.method = method.id;
    run::Standard standard;
    standard.id = u"STD"_s;
    standard.concentration_g_per_L = 0.199;
    run.standards = {standard};
    EXPECT_NEAR(evaluation::evaluate(method, run).spikes.at(0).recovery_percent.value(), 100, 1e-9);
}

// French order of 19 November 1987 (ECOC8700128A), annex V, lactose: 5 to 50 mg in the tube, published. With
// 0.10 mL of a solution near 0.45 g/L it is 45 ug: micrograms are right.
TEST(ShippedMethods, LactoseInTheTubeIsMicrogramsPrintedAsMilligrams)
{
    const auto method = shipped(u"lactose"_s);
    EXPECT_NEAR(inTheTube_ug(method, 0.45), 45, 1e-9);
    EXPECT_LT(netSignalOf_ug(method, 50), *method.window.maxAbsorbance);
    EXPECT_GT(netSignalOf_ug(method, 5 * 1000), *method.window.maxAbsorbance);
}

// Commission Regulation (EEC) No 4154/87: sucrose is 0.95 of the glucose and fructose it gives, published;
// one glucose alone counts twice that. The template's ratio of molar masses says the same.
TEST(ShippedMethods, SucroseCountsAsTheRegulationConvertsIt)
{
    const auto method = shipped(u"sucrose"_s);
    const auto &terms = method.derived.at(0).terms;
    ASSERT_EQ(terms.size(), 2U);
    EXPECT_THAT(terms[0].factor / 2, Published("0.95"));
    EXPECT_NEAR(terms[0].factor, 342.3 / 180.16, 1e-12);
    EXPECT_EQ(terms[1].factor, -terms[0].factor);
    EXPECT_EQ(terms[1].method, u"glucose-fructose"_s);
}

// Sulphur dioxide 64.06 g/mol and a loss of strength: JECFA, potassium metabisulfite,
// https://www.fao.org/3/X3860e/X3860E28.htm (3.203 mg for 1 mL of 0.1 N iodine, published); 2 % an hour is
// common practice, no source.
TEST(ShippedMethods, SulphiteIsReportedAsSulphurDioxide)
{
    for (const QString &id : {u"total-sulphite"_s, u"free-sulphite"_s}) {
        const auto method = shipped(id);
        EXPECT_THAT(method.measurands.at(0).molarMass_g_per_mol / 20, Published("3.203"));
        EXPECT_EQ(method.standard.value().lossPerHour, 0.02);
    }
    const auto bound = shipped(u"total-sulphite"_s).derived.at(0);
    EXPECT_EQ(bound.terms, (std::vector<assay::DerivedTerm>{{{}, u"sulphite"_s, 1},
                                                            {u"free-sulphite"_s, u"free-sulphite"_s, -1}}));
}

// Common practice, no source: 0.5 + 0.2 + 0.1 + 2.5 + 0.02 mL.
TEST(ShippedMethods, SulphiteTubeVolumesAddUp)
{
    const auto method = shipped(u"total-sulphite"_s);
    EXPECT_NEAR(run::volumeAt_mL(method, run::Tube{}, assay::laterReading(method.measurands.at(0).signal)),
                3.32, 1e-12);
}

// CIAAW abridged weights, from memory (C 12.011, H 1.008, O 15.999, S 32.06), to the two decimals the methods
// print.
TEST(ShippedMethods, MolarMassesFollowFromAtomicWeights)
{
    const auto molarMass = [](const QString &id, std::size_t measurand = 0) {
        return shipped(id).measurands.at(measurand).molarMass_g_per_mol;
    };
    const auto mass = [](int c, int h, int o, int n = 0) {
        return 12.011 * c + 1.008 * h + 15.999 * o + 14.007 * n;
    };
    EXPECT_NEAR(molarMass(u"l-malic-acid"_s), mass(4, 6, 5), 0.006);
    EXPECT_NEAR(molarMass(u"citric-acid-wine"_s), mass(6, 8, 7), 0.06); // printed 192.1
    EXPECT_NEAR(molarMass(u"d-sorbitol"_s), mass(6, 14, 6), 0.006);
    EXPECT_NEAR(molarMass(u"glucose-fructose"_s, 0), mass(6, 12, 6), 0.006);
    EXPECT_NEAR(molarMass(u"glucose-fructose"_s, 1), mass(6, 12, 6), 0.006);
    EXPECT_NEAR(molarMass(u"acetic-acid"_s), mass(2, 4, 2), 0.006);
    EXPECT_NEAR(molarMass(u"glycerol"_s), mass(3, 8, 3), 0.006);
    EXPECT_NEAR(molarMass(u"total-sulphite"_s), 32.06 + mass(0, 0, 2), 0.006);
    EXPECT_NEAR(molarMass(u"free-sulphite"_s), 32.06 + mass(0, 0, 2), 0.006);
    EXPECT_NEAR(molarMass(u"l-malic-acid-template"_s), mass(4, 6, 5), 0.006);
    EXPECT_NEAR(molarMass(u"d-malic-acid"_s), mass(4, 6, 5), 0.006);
    EXPECT_NEAR(molarMass(u"l-lactic-acid"_s), mass(3, 6, 3), 0.006);
    EXPECT_NEAR(molarMass(u"d-lactic-acid"_s), mass(3, 6, 3), 0.006);
    EXPECT_NEAR(molarMass(u"citric-acid"_s), mass(6, 8, 7), 0.06); // printed 192.1
    EXPECT_NEAR(molarMass(u"d-gluconic-acid"_s), mass(6, 12, 7), 0.006);
    EXPECT_NEAR(molarMass(u"acetaldehyde"_s), mass(2, 4, 1), 0.006);
    EXPECT_NEAR(molarMass(u"ethanol"_s), mass(2, 6, 1), 0.006);
    EXPECT_NEAR(molarMass(u"sucrose"_s), mass(6, 12, 6), 0.006); // of the D-glucose measured
    EXPECT_NEAR(molarMass(u"glucose-after-starch-digestion"_s), mass(6, 12, 6), 0.006);
    EXPECT_NEAR(molarMass(u"lactose"_s), mass(12, 22, 11), 0.006);
    EXPECT_NEAR(molarMass(u"ammonia-urea"_s, 0), mass(0, 3, 0, 1), 0.006);
    EXPECT_NEAR(molarMass(u"ammonia-urea"_s, 1), mass(1, 4, 1, 2), 0.006);
    EXPECT_NEAR(molarMass(u"nitrate"_s), mass(0, 0, 3, 1), 0.006);
    EXPECT_NEAR(molarMass(u"l-ascorbic-acid"_s), mass(6, 8, 6), 0.006);
    EXPECT_NEAR(molarMass(u"l-glutamic-acid"_s), mass(5, 9, 4, 1), 0.006);
}

} // namespace plateau::published
