// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/uncertaintyowners.h"

#include "tests/support/benches.h"
#include "tests/support/print.h"
#include "tests/support/problems.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace plateau::planning {

using namespace Qt::StringLiterals;
using enum UncertaintyInput;
using test::listed;
using test::names;

namespace {

Laboratory pipettesAndPhotometer()
{
    Laboratory laboratory;
    laboratory.glassware.pipettes = {{u"P100"_s, 0.01, 0.1, 0.001, 0.8}, {u"P1000"_s, 0.1, 1, 0.01, 0.6}};
    laboratory.photometer = Photometer{u"P1"_s, 0.0012, 0.1, u"check record 7"_s, QDate(2026, 9, 14)};
    return laboratory;
}

run::Run plannedRun()
{
    run::Run run = test::plainRun();
    run.uncertainty = inputsFor(test::risingMethod(), pipettesAndPhotometer(), run);
    return run;
}

PlanRecord plannedWith(const run::Run &run)
{
    PlanRecord plan;
    plan.owners = ownersToKeep(uncertaintySources(test::risingMethod(), pipettesAndPhotometer(), run));
    return plan;
}

QStringList textsOf(const std::vector<OwnedInput> &owned)
{
    QStringList texts;
    for (const OwnedInput &each : owned)
        texts << ownedText(each);
    return texts;
}

} // namespace

TEST(UncertaintyOwners, WordsOfTheRecordAreReadBack)
{
    for (const UncertaintyInput input : statedInputs())
        EXPECT_EQ(inputFromWord(inputWord(input)), input);
    EXPECT_EQ(inputFromWord(u"standard"_s), Standard);
    EXPECT_EQ(inputFromWord(u"colour"_s), std::nullopt);
    EXPECT_EQ(statedInputs().size(), 7U);
}

TEST(UncertaintyOwners, NumbersAreThoseOfTheirMember)
{
    run::UncertaintyInputs inputs{0.001, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6};
    std::vector<double> read;
    for (const UncertaintyInput input : statedInputs())
        read.push_back(numberOf(inputs, input));
    EXPECT_EQ(read, (std::vector{0.001, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6}));
    setNumber(inputs, SampleVolume, 9);
    EXPECT_EQ(inputs.sampleVolume_percent, 9);
}

TEST(UncertaintyOwners, AreThoseOfTheDayTheRunWasPlanned)
{
    const run::Run run = plannedRun();
    const QStringList texts = textsOf(ownersOnRecord(run, plannedWith(run)));
    ASSERT_EQ(texts.size(), 6) << "no step and no extract rests on anything";
    EXPECT_EQ(texts[0], u"photometer P1: absorbance of a reading 0.0012 (check record 7, 2026-09-14)"_s);
    EXPECT_EQ(
        texts[1],
        u"absorptivity of NADH at 340\u00a0nm: absorptivity 0.50\u00a0% (common practice, no source)"_s);
    EXPECT_EQ(texts[3], u"P1000, P100: total volume 0.57\u00a0% (the laboratory's list of glassware)"_s);
    EXPECT_TRUE(texts[5].startsWith(u"replicates: repeatability"_s));
}

TEST(UncertaintyOwners, WhatNobodySaidIsNotOnRecord)
{
    run::Run run = plannedRun();
    for (const OwnedInput &owned : ownersOnRecord(run, std::nullopt)) {
        EXPECT_EQ(owned.isKnown, owned.input == Replicates);
        if (!owned.isKnown) {
            EXPECT_EQ(owned.owner, u"not on record"_s);
        }
    }
    run.uncertainty.reset();
    EXPECT_TRUE(ownersOnRecord(run, std::nullopt).empty());
}

TEST(UncertaintyOwners, StepsThatStateTheirOwnNameTheirGlass)
{
    run::Run run = plannedRun();
    run.samples = {test::liquid("S", {{5, 50, 0.17}}), test::liquid("T", {{5, 50, 0.17}}),
                   test::liquid("U", {{1, 100, 0.6}}), test::liquid("V", {{2, 30}})};
    PlanRecord plan = plannedWith(run);
    for (const char *id : {"S", "T"}) {
        PlannedSample planned;
        planned.sample.id = QString::fromLatin1(id);
        planned.glass = {{u"bulb 5"_s, u"flask 50"_s}};
        plan.samples.push_back(planned);
    }
    const auto stepsOf = [&](const QString &sample) {
        auto owned = ownersOnRecord(run, plan, sample);
        std::erase_if(owned, [](const OwnedInput &each) { return each.input != Dilution; });
        return textsOf(owned);
    };
    const QStringList all = stepsOf({});
    ASSERT_EQ(all.size(), 3) << all.join(u'\n').toStdString();
    EXPECT_EQ(all[0],
              u"bulb 5 with flask 50: dilution step 5 to 50\u00a0mL 0.17\u00a0% (the laboratory's list "
              "of glassware when the run was planned)"_s);
    EXPECT_TRUE(all[1].startsWith(u"not on record: dilution step 1 to 100\u00a0mL 0.60\u00a0%"_s));
    EXPECT_TRUE(all[2].contains(u": dilution step 0.40\u00a0%"_s)) << all[2].toStdString();
    EXPECT_EQ(stepsOf(u"T"_s), QStringList{all[0]});
    EXPECT_EQ(stepsOf(u"V"_s), QStringList{all[2]});
}

