// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/localday.h"
#include "core/planning/lotoutlook.h"
#include "tests/ui/bench.h"
#include "ui/bench/rundraft.h"
#include "ui/bench/samplesignals.h"
#include "ui/bench/samplesmodel.h"
#include "ui/plan/feasibility.h"
#include "ui/plan/rackmodel.h"
#include "ui/plan/reagentsmodel.h"
#include "ui/plan/schedulepicture.h"
#include "ui/plan/waitingmodel.h"
#include "ui/shared/theme.h"
#include "ui/shared/timechartwords.h"

#include <QAbstractItemModelTester>
#include <QMimeData>
#include <QSignalSpy>

#include <gmock/gmock.h>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

constexpr auto watching = QAbstractItemModelTester::FailureReportingMode::Warning;

class Plan : public Bench
{
protected:
    Plan()
    {
        draft.title = u"Perry tanks"_s;
        draft.samples = {{u"P-104"_s, {}, {}, {}, false, {}}, {u"P-105"_s, {}, {}, {}, false, {}}};
        draft.pathLength_mm = u"10"_s;
        draft.uncertainty.texts = {u"0.002"_s, u"0,5"_s, u"0.2"_s, u"0.5"_s, u"0.8"_s, u"0.4"_s, u"0.2"_s};
        draft.startedAt = StoppedClock().now();
        draft.laboratory.glassware = planning::usualLaboratory().glassware;
    }
    /// But for the one that says that there is no standard.
    QStringList places() const
    {
        QStringList all;
        for (const assay::Problem &problem : ui::runOf(draft, method()).problems) {
            if (problem.pointer != "/standards"_L1)
                all << problem.pointer;
        }
        return all;
    }
    ui::StandardDraft standard() const
    {
        ui::StandardDraft typed;
        typed.id = u"STD"_s;
        typed.concentration_g_per_L = u"0.2"_s;
        typed.lossPerHour_percent = u"2"_s;
        typed.preparedAt = draft.startedAt.addSecs(-600).toLocalTime().toString(u"yyyy-MM-dd HH:mm"_s);
        typed.tubes = 1;
        return typed;
    }
    static std::vector<run::Role> rolesOf(const run::Run &run)
    {
        std::vector<run::Role> roles;
        for (const run::Tube &tube : run.tubes)
            roles.push_back(tube.role);
        return roles;
    }
    ui::RunDraft draft;
    ui::Theme theme;
};

TEST_F(Plan, ASampleMayHaveMoreTubesThanTheOthers)
{
    draft.samples[1].replicates = u"3"_s;
    EXPECT_EQ(ui::runOf(draft, method()).run.tubes.size(), 2U + 2 + 3);
    draft.samples[1].replicates = u"2.5"_s;
    EXPECT_THAT(places(), ::testing::ElementsAre(u"/samples/1/replicates"_s));
    draft.samples[1].replicates = u"0"_s;
    EXPECT_THAT(places(), ::testing::ElementsAre(u"/samples/1/replicates"_s));
}

TEST_F(Plan, ASpikeIsOneTubeMoreAndNeedsTheStandard)
{
    draft.samples[0].spike_mL = u"0,1"_s;
    EXPECT_THAT(places(), ::testing::ElementsAre(u"/samples/0/spike"_s));
    draft.standard = standard();
    const ui::DraftOutcome outcome = ui::runOf(draft, method());
    EXPECT_TRUE(outcome.problems.empty());
    using enum run::Role;
    EXPECT_EQ(rolesOf(outcome.run),
              (std::vector{Blank, Blank, Standard, Sample, Sample, Spiked, Sample, Sample}));
    EXPECT_EQ(outcome.run.tubes[5].spike, (run::Spike{u"STD"_s, 0.1}));
}

