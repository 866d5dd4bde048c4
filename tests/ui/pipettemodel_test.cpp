// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/bench.h"
#include "ui/bench/pipettecell.h"
#include "ui/bench/pipettegrid.h"
#include "ui/bench/pipettemodel.h"
#include "ui/bench/pipettestepsmodel.h"
#include "ui/bench/pipettesubject.h"
#include "ui/bench/pipettewords.h"
#include "ui/bench/places.h"
#include "ui/bench/volumewords.h"
#include "ui/shared/theme.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QIcon>
#include <QScrollBar>
#include <QSignalSpy>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

using State = ui::PipetteSheet::State;

planning::Round roundOf(int step, const QString &component, double volume_mL, std::size_t tubes)
{
    planning::Round round;
    round.step = step;
    round.component = component;
    round.name = component;
    round.usualVolume_mL = volume_mL;
    round.doses.assign(tubes, planning::Round::Dose{volume_mL, {}, false});
    return round;
}

/// The example run's worksheet as written by hand: buffer, water, sample, then A1, starter, A2. The blanks
/// get 0.1 mL of water in place of sample, the last tube 0.2 mL of sample.
class Pipette : public Bench
{
protected:
    Pipette()
        : run(exampleRun())
    {
        rounds = {roundOf(0, u"Buffer"_s, 1, 4), roundOf(1, u"Water"_s, 1, 4),
                  roundOf(2, u"Sample"_s, 0.1, 4), roundOf(6, u"Starter"_s, 0.02, 4)};
        rounds[2].doses = {
            planning::Round::Dose{0.1, u"Water"_s, false}, planning::Round::Dose{0.1, u"Water"_s, false},
            planning::Round::Dose{0.1, u"P-104"_s, false}, planning::Round::Dose{0.2, u"P-104"_s, true}};
        rounds[3].suspension = true;
    }

    ui::PipetteSheet sheet() const { return {method(), run, rounds, marks}; }
    void tick(int round, int firstTube = 0, int lastTube = 3)
    {
        for (int tube = firstTube; tube <= lastTube; ++tube) {
            const auto &dose = rounds[static_cast<std::size_t>(round)].doses[static_cast<std::size_t>(tube)];
            marks.ticked[{round, tube}] = {dose->volume_mL, dose->volume_mL};
        }
    }
    void read(const QString &reading, int firstTube = 0, int lastTube = 3)
    {
        for (int tube = firstTube; tube <= lastTube; ++tube)
            run.tubes[static_cast<std::size_t>(tube)].readings[reading] = 0.1;
    }

    run::Run run;
    std::vector<planning::Round> rounds;
    ui::PipetteMarks marks;
    ui::Theme theme;
};

TEST_F(Pipette, VolumesAreSaidAsAPipetteIsSet)
{
    EXPECT_EQ(ui::volumeWords(0.02), u"20\u00a0µL"_s);
    EXPECT_EQ(ui::volumeWords(0.07), u"70\u00a0µL"_s) << "not 70.00000000000001";
    EXPECT_EQ(ui::volumeWords(0.9995), u"999.5\u00a0µL"_s);
    EXPECT_EQ(ui::volumeWords(1), u"1\u00a0mL"_s);
    EXPECT_EQ(ui::volumeWords(2.05), u"2.05\u00a0mL"_s);
    EXPECT_EQ(ui::waitWords({{3, 10}, assay::Interval{20, 25}}),
              u"Wait 3 to 10\u00a0min at 20 to 25\u00a0°C"_s);
    EXPECT_EQ(ui::waitWords({{5, 5}, std::nullopt}), u"Wait 5\u00a0min"_s);
}

