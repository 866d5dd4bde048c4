// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Readings taken before or after the method's wait: 3 to 10 min before A1, 15 to 40 min before A2.
#include "core/evaluation/evaluation.h"

#include "tests/core/evaluation/found.h"
#include "tests/support/benches.h"

#include <gtest/gtest.h>

using namespace plateau;
using namespace Qt::StringLiterals;
using evaluation::Check;
using evaluation::CheckId;
using evaluation::Evaluation;
using evaluation::Verdict;

namespace {

constexpr double second_min = 1.0 / 60;

/// The sample in at 1 min, A1 after waited1_min, the starter a minute later, A2 after waited2_min.
void timed(run::Tube &tube, double waited1_min, double waited2_min)
{
    tube.addedAt_min = {{u"sample"_s, 1.0}, {u"starter"_s, 2.0 + waited1_min}};
    tube.readAt_min = {{u"A1"_s, 1.0 + waited1_min}, {u"A2"_s, 2.0 + waited1_min + waited2_min}};
}

/// plainRun with a standard, every tube in time.
run::Run timedRun()
{
    run::Run run = test::plainRun();
    run.standards = {{u"STD"_s, 0.168, {}, {}, {}, 0}};
    run.tubes.push_back(test::standardTube("STD", 0.1, 0.61));
    for (run::Tube &tube : run.tubes)
        timed(tube, 5, 20);
    return run;
}

Evaluation evaluatedAsTimed(const run::Run &run)
{
    return evaluation::evaluate(test::risingMethod(), run);
}

/// Passed, failed, or not made at all.
enum class Outcome { None, Passed, Failed };
Outcome outcomeOf(const Evaluation &evaluation, CheckId id, const QString &scope)
{
    const Check *check = test::find(evaluation.checks, id, scope);
    if (!check)
        return Outcome::None;
    return check->passed ? Outcome::Passed : Outcome::Failed;
}

struct Outcomes {
    Outcome early;
    Outcome late;
    bool operator==(const Outcomes &) const = default;
};
Outcomes outcomes(double waited1_min, double waited2_min)
{
    run::Run run = timedRun();
    timed(run.tubes[2], waited1_min, waited2_min);
    const Evaluation evaluation = evaluatedAsTimed(run);
    return {outcomeOf(evaluation, CheckId::ReadingEarly, u"sample S"_s),
            outcomeOf(evaluation, CheckId::ReadingLate, u"sample S"_s)};
}

} // namespace

TEST(Timing, BothEndsOfAWaitAreInTimeToTheSecond)
{
    using enum Outcome;
    EXPECT_EQ(outcomes(5, 15), (Outcomes{Passed, Passed}));
    EXPECT_EQ(outcomes(5, 15 - 0.4 * second_min), (Outcomes{Passed, Passed}));
    EXPECT_EQ(outcomes(5, 15 - 0.6 * second_min), (Outcomes{Failed, Passed}));
    EXPECT_EQ(outcomes(5, 40), (Outcomes{Passed, Passed}));
    EXPECT_EQ(outcomes(5, 40 + 0.4 * second_min), (Outcomes{Passed, Passed}));
    EXPECT_EQ(outcomes(5, 40 + 0.6 * second_min), (Outcomes{Passed, Failed}));
    EXPECT_EQ(outcomes(3, 20), (Outcomes{Passed, Passed}));
    EXPECT_EQ(outcomes(3 - second_min, 20), (Outcomes{Failed, Passed}));
    EXPECT_EQ(outcomes(10, 20), (Outcomes{Passed, Passed}));
    EXPECT_EQ(outcomes(10 + second_min, 20), (Outcomes{Passed, Failed}));
}

