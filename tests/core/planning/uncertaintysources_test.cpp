// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/uncertaintysources.h"

#include "core/planning/photometer.h"
#include "tests/support/benches.h"
#include "tests/support/print.h"
#include "tests/support/problems.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>

namespace plateau::planning {

using namespace Qt::StringLiterals;
using enum UncertaintyInput;
using test::listed;
using test::names;

namespace {

/// Makes every volume of risingMethod: buffer 1.0, water 1.0, sample 0.1, starter 0.02 mL.
Laboratory pipettesAndFlasks()
{
    Laboratory laboratory;
    laboratory.glassware.pipettes = {
        {u"P100"_s, 0.01, 0.1, 0.001, 0.8}, {u"P1000"_s, 0.1, 1, 0.01, 0.6}, {u"bulb 5"_s, 5, 5, 0, 0.15}};
    laboratory.glassware.flasks = {{u"flask 50"_s, 50, 0.07}, {u"flask 100"_s, 100, 0.06}};
    return laboratory;
}

OwnedInput found(const std::vector<OwnedInput> &sources, UncertaintyInput input)
{
    const auto at = std::ranges::find(sources, input, &OwnedInput::input);
    return at == sources.end() ? OwnedInput{} : *at;
}

OwnedInput sourceOf(UncertaintyInput input, const Laboratory &laboratory,
                    const run::Run &run = test::plainRun())
{
    return found(uncertaintySources(test::risingMethod(), laboratory, run), input);
}

MethodUncertainty everythingKnown()
{
    return {test::risingMethod().id, u"validation of 2026"_s, 0.001, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6};
}

} // namespace

TEST(UncertaintySources, ALaboratoryThatKeepsNothingGetsWhatIsUsualAndIsToldSo)
{
    const auto sources = uncertaintySources(test::risingMethod(), Laboratory{}, test::plainRun());
    EXPECT_EQ(inputsFor(test::risingMethod(), Laboratory{}, test::plainRun()), usualUncertainty());
    ASSERT_EQ(sources.size(), 8U); // seven and the replicates
    for (const OwnedInput &source : sources) {
        EXPECT_FALSE(source.owner.isEmpty() || source.source.isEmpty() || source.name.isEmpty());
        if (source.input == Replicates)
            continue;
        EXPECT_TRUE(source.isDefault) << source.name.toStdString();
        EXPECT_TRUE(source.source.startsWith(u"common practice, no source"_s)) << source.source.toStdString();
    }
    EXPECT_FALSE(found(sources, Replicates).value);
    EXPECT_TRUE(found(sources, TotalVolume).source.contains(u"no pipette of the list makes 1\u00a0mL"_s));
    EXPECT_EQ(
        ownedText(found(sources, Absorbance)),
        u"photometer: absorbance of a reading 0.0020 (common practice, no source; until its check records "
        "say otherwise)"_s);
}

TEST(UncertaintySources, ThePhotometersRecordsOwnReadingAndPath)
{
    Laboratory laboratory;
    laboratory.photometer = Photometer{u"P1"_s, 0.0012, 0.1, u"check record 7"_s, QDate(2026, 9, 14)};
    EXPECT_EQ(ownedText(sourceOf(Absorbance, laboratory)),
              u"photometer P1: absorbance of a reading 0.0012 (check record 7, 2026-09-14)"_s);
    EXPECT_EQ(ownedText(sourceOf(PathLength, laboratory)),
              u"cuvette of the photometer P1: path length 0.10\u00a0% (check record 7, 2026-09-14)"_s);
    EXPECT_FALSE(sourceOf(Absorbance, laboratory).isDefault);
    laboratory.photometer->absorbance.reset();
    EXPECT_TRUE(sourceOf(Absorbance, laboratory).isDefault);
    EXPECT_EQ(sourceOf(Absorbance, laboratory).owner, u"photometer P1"_s);
    EXPECT_FALSE(sourceOf(PathLength, laboratory).isDefault);
}

TEST(UncertaintySources, DosesOfOnePipetteAreOffTogether)
{
    const OwnedInput total = sourceOf(TotalVolume, pipettesAndFlasks());
    // Both pipettes make 0.1 mL: the less exact one counts.
    const double small_mL = (0.1 + 0.02) * 0.008;
    const double large_mL = (1.0 + 1.0) * 0.006;
    EXPECT_NEAR(*total.value, 100 * std::hypot(small_mL, large_mL) / 2.12, 1e-12);
    EXPECT_EQ(total.owner, u"P1000, P100"_s);
    EXPECT_FALSE(total.isDefault);

    Laboratory without = pipettesAndFlasks();
    without.glassware.pipettes.erase(without.glassware.pipettes.begin());
    const OwnedInput unknown = sourceOf(TotalVolume, without);
    EXPECT_EQ(unknown.value, 0.5);
    EXPECT_TRUE(unknown.isDefault);
    EXPECT_TRUE(unknown.source.contains(u"makes 0.02\u00a0mL"_s)) << unknown.source.toStdString();
}

TEST(UncertaintySources, TheWorstOfTheRunsSampleVolumesCounts)
{
    Laboratory laboratory = pipettesAndFlasks();
    EXPECT_EQ(ownedText(sourceOf(SampleVolume, laboratory)),
              u"P100: sample volume 0.80\u00a0% (the laboratory's list of glassware)"_s);
    run::Run run = test::plainRun();
    for (run::Tube &tube : run.tubes)
        tube.sampleVolume_mL = 0.5;
    EXPECT_EQ(sourceOf(SampleVolume, laboratory, run).value, 0.6);
    run.tubes[0].sampleVolume_mL = 0.1; // a blank holds no sample
    EXPECT_EQ(sourceOf(SampleVolume, laboratory, run).value, 0.6);
    run.tubes[1].sampleVolume_mL = 0.05;
    EXPECT_EQ(sourceOf(SampleVolume, laboratory, run).value, 0.8);
    run.tubes[1].sampleVolume_mL = 0.005;
    EXPECT_TRUE(sourceOf(SampleVolume, laboratory, run).isDefault);
    run.tubes.clear();
    EXPECT_EQ(sourceOf(SampleVolume, laboratory, run).value, 0.8) << "the method's own volume";
}

TEST(UncertaintySources, StepsThatStateTheirOwnRestOnNothing)
{
    const Laboratory laboratory = pipettesAndFlasks();
    EXPECT_TRUE(sourceOf(Dilution, laboratory).isDefault);
    run::Run run = test::plainRun();
    run.samples[0].dilution = {{5, 50}};
    const OwnedInput made = sourceOf(Dilution, laboratory, run);
    EXPECT_NEAR(*made.value, std::hypot(0.15, 0.07), 1e-12);
    EXPECT_EQ(made.owner, u"bulb 5 with flask 50"_s);
    run.samples[0].dilution = {{5, 50}, {1, 100}};
    EXPECT_NEAR(*sourceOf(Dilution, laboratory, run).value, std::hypot(0.6, 0.06), 1e-12);
    run.samples[0].dilution = {{5, 50}, {2, 30}};
    EXPECT_TRUE(sourceOf(Dilution, laboratory, run).isDefault);
    EXPECT_TRUE(sourceOf(Dilution, laboratory, run).source.contains(u"2\u00a0mL up to 30\u00a0mL"_s));
    run.samples[0].dilution = {{2, 30, 0.3}};
    EXPECT_TRUE(sourceOf(Dilution, laboratory, run).source.contains(u"no step of this run rests on it"_s));
}

TEST(UncertaintySources, ASolidsExtractIsAsGoodAsItsFlask)
{
    run::Run run = test::plainRun();
    EXPECT_TRUE(sourceOf(Extract, pipettesAndFlasks(), run).isDefault);
    run.samples = {test::solid("S", 5, 100)};
    EXPECT_EQ(ownedText(sourceOf(Extract, pipettesAndFlasks(), run)),
              u"flask 100: extract 0.060\u00a0% (the laboratory's list of glassware)"_s);
    run.samples = {test::solid("S", 5, 100), test::solid("T", 5, 200)};
    EXPECT_TRUE(sourceOf(Extract, pipettesAndFlasks(), run).isDefault);
    EXPECT_TRUE(sourceOf(Extract, pipettesAndFlasks(), run).source.contains(u"200\u00a0mL"_s));
}

TEST(UncertaintySources, WhatIsKeptForTheMethodComesFirst)
{
    Laboratory laboratory = pipettesAndFlasks();
    laboratory.photometer = Photometer{u"P1"_s, 0.0012, 0.1, u"check record 7"_s, {}};
    laboratory.methodUncertainties = {{u"another"_s, u"elsewhere"_s, 0.5, {}, {}, {}, {}, {}, {}},
                                      everythingKnown()};
    run::Run run = test::plainRun();
    run.samples[0].dilution = {{5, 50}};
    EXPECT_EQ(inputsFor(test::risingMethod(), laboratory, run),
              (run::UncertaintyInputs{0.001, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6}));
    for (const OwnedInput &source : uncertaintySources(test::risingMethod(), laboratory, run)) {
        if (source.input == Replicates)
            continue;
        EXPECT_EQ(source.source, u"validation of 2026"_s);
        EXPECT_FALSE(source.isDefault);
    }
    laboratory.methodUncertainties[1].absorbance.reset();
    EXPECT_EQ(sourceOf(Absorbance, laboratory, run).value, 0.0012);
    EXPECT_EQ(sourceOf(Absorptivity, laboratory, run).value, 0.1);
}

TEST(UncertaintySources, StandardsAnswerForThemselvesWhereTheyCalibrate)
{
    run::Run run = test::plainRun();
    run.standards = {{u"STD"_s, 0.2, {}, {}, {}, 0, 1.5}, {u"CHECK"_s, 0.1, {}, {}, {}, 0}};
    EXPECT_EQ(uncertaintySources(test::risingMethod(), {}, run).size(), 8U);
    run.calibration = run::Calibration::Standard;
    EXPECT_EQ(uncertaintySources(test::risingMethod(), {}, run).size(), 8U) << "no tube calibrates";
    run.tubes.push_back(test::standardTube("STD", 0.1, 0.6));
    run.tubes.push_back(test::standardTube("CHECK", 0.1, 0.4));
    run.tubes.back().role = run::Role::Control;
    EXPECT_EQ(uncertaintySources(test::risingMethod(), {}, run).size(), 9U) << "a control calibrates nothing";
    run.tubes.back().role = run::Role::Standard;
    const auto sources = uncertaintySources(test::risingMethod(), {}, run);
    ASSERT_EQ(sources.size(), 10U);
    EXPECT_EQ(ownedText(sources[7]), u"standard STD: concentration 1.5\u00a0% (stated with the standard)"_s);
    EXPECT_FALSE(sources[7].isDefault);
    EXPECT_EQ(sources[8].value, 0);
    EXPECT_TRUE(sources[8].isDefault);
    EXPECT_TRUE(sources[8].source.contains(u"counts as exactly known"_s));
}

TEST(Measuring, OneFaultGivesOneProblem)
{
    struct Row {
        const char *what;
        std::function<void(Laboratory &)> change;
        const char *pointer;
        const char *fragment;
    };
    const Row rows[] = {
        {"as it stands", [](Laboratory &) {}, "", ""},
        {"no photometer", [](Laboratory &l) { l.photometer.reset(); }, "", ""},
        {"nothing known of it", [](Laboratory &l) { l.photometer = Photometer{u"P1"_s}; }, "", ""},
        {"no name", [](Laboratory &l) { l.photometer->name.clear(); }, "/photometer/name", "name"},
        {"noise below zero", [](Laboratory &l) { l.photometer->absorbance = -0.001; },
         "/photometer/absorbance", "not -0.001"},
        {"noise in percent", [](Laboratory &l) { l.photometer->absorbance = 1.1; }, "/photometer/absorbance",
         "not 1.1"},
        {"path", [](Laboratory &l) { l.photometer->pathLength_percent = 101; },
         "/photometer/pathLength_percent", "not 101"},
        {"numbers without a record", [](Laboratory &l) { l.photometer->source.clear(); },
         "/photometer/source", "which record"},
        {"no method", [](Laboratory &l) { l.methodUncertainties[0].method = u" "_s; },
         "/methodUncertainties/0/method", "method's id"},
        {"no source", [](Laboratory &l) { l.methodUncertainties[0].source = u" "_s; },
         "/methodUncertainties/0/source", "is blank"},
        {"nothing stated",
         [](Laboratory &l) {
             l.methodUncertainties = {{u"ethanol"_s, u"x"_s, {}, {}, {}, {}, {}, {}, {}}};
         },
         "/methodUncertainties/0", "at least one"},
        {"more than all of it", [](Laboratory &l) { l.methodUncertainties[0].extract_percent = 100.1; },
         "/methodUncertainties/0/extract_percent", "not 100.1"},
        {"twice", [](Laboratory &l) { l.methodUncertainties.push_back(l.methodUncertainties[0]); },
         "/methodUncertainties/1/method", "has an entry already"},
    };
    for (const Row &row : rows) {
        Laboratory laboratory = pipettesAndFlasks();
        laboratory.photometer = Photometer{u"P1"_s, 0.0012, 0.1, u"check record 7"_s, {}};
        laboratory.methodUncertainties = {everythingKnown()};
        row.change(laboratory);
        const assay::Problems problems = problemsOf(laboratory);
        EXPECT_EQ(problems.size(), *row.pointer ? 1U : 0U) << row.what << ": " << listed(problems);
        if (*row.pointer) {
            EXPECT_TRUE(names(problems, row.pointer, row.fragment)) << row.what << ": " << listed(problems);
        }
    }
}

} // namespace plateau::planning