TEST_F(Pipette, GoesRoundByRoundAndTubeByTube)
{
    for (int round = 0; round < 3; ++round) {
        for (int tube = 0; tube < 4; ++tube) {
            EXPECT_EQ(sheet().next(), (ui::Dosing{round, tube}));
            EXPECT_EQ(sheet().countOfRound(round), (ui::StepCount{tube, 4}));
            tick(round, tube, tube);
        }
    }
    EXPECT_EQ(sheet().next(), std::nullopt) << "A1 comes before the starter";
    EXPECT_EQ(sheet().steps()[static_cast<std::size_t>(sheet().currentStep())].reading, u"A1"_s);
}

TEST_F(Pipette, TheStarterComesAfterTheReadingOfAllTubes)
{
    tick(0);
    tick(1);
    tick(2);
    read(u"A1"_s, 0, 2);
    EXPECT_EQ(sheet().next(), std::nullopt);
    EXPECT_EQ(sheet().readingsMissingBefore({3, 3}), QStringList{u"A1"_s});
    EXPECT_TRUE(sheet().readingsMissingBefore({3, 0}).isEmpty());
    EXPECT_TRUE(sheet().readingsMissingBefore({2, 3}).isEmpty());
    read(u"A1"_s);
    EXPECT_EQ(sheet().next(), (ui::Dosing{3, 0}));
    tick(3);
    EXPECT_EQ(sheet().next(), std::nullopt);
    EXPECT_EQ(sheet().steps()[static_cast<std::size_t>(sheet().currentStep())].reading, u"A2"_s);
    read(u"A2"_s);
    EXPECT_EQ(sheet().currentStep(), static_cast<int>(sheet().steps().size()));
}

TEST_F(Pipette, WhatWasReadBeforeAnyTickIsNotAskedFor)
{
    EXPECT_TRUE(sheet().isLed());
    read(u"A1"_s, 0, 0);
    EXPECT_FALSE(sheet().isLed());
    EXPECT_EQ(sheet().next(), std::nullopt);
}

TEST_F(Pipette, WhatWasPipettedFromPaperIsNotAskedFor)
{
    marks.fromPaper = true;
    EXPECT_FALSE(sheet().isLed());
    EXPECT_EQ(sheet().next(), std::nullopt);
}

TEST_F(Pipette, ATubeThatWasReadSinceIsPassedAndTheOthersAreStillDue)
{
    tick(0);
    tick(1);
    tick(2, 0, 1);
    read(u"A1"_s, 2, 2);
    EXPECT_EQ(sheet().stateOf({2, 2}), State::Passed);
    EXPECT_EQ(sheet().stateOf({2, 3}), State::Due);
    EXPECT_EQ(sheet().stateOf({3, 2}), State::Due) << "the starter comes after A1";
    EXPECT_EQ(sheet().next(), (ui::Dosing{2, 3}));
    EXPECT_EQ(sheet().countOfRound(2), (ui::StepCount{3, 4}));
}

TEST_F(Pipette, ATubeIsReadableWhenAllIsInThatComesBefore)
{
    EXPECT_TRUE(sheet().isReadable(3, u"A2"_s)) << "nobody has to tick";
    tick(0);
    tick(1);
    tick(2, 0, 1);
    EXPECT_TRUE(sheet().isReadable(1, u"A1"_s));
    EXPECT_FALSE(sheet().isReadable(2, u"A1"_s)) << "the sample is missing";
    EXPECT_FALSE(sheet().isReadable(1, u"A2"_s)) << "the starter is missing";
    tick(3, 1, 1);
    EXPECT_TRUE(sheet().isReadable(1, u"A2"_s));
    marks.fromPaper = true;
    EXPECT_TRUE(sheet().isReadable(2, u"A1"_s));
}

TEST_F(Pipette, ASpoiltTubeCountsNowhere)
{
    run.tubes[0].spoilt = u"dropped"_s;
    EXPECT_EQ(sheet().stateOf({0, 0}), State::Spoilt);
    EXPECT_EQ(sheet().next(), (ui::Dosing{0, 1}));
    EXPECT_EQ(sheet().countOfRound(0), (ui::StepCount{0, 3}));
    tick(0);
    tick(1);
    tick(2);
    read(u"A1"_s, 1, 3);
    EXPECT_EQ(sheet().next(), (ui::Dosing{3, 1})) << "nobody waits for the reading of a spoilt tube";
}

