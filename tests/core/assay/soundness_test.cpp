// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/soundness.h"

#include "tests/support/benches.h"
#include "tests/support/print.h"
#include "tests/support/problems.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <limits>

namespace plateau::assay {

using namespace Qt::StringLiterals;
using test::listed;
using test::names;

namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();

struct Row {
    const char *what;
    std::function<void(Method &)> change;
    /// Both empty: the changed method is still sound.
    const char *pointer;
    const char *fragment;
};

void expectRows(const std::vector<Row> &rows)
{
    for (const Row &row : rows) {
        Method method = test::sequentialMethod();
        row.change(method);
        const Problems problems = problemsOf(method);
        if (*row.fragment)
            EXPECT_TRUE(names(problems, row.pointer, row.fragment)) << row.what << ": " << listed(problems);
        else
            EXPECT_TRUE(problems.empty()) << row.what << ": " << listed(problems);
    }
}

Component &component(Method &method, const QString &id)
{
    return *std::ranges::find(method.components, id, &Component::id);
}

} // namespace

TEST(Template, IsWhatSaysSoInNameOrSource)
{
    Method method = test::risingMethod();
    method.name = u"Perry acid"_s;
    method.source = u"Kit of our supplier, leaflet of 2026; the pattern came from a template"_s;
    EXPECT_FALSE(isTemplate(method));
    EXPECT_TRUE(templateRemarks(method).empty());
    method.name = u"Perry acid (template), copy"_s;
    EXPECT_TRUE(isTemplate(method));
    EXPECT_EQ(templateRemarks(method).size(), 1U);
    EXPECT_TRUE(names(templateRemarks(method), "/name", "(template)", Problem::Severity::Warning));
    method.source = u" Template: set the volumes of your reagent supplier."_s;
    EXPECT_EQ(templateRemarks(method).size(), 2U);
    method.name = u"Perry acid"_s;
    EXPECT_TRUE(isTemplate(method));
    for (const QString &source : {u"Vorlage: die Volumina des Lieferanten"_s, u"Modèle\u00a0: les volumes"_s, u"Plantilla: a"_s}) {
        method.source = source;
        EXPECT_TRUE(isTemplate(method)) << source.toStdString();
    }
    method.source = u"Templates of our own: leaflet of 2026"_s;
    EXPECT_FALSE(isTemplate(method));
    method.name = u"Birnensäure (Vorlage)"_s;
    EXPECT_TRUE(names(templateRemarks(method), "/name", "(Vorlage)", Problem::Severity::Warning));
    method.name = u"Perry acid"_s;
    method.source = u" Template: set the volumes of your reagent supplier."_s;
    EXPECT_EQ(templateRemarks(method).size(), 1U);
    EXPECT_TRUE(names(templateRemarks(method), "/source", "where the volumes used here come from",
                      Problem::Severity::Warning));
    EXPECT_TRUE(problemsOf(method).empty()) << "a template is sound";
}

TEST(MethodSoundness, TheBenchMethodsAreSound)
{
    for (const Method &method :
         {test::risingMethod(), test::fallingMethod(), test::sequentialMethod(), test::coupledMethod()})
        EXPECT_TRUE(problemsOf(method).empty()) << listed(problemsOf(method));
}

TEST(MethodSoundness, IdentityNeedsIdNameVersionAndSource)
{
    expectRows({
        {"another version", [](Method &m) { m.version = 7; }, "", ""},
        {"version 0", [](Method &m) { m.version = 0; }, "/version", "count from 1"},
        {"blank id", [](Method &m) { m.id = u"  "_s; }, "/id", "blank"},
        {"id that reorders the line", [](Method &m) { m.id = u"a\u202Eb"_s; }, "/id", "U+202E"},
        {"long name", [](Method &m) { m.name = QString(201, u'n'); }, "/name", "201 characters"},
        {"blank source", [](Method &m) { m.source = u"\n"_s; }, "/source", "name the document"},
        {"no principle", [](Method &m) { m.principle.clear(); }, "", ""},
        {"control in principle", [](Method &m) { m.principle = u"a\u0007"_s; }, "/principle", "U+0007"},
        {"caution of two lines", [](Method &m) { m.cautions = {u"a\nb"_s}; }, "", ""},
        {"blank caution",
         [](Method &m) {
             m.cautions = {u"a"_s, u" "_s};
         },
         "/cautions/1", "blank"},
    });
}