TEST_F(Plan, AControlIsAStandardThatStandsBesideIt)
{
    draft.standard = standard();
    draft.control = standard();
    draft.control->id = u"CTRL"_s;
    const ui::DraftOutcome outcome = ui::runOf(draft, method());
    EXPECT_TRUE(outcome.problems.empty());
    ASSERT_EQ(outcome.run.standards.size(), 2U);
    EXPECT_EQ(outcome.run.tubes[3].role, run::Role::Control);
    EXPECT_EQ(outcome.run.tubes[3].standard, u"CTRL"_s);
}

TEST_F(Plan, VolumesOfTheStandardMakeTheLevelsOfALine)
{
    draft.standard = standard();
    draft.standard->volumes_mL = u"0.05; 0,1  0.2"_s;
    draft.standard->tubes = 2;
    draft.calibration = run::Calibration::Line;
    const ui::DraftOutcome outcome = ui::runOf(draft, method());
    EXPECT_TRUE(outcome.problems.empty());
    std::vector<double> volumes;
    for (const run::Tube &tube : outcome.run.tubes) {
        if (tube.role == run::Role::Standard)
            volumes.push_back(tube.sampleVolume_mL.value_or(0));
    }
    EXPECT_THAT(volumes, ::testing::ElementsAre(0.05, 0.05, 0.1, 0.1, 0.2, 0.2));
    draft.standard->volumes_mL = u"0.05 x"_s;
    EXPECT_THAT(places(), ::testing::Contains(u"/standards/0/sampleVolume_mL"_s));
}

TEST_F(Plan, ARackTooSmallIsSaid)
{
    draft.laboratory.rackRows = 1;
    draft.laboratory.rackColumns = 6;
    EXPECT_TRUE(places().isEmpty());
    draft.laboratory.rackColumns = 5;
    EXPECT_THAT(places(), ::testing::ElementsAre(u"/tubes"_s));
}

TEST_F(Plan, TubesStandWhereTheyWerePut)
{
    draft.order = planning::moved(planning::keysOf(ui::runOf(draft, method()).run.tubes), 1, 5);
    using enum run::Role;
    EXPECT_EQ(rolesOf(ui::runOf(draft, method()).run),
              (std::vector{Blank, Sample, Sample, Sample, Sample, Blank}));
}

TEST_F(Plan, AnExpectationOutsideTheWindowIsARemark)
{
    // One unit of signal stands for 0.33651 g/L; the window is 0.1 to 1.
    draft.samples[0].expected = {u"0.2"_s};
    EXPECT_TRUE(places().isEmpty());
    draft.samples[0].expected = {u"2"_s};
    const assay::Problems strong = ui::runOf(draft, method()).problems;
    ASSERT_EQ(strong.size(), 2U) << "and there is no standard";
    EXPECT_FALSE(assay::hasErrors(strong));
    EXPECT_EQ(strong[0].pointer, u"/standards"_s);
    EXPECT_EQ(strong[1].pointer, u"/samples/0"_s);
    EXPECT_TRUE(strong[1].message.contains(u"5.943"_s)) << strong[1].message.toStdString();
    draft.samples[0].dilution = {{u"10"_s, u"100"_s}};
    EXPECT_TRUE(places().isEmpty());
    draft.samples[0].expected = {u"0.1"_s};
    EXPECT_THAT(places(), ::testing::ElementsAre(u"/samples/0"_s));
}

TEST_F(Plan, TheGlassOfADilutionIsKeptWithItsUncertainty)
{
    draft.samples[0].dilution = {{u"10"_s, u"100"_s}};
    const ui::DraftOutcome outcome = ui::runOf(draft, method());
    ASSERT_TRUE(outcome.run.samples[0].dilution[0].uncertainty_percent);
    // 0.02 mL of 10 mL and 0.1 mL of 100 mL, each over the root of 3.
    EXPECT_NEAR(*outcome.run.samples[0].dilution[0].uncertainty_percent,
                std::hypot(0.2, 0.1) / std::sqrt(3.0), 1e-9);
    ASSERT_EQ(outcome.plan.samples[0].glass.size(), 1U);
    EXPECT_EQ(outcome.plan.samples[0].glass[0].flask, u"flask 100 mL"_s);
    draft.samples[0].dilution = {{u"7"_s, u"93"_s}};
    const ui::DraftOutcome odd = ui::runOf(draft, method());
    EXPECT_FALSE(odd.run.samples[0].dilution[0].uncertainty_percent);
    EXPECT_TRUE(odd.plan.samples[0].glass.empty());
}