TEST_F(Pipette, TubesThatGetNothingInARoundAreLeftOut)
{
    rounds[1].doses[2].reset();
    tick(0);
    tick(1, 0, 1);
    EXPECT_EQ(sheet().stateOf({1, 2}), State::Nothing);
    EXPECT_EQ(sheet().next(), (ui::Dosing{1, 3}));
    EXPECT_EQ(sheet().countOfRound(1), (ui::StepCount{2, 3}));
}

TEST_F(Pipette, TheNextTubeIsLookedForFromWhereTheHandIs)
{
    tick(0, 2, 2);
    EXPECT_EQ(sheet().nextIn(0, 2), (ui::Dosing{0, 3}));
    tick(0, 3, 3);
    EXPECT_EQ(sheet().nextIn(0, 2), (ui::Dosing{0, 0})) << "round to what was left out";
    EXPECT_EQ(sheet().dueIn(0, 0, 9).size(), 2U);
}

TEST_F(Pipette, ADilutedSampleIsDilutedFirstAndSaidToBeSo)
{
    run.samples[0].dilution = {{5, 50, {}}, {10, 25, {}}};
    EXPECT_EQ(sheet().steps()[0].kind, ui::SheetStep::Kind::Dilute);
    EXPECT_EQ(sheet().steps()[0].words, u"Dilute 5\u00a0mL to 50\u00a0mL: P-104, step 1 of 2"_s);
    EXPECT_EQ(sheet().steps()[1].words, u"Dilute 10\u00a0mL to 25\u00a0mL: P-104, step 2 of 2"_s);
    EXPECT_EQ(sheet().stepOf(0), 2);
    EXPECT_EQ(sheet().currentStep(), 2) << "nobody waits for its tick";
    EXPECT_EQ(sheet().next(), (ui::Dosing{0, 0}));
    EXPECT_EQ(ui::additionWords(sheet(), {2, 2}), u"Tube 3: add 100\u00a0µL P-104, diluted 25-fold"_s);
    EXPECT_EQ(ui::stripWords(u"A"_s, sheet(), {2, 2}), u"Rack A, tube 3: add 100\u00a0µL P-104, diluted 25-fold"_s);
    EXPECT_EQ(ui::additionWords(sheet(), {2, 0}), u"Tube 1: add 100\u00a0µL water"_s);
    EXPECT_EQ(ui::cellWords(sheet(), {2, 2}), (ui::CellWords{u"100\u00a0µL"_s, u"diluted 25-fold"_s}));
    EXPECT_EQ(ui::cellWords(sheet(), {0, 2}), (ui::CellWords{u"1\u00a0mL"_s, QString()}));
    EXPECT_EQ(ui::subjectOf(sheet(), {0, 0}).hints, u"First make the dilutions that head the steps; Tab leads there."_s);
    tick(0, 0, 0);
    EXPECT_EQ(ui::subjectOf(sheet(), {0, 1}).hints, u"First make the dilutions that head the steps; Tab leads there."_s)
        << "buffer in a tube says nothing of the sample";
    tick(0);
    tick(1);
    EXPECT_TRUE(ui::subjectOf(sheet(), {2, 2}).hints.startsWith(u"First make the dilutions"_s));
    tick(2, 2, 2);
    EXPECT_FALSE(sheet().hasDilutionToMake()) << "whoever pipetted one has made them";
    EXPECT_FALSE(ui::subjectOf(sheet(), {2, 3}).hints.contains(u"dilutions"_s));
}

