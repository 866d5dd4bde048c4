// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/charts/standardloss.h"
#include "tests/core/notebook/fixture.h"

namespace plateau::test {

using namespace notebook;
using namespace Qt::StringLiterals;
using charts::Quantity;
using charts::Subject;
using ::testing::IsEmpty;
using ::testing::SizeIs;

namespace {

const QString analyte = u"analyte"_s;

/// On a day of March 2026, with a standard that is 1.5 h old, a control and a sample in duplicate.
run::Run runOn(int day, double standardSignal)
{
    run::Run run = plainRun();
    const QDateTime begin(QDate(2026, 3, day), QTime(9, 0), Qt::UTC);
    run.title = u"Day %1"_s.arg(day);
    run.startedAt = begin;
    run.standards = {{u"STD"_s, 0.25, {}, begin.addSecs(-3600), begin.addSecs(1800), 0.02}};
    run.samples = {liquid("S"), liquid("K")};
    run::Tube control = sampleTube("K", 0.1, 0.4);
    control.role = run::Role::Control;
    run.tubes = {blank(0.10, 0.11), standardTube("STD", 0.1, 0.1 + standardSignal), control,
                 sampleTube("S", 0.1, 0.500), sampleTube("S", 0.1, 0.504)};
    run.lots = {{u"starter"_s, day < 4 ? u"E-3"_s : u"E-4"_s, {}}};
    return run;
}

class ChartSeriesTest : public NotebookTest
{
protected:
    void SetUp() override { m_book = create(); }
    RunId decided(const run::Run &run, DecisionKind kind = DecisionKind::Accepted)
    {
        const RunId id = m_book->addRun(run, risingMethod(), u"Ines Kaddour"_s);
        m_book->decide(id, kind, u"Tomas Brandl"_s, u"seen"_s);
        return id;
    }
    charts::Series seriesOf(Quantity quantity, const QString &name = {})
    {
        return m_book->charts().series({quantity, u"rising"_s, analyte, name});
    }