TEST_F(Plan, AProposedDilutionBringsTheSignalIntoTheWindow)
{
    ui::SampleDraft sample = draft.samples[0];
    sample.expected = {u"5"_s};
    QString why;
    const auto planned = ui::withProposedDilution(sample, run::Form::Liquid, method(), 340, 10,
                                                  draft.laboratory.glassware, why);
    ASSERT_TRUE(planned) << why.toStdString();
    const ui::SignalShown shown = ui::signalOf(*planned, run::Form::Liquid, method(), 0, 340, 10);
    EXPECT_EQ(shown.state, ui::State::Good) << shown.text.toStdString();
    sample.expected = {u"0.0001"_s};
    EXPECT_FALSE(ui::withProposedDilution(sample, run::Form::Liquid, method(), 340, 10,
                                          draft.laboratory.glassware, why));
    EXPECT_FALSE(why.isEmpty());
    sample.expected = {{}};
    EXPECT_FALSE(ui::withProposedDilution(sample, run::Form::Liquid, method(), 340, 10,
                                          draft.laboratory.glassware, why));
    EXPECT_TRUE(why.isEmpty()) << "nothing is expected of it";
}

TEST_F(Plan, SamplesModelHasAColumnForEachQuantity)
{
    ui::SamplesModel model(theme);
    QAbstractItemModelTester tester(&model, watching);
    model.setAssay(&method(), 340, 10);
    model.setNames({u"P-104"_s});
    const auto column = [&model](const QString &title) {
        for (int at = 0; at < model.columnCount(); ++at) {
            if (model.headerData(at, Qt::Horizontal, Qt::DisplayRole).toString() == title)
                return at;
        }
        return -1;
    };
    EXPECT_EQ(column(u"Product"_s), 1) << "in sight, beside the name";
    model.setProducts({u"perry"_s});
    EXPECT_EQ(model.index(0, 1).data(ui::SamplesModel::OffersRole).toStringList(), QStringList{u"perry"_s});
    EXPECT_EQ(column(u"Expected\n(g/L)"_s), 2);
    EXPECT_FALSE(model.index(0, 2).data(ui::SamplesModel::OffersRole).isValid());
    ASSERT_TRUE(model.setData(model.index(0, 2), u"0,2"_s, Qt::EditRole));
    EXPECT_EQ(model.index(0, column(u"Signal"_s)).data().toString(), u"0.594"_s);
    EXPECT_EQ(model.index(0, column(u"In the tube\n(mL)"_s)).data().toString(), u"0.1 (method)"_s);
    assay::Method other = method();
    other.measurands[0].id = u"another"_s;
    model.setAssay(&other, 340, 10);
    EXPECT_EQ(model.index(0, 2).data().toString(), QString()) << "expected of another quantity";
}

TEST_F(Plan, RackModelShowsTubesRowByRowAndAsksToMoveThem)
{
    ui::RackModel model;
    QAbstractItemModelTester tester(&model, watching);
    const run::Run run = ui::runOf(draft, method()).run;
    model.setRack(run, 2, 4);
    EXPECT_EQ(model.rowCount(), 2);
    EXPECT_EQ(model.index(1, 1).data().toString(), u"Tube 6: sample P-105, 2 of 2"_s);
    EXPECT_FALSE(model.tubeAt(model.index(1, 2)));
    QSignalSpy moves(&model, &ui::RackModel::moveWanted);
    std::unique_ptr<QMimeData> data(model.mimeData({model.index(0, 0)}));
    EXPECT_FALSE(model.dropMimeData(data.get(), Qt::MoveAction, -1, -1, model.index(1, 0)));
    ASSERT_EQ(moves.size(), 1);
    EXPECT_EQ(moves[0], (QVariantList{0, 4}));
    EXPECT_FALSE(model.dropMimeData(data.get(), Qt::MoveAction, -1, -1, model.index(1, 2)));
    EXPECT_EQ(moves.size(), 1) << "not onto an empty place";
    model.setRack(run, 1, 4);
    EXPECT_EQ(model.rowCount(), 2) << "drawn longer than it is";
}