TEST_F(Pipette, EachDilutionIsTickedByItself)
{
    run.samples.push_back(run.samples[0]);
    run.samples[1].id = u"P-105"_s;
    run.tubes[3].sample = u"P-105"_s;
    rounds[2].doses[3] = planning::Round::Dose{0.1, u"P-105"_s, false};
    run.samples[0].dilution = {{5, 50, {}}, {10, 25, {}}};
    run.samples[1].dilution = {{2, 20, {}}};
    EXPECT_EQ(sheet().steps()[2].words, u"Dilute 2\u00a0mL to 20\u00a0mL: P-105"_s);
    EXPECT_EQ(sheet().nextDilution(), 0);
    EXPECT_EQ(sheet().countOfDilutions(), (ui::StepCount{0, 3}));
    EXPECT_EQ(ui::dilutionSubject(sheet(), 1).title, u"P-104, step 2 of 2: dilute 10\u00a0mL to 25\u00a0mL"_s);
    EXPECT_EQ(ui::dilutionSubject(sheet(), 1).text, u"Dilution 2 of 3; 0 made so far."_s);
    marks.diluted = {{0, 1}};
    EXPECT_EQ(sheet().dilutionState({0, 0}), State::Due) << "the other step says nothing of it";
    EXPECT_EQ(sheet().dilutionState({0, 1}), State::Ticked);
    EXPECT_EQ(sheet().nextDilution(1), 2);
    EXPECT_EQ(ui::dilutionSubject(sheet(), 1).title, u"P-104, step 2 of 2: diluted 10\u00a0mL to 25\u00a0mL"_s);
    EXPECT_EQ(ui::dilutionSubject(sheet(), 1).text,
              u"Dilution 2 of 3; 1 made so far. Space takes the tick back."_s);
    marks.diluted.insert({0, 0});
    tick(0);
    tick(1);
    tick(2, 2, 2);
    EXPECT_TRUE(sheet().hasDilutionToMake()) << "who ticks dilutions has not ticked that of P-105";
    EXPECT_EQ(sheet().dilutionsDue(), (std::vector<notebook::DilutionPlace>{{1, 0}}));
    EXPECT_EQ(sheet().next(), (ui::Dosing{2, 0})) << "nothing waits for it";
    EXPECT_TRUE(sheet().isReadable(2, u"A1"_s));
    marks.diluted.insert({1, 0});
    EXPECT_FALSE(sheet().hasDilutionToMake());
    EXPECT_EQ(sheet().nextDilution(), std::nullopt);
}

TEST_F(Pipette, ADilutionWhoseSampleIsInWasMade)
{
    run.samples[0].dilution = {{5, 50, {}}};
    tick(2, 3, 3);
    EXPECT_EQ(sheet().dilutionState({0, 0}), State::Passed);
    EXPECT_EQ(sheet().countOf(0), (ui::StepCount{1, 1}));
    EXPECT_EQ(sheet().nextDilution(), std::nullopt);
    EXPECT_EQ(ui::dilutionSubject(sheet(), 0).text,
              u"Dilution 1 of 1; 1 made so far. Not ticked, but pipetted since."_s);
    EXPECT_EQ(ui::dilutionSubject(sheet(), 0).title, u"P-104: dilute 5\u00a0mL to 50\u00a0mL"_s);
}