TEST(MethodSoundness, PhotometryStaysWithinWhatPhotometersDo)
{
    expectRows({
        {"wavelength without absorptivity",
         [](Method &m) {
             m.absorptivity_L_per_mol_cm = {{334, 6180}};
             m.wavelength_nm = 340;
         },
         "/wavelength_nm", "no absorptivity for 340 nm"},
        {"no table, NADPH at 340",
         [](Method &m) {
             m.absorptivity_L_per_mol_cm.clear();
             m.chromophore = u"NADPH"_s;
             m.wavelength_nm = 340;
         },
         "", ""},
        {"no table, NADH at 365",
         [](Method &m) {
             m.absorptivity_L_per_mol_cm.clear();
             m.wavelength_nm = 365;
         },
         "/wavelength_nm", "no absorptivity for 365 nm"},
        {"no table, a dye",
         [](Method &m) {
             m.absorptivity_L_per_mol_cm.clear();
             m.chromophore = u"formazan"_s;
         },
         "/wavelength_nm", "no absorptivity"},
        {"shortest wavelength",
         [](Method &m) {
             m.absorptivity_L_per_mol_cm = {{190, 6300}};
             m.wavelength_nm = 190;
         },
         "", ""},
        {"wavelength too short", [](Method &m) { m.wavelength_nm = 189; }, "/wavelength_nm",
         "between 190 and 1100"},
        {"wavelength too long", [](Method &m) { m.wavelength_nm = 1101; }, "/wavelength_nm",
         "between 190 and 1100"},
        {"entry too long", [](Method &m) { m.absorptivity_L_per_mol_cm[1200] = 6300; },
         "/absorptivity_L_per_mol_cm/1200", "between 190 and 1100"},
        {"absorptivity 0", [](Method &m) { m.absorptivity_L_per_mol_cm[365] = 0; },
         "/absorptivity_L_per_mol_cm/365", "greater than 0"},
        {"absorptivity too large", [](Method &m) { m.absorptivity_L_per_mol_cm[365] = 1.1e6; },
         "/absorptivity_L_per_mol_cm/365", "at most 1e+06"},
        {"path length 0", [](Method &m) { m.pathLength_mm = 0; }, "/pathLength_mm", "greater than 0"},
        {"path length 1 m", [](Method &m) { m.pathLength_mm = 1000; }, "", ""},
        {"path length over 1 m", [](Method &m) { m.pathLength_mm = 1001; }, "/pathLength_mm",
         "at most 1000 mm"},
        {"path length no number", [](Method &m) { m.pathLength_mm = nan; }, "/pathLength_mm",
         "greater than 0"},
        {"blank chromophore", [](Method &m) { m.chromophore.clear(); }, "/chromophore", "blank"},
    });
}

TEST(MethodSoundness, AnAbsorptivityInTheWrongUnitIsAskedAbout)
{
    Method method = test::risingMethod();
    method.absorptivity_L_per_mol_cm = {{340, 6.3}};
    const Problems problems = problemsOf(method);
    EXPECT_FALSE(hasErrors(problems));
    EXPECT_TRUE(names(problems, "/absorptivity_L_per_mol_cm/340", "L/(mmol cm)", Problem::Severity::Warning))
        << listed(problems);
}