TEST_F(Plan, ReagentsSayWhatIsEnoughAndTakeTheLotThatIsChosen)
{
    ui::ReagentsModel model(theme);
    QAbstractItemModelTester tester(&model, watching);
    const run::Run run = ui::runOf(draft, method()).run;
    std::vector<planning::Lot> lots(3);
    lots[0] = {1, u"Buffer pH 9"_s, u"B-1"_s, QDate(2026, 12, 31), {}, {}, 50};
    lots[1] = {2, u"buffer ph 9"_s, u"B-2"_s, QDate(2026, 6, 30), {}, {}, 50};
    lots[2] = {3, u"Enzyme suspension"_s, u"E-1"_s, QDate(2026, 1, 31), {}, {}, 1};
    const QDateTime now = StoppedClock().now();
    model.setNeeds(planning::reagentNeeds(method(), run, 10, lots, now, now.addSecs(3600)), lots,
                   now.addSecs(3600));
    ASSERT_EQ(model.rowCount(), 3);
    const auto text = [&model](int row, int column) { return model.index(row, column).data().toString(); };
    // Six tubes of 1 mL, and 10 % more.
    EXPECT_EQ(text(0, ui::ReagentsModel::Need), u"6.60\u00a0mL"_s);
    EXPECT_EQ(text(0, ui::ReagentsModel::LotColumn), u"B-2"_s) << "the one that expires first";
    EXPECT_EQ(text(0, ui::ReagentsModel::Remark), u"enough: 50 tubes"_s);
    EXPECT_EQ(model.index(0, ui::ReagentsModel::Remark).data(Qt::ToolTipRole).toString(),
              u"enough: 50 tubes; 50 more in lot B-1"_s);
    EXPECT_EQ(text(1, ui::ReagentsModel::Remark), u"no lot in the book"_s);
    EXPECT_EQ(text(2, ui::ReagentsModel::Remark), u"no fit lot: E-1 expired on 2026-01-31"_s);
    ASSERT_EQ(model.remarks().size(), 1U);
    EXPECT_EQ(model.remarks()[0].pointer, u"Enzyme suspension"_s);
    ASSERT_TRUE(model.setData(model.index(0, ui::ReagentsModel::LotColumn), 1, Qt::EditRole));
    ASSERT_TRUE(model.setData(model.index(2, ui::ReagentsModel::LotColumn), 3, Qt::EditRole));
    EXPECT_TRUE(text(2, ui::ReagentsModel::Remark).startsWith(u"expired on 2026-01-31"_s));
    EXPECT_EQ(text(2, ui::ReagentsModel::LotColumn), u"E-1"_s) << "what is wrong with it is said once";
    const std::vector<run::LotUse> uses = model.lotUses();
    ASSERT_EQ(uses.size(), 2U);
    EXPECT_EQ(uses[0], (run::LotUse{u"buffer"_s, u"B-1"_s, QDate(2026, 12, 31)}));
    model.startAnew();
    EXPECT_EQ(text(0, ui::ReagentsModel::LotColumn), u"B-2"_s);
}