TEST_F(Pipette, StepsSayOfEachDilutionWhetherItIsTicked)
{
    run.samples[0].dilution = {{5, 50, {}}, {10, 25, {}}};
    ui::PipetteStepsModel model(theme);
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    model.show(sheet(), -1, 0);
    ASSERT_EQ(model.rowCount(), 12);
    const auto spoken = [&model](int row) { return model.index(row, 0).data(Qt::AccessibleTextRole).toString(); };
    const auto shape = [&model](int row) {
        return model.index(row, 0).data(Qt::DecorationRole).value<QIcon>().cacheKey();
    };
    EXPECT_TRUE(spoken(0).endsWith(u"P-104, step 1 of 2, not ticked"_s)) << spoken(0).toStdString();
    EXPECT_TRUE(model.index(0, 0).data(Qt::FontRole).value<QFont>().bold());
    EXPECT_FALSE(model.index(1, 0).data(Qt::FontRole).isValid());
    const qint64 due = shape(0);
    marks.diluted = {{0, 0}};
    model.show(sheet(), -1, 1);
    EXPECT_EQ(reset.count(), 1) << "a tick is a change only";
    EXPECT_TRUE(spoken(0).endsWith(u"P-104, step 1 of 2, ticked"_s)) << spoken(0).toStdString();
    EXPECT_TRUE(spoken(1).endsWith(u"step 2 of 2, not ticked"_s)) << spoken(1).toStdString();
    EXPECT_NE(shape(0), due);
    EXPECT_EQ(shape(1), due);
    tick(2, 2, 2);
    model.show(sheet(), 2);
    EXPECT_TRUE(spoken(1).endsWith(u"step 2 of 2, not ticked, but pipetted since"_s)) << spoken(1).toStdString();
    EXPECT_EQ(model.index(0, ui::PipetteStepsModel::Tubes).data().toString(), QString());
}

TEST_F(Pipette, EveryAdditionThatAWaitFollowsStartsIt)
{
    EXPECT_FALSE(sheet().startsWait(0));
    EXPECT_FALSE(sheet().startsWait(1));
    EXPECT_TRUE(sheet().startsWait(2)) << "the sample: A1 is read so long after it";
    EXPECT_TRUE(sheet().startsWait(3));
}

TEST_F(Pipette, WordsNameTubeVolumeAndWhatStandsIn)
{
    EXPECT_EQ(ui::additionWords(sheet(), {3, 1}), u"Tube 2: add 20\u00a0µL starter"_s);
    EXPECT_EQ(ui::additionWords(sheet(), {2, 2}), u"Tube 3: add 100\u00a0µL P-104"_s);
    EXPECT_EQ(ui::additionWords(sheet(), {2, 0}), u"Tube 1: add 100\u00a0µL water"_s);
    EXPECT_EQ(ui::oddWords(sheet(), {2, 0}), u"Water in place of sample"_s);
    EXPECT_EQ(ui::oddWords(sheet(), {2, 2}), QString());
    EXPECT_EQ(ui::oddWords(sheet(), {2, 3}), u"200\u00a0µL, where most tubes get 100\u00a0µL"_s);
    run.samples[0].dilution = {{5, 50}, {1, 10}};
    EXPECT_EQ(ui::tubeWords(sheet(), {2, 2}),
              u"sample P-104, 1 of 2, diluted 5\u00a0mL to 50\u00a0mL, then 1\u00a0mL to 10\u00a0mL"_s);
    EXPECT_EQ(ui::tubeWords(sheet(), {0, 2}), u"sample P-104, 1 of 2"_s) << "buffer is not diluted";
    EXPECT_EQ(ui::wordsBefore(sheet(), 7), u"mix, wait 3 to 10\u00a0min"_s);
    EXPECT_EQ(ui::wordsBefore(sheet(), 2), QString());
}

TEST_F(Pipette, AnotherVolumeIsSaidWhereItWentIn)
{
    marks.ticked[{2, 2}] = {0.15, 0.1};
    marks.ticked[{2, 3}] = {0.2, 0.2};
    EXPECT_TRUE(sheet().isDifferent({2, 2}));
    EXPECT_FALSE(sheet().isDifferent({2, 3})) << "odd by plan is not different";
    EXPECT_EQ(ui::stateWords(sheet(), {2, 2}), u"150, not 100\u00a0µL"_s);
}