TEST(MethodSoundness, ComponentsHaveTheirOwnIdAndAVolume)
{
    expectRows({
        {"no components", [](Method &m) { m.components.clear(); }, "/components", "at least one"},
        {"two of one id", [](Method &m) { m.components.push_back(m.components.front()); }, "/components/5/id",
         "taken"},
        {"blank id", [](Method &m) { m.components[0].id.clear(); }, "/components/0/id", "blank"},
        {"volume 0", [](Method &m) { m.components[1].volume_mL = 0; }, "/components/1/volume_mL",
         "between 0.0001"},
        {"negative volume", [](Method &m) { m.components[1].volume_mL = -1; }, "/components/1/volume_mL",
         "not -1"},
        {"volume over 100 mL", [](Method &m) { m.components[1].volume_mL = 101; }, "/components/1/volume_mL",
         "100 mL"},
        {"volume infinite",
         [](Method &m) { m.components[1].volume_mL = std::numeric_limits<double>::infinity(); },
         "/components/1/volume_mL", "not inf"},
        {"range of one volume",
         [](Method &m) {
             component(m, m.sample).range_mL = Interval{0.1, 0.1};
         },
         "", ""},
        {"range upside down",
         [](Method &m) {
             component(m, m.sample).range_mL = Interval{0.5, 0.05};
         },
         "/components/2/range_mL", "smaller number comes first"},
        {"range from 0",
         [](Method &m) {
             component(m, m.sample).range_mL = Interval{0, 0.5};
         },
         "/components/2/range_mL/0", "between 0.0001"},
        {"range without the usual volume",
         [](Method &m) {
             component(m, m.sample).range_mL = Interval{0.2, 0.5};
         },
         "/components/2/range_mL", "usual volume of 0.1 mL"},
    });
}

TEST(MethodSoundness, PartsArePlayedByDifferentKnownComponentsThatAreAdded)
{
    expectRows({
        {"unknown sample", [](Method &m) { m.sample = u"juice"_s; }, "/sample", "\"juice\" is none"},
        {"unknown diluent", [](Method &m) { m.diluent = u"milk"_s; }, "/diluent", "\"milk\" is none"},
        {"no starter", [](Method &m) { m.starter.clear(); }, "/starter", "no component plays this part"},
        {"sample as diluent", [](Method &m) { m.diluent = m.sample; }, "/diluent", "its own diluent"},
        {"sample as starter", [](Method &m) { m.starter = m.sample; }, "/starter", "a component of its own"},
        {"diluent as starter", [](Method &m) { m.starter = m.diluent; }, "/starter",
         "a component of its own"},
        {"sample never added", [](Method &m) { std::erase(m.steps, Step(AddStep{m.sample})); }, "/sample",
         "never added"},
        {"starter never added", [](Method &m) { std::erase(m.steps, Step(AddStep{m.starter})); }, "/starter",
         "never added"},
    });
}

TEST(MethodSoundness, AComponentThatIsNeverAddedIsAWarning)
{
    Method method = test::risingMethod();
    method.components.push_back({u"salt"_s, u"Salt"_s, 0.1, std::nullopt, false});
    const Problems problems = problemsOf(method);
    EXPECT_FALSE(hasErrors(problems));
    EXPECT_TRUE(names(problems, "/components/4", "never added", Problem::Severity::Warning))
        << listed(problems);
}

TEST(MethodSoundness, StepsCanBeDoneInTheirOrder)
{
    expectRows({
        {"unknown component", [](Method &m) { m.steps.insert(m.steps.begin(), AddStep{u"salt"_s}); },
         "/steps/0/add", "\"salt\", which is none"},
        {"added twice", [](Method &m) { m.steps.insert(m.steps.begin() + 1, m.steps.front()); },
         "/steps/1/add", "a second time"},
        {"read before anything is added",
         [](Method &m) { m.steps.insert(m.steps.begin(), ReadStep{u"A0"_s}); }, "/steps/0/read",
         "before anything"},
        {"blank reading", [](Method &m) { m.steps.insert(m.steps.begin() + 1, ReadStep{u""_s}); },
         "/steps/1/read", "blank"},
        {"waiting no time",
         [](Method &m) {
             m.steps.insert(m.steps.begin(), WaitStep{{0, 0}, {}});
         },
         "", ""},
        {"wait upside down",
         [](Method &m) {
             m.steps.insert(m.steps.begin(), WaitStep{{10, 3}, {}});
         },
         "/steps/0/wait_min", "smaller number"},
        {"negative wait",
         [](Method &m) {
             m.steps.insert(m.steps.begin(), WaitStep{{-1, 3}, {}});
         },
         "/steps/0/wait_min/0", "not -1"},
        {"boiling over",
         [](Method &m) {
             m.steps.insert(m.steps.begin(), WaitStep{{1, 3}, Interval{20, 120}});
         },
         "/steps/0/temperature_C/1", "°C"},
        {"nothing read",
         [](Method &m) { std::erase_if(m.steps, [](const Step &s) { return s.index() == 3; }); }, "/steps",
         "at least one step that reads"},
        {"tube runs over",
         [](Method &m) {
             m.components[0].volume_mL = 60;
             m.components[1].volume_mL = 60;
         },
         "/steps", "at most 100 mL"},
    });
}