TEST_F(Plan, ALotThatIsShortSaysWhatIsInHandWhereThereIsRoom)
{
    ui::ReagentsModel model(theme);
    const run::Run run = ui::runOf(draft, method()).run;
    const QDateTime now = StoppedClock().now();
    const std::vector<planning::Lot> lots{{1, u"Buffer pH 9"_s, u"B-1"_s, QDate(2026, 12, 31), {}, {}, 2.6}};
    model.setNeeds(planning::reagentNeeds(method(), run, 10, lots, now, now.addSecs(3600)), lots, now.addSecs(3600));
    // 6.60 mL are needed.
    EXPECT_EQ(model.index(0, ui::ReagentsModel::Remark).data().toString(),
              u"short by 4.00\u00a0mL, for tubes: 2"_s);
    ASSERT_EQ(model.remarks().size(), 1U);
    EXPECT_EQ(model.remarks()[0].message, u"short by 4.00\u00a0mL: in hand 2.60\u00a0mL, for tubes: 2"_s);
}

TEST_F(Plan, SaysFromWhichTubeOnTheNextLotIsTaken)
{
    ui::ReagentsModel model(theme);
    const run::Run run = ui::runOf(draft, method()).run;
    ASSERT_EQ(run.tubes.size(), 6U);
    const QDateTime now = StoppedClock().now();
    const auto remarkWith = [&](const std::vector<planning::Lot> &lots) {
        model.setNeeds(planning::reagentNeeds(method(), run, 10, lots, now, now.addSecs(3600)), lots,
                       now.addSecs(3600));
        return model.index(0, ui::ReagentsModel::Remark).data().toString();
    };
    // Six tubes of 1 mL, 6.60 mL with what is to be over.
    std::vector<planning::Lot> lots{{1, u"Buffer pH 9"_s, u"B-1"_s, QDate(2026, 6, 30), {}, {}, 2.6},
                                    {2, u"Buffer pH 9"_s, u"B-2"_s, QDate(2026, 9, 30), {}, {}, 50}};
    EXPECT_EQ(remarkWith(lots), u"from tube 3 on lot B-2"_s);
    lots[1].remaining_mL = 3.2;
    lots.push_back({3, u"Buffer pH 9"_s, u"B-3"_s, QDate(2026, 12, 31), {}, {}, 10});
    EXPECT_EQ(remarkWith(lots), u"from tube 3 on lot B-2, from tube 6 on lot B-3"_s);
    lots[0].remaining_mL = 6.2;
    EXPECT_EQ(remarkWith(lots), u"then from lot B-2"_s) << "for what is to be over, not for a tube";
    // Enough together, but no single one holds the last tubes.
    lots = {{1, u"Buffer pH 9"_s, u"B-1"_s, QDate(2026, 6, 30), {}, {}, 5.9},
            {2, u"Buffer pH 9"_s, u"B-2"_s, QDate(2026, 9, 30), {}, {}, 0.8}};
    EXPECT_EQ(remarkWith(lots), u"from tube 6 on no lot is enough"_s);
    ASSERT_EQ(model.remarks().size(), 1U);
    EXPECT_EQ(model.remarks()[0].message, u"from tube 6 on no lot is enough"_s);
}

TEST_F(Plan, AnOpenedLotSaysSinceWhenAndUntilWhenItIsGood)
{
    ui::ReagentsModel model(theme);
    const run::Run run = ui::runOf(draft, method()).run;
    const QDateTime now = StoppedClock().now();
    const QDate opened = now.date().addDays(-3);
    const std::vector<planning::Lot> lots{{1, u"Buffer pH 9"_s, u"B-1"_s, QDate(2026, 12, 31), opened, 14, 50}};
    model.setNeeds(planning::reagentNeeds(method(), run, 10, lots, now, now.addSecs(3600)), lots, now.addSecs(3600));
    const QModelIndex state = model.index(0, ui::ReagentsModel::Remark);
    const QString until = planning::lotDayText(opened.addDays(14));
    EXPECT_EQ(state.data().toString(), u"enough: 50 tubes; until %1"_s.arg(until));
    const QString told = u"enough: 50 tubes; opened on %1, use by %2"_s.arg(planning::lotDayText(opened), until);
    EXPECT_EQ(state.data(Qt::ToolTipRole).toString(), told);
    EXPECT_EQ(state.data(Qt::AccessibleTextRole).toString(), told);
    ASSERT_EQ(model.lotUses().size(), 1U);
    EXPECT_EQ(model.lotUses()[0].expires, opened.addDays(14)) << "the day that counts, not the label's";
}