TEST_F(Pipette, CellsStandAsTheTubesDoInTheRack)
{
    ui::PipetteModel model;
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    QSignalSpy changed(&model, &QAbstractItemModel::dataChanged);
    EXPECT_EQ(model.rowCount(), 0);
    model.show(sheet(), 0, 3);
    ASSERT_EQ(model.rowCount(), 2);
    ASSERT_EQ(model.columnCount(), 3);
    EXPECT_EQ(model.index(1, 0).data().toString(), u"4"_s);
    EXPECT_EQ(model.tubeAt(model.index(1, 1)), std::nullopt) << "behind the last tube";
    EXPECT_EQ(model.flags(model.index(1, 1)), Qt::NoItemFlags);
    EXPECT_EQ(model.indexOf(2), model.index(0, 2));
    EXPECT_EQ(model.rowOf(1), (std::pair{0, 2}));
    EXPECT_EQ(model.rowOf(3), (std::pair{3, 3}));
    EXPECT_EQ(reset.count(), 1);

    tick(2, 0, 0);
    model.show(sheet(), 2, 3);
    EXPECT_EQ(reset.count(), 1) << "another round of the same rack is a change only";
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(model.index(0, 0).data(ui::PipetteModel::StateRole).toInt(), static_cast<int>(State::Ticked));
    EXPECT_TRUE(model.index(1, 0).data(ui::PipetteModel::OddRole).toBool());
    EXPECT_EQ(model.index(0, 2).data(ui::PipetteModel::ContentsRole).toString(), u"P-104"_s);
    EXPECT_EQ(model.index(0, 2).data(ui::PipetteModel::WhichRole).toString(), u"1 of 2"_s);
    EXPECT_EQ(model.index(0, 1).data(ui::PipetteModel::DetailRole).toString(), u"Water"_s);
    EXPECT_EQ(model.index(0, 1).data(Qt::AccessibleTextRole).toString(),
              u"Tube 2, blank, 2 of 2, 100\u00a0µL, to do, Water in place of sample"_s);
    EXPECT_EQ(model.index(0, 0).data(Qt::AccessibleTextRole).toString(),
              u"Tube 1, blank, 1 of 2, 100\u00a0µL, done, Water in place of sample"_s);
}

TEST_F(Pipette, CellsTellWhatIsPlannedFromWhatWasNoted)
{
    EXPECT_EQ(ui::cellWords(sheet(), {2, 0}), (ui::CellWords{u"100\u00a0µL"_s, u"Water"_s}));
    EXPECT_EQ(ui::cellWords(sheet(), {2, 2}), (ui::CellWords{u"100\u00a0µL"_s, QString()}));
    EXPECT_EQ(ui::cellWords(sheet(), {2, 3}), (ui::CellWords{u"200\u00a0µL"_s, u"as planned"_s}));
    EXPECT_TRUE(ui::subjectOf(sheet(), {2, 3}).planned);
    marks.ticked[{2, 0}] = {0.12, 0.1};
    marks.ticked[{2, 3}] = {0.15, 0.2};
    EXPECT_EQ(ui::cellWords(sheet(), {2, 0}),
              (ui::CellWords{u"120\u00a0µL"_s, u"Water, noted, not 100\u00a0µL"_s}));
    EXPECT_EQ(ui::cellWords(sheet(), {2, 3}), (ui::CellWords{u"150\u00a0µL"_s, u"noted, not 200\u00a0µL"_s}));
    EXPECT_FALSE(ui::subjectOf(sheet(), {2, 3}).planned);
}