TEST(MethodSoundness, MeasurandsUseReadingsInTheOrderTheyAreTaken)
{
    const auto signal = [](Signal value) { return [value](Method &m) { m.measurands[1].signal = value; }; };
    expectRows({
        {"no measurands", [](Method &m) { m.measurands.clear(); }, "/measurands", "at least one"},
        {"two of one id", [](Method &m) { m.measurands[1].id = m.measurands[0].id; }, "/measurands/1/id",
         "taken"},
        {"molar mass 0", [](Method &m) { m.measurands[0].molarMass_g_per_mol = 0; },
         "/measurands/0/molarMass_g_per_mol", "greater than 0"},
        {"molar mass too large", [](Method &m) { m.measurands[0].molarMass_g_per_mol = 100001; },
         "/measurands/0/molarMass_g_per_mol", "at most 100000 g/mol"},
        {"half a chromophore", [](Method &m) { m.measurands[0].chromophorePerMolecule = 0.5; }, "", ""},
        {"twenty chromophores", [](Method &m) { m.measurands[0].chromophorePerMolecule = 20; }, "", ""},
        {"too many chromophores", [](Method &m) { m.measurands[0].chromophorePerMolecule = 21; },
         "/measurands/0/chromophorePerMolecule", "at most 20"},
        {"reading never taken", signal(DifferenceSignal{u"A1"_s, u"A9"_s}), "/measurands/1/signal/to",
         "never taken"},
        {"wrong order", signal(DifferenceSignal{u"A3"_s, u"A1"_s}), "/measurands/1/signal/to",
         "read after \"A3\""},
        {"same reading twice", signal(DifferenceSignal{u"A1"_s, u"A1"_s}), "/measurands/1/signal/to",
         "read after"},
        {"coupled in order", signal(CoupledIndicatorSignal{u"A1"_s, u"A2"_s, u"A3"_s}), "", ""},
        {"coupled out of order", signal(CoupledIndicatorSignal{u"A1"_s, u"A3"_s, u"A2"_s}),
         "/measurands/1/signal/final", "read after \"A3\""},
        {"coupled, base never taken", signal(CoupledIndicatorSignal{u"A0"_s, u"A2"_s, u"A3"_s}),
         "/measurands/1/signal/base", "never taken"},
    });
}