TEST_F(Plan, WaitingSamplesBecomeRowsWithTheirAdvice)
{
    ui::WaitingModel model;
    QAbstractItemModelTester tester(&model, watching);
    notebook::WaitingSample fresh;
    fresh.sample.id = u"P-104"_s;
    fresh.sample.matrix = assay::Matrix::Coloured;
    fresh.sample.expected = {{u"example-acid"_s, 0.25}};
    notebook::WaitingSample repeat;
    repeat.sample.id = u"P-105"_s;
    repeat.repeat = notebook::AdvisedRepeat{{7}, u"example-acid"_s, {}};
    evaluation::Advice dilute;
    dilute.factor = 10;
    dilute.steps = {{5, 50}};
    repeat.repeat->advice.push_back({u"example-acid"_s, dilute});
    repeat.sample.expected = {{u"example-acid"_s, 0.25}};
    repeat.repeat->found = {{u"example-acid"_s, 2.34567}};
    repeat.repeat->dilution = {{10, 20}};
    repeat.repeat->sampleVolume_mL = 0.2;
    fresh.sample.receivedAt = QDateTime({2026, 11, 25}, {8, 10});
    model.setWaiting({repeat, fresh});
    const QModelIndex received = model.index(1, ui::WaitingModel::Received);
    EXPECT_EQ(received.data().toString(), assay::shownDay({2026, 11, 25}));
    EXPECT_EQ(received.data(Qt::ToolTipRole).toString(), assay::shownMoment(*fresh.sample.receivedAt));
    EXPECT_EQ(model.index(0, ui::WaitingModel::Why).data().toString(), u"repeat of run 7: dilute 10-fold"_s);
    EXPECT_TRUE(model.take(method()).empty()) << "nothing is ticked";
    for (int row = 0; row < 2; ++row)
        ASSERT_TRUE(model.setData(model.index(row, 0), Qt::Checked, Qt::CheckStateRole));
    model.setWaiting({repeat, fresh});
    EXPECT_EQ(model.ticked(), 2) << "ticks stay with what is still there";
    const std::vector<ui::SampleDraft> rows = model.take(method());
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[0].dilution, (std::vector<ui::DilutionDraft>{{u"5"_s, u"50"_s}}));
    EXPECT_EQ(rows[0].repeats, 7);
    EXPECT_EQ(rows[0].sampleVolume_mL, u"0.2"_s) << "as it was run, where nothing else is advised";
    EXPECT_EQ(rows[0].expected, std::vector{u"2.35"_s}) << "what was found is nearer than what was expected";
    EXPECT_TRUE(rows[1].ownBlank) << "it is coloured";
    EXPECT_EQ(rows[1].expected, std::vector{u"0.25"_s});
    EXPECT_EQ(model.ticked(), 0);
}

TEST_F(Plan, TimesSayTheIntervalOrTheSplit)
{
    ui::TimedRack rack;
    rack.method = method();
    rack.tubes = 12;
    rack.ownTubes = 2;
    rack.together = 2;
    ui::BenchTime time;
    time.most_s = 4 * 3600;
    const ui::Feasibility fits = ui::feasibilityOf(rack, time);
    ASSERT_TRUE(fits.schedule);
    EXPECT_TRUE(planning::faultsOf(*fits.schedule, fits.procedure, 12).empty());
    EXPECT_EQ(fits.sentences[0].state, ui::State::Good);
    EXPECT_TRUE(fits.sentences[0].text.contains(ui::durationText(fits.schedule->interval_s)));
    const ui::TimeChartData picture = ui::pictureOf(fits, method(), {u"blank"_s});
    ASSERT_EQ(picture.racks.size(), 1U);
    EXPECT_EQ(picture.racks[0].rows.size(), 12U);
    EXPECT_EQ(picture.racks[0].rows[0].name, u"1  blank"_s);

    time.most_s = fits.schedule->lastReading_s - 60;
    const ui::Feasibility split = ui::feasibilityOf(rack, time);
    EXPECT_FALSE(split.schedule);
    ASSERT_EQ(split.sentences.size(), 2U);
    EXPECT_EQ(split.sentences[0].state, ui::State::Bad);
    EXPECT_TRUE(split.sentences[1].text.contains(u"2 racks"_s)) << split.sentences[1].text.toStdString();
    EXPECT_TRUE(ui::pictureOf(split, method(), {}).racks.empty());

    time.most_s = 60;
    EXPECT_TRUE(ui::feasibilityOf(rack, time).sentences[0].text.startsWith(u"Not even one tube"_s));
}