TEST(Timing, TheMessageSaysByHowMuch)
{
    run::Run run = timedRun();
    timed(run.tubes[1], 5, 13.5);
    timed(run.tubes[2], 12.25, 75);
    const Evaluation evaluation = evaluatedAsTimed(run);
    EXPECT_EQ(test::find(evaluation.checks, CheckId::ReadingEarly, u"sample S"_s)->message(),
              u"tube 2: A2 was read 1:30\u00a0min early (after 13:30\u00a0min, the method waits 15 to "
              "40\u00a0min). Read again when the wait is over."_s);
    const Check *late = test::find(evaluation.checks, CheckId::ReadingLate, u"sample S"_s);
    EXPECT_EQ(late->message(),
              u"tube 3: A1 was read 2:15\u00a0min late (after 12:15\u00a0min, the method waits 3 to "
              "10\u00a0min); tube 3: A2 was read 35:00\u00a0min late (after 75:00\u00a0min, the method "
              "waits 15 to 40\u00a0min). A slow side reaction may have added to the signal."_s);
    EXPECT_EQ(late->tubes, std::vector<int>{2});
}

TEST(Timing, AMomentBeforeWhatComesAheadOfItIsToldAsThat)
{
    run::Run run = timedRun();
    run.tubes[1].addedAt_min[u"starter"_s] = run.tubes[1].readAt_min[u"A2"_s] + 1.25;
    const Evaluation evaluation = evaluatedAsTimed(run);
    const Check *early = test::find(evaluation.checks, CheckId::ReadingEarly, u"sample S"_s);
    ASSERT_FALSE(early->passed);
    EXPECT_TRUE(early->message().startsWith(
        u"tube 2: A2 is marked 1:15\u00a0min before what precedes it (the method waits 15 to "
        "40\u00a0min)"_s))
        << early->message().toStdString();
}

TEST(Timing, WithoutTimesThereIsNoCheck)
{
    const Evaluation none = evaluatedAsTimed(test::plainRun());
    EXPECT_EQ(outcomeOf(none, CheckId::ReadingEarly, u"sample S"_s), Outcome::None);
    EXPECT_EQ(outcomeOf(none, CheckId::ReadingLate, u"run"_s), Outcome::None);
    // A time alone is no wait.
    run::Run run = test::plainRun();
    run.tubes[1].readAt_min = {{u"A2"_s, 3.0}};
    run.tubes[2].addedAt_min = {{u"starter"_s, 30.0}};
    EXPECT_EQ(outcomeOf(evaluatedAsTimed(run), CheckId::ReadingEarly, u"sample S"_s), Outcome::None);
    // Nor is the time of a reading that is not there.
    timed(run.tubes[1], 5, 3);
    run.tubes[1].readings.clear();
    EXPECT_EQ(outcomeOf(evaluatedAsTimed(run), CheckId::ReadingEarly, u"sample S"_s), Outcome::None);
}

TEST(Timing, SaysWhereOnlySomeOfTheTimesAreKnown)
{
    run::Run run = timedRun();
    run.tubes[2].readAt_min.clear();
    EXPECT_EQ(test::find(evaluatedAsTimed(run).checks, CheckId::ReadingLate, u"sample S"_s)->message(),
              u"No reading whose time is known was taken too late."_s);
    EXPECT_EQ(test::find(evaluatedAsTimed(timedRun()).checks, CheckId::ReadingLate, u"sample S"_s)->message(),
              u"No reading was taken too late."_s);
}

TEST(Timing, ASampleReadLateIsToBeLookedInto)
{
    EXPECT_EQ(evaluatedAsTimed(timedRun()).results[0].verdict, Verdict::Reportable);
    run::Run run = timedRun();
    timed(run.tubes[2], 5, 41);
    const Evaluation evaluation = evaluatedAsTimed(run);
    EXPECT_EQ(evaluation.results[0].verdict, Verdict::Investigate);
    EXPECT_EQ(test::failedWords(evaluation.checks), std::vector<QString>{u"reading-late"_s});
    EXPECT_FALSE(evaluation.acceptable);
    EXPECT_TRUE(evaluation.results[0].value) << "the value is there all the same";
}