TEST(MethodSoundness, LimitsAreTheRightWayUp)
{
    expectRows({
        {"window upside down",
         [](Method &m) {
             m.window = {1.0, 0.1, {}, {}};
         },
         "/window/minSignal", "smaller than"},
        {"window of no width",
         [](Method &m) {
             m.window = {0.1, 0.1, {}, {}};
         },
         "/window/minSignal", "smaller than"},
        {"negative minimum", [](Method &m) { m.window.minSignal = -0.1; }, "/window/minSignal", "not -0.1"},
        {"window without absorbances",
         [](Method &m) {
             m.window = {0, 1, {}, {}};
         },
         "", ""},
        {"photometer of 0", [](Method &m) { m.window.maxAbsorbance = 0; }, "/window/maxAbsorbance",
         "greater than 0"},
        {"reserve above the photometer's limit",
         [](Method &m) {
             m.window.maxAbsorbance = 2;
             m.window.reserveAbsorbance = 2;
         },
         "/window/reserveAbsorbance", "smaller than maxAbsorbance"},
        {"no limits at all", [](Method &m) { m.acceptance = {}; }, "", ""},
        {"negative blank limit", [](Method &m) { m.acceptance.maxBlankSignal = -0.01; },
         "/acceptance/maxBlankSignal", "not -0.01"},
        {"recovery upside down",
         [](Method &m) {
             m.acceptance.standardRecovery_percent = Interval{105, 95};
         },
         "/acceptance/standardRecovery_percent", "smaller number"},
        {"spike recovery upside down",
         [](Method &m) {
             m.acceptance.spikeRecovery_percent = Interval{110, 90};
         },
         "/acceptance/spikeRecovery_percent", "smaller number"},
        {"repeatability without constant",
         [](Method &m) {
             m.acceptance.repeatability = {0, 0.05};
         },
         "", ""},
        {"repeatability of nothing",
         [](Method &m) {
             m.acceptance.repeatability = {0, 0};
         },
         "/acceptance/repeatability", "limit of 0"},
        {"negative repeatability",
         [](Method &m) {
             m.acceptance.repeatability = {-0.1, 0.05};
         },
         "/acceptance/repeatability/constant_g_per_L", "not -0.1"},
        {"extrapolation",
         [](Method &m) {
             m.extrapolate = {u"A2"_s, 2};
         },
         "", ""},
        {"extrapolation of one reading",
         [](Method &m) {
             m.extrapolate = {u"A2"_s, 1};
         },
         "/extrapolate/lastReadings", "at least 2"},
        {"extrapolation of an unknown reading",
         [](Method &m) {
             m.extrapolate = {u"A9"_s, 3};
         },
         "/extrapolate/reading", "never taken"},
    });
}

TEST(MethodSoundness, TypicalRangesAndTheUsualStandardAreConcentrations)
{
    expectRows({
        {"range",
         [](Method &m) {
             m.measurands[1].typicalRange_g_per_L = Interval{0, 250};
         },
         "", ""},
        {"range of one value",
         [](Method &m) {
             m.measurands[1].typicalRange_g_per_L = Interval{2, 2};
         },
         "", ""},
        {"range upside down",
         [](Method &m) {
             m.measurands[1].typicalRange_g_per_L = Interval{2, 1};
         },
         "/measurands/1/typicalRange_g_per_L", "smaller number comes first"},
        {"negative range",
         [](Method &m) {
             m.measurands[1].typicalRange_g_per_L = Interval{-0.1, 1};
         },
         "/measurands/1/typicalRange_g_per_L/0", "not -0.1"},
        {"range without end",
         [](Method &m) {
             m.measurands[1].typicalRange_g_per_L = Interval{0, nan};
         },
         "/measurands/1/typicalRange_g_per_L/1", "between 0 and"},
        {"standard that says nothing", [](Method &m) { m.standard = UsualStandard{}; }, "", ""},
        {"standard that keeps",
         [](Method &m) {
             m.standard = UsualStandard{0.2, 0.0};
         },
         "", ""},
        {"standard of 0",
         [](Method &m) {
             m.standard = UsualStandard{0.0, {}};
         },
         "/standard/concentration_g_per_L", "greater than 0"},
        {"standard that is gone in an hour",
         [](Method &m) {
             m.standard = UsualStandard{0.2, 1.0};
         },
         "/standard/lossPerHour", "below 1"},
        {"standard that grows",
         [](Method &m) {
             m.standard = UsualStandard{0.2, -0.01};
         },
         "/standard/lossPerHour", "not -0.01"},
        {"loss that is no number",
         [](Method &m) {
             m.standard = UsualStandard{0.2, nan};
         },
         "/standard/lossPerHour", "below 1"},
    });
}

