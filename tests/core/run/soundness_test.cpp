// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/run/soundness.h"

#include "tests/support/benches.h"
#include "tests/support/print.h"
#include "tests/support/problems.h"

#include <gtest/gtest.h>

#include <functional>
#include <limits>

namespace plateau::run {

using namespace Qt::StringLiterals;
using assay::Problem;
using assay::Problems;
using test::listed;
using test::names;

namespace {

/// testing::Test has a Run of its own.
using Bench = Run;

QDateTime at(int hour)
{
    return {QDate(2026, 3, 2), QTime(hour, 0), Qt::UTC};
}

/// Tubes: 0 blank, 1 and 2 sample S, 3 standard STD, 4 sample blank, 5 spiked S, 6 solid F, 7 control.
Run fullRun()
{
    Run run = test::plainRun();
    run.tubes = {test::blank(0.1, 0.11), test::sampleTube("S", 0.1, 0.6), test::sampleTube("S", 0.1, 0.61),
                 test::standardTube("STD", 0.1, 0.7)};
    run.standards = {{u"STD"_s, 0.2, {}, at(8), at(9), 0.02}};
    run.samples.push_back(test::solid("F", 5.0, 100));
    run.tubes.push_back({Role::SampleBlank, u"S"_s, {}, {}, {}, {}});
    run.tubes.push_back({Role::Spiked, u"S"_s, {}, {}, Spike{u"STD"_s, 0.1}, {}});
    run.tubes.push_back(test::sampleTube("F", 0.1, 0.4));
    run.tubes.push_back({Role::Control, {}, u"STD"_s, {}, {}, {}});
    run.startedAt = at(9);
    return run;
}

struct Row {
    const char *what;
    std::function<void(Run &)> change;
    /// Both empty: the changed run is still sound, without even a warning.
    const char *pointer;
    const char *fragment;
};

void expectRows(const std::vector<Row> &rows)
{
    for (const Row &row : rows) {
        Run run = fullRun();
        row.change(run);
        const Problems problems = problemsOf(run, test::risingMethod());
        if (*row.fragment)
            EXPECT_TRUE(names(problems, row.pointer, row.fragment)) << row.what << ": " << listed(problems);
        else
            EXPECT_TRUE(problems.empty()) << row.what << ": " << listed(problems);
    }
}

} // namespace

TEST(RunSoundness, AFullRunIsSound)
{
    EXPECT_TRUE(problemsOf(fullRun(), test::risingMethod()).empty())
        << listed(problemsOf(fullRun(), test::risingMethod()));
}

TEST(RunSoundness, RunAndMethodBelongTogether)
{
    expectRows({
        {"another method", [](Bench &r) { r.method = u"other"_s; }, "/method", "made for \"other\""},
        {"a known wavelength", [](Bench &r) { r.wavelength_nm = 340; }, "", ""},
        {"a wavelength without absorptivity", [](Bench &r) { r.wavelength_nm = 405; }, "/wavelength_nm",
         "no absorptivity for 405 nm"},
        {"no wavelength of a photometer", [](Bench &r) { r.wavelength_nm = 100; }, "/wavelength_nm",
         "between 190"},
        {"path length 0", [](Bench &r) { r.pathLength_mm = 0; }, "/pathLength_mm", "greater than 0"},
        {"a title that reorders the line", [](Bench &r) { r.title = u"\u2067x"_s; }, "/title", "U+2067"},
        {"a reading the method never takes", [](Bench &r) { r.tubes[1].readings[u"A7"_s] = 0.1; },
         "/tubes/1/readings/A7", "takes no reading \"A7\"; it takes \"A1\", \"A2\""},
        {"a lot of an unknown component",
         [](Bench &r) {
             r.lots = {{u"salt"_s, u"L1"_s, {}}};
         },
         "/lots/0/component", "no component \"salt\""},
        {"a lot",
         [](Bench &r) {
             r.lots = {{u"buffer"_s, u"L1"_s, {}}};
         },
         "", ""},
        {"two lots of one component",
         [](Bench &r) {
             r.lots = {{u"buffer"_s, u"L1"_s, {}}, {u"buffer"_s, u"L2"_s, {}}};
         },
         "", ""},
        {"a lot twice",
         [](Bench &r) {
             r.lots = {{u"buffer"_s, u"L1"_s, {}}, {u"buffer"_s, u"L1"_s, {}}};
         },
         "/lots/1", "name it once"},
        {"a blank lot",
         [](Bench &r) {
             r.lots = {{u"buffer"_s, u" "_s, {}}};
         },
         "/lots/0/lot", "blank"},
        {"a standard of an unknown measurand", [](Bench &r) { r.standards[0].measurand = u"malt"_s; },
         "/standards/0/measurand", "no measurand \"malt\""},
    });
}

TEST(RunSoundness, UncertaintiesAreNeitherNegativeNorAbsurd)
{
    const auto with = [](double UncertaintyInputs::*term, double value) {
        return [=](Bench &r) {
            r.uncertainty = test::uncertainties();
            (*r.uncertainty).*term = value;
        };
    };
    expectRows({
        {"none at all", [](Bench &r) { r.uncertainty = UncertaintyInputs{}; }, "", ""},
        {"negative absorbance", with(&UncertaintyInputs::absorbance, -0.001), "/uncertainty/absorbance",
         "not -0.001"},
        {"negative", with(&UncertaintyInputs::extract_percent, -1), "/uncertainty/extract_percent", "not -1"},
        {"over 100 %", with(&UncertaintyInputs::dilution_percent, 101), "/uncertainty/dilution_percent",
         "100 %"},
        {"no number", with(&UncertaintyInputs::totalVolume_percent, std::numeric_limits<double>::quiet_NaN()),
         "/uncertainty/totalVolume_percent", "not nan"},
    });
}

TEST(RunSoundness, SamplesHaveTheirOwnIdAndTheRightFields)
{
    expectRows({
        {"two of one id", [](Bench &r) { r.samples.push_back(test::liquid("S")); }, "/samples/2/id", "taken"},
        {"two that look alike",
         [](Bench &r) {
             r.samples[0].id = u"\u00E9"_s;
             r.samples[1].id = u"e\u0301"_s;
         },
         "/samples/1/id", "taken"},
        {"a long id", [](Bench &r) { r.samples[0].id = QString(201, u'x'); }, "/samples/0/id",
         "201 characters"},
        {"a control character", [](Bench &r) { r.samples[0].id = u"a\u001Bb"_s; }, "/samples/0/id", "U+001B"},
        {"solid without mass", [](Bench &r) { r.samples[1].mass_g.reset(); }, "/samples/1/mass_g",
         "is missing"},
        {"solid without extract", [](Bench &r) { r.samples[1].extract_mL.reset(); }, "/samples/1/extract_mL",
         "is missing"},
        {"mass 0", [](Bench &r) { r.samples[1].mass_g = 0; }, "/samples/1/mass_g", "not 0"},
        {"negative extract", [](Bench &r) { r.samples[1].extract_mL = -100; }, "/samples/1/extract_mL",
         "not -100"},
        {"liquid with mass", [](Bench &r) { r.samples[0].mass_g = 5; }, "/samples/0/mass_g",
         "a liquid has no mass_g"},
        {"liquid with extract", [](Bench &r) { r.samples[0].extract_mL = 5; }, "/samples/0/extract_mL",
         "a liquid has no extract_mL"},
    });
}

TEST(RunSoundness, DilutionsCanBeMade)
{
    const auto diluted = [](std::vector<DilutionStep> steps) {
        return [=](Bench &r) { r.samples[0].dilution = steps; };
    };
    expectRows({
        {"two steps", diluted({{5, 50}, {1, 100}}), "", ""},
        {"take all", diluted({{50, 50}}), "", ""},
        {"an uncertainty of its own", diluted({{5, 50, 0.15}}), "", ""},
        {"an uncertainty of nothing and of all", diluted({{5, 50, 0.0}, {5, 50, 100.0}}), "", ""},
        {"negative uncertainty", diluted({{5, 50}, {5, 50, -0.1}}),
         "/samples/0/dilution/1/uncertainty_percent", "not -0.1"},
        {"absurd uncertainty", diluted({{5, 50, 100.1}}), "/samples/0/dilution/0/uncertainty_percent",
         "between 0 and 100 %, not 100.1"},
        {"take more than the flask", diluted({{5, 50}, {60, 50}}), "/samples/0/dilution/1/take_mL",
         "60 mL cannot be made up to 50 mL"},
        {"take nothing", diluted({{0, 50}}), "/samples/0/dilution/0/take_mL", "greater than 0"},
        {"negative flask", diluted({{5, -50}}), "/samples/0/dilution/0/makeUpTo_mL", "not -50"},
        {"no number", diluted({{std::numeric_limits<double>::quiet_NaN(), 50}}),
         "/samples/0/dilution/0/take_mL", "greater than 0"},
        {"diluted to nothing", diluted({{0.001, 1000}, {0.001, 1000}}), "/samples/0/dilution",
         "check the volumes"},
    });
}

TEST(RunSoundness, StandardsHaveAStrengthAndAPast)
{
    expectRows({
        {"two of one id", [](Bench &r) { r.standards.push_back(r.standards[0]); }, "/standards/1/id",
         "taken"},
        {"negative concentration", [](Bench &r) { r.standards[0].concentration_g_per_L = -0.1; },
         "/standards/0/concentration_g_per_L", "not -0.1"},
        {"a standard known to be off", [](Bench &r) { r.standards[0].uncertainty_percent = -0.1; },
         "/standards/0/uncertainty_percent", "not -0.1"},
        {"a standard nobody knows", [](Bench &r) { r.standards[0].uncertainty_percent = 100.1; },
         "/standards/0/uncertainty_percent", "not 100.1"},
        {"loses everything", [](Bench &r) { r.standards[0].lossPerHour = 1; }, "/standards/0/lossPerHour",
         "below 1"},
        {"gains", [](Bench &r) { r.standards[0].lossPerHour = -0.01; }, "/standards/0/lossPerHour", "from 0"},
        {"used before it was made", [](Bench &r) { r.standards[0].usedAt = at(7); }, "/standards/0/usedAt",
         "before preparedAt"},
        {"used as it was made", [](Bench &r) { r.standards[0].usedAt = at(8); }, "", ""},
        {"used when the run started", [](Bench &r) { r.standards[0].usedAt.reset(); }, "", ""},
        {"no time of use at all",
         [](Bench &r) {
             r.standards[0].usedAt.reset();
             r.startedAt.reset();
         },
         "/standards/0/usedAt", "is missing"},
        {"run started before it was made",
         [](Bench &r) {
             r.standards[0].usedAt.reset();
             r.startedAt = at(7);
         },
         "/standards/0/usedAt", "lies before preparedAt"},
        {"used but never made", [](Bench &r) { r.standards[0].preparedAt.reset(); },
         "/standards/0/preparedAt", "is missing"},
        {"stated strength only", [](Bench &r) { r.standards[0] = {u"STD"_s, 0.2, {}, {}, {}, 0}; }, "", ""},
    });
}

TEST(RunSoundness, TimesWithDifferentOffsetsAreComparedAsMoments)
{
    Bench run = fullRun();
    run.standards[0].preparedAt = QDateTime(QDate(2026, 3, 2), QTime(10, 30), Qt::OffsetFromUTC, 2 * 3600);
    run.standards[0].usedAt = QDateTime(QDate(2026, 3, 2), QTime(9, 0), Qt::UTC);
    EXPECT_TRUE(problemsOf(run, test::risingMethod()).empty());
}

TEST(RunSoundness, TheRackHoldsOneToNinetySixTubes)
{
    expectRows({
        {"no tube", [](Bench &r) { r.tubes.clear(); }, "/tubes", "at least one tube"},
        {"96 tubes", [](Bench &r) { r.tubes.resize(96, test::blank(0.1, 0.1)); }, "", ""},
        {"97 tubes", [](Bench &r) { r.tubes.resize(97, test::blank(0.1, 0.1)); }, "/tubes",
         "at most 96 tubes, not 97"},
    });
}

TEST(RunSoundness, TubesHoldWhatTheirRoleSays)
{
    expectRows({
        {"absent sample", [](Bench &r) { r.tubes[1].sample = u"Q"_s; }, "/tubes/1/sample", "no sample \"Q\""},
        {"absent standard", [](Bench &r) { r.tubes[3].standard = u"Q"_s; }, "/tubes/3/standard",
         "no standard \"Q\""},
        {"sample tube without sample", [](Bench &r) { r.tubes[1].sample.clear(); }, "/tubes/1/sample",
         "is missing"},
        {"sample tube with a standard", [](Bench &r) { r.tubes[1].standard = u"STD"_s; }, "/tubes/1/standard",
         "does not go with the role \"sample\""},
        {"blank with a sample", [](Bench &r) { r.tubes[0].sample = u"S"_s; }, "/tubes/0/sample",
         "role \"blank\""},
        {"blank with a sample volume", [](Bench &r) { r.tubes[0].sampleVolume_mL = 0.1; },
         "/tubes/0/sampleVolume_mL", "role \"blank\""},
        {"standard tube without standard", [](Bench &r) { r.tubes[3].standard.clear(); }, "/tubes/3/standard",
         "is missing"},
        {"standard tube with a sample", [](Bench &r) { r.tubes[3].sample = u"S"_s; }, "/tubes/3/sample",
         "role \"standard\""},
        {"sample blank without sample", [](Bench &r) { r.tubes[4].sample.clear(); }, "/tubes/4/sample",
         "is missing"},
        {"spiked without spike", [](Bench &r) { r.tubes[5].spike.reset(); }, "/tubes/5/spike", "is missing"},
        {"spike in a sample tube",
         [](Bench &r) {
             r.tubes[1].spike = {u"STD"_s, 0.1};
         },
         "/tubes/1/spike", "does not go"},
        {"spike of an absent standard", [](Bench &r) { r.tubes[5].spike->standard = u"Q"_s; },
         "/tubes/5/spike/standard", "no standard \"Q\""},
        {"spike of nothing", [](Bench &r) { r.tubes[5].spike->volume_mL = 0; }, "/tubes/5/spike/volume_mL",
         "not 0"},
        {"control of a sample",
         [](Bench &r) {
             r.tubes[7].standard.clear();
             r.tubes[7].sample = u"S"_s;
         },
         "", ""},
        {"control of both", [](Bench &r) { r.tubes[7].sample = u"S"_s; }, "/tubes/7/standard", "exactly one"},
        {"control of neither", [](Bench &r) { r.tubes[7].standard.clear(); }, "/tubes/7/sample",
         "exactly one"},
        {"another sample volume", [](Bench &r) { r.tubes[1].sampleVolume_mL = 0.2; }, "", ""},
        {"sample volume 0", [](Bench &r) { r.tubes[1].sampleVolume_mL = 0; }, "/tubes/1/sampleVolume_mL",
         "not 0"},
        {"sample volume over 100 mL", [](Bench &r) { r.tubes[1].sampleVolume_mL = 101; },
         "/tubes/1/sampleVolume_mL", "100 mL"},
        {"a tube that runs over", [](Bench &r) { r.tubes[1].sampleVolume_mL = 99.5; }, "/tubes/1",
         "at most 100 mL"},
    });
}

TEST(RunSoundness, ReadingsAreWhatAPhotometerShows)
{
    const auto reading = [](Reading value) {
        return [value](Bench &r) { r.tubes[1].readings[u"A2"_s] = value; };
    };
    expectRows({
        {"not read yet", [](Bench &r) { r.tubes[1].readings.clear(); }, "", ""},
        {"implausible but possible", reading(-3.0), "", ""},
        {"absurd", reading(100.5), "/tubes/1/readings/A2", "between -100 and 100"},
        {"absurdly negative", reading(-101.0), "/tubes/1/readings/A2", "not -101"},
        {"series", reading(ReadingSeries{{0, 0.1}, {5, 0.2}}), "", ""},
        {"empty series", reading(ReadingSeries{}), "/tubes/1/readings/A2", "at least one reading"},
        {"before the start", reading(ReadingSeries{{-1, 0.1}}), "/tubes/1/readings/A2/0/at_min", "not -1"},
        {"standing still", reading(ReadingSeries{{5, 0.1}, {5, 0.2}}), "/tubes/1/readings/A2/1/at_min",
         "not later"},
        {"going back", reading(ReadingSeries{{5, 0.1}, {4, 0.2}}), "/tubes/1/readings/A2/1/at_min",
         "not later"},
        {"absurd in a series", reading(ReadingSeries{{5, 0.1}, {6, 1e9}}),
         "/tubes/1/readings/A2/1/absorbance", "between -100"},
    });
}

TEST(RunSoundness, ASampleWithoutATubeIsAWarning)
{
    Bench run = fullRun();
    run.samples.push_back(test::liquid("idle"));
    const Problems problems = problemsOf(run, test::risingMethod());
    EXPECT_FALSE(assay::hasErrors(problems));
    EXPECT_TRUE(
        names(problems, "/samples/2", "no tube holds the sample \"idle\"", Problem::Severity::Warning))
        << listed(problems);
}

TEST(RunSoundness, ALossWithoutAnAgeIsAWarning)
{
    Bench run = fullRun();
    run.standards[0] = {u"STD"_s, 0.2, {}, {}, {}, 0.02};
    const Problems problems = problemsOf(run, test::risingMethod());
    EXPECT_FALSE(assay::hasErrors(problems));
    EXPECT_TRUE(names(problems, "/standards/0/lossPerHour", "without effect", Problem::Severity::Warning))
        << listed(problems);
}

TEST(RunSoundness, CalibrationByStandardNeedsATubeWithOne)
{
    Bench run = fullRun();
    run.calibration = Calibration::Standard;
    EXPECT_TRUE(problemsOf(run, test::risingMethod()).empty());
    run.tubes[3] = test::blank(0.1, 0.1); // the control's standard doesn't calibrate
    EXPECT_TRUE(
        names(problemsOf(run, test::risingMethod()), "/calibration", "needs a tube with a standard of"));
}

TEST(RunSoundness, WhatHappenedToATubeIsToldByComponentAndReason)
{
    const auto pipetted = [](const QString &component, double volume_mL) {
        return [=](Bench &r) { r.tubes[1].pipetted_mL[component] = volume_mL; };
    };
    const auto spoilt = [](const QString &why) { return [=](Bench &r) { r.tubes[1].spoilt = why; }; };
    expectRows({
        {"more buffer", pipetted(u"buffer"_s, 1.2), "", ""},
        {"forgotten", pipetted(u"buffer"_s, 0), "", ""},
        {"less than nothing", pipetted(u"buffer"_s, -0.001), "/tubes/1/pipetted_mL/buffer",
         "between 0 and 100 mL"},
        {"a bucket", pipetted(u"buffer"_s, 101), "/tubes/1/pipetted_mL/buffer", "not 101"},
        {"no number", pipetted(u"buffer"_s, std::numeric_limits<double>::quiet_NaN()),
         "/tubes/1/pipetted_mL/buffer", "between 0 and 100 mL"},
        {"unknown component", pipetted(u"salt"_s, 0.1), "/tubes/1/pipetted_mL/salt", "no component \"salt\""},
        {"runs over", pipetted(u"buffer"_s, 99.5), "/tubes/1", "at most 100 mL"},
        {"knocked over", spoilt(u"knocked over"_s), "", ""},
        {"no reason", spoilt(u" "_s), "/tubes/1/spoilt", "the reason cannot be used"},
        {"two lines", spoilt(u"knocked\nover"_s), "/tubes/1/spoilt", "the reason cannot be used"},
    });
}

TEST(RunSoundness, TimesStandOnTheRunsClockByComponentAndReading)
{
    const auto added = [](const QString &component, double time_min) {
        return [=](Bench &r) { r.tubes[1].addedAt_min[component] = time_min; };
    };
    const auto readAt = [](const QString &name, double time_min) {
        return [=](Bench &r) { r.tubes[1].readAt_min[name] = time_min; };
    };
    expectRows({
        {"added", added(u"starter"_s, 12.5), "", ""},
        {"first of all", added(u"buffer"_s, 0), "", ""},
        {"ten weeks", readAt(u"A1"_s, 100000), "", ""},
        {"longer", readAt(u"A1"_s, 100001), "/tubes/1/readAt_min/A1", "not 100001"},
        {"before the clock", added(u"buffer"_s, -0.1), "/tubes/1/addedAt_min/buffer",
         "between 0 and 100000 min"},
        {"no number", added(u"buffer"_s, std::numeric_limits<double>::quiet_NaN()),
         "/tubes/1/addedAt_min/buffer", "not nan"},
        {"no end", readAt(u"A2"_s, std::numeric_limits<double>::infinity()), "/tubes/1/readAt_min/A2",
         "not inf"},
        {"unknown component", added(u"salt"_s, 1), "/tubes/1/addedAt_min/salt", "no component \"salt\""},
        {"unknown reading", readAt(u"A7"_s, 1), "/tubes/1/readAt_min/A7", "no reading \"A7\""},
    });
}

TEST(RunSoundness, ATimeThatContradictsTheMethodsOrderIsAWarning)
{
    const auto timed = [](std::map<QString, double> added, std::map<QString, double> read) {
        Bench run = fullRun();
        run.tubes[2].addedAt_min = std::move(added);
        run.tubes[2].readAt_min = std::move(read);
        return problemsOf(run, test::risingMethod());
    };
    const auto warns = [](const Problems &problems, const char *pointer, const char *fragment) {
        return problems.size() == 1 && names(problems, pointer, fragment, Problem::Severity::Warning);
    };
    EXPECT_TRUE(timed({{u"sample"_s, 2}, {u"starter"_s, 9}}, {{u"A1"_s, 9}, {u"A2"_s, 25}}).empty())
        << "at once is in order";
    const Problems early = timed({{u"sample"_s, 2}, {u"starter"_s, 8.9}}, {{u"A1"_s, 9}, {u"A2"_s, 25}});
    EXPECT_TRUE(warns(early, "/tubes/2/addedAt_min/starter", "8.9 min lies before \"A1\" (9 min)"))
        << listed(early);
    // The starter was not marked: what is known is held against each other.
    const Problems unmarked = timed({{u"sample"_s, 2}}, {{u"A1"_s, 9}, {u"A2"_s, 5}});
    EXPECT_TRUE(warns(unmarked, "/tubes/2/readAt_min/A2", "before \"A1\"")) << listed(unmarked);
    const Problems unread = timed({{u"sample"_s, 9}, {u"starter"_s, 8}}, {});
    EXPECT_TRUE(warns(unread, "/tubes/2/addedAt_min/starter", "before \"sample\"")) << listed(unread);
    // Nobody minds which of buffer and water goes in first.
    EXPECT_TRUE(timed({{u"buffer"_s, 3}, {u"water"_s, 2}, {u"sample"_s, 1}}, {{u"A1"_s, 9}}).empty());
}

TEST(RunSoundness, WhatHappenedToAStandardMakesNoOtherCalibrationOfTheRun)
{
    Bench run = fullRun();
    run.calibration = Calibration::Standard;
    run.tubes[3].spoilt = u"knocked over"_s;
    EXPECT_TRUE(problemsOf(run, test::risingMethod()).empty());
    run.tubes[3].spoilt.clear();
    run.tubes[3].pipetted_mL = {{u"sample"_s, 0}};
    EXPECT_TRUE(problemsOf(run, test::risingMethod()).empty());
}

TEST(RunSoundness, CalibrationByStandardOfNothingIsRefused)
{
    Bench run = fullRun();
    run.calibration = Calibration::Standard;
    run.standards[0].concentration_g_per_L = 0;
    EXPECT_TRUE(
        names(problemsOf(run, test::risingMethod()), "/calibration", "needs a tube with a standard of"));
}

TEST(RunSoundness, ALineNeedsThreeDifferentAmounts)
{
    Bench run = fullRun();
    run.calibration = Calibration::Line;
    run.tubes[3].sampleVolume_mL = 0.1;
    Tube second = run.tubes[3];
    second.sampleVolume_mL = 0.2;
    Tube third = run.tubes[3];
    run.tubes.push_back(second);
    run.tubes.push_back(third);
    EXPECT_TRUE(
        names(problemsOf(run, test::risingMethod()), "/calibration", "three different standard amounts"))
        << listed(problemsOf(run, test::risingMethod()));
    run.tubes.back().sampleVolume_mL = 0.3;
    EXPECT_TRUE(problemsOf(run, test::risingMethod()).empty());
}

TEST(RunSoundness, ALineOfTwoMeasurandsNeedsItsStandardsForEach)
{
    Bench run = fullRun();
    const assay::Method method = test::sequentialMethod();
    run.method = method.id;
    run.calibration = Calibration::Standard;
    run.standards[0].measurand = u"first"_s;
    const Problems problems = problemsOf(run, method);
    EXPECT_TRUE(names(problems, "/calibration", "\"second\"")) << listed(problems);
    EXPECT_FALSE(names(problems, "/calibration", "\"first\"")) << listed(problems);
}

TEST(RunSoundness, ARepeatIsOfAnotherSampleOfItsRun)
{
    // Samples: 0 "S", 1 "F", and 2, a liquid that repeats.
    const auto repeating = [](const QString &what) {
        return [what](Bench &r) {
            r.samples.push_back(test::liquid("S/2", {{1, 4}}));
            r.samples.back().repeats = what;
            r.tubes.push_back(test::sampleTube("S/2", 0.1, 0.3));
        };
    };
    expectRows({
        {"of a sample of the run", repeating(u"S"_s), "", ""},
        {"of none", repeating({}), "", ""},
        {"of one that is not there", repeating(u"T"_s), "/samples/2/repeats", "no sample \"T\""},
        {"of itself", repeating(u"S/2"_s), "/samples/2/repeats", "cannot repeat itself"},
        {"of another form", repeating(u"F"_s), "/samples/2/repeats", "another form"},
        {"of a repeat",
         [&](Bench &r) {
             repeating(u"S"_s)(r);
             r.samples.push_back(test::liquid("S/3"));
             r.samples.back().repeats = u"S/2"_s;
             r.tubes.push_back(test::sampleTube("S/3", 0.1, 0.3));
         },
         "/samples/3/repeats", "is a repeat itself"},
    });
}

TEST(RunSoundness, WithoutAMethodItsOwnPartsAreStillJudged)
{
    Bench run = fullRun();
    run.method = u"unknown"_s;
    run.tubes[1].readings[u"A7"_s] = 0.1;
    EXPECT_TRUE(problemsOf(run).empty()) << listed(problemsOf(run));
    run.samples[1].mass_g.reset();
    EXPECT_TRUE(names(problemsOf(run), "/samples/1/mass_g", "is missing"));
}

} // namespace plateau::run