TEST(Timing, BlanksAndStandardsAreJudgedToo)
{
    run::Run run = timedRun();
    timed(run.tubes[0], 5, 14);
    const Evaluation blank = evaluatedAsTimed(run);
    EXPECT_EQ(outcomeOf(blank, CheckId::ReadingEarly, u"run"_s), Outcome::Failed);
    EXPECT_EQ(outcomeOf(blank, CheckId::ReadingEarly, u"sample S"_s), Outcome::Passed);
    EXPECT_EQ(blank.results[0].verdict, Verdict::Investigate);
    run = timedRun();
    timed(run.tubes[3], 5, 45);
    const Evaluation standard = evaluatedAsTimed(run);
    EXPECT_EQ(outcomeOf(standard, CheckId::ReadingLate, u"standard STD"_s), Outcome::Failed);
    EXPECT_EQ(outcomeOf(standard, CheckId::ReadingLate, u"run"_s), Outcome::Passed);
    EXPECT_FALSE(standard.acceptable);
}

TEST(Timing, ASpikedTubeReadLateIsSaidOfItsSample)
{
    run::Run run = timedRun();
    run.tubes.push_back(test::sampleTube("S", 0.120, 0.900));
    run.tubes.back().role = run::Role::Spiked;
    run.tubes.back().spike = run::Spike{u"STD"_s, 0.1};
    timed(run.tubes.back(), 5, 20);
    const auto sayings = [](const Evaluation &evaluation) {
        return std::ranges::count(evaluation.checks, CheckId::ReadingLate, &Check::id);
    };
    EXPECT_EQ(sayings(evaluatedAsTimed(run)), 3) << "blanks, standard, sample";
    timed(run.tubes.back(), 5, 50);
    EXPECT_EQ(sayings(evaluatedAsTimed(run)), 4);
    EXPECT_EQ(evaluatedAsTimed(run).results[0].checks.back().passed, false);
}

TEST(Timing, SpoiltTubesAreNotJudgedByTime)
{
    run::Run run = timedRun();
    timed(run.tubes[2], 5, 50);
    run.tubes[2].spoilt = u"knocked over"_s;
    EXPECT_EQ(outcomeOf(evaluatedAsTimed(run), CheckId::ReadingLate, u"sample S"_s), Outcome::Passed);
}

TEST(Timing, ASeriesAndItsMarksAreOneStatement)
{
    run::Run run = timedRun();
    timed(run.tubes[1], 5, 44);
    run.tubes[1].readings[u"A2"_s] = run::ReadingSeries{{20, 0.630}, {44, 0.630}};
    const QString message =
        test::find(evaluatedAsTimed(run).checks, CheckId::ReadingLate, u"sample S"_s)->message();
    EXPECT_EQ(message.count(u"tube 2"_s), 1) << message.toStdString();
    EXPECT_TRUE(message.contains(u"4:00\u00a0min late"_s)) << message.toStdString();
}

TEST(Timing, ASeriesIsJudgedByItsOwnMinutesOnlyWhereTheWaitFollowsTheStarter)
{
    assay::Method method = test::sequentialMethod();
    run::Run run = test::plainRun();
    run.method = method.id;
    for (run::Tube &tube : run.tubes)
        tube.readings[u"A3"_s] = 0.7;
    // Twenty minutes after the starter, thirty more to the last: 10 to 30 min are after the second enzyme.
    run.tubes[1].readings[u"A3"_s] = run::ReadingSeries{{45, 0.700}, {50, 0.700}};
    EXPECT_EQ(outcomeOf(evaluation::evaluate(method, run), CheckId::ReadingLate, u"sample S, second"_s),
              Outcome::None);
    run.tubes[1].addedAt_min = {{u"starter"_s, 5.0}, {u"second"_s, 26.0}};
    run.tubes[1].readAt_min = {{u"A3"_s, 55.0}};
    EXPECT_EQ(outcomeOf(evaluation::evaluate(method, run), CheckId::ReadingLate, u"sample S, second"_s),
              Outcome::Passed);
    run.tubes[1].readAt_min = {{u"A3"_s, 57.0}};
    EXPECT_EQ(outcomeOf(evaluation::evaluate(method, run), CheckId::ReadingLate, u"sample S, second"_s),
              Outcome::Failed);
}