TEST(MethodSoundness, DerivedResultsComeFromMeasurandsThatThereAre)
{
    const auto derived = [](Derived value) {
        return [value](Method &m) { m.derived = {{u"sum"_s, u"Sum"_s, {{{}, u"first"_s, 1}}}, value}; };
    };
    expectRows({
        {"difference of two own measurands",
         derived({u"rest"_s, u"Rest"_s, {{{}, u"first"_s, 1}, {{}, u"second"_s, -1}}}), "", ""},
        {"another method's measurand",
         derived({u"rest"_s, u"Rest"_s, {{{}, u"first"_s, 1}, {u"other"_s, u"any"_s, -1.9}}}), "", ""},
        {"blank id", derived({u" "_s, u"Rest"_s, {{{}, u"first"_s, 1}}}), "/derived/1/id", "blank"},
        {"blank name", derived({u"rest"_s, {}, {{{}, u"first"_s, 1}}}), "/derived/1/name", "blank"},
        {"id of a measurand", derived({u"second"_s, u"Rest"_s, {{{}, u"first"_s, 1}}}), "/derived/1/id",
         "taken by a measurand"},
        {"id of an earlier one", derived({u"sum"_s, u"Rest"_s, {{{}, u"first"_s, 1}}}), "/derived/1/id",
         "earlier derived result"},
        {"no terms", derived({u"rest"_s, u"Rest"_s, {}}), "/derived/1/terms", "at least one term"},
        {"own measurand that is none", derived({u"rest"_s, u"Rest"_s, {{{}, u"third"_s, 1}}}),
         "/derived/1/terms/0/measurand", "\"third\" is none"},
        {"derived result as a term", derived({u"rest"_s, u"Rest"_s, {{{}, u"sum"_s, 1}}}),
         "/derived/1/terms/0/measurand", "\"sum\" is none"},
        {"this method by its id",
         [](Method &m) {
             m.derived = {{u"rest"_s, u"Rest"_s, {{m.id, u"third"_s, 1}}}};
         },
         "/derived/0/terms/0/measurand", "\"third\" is none"},
        {"blank measurand", derived({u"rest"_s, u"Rest"_s, {{u"other"_s, u" "_s, 1}}}),
         "/derived/1/terms/0/measurand", "blank"},
        {"method that reorders the line", derived({u"rest"_s, u"Rest"_s, {{u"a\u202Eb"_s, u"any"_s, 1}}}),
         "/derived/1/terms/0/method", "U+202E"},
        {"factor 0", derived({u"rest"_s, u"Rest"_s, {{{}, u"first"_s, 1}, {{}, u"second"_s, 0}}}),
         "/derived/1/terms/1/factor", "other than 0"},
        {"factor without end",
         derived({u"rest"_s, u"Rest"_s, {{{}, u"first"_s, std::numeric_limits<double>::infinity()}}}),
         "/derived/1/terms/0/factor", "other than 0"},
    });
}

TEST(MethodSoundness, WhatTheTradeKnowsIsWrittenOutOnce)
{
    expectRows({
        {"reactions in two lines",
         [](Method &m) {
             m.reactions = {u"A + NAD"_s, u"-> B + NADH"_s};
         },
         "", ""},
        {"blank reaction",
         [](Method &m) {
             m.reactions = {u"A"_s, {}};
         },
         "/reactions/1", "blank"},
        {"control in a reaction", [](Method &m) { m.reactions = {u"a\u0007"_s}; }, "/reactions/0", "U+0007"},
        {"blank interference", [](Method &m) { m.interferences = {u"\t"_s}; }, "/interferences/0", "blank"},
        {"two matrices",
         [](Method &m) {
             m.samplePreparation = {{Matrix::Clear, u"a"_s}, {Matrix::Solid, u"b"_s}};
         },
         "", ""},
        {"a matrix twice",
         [](Method &m) {
             m.samplePreparation = {
                 {Matrix::Fatty, u"a"_s}, {Matrix::Solid, u"b"_s}, {Matrix::Fatty, u"c"_s}};
         },
         "/samplePreparation/2/matrix", "\"fatty\" has its preparation already"},
        {"blank preparation",
         [](Method &m) {
             m.samplePreparation = {{Matrix::Clear, u" "_s}};
         },
         "/samplePreparation/0/text", "blank"},
    });
}

TEST(MethodSoundness, AReadingTakenTwiceIsRefusedAtItsSecondStep)
{
    Method method = test::risingMethod();
    method.steps.push_back(ReadStep{u"A1"_s});
    const std::string pointer = "/steps/" + std::to_string(method.steps.size() - 1) + "/read";
    EXPECT_TRUE(names(problemsOf(method), pointer.c_str(), "a second time")) << listed(problemsOf(method));
}

} // namespace plateau::assay