TEST_F(Pipette, CellsShowTheReadingWhileTubesAreRead)
{
    run.tubes[3].spoilt = u"dropped"_s;
    tick(0);
    tick(1);
    tick(2);
    read(u"A1"_s, 0, 0);
    EXPECT_EQ(sheet().currentReading(), u"A1"_s);
    ui::PipetteModel model;
    model.show(sheet(), 2, 4, sheet().currentReading());
    const auto shown = [&model](int tube, int role) { return model.index(0, tube).data(role); };
    EXPECT_EQ(shown(0, ui::PipetteModel::StateWordsRole).toString(), u"0.100"_s);
    EXPECT_EQ(shown(0, ui::PipetteModel::StateRole).toInt(), static_cast<int>(State::Ticked));
    EXPECT_EQ(shown(1, ui::PipetteModel::StateWordsRole).toString(), u"to read"_s);
    EXPECT_EQ(shown(1, ui::PipetteModel::StateRole).toInt(), static_cast<int>(State::Due));
    EXPECT_FALSE(shown(1, ui::PipetteModel::OddRole).toBool());
    EXPECT_EQ(shown(2, Qt::AccessibleTextRole).toString(), u"Tube 3, sample P-104, 1 of 2, A1 to read"_s);
    EXPECT_EQ(shown(2, ui::PipetteModel::ContentsRole).toString(), u"P-104"_s);
    EXPECT_EQ(shown(3, ui::PipetteModel::StateWordsRole).toString(), u"spoilt: dropped"_s);
    EXPECT_EQ(shown(3, ui::PipetteModel::StateRole).toInt(), static_cast<int>(State::Spoilt));
    read(u"A1"_s);
    EXPECT_EQ(sheet().currentReading(), u"A2"_s);
}

TEST_F(Pipette, ANameIsBrokenBehindAHyphenBeforeItIsBrokenWithinAWord)
{
    const QFontMetricsF metrics((QFont()));
    const double width = metrics.horizontalAdvance(u"SO2-Standa"_s);
    const ui::BrokenText two = ui::inTwoLines(u"SO2-Standard"_s, metrics, width);
    EXPECT_EQ(two.lines, (QStringList{u"SO2-"_s, u"Standard"_s}));
    EXPECT_TRUE(two.isWhole);
}

TEST_F(Pipette, ANameThatSaysItsRoleIsNotGivenItTwice)
{
    EXPECT_EQ(ui::withRoleWord(u"control %1"_s, u"Control SO2, 2026-2"_s), u"Control SO2, 2026-2"_s);
    EXPECT_EQ(ui::withRoleWord(u"Standard %1"_s, u"SO2-Standard 27.11."_s), u"SO2-Standard 27.11."_s);
    EXPECT_EQ(ui::withRoleWord(u"standard %1"_s, u"Standardised wine"_s), u"standard Standardised wine"_s);
    EXPECT_EQ(ui::withRoleWord(u"sample %1"_s, u"P-104"_s), u"sample P-104"_s);
}

TEST_F(Pipette, ANameKeepsBothEndsInTwoLines)
{
    const QFontMetricsF metrics(theme.large());
    const auto width = [&metrics](const QString &text) { return metrics.horizontalAdvance(text) + 1; };
    EXPECT_EQ(ui::inTwoLines(u"Must A"_s, metrics, width(u"Must A"_s)).lines, QStringList{u"Must A"_s});
    const ui::BrokenText two = ui::inTwoLines(u"Orchard blend 7"_s, metrics, width(u"Orchard bl"_s));
    EXPECT_EQ(two.lines, (QStringList{u"Orchard"_s, u"blend 7"_s}));
    EXPECT_TRUE(two.isWhole);
    const ui::BrokenText cut =
        ui::inTwoLines(u"Must from the northern slope, tank B"_s, metrics, width(u"Must from"_s));
    ASSERT_EQ(cut.lines.size(), 2);
    EXPECT_TRUE(cut.lines[0].startsWith(u"Must"_s));
    EXPECT_TRUE(cut.lines[1].endsWith(u"B"_s)) << cut.lines[1].toStdString();
    EXPECT_FALSE(cut.isWhole);
}