TEST_F(Plan, ASecondRackRunsInTheWaitsOfTheFirst)
{
    ui::TimedRack rack;
    rack.method = method();
    rack.tubes = 4;
    ui::TimedRack second = rack;
    ui::BenchTime time;
    time.most_s = 4 * 3600;
    const ui::Feasibility both = ui::feasibilityOf(rack, time, second);
    ASSERT_TRUE(both.second);
    std::vector<planning::Span> busy;
    for (const planning::Task &task : both.schedule->tasks)
        busy.push_back({task.start_s, task.end_s});
    EXPECT_TRUE(planning::faultsOf(*both.second, both.secondProcedure, 4, busy).empty());
    EXPECT_LT(both.second->tasks.front().start_s, both.schedule->tasks.back().end_s);
    EXPECT_EQ(ui::pictureOf(both, method(), {}, &second.method).racks.size(), 2U);
}

/// What the list says of free hands is what the picture shows, to the second.
TEST_F(Plan, FreeHandsAreSaidAsTheyAreDrawn)
{
    ui::TimedRack rack;
    rack.method = method();
    rack.tubes = 4;
    ui::BenchTime time;
    time.most_s = 4 * 3600;
    for (const bool isWithSecond : {false, true}) {
        const auto second = isWithSecond ? std::optional(rack) : std::nullopt;
        const ui::Feasibility plan = ui::feasibilityOf(rack, time, second);
        ASSERT_TRUE(plan.schedule);
        ASSERT_FALSE(plan.free.empty());
        const ui::TimeChartData picture =
            ui::pictureOf(plan, method(), {}, second ? &second->method : nullptr);
        ASSERT_EQ(picture.free.size(), plan.free.size());
        QStringList spans;
        for (const ui::FreeTime &span : picture.free) {
            spans << u"%1 to %2"_s.arg(ui::stopwatchText(span.start_s), ui::afterStartText(span.end_s));
            for (const ui::TimeRack &drawn : picture.racks) {
                for (const ui::TimeRow &row : drawn.rows) {
                    for (const ui::TimeBar &bar : row.bars)
                        EXPECT_TRUE(bar.kind == ui::TimeBar::Kind::Wait || bar.end_s <= span.start_s ||
                                    bar.start_s >= span.end_s)
                            << bar.start_s << " in " << span.start_s << " to " << span.end_s;
                }
            }
        }
        EXPECT_EQ(plan.sentences.back().text,
                  u"Hands free, counted from the first start: %1."_s.arg(spans.join(u", "_s)));
    }
}

TEST(Durations, AreToldAsTheyAreRead)
{
    EXPECT_EQ(ui::durationText(25), u"25\u00a0s"_s);
    EXPECT_EQ(ui::durationText(119), u"119\u00a0s"_s);
    EXPECT_EQ(ui::durationText(120), u"2\u00a0min"_s);
    EXPECT_EQ(ui::durationText(3900), u"1\u00a0h\u00a005\u00a0min"_s);
    EXPECT_EQ(ui::afterStartText(492), u"8:12\u00a0min"_s);
    EXPECT_EQ(ui::afterStartText(3900), u"65:00\u00a0min"_s);
}

} // namespace
} // namespace plateau::test