    std::unique_ptr<Notebook> m_book;
};

std::vector<double> valuesOf(const charts::Series &series)
{
    std::vector<double> values;
    for (const charts::Point &point : series)
        values.push_back(point.value);
    return values;
}

} // namespace

TEST_F(ChartSeriesTest, HoldsWhatTheDecisionsFoundOldestFirst)
{
    const RunId late = decided(runOn(5, 0.80));
    const RunId early = decided(runOn(3, 0.78));
    m_book->addRun(runOn(6, 0.7), risingMethod(), u"Ines Kaddour"_s); // on the bench
    const charts::Series series = seriesOf(Quantity::StandardRecovery);
    ASSERT_THAT(series, SizeIs(2));
    const auto expected = [](const run::Run &run) {
        return evaluation::evaluate(risingMethod(), run).standards.at(0).recovery_percent.value();
    };
    EXPECT_EQ(series[0].value, expected(runOn(3, 0.78)));
    EXPECT_EQ(series[1].value, expected(runOn(5, 0.80)));
    EXPECT_EQ(series[0].run->run, early.value);
    EXPECT_EQ(series[1].run->run, late.value);
    EXPECT_EQ(series[0].run->title(), u"Day 3"_s);
    EXPECT_EQ(series[0].run->at, QDateTime(QDate(2026, 3, 3), QTime(9, 0), Qt::UTC));
    EXPECT_EQ(series[0].name, u"STD"_s);
    EXPECT_EQ(series[0].unit, u"%"_s);
    ASSERT_TRUE(series[0].standard);
    EXPECT_EQ(series[0].standard->age_h, 1.5);
    EXPECT_EQ(series[0].standard->made_g_per_L, 0.25);
    EXPECT_EQ(series[0].standard->lossPerHour, 0.02);
    EXPECT_EQ(series[0].run->lots, (QList<charts::LotOf>{{u"starter"_s, u"E-3"_s}}));
    EXPECT_TRUE(series[0].run->persons.contains(u"Ines Kaddour"_s));
    EXPECT_EQ(charts::agedRecoveries(series).size(), 2u);
}

TEST_F(ChartSeriesTest, HasBlanksControlsDuplicatesAndSamples)
{
    const run::Run run = runOn(3, 0.8);
    decided(run);
    const evaluation::Evaluation made = evaluation::evaluate(risingMethod(), run);
    const auto resultOf = [&](const QString &sample) {
        return *std::ranges::find(made.results, sample, &evaluation::Result::sample);
    };
    EXPECT_THAT(valuesOf(seriesOf(Quantity::Blank)), ::testing::ElementsAre(made.blanks.at(0).mean.value()));
    EXPECT_THAT(valuesOf(seriesOf(Quantity::ControlMaterial)),
                ::testing::ElementsAre(resultOf(u"K"_s).value.value()));
    EXPECT_THAT(valuesOf(seriesOf(Quantity::DuplicateRange)),
                ::testing::ElementsAre(resultOf(u"S"_s).spread.value()));
    EXPECT_THAT(valuesOf(seriesOf(Quantity::RelativeDuplicateRange)),
                ::testing::ElementsAre(
                    ::testing::DoubleEq(resultOf(u"S"_s).spread.value() / *resultOf(u"S"_s).value * 100)));
    EXPECT_THAT(valuesOf(seriesOf(Quantity::StandardStrength, u"STD"_s)),
                ::testing::ElementsAre(made.standards.at(0).found_g_per_L.value()));
    EXPECT_THAT(seriesOf(Quantity::SampleResult, u"s"_s), SizeIs(1));
    EXPECT_THAT(seriesOf(Quantity::StandardRecovery, u"OTHER"_s), IsEmpty());
}

TEST_F(ChartSeriesTest, LeavesOutStandardsThatCalibrateTheirOwnRun)
{
    decided(runOn(3, 0.8));
    run::Run calibrated = runOn(4, 0.8);
    calibrated.calibration = run::Calibration::Standard;
    decided(calibrated);
    ASSERT_EQ(evaluation::evaluate(risingMethod(), calibrated).standards.at(0).recovery_percent, 100.0);
    EXPECT_THAT(seriesOf(Quantity::StandardRecovery), SizeIs(1));
    EXPECT_THAT(seriesOf(Quantity::StandardStrength), SizeIs(1));
    EXPECT_THAT(m_book->runHistory().recoveries({}), SizeIs(1));
}

TEST_F(ChartSeriesTest, KnowThePhotometerFromThePlan)
{
    planning::PlanRecord plan;
    plan.owners = {{planning::UncertaintyInput::PathLength, {}, u"cuvettes"_s, u"check 3"_s, false},
                   {planning::UncertaintyInput::Absorbance, {}, u"photometer P1"_s, u"check 7"_s, false}};
    run::Run run = runOn(3, 0.8);
    run.uncertainty = uncertainties();
    const RunId id = m_book->addRun(run, risingMethod(), u"Ines Kaddour"_s, plan);
    m_book->decide(id, DecisionKind::Accepted, u"Tomas Brandl"_s, u"seen"_s);
    decided(runOn(4, 0.8));
    const charts::Series series = seriesOf(Quantity::StandardRecovery);
    ASSERT_THAT(series, SizeIs(2));
    EXPECT_EQ(series[0].run->photometer, u"photometer P1"_s);
    EXPECT_EQ(series[1].run->photometer, QString());
    charts::Filter filter;
    filter.photometer = u"photometer P1"_s;
    EXPECT_THAT(charts::filtered(series, filter), SizeIs(1));
}

TEST_F(ChartSeriesTest, HistoryIsOfTheNewestRunsBeforeAMoment)
{
    for (const int day : {5, 3, 4, 7})
        decided(runOn(day, 0.8));
    HistoryFilter filter;
    filter.method = u"rising"_s;
    filter.until = QDateTime(QDate(2026, 3, 5), QTime(9, 0), Qt::UTC);
    filter.newestRuns = 2;
    const auto titles = [&] {
        QStringList all;
        for (const RecoveryPoint &point : m_book->runHistory().recoveries(filter))
            all << point.of.title;
        return all;
    };
    EXPECT_EQ(titles(), (QStringList{u"Day 4"_s, u"Day 5"_s}));
    filter.newestRuns.reset();
    EXPECT_EQ(titles(), (QStringList{u"Day 3"_s, u"Day 4"_s, u"Day 5"_s}));
    filter.until.reset();
    filter.newestRuns = 1;
    EXPECT_EQ(titles(), (QStringList{u"Day 7"_s}));
}

TEST_F(ChartSeriesTest, OffersWhatThereIs)
{
    decided(runOn(3, 0.8));
    decided(runOn(4, 0.8));
    const auto recoveries = m_book->charts().offers(Quantity::StandardRecovery);
    ASSERT_THAT(recoveries, SizeIs(1));
    EXPECT_EQ(recoveries[0].subject, (Subject{Quantity::StandardRecovery, u"rising"_s, analyte, u"STD"_s}));
    EXPECT_EQ(recoveries[0].methodName, u"Rising"_s);
    EXPECT_EQ(recoveries[0].values, 2);
    EXPECT_THAT(m_book->charts().offers(Quantity::SampleResult), SizeIs(2));
    EXPECT_THAT(m_book->charts().offers(Quantity::ProductResult), IsEmpty());
}

TEST_F(ChartSeriesTest, TellsRejectedRunsAndLosesThoseThatAreReopened)
{
    const RunId first = decided(runOn(3, 0.8));
    decided(runOn(4, 0.6), DecisionKind::Rejected);
    charts::Series series = seriesOf(Quantity::StandardRecovery);
    ASSERT_THAT(series, SizeIs(2));
    EXPECT_TRUE(series[0].isAccepted);
    EXPECT_FALSE(series[1].isAccepted);
    m_book->reopen(first, u"Tomas Brandl"_s, u"one more look"_s);
    series = seriesOf(Quantity::StandardRecovery);
    ASSERT_THAT(series, SizeIs(1));
    EXPECT_FALSE(series[0].isAccepted);
}

TEST_F(ChartSeriesTest, MarksWhatIsLeftOutUntilItIsTakenBack)
{
    const RunId run = decided(runOn(3, 0.8));
    const ChartValue value{Quantity::StandardRecovery, run, analyte, u"STD"_s};
    m_book->charts().leaveOut(value, u"Ines Kaddour"_s, u"wrong flask"_s);
    const charts::Series series = seriesOf(Quantity::StandardRecovery, u"STD"_s);
    ASSERT_TRUE(series.at(0).omission);
    EXPECT_EQ(series[0].omission->reason, u"wrong flask"_s);
    EXPECT_EQ(series[0].omission->person, u"Ines Kaddour"_s);
    EXPECT_FALSE(seriesOf(Quantity::StandardStrength).at(0).omission);
    m_book->charts().takeBack(value, u"Ines Kaddour"_s, u"right flask"_s);
    EXPECT_FALSE(seriesOf(Quantity::StandardRecovery).at(0).omission);
}

} // namespace plateau::test