TEST_F(Pipette, RowsOfTheRackGiveWayBeforeATubeGoesOutOfSight)
{
    run.tubes.assign(24, run.tubes.back());
    rounds = {roundOf(0, u"Buffer"_s, 1, 24), roundOf(1, u"Water"_s, 1, 24), roundOf(2, u"Sample"_s, 0.1, 24),
              roundOf(6, u"Starter"_s, 0.02, 24)};
    ui::PipetteModel model;
    ui::PipetteGrid grid(theme, &model);
    model.show(sheet(), 0, 8);
    ASSERT_EQ(model.rowCount(), 3);
    const int large = QFontMetrics(theme.large()).height();
    const int letters = grid.fontMetrics().height();
    const int roomy = large * 4 + letters * 3;
    grid.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&grid));
    const auto isWhole = [&](int rowHeight) {
        grid.resize(letters * 60, rowHeight * 3 + grid.frameWidth() * 2);
        QTest::qWait(20); // a table hears of other rows by a timer
        return grid.verticalScrollBar()->maximum() == 0;
    };
    EXPECT_TRUE(isWhole(roomy));
    EXPECT_EQ(grid.rowHeight(0), roomy);
    EXPECT_TRUE(isWhole(roomy * 3 / 4)) << grid.rowHeight(0);
    EXPECT_TRUE(isWhole(roomy * 3 / 5)) << grid.rowHeight(0);
    EXPECT_FALSE(isWhole(roomy * 2 / 5)) << "words would run into the next tube: it scrolls";
    EXPECT_GE(grid.rowHeight(0), large + letters * 3);
}

TEST_F(Pipette, ACellNeedsMoreForALongNameAndLessWithSmallLetters)
{
    ui::PipetteModel model;
    ui::PipetteCell cell(theme);
    const QFont font;
    const double width = QFontMetricsF(theme.large()).horizontalAdvance(u"P-104 P-104"_s);
    const auto needed = [&] {
        model.show(sheet(), 0, 4);
        return cell.neededHeight(model.index(0, 2), width, font);
    };
    const double one = needed();
    EXPECT_GE(one, QFontMetricsF(theme.large()).height() * 3 + QFontMetricsF(font).height());
    cell.setCompact(true);
    EXPECT_LT(needed(), one);
    cell.setCompact(false);
    run.samples[0].id = u"Orchard blend 7"_s;
    run.tubes[2].sample = run.samples[0].id;
    run.tubes[3].sample = run.samples[0].id;
    EXPECT_GT(needed(), one);
}

TEST_F(Pipette, StepsCountTheTubesThatAreThrough)
{
    ui::PipetteStepsModel model(theme);
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    tick(0);
    tick(1, 0, 1);
    model.show(sheet(), 1);
    ASSERT_EQ(model.rowCount(), 10);
    const auto shown = [&model](int row, int column) { return model.index(row, column).data().toString(); };
    EXPECT_EQ(shown(0, ui::PipetteStepsModel::Step), u"Buffer"_s);
    EXPECT_EQ(shown(0, ui::PipetteStepsModel::Tubes), u"4 of 4"_s);
    EXPECT_EQ(shown(1, ui::PipetteStepsModel::Tubes), u"2 of 4"_s);
    EXPECT_EQ(shown(1, ui::PipetteStepsModel::Volume), u"1\u00a0mL"_s);
    EXPECT_EQ(shown(3, ui::PipetteStepsModel::Step), u"Mix"_s);
    EXPECT_EQ(shown(3, ui::PipetteStepsModel::Tubes), QString());
    EXPECT_EQ(shown(5, ui::PipetteStepsModel::Step), u"Read A1"_s);
    EXPECT_EQ(shown(5, ui::PipetteStepsModel::Tubes), u"0 of 4"_s);
    for (int row = 0; row < model.rowCount(); ++row)
        EXPECT_FALSE(model.index(row, 0).data(Qt::DecorationRole).value<QIcon>().isNull())
            << row << ": all steps begin in one line";
    EXPECT_TRUE(model.index(1, 0).data(Qt::FontRole).value<QFont>().bold());
    EXPECT_FALSE(model.index(0, 0).data(Qt::FontRole).isValid());
    read(u"A1"_s, 0, 2);
    model.show(sheet(), 1);
    EXPECT_EQ(reset.count(), 1);
    EXPECT_EQ(shown(5, ui::PipetteStepsModel::Tubes), u"3 of 4"_s);
}

} // namespace
} // namespace plateau::test