TEST(UncertaintyOwners, AStandardThatCalibratesHasTheOwnerOfItsRecipe)
{
    run::Run run = plannedRun();
    run.standards = {{u"STD"_s, 0.2, {}, {}, {}, 0, 1.5}, {u"CTRL"_s, 0.1, {}, {}, {}, 0}};
    run.tubes.push_back(test::standardTube("STD", 0.1, 0.6));
    run.calibration = run::Calibration::Standard;
    PlanRecord plan = plannedWith(run);
    std::erase_if(plan.owners, [](const InputOwner &owner) { return owner.input == Standard; });
    const auto last = [&] {
        const QStringList texts = textsOf(ownersOnRecord(run, plan));
        return texts.size() < 2 ? QString() : texts[texts.size() - 2];
    };
    EXPECT_EQ(last(), u"standard STD: concentration 1.5\u00a0% (stated with the standard)"_s);
    plan.owners.push_back({Standard, u"STD"_s, u"standard STD"_s, u"weighed, 103.2 mg"_s, false});
    EXPECT_EQ(last(), u"standard STD: concentration 1.5\u00a0% (weighed, 103.2 mg)"_s);
    for (const OwnedInput &owned : ownersOnRecord(run, plan))
        EXPECT_FALSE(owned.input == Absorptivity || owned.input == PathLength) << "they cancel";
}

TEST(UncertaintyOwners, OfARunPlannedElsewhereWhatIsTheLaboratorysToTheLastDigit)
{
    run::Run run = plannedRun();
    run.uncertainty->sampleVolume_percent += 1e-9;
    const auto owners = ownersFor(test::risingMethod(), pipettesAndPhotometer(), run);
    EXPECT_EQ(owners.size(), 6U);
    EXPECT_EQ(std::ranges::find(owners, SampleVolume, &InputOwner::input), owners.end());
    run.uncertainty.reset();
    EXPECT_TRUE(ownersFor(test::risingMethod(), pipettesAndPhotometer(), run).empty());
}

TEST(UncertaintyOwners, APlanNamesEachOwnerOnceAndInWords)
{
    run::Run run = plannedRun();
    run.standards = {{u"STD"_s, 0.2, {}, {}, {}, 0, 1.5}};
    const auto problemsWith = [&](const InputOwner &owner) {
        PlanRecord plan = plannedWith(run);
        plan.owners.push_back(owner);
        return problemsOf(plan, run);
    };
    EXPECT_TRUE(problemsWith({Standard, u"STD"_s, u"A"_s, u"B"_s}).empty());
    struct Row {
        const char *what;
        InputOwner owner;
        const char *pointer;
        const char *fragment;
    };
    const Row rows[] = {
        {"twice", {Extract, {}, u"A"_s, u"B"_s}, "/owners/7", "second time"},
        {"no such standard", {Standard, u"CTRL"_s, u"A"_s, u"B"_s}, "/owners/7/standard", "no standard"},
        {"replicates", {Replicates, {}, u"A"_s, u"B"_s}, "/owners/7/input", "replicates"},
        {"no owner", {Standard, u"STD"_s, u" "_s, u"B"_s}, "/owners/7/owner", "blank"},
        {"no source", {Standard, u"STD"_s, u"A"_s, {}}, "/owners/7/source", "blank"},
        {"no text", {Standard, u"STD"_s, u"A"_s, u"B\u202e"_s}, "/owners/7/source", "the source"},
    };
    for (const Row &row : rows) {
        const assay::Problems problems = problemsWith(row.owner);
        EXPECT_EQ(problems.size(), 1U) << row.what << ": " << listed(problems);
        EXPECT_TRUE(names(problems, row.pointer, row.fragment)) << row.what << ": " << listed(problems);
    }
}

} // namespace plateau::planning
