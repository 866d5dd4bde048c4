// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/charts/chartwords.h"
#include "tests/support/print.h"
#include "tests/ui/bench.h"
#include "ui/charts/chartexport.h"
#include "ui/charts/chartsource.h"
#include "ui/charts/chartview.h"
#include "ui/charts/panelpicture.h"
#include "ui/charts/panelview.h"
#include "ui/charts/pointpanel.h"
#include "ui/charts/settingsform.h"
#include "ui/shared/losspanel.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/theme.h"

#include <QComboBox>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

namespace plateau::ui {

using namespace Qt::StringLiterals;
using charts::Kind;
using charts::Quantity;
using charts::Settings;
using charts::Subject;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

namespace {

const Subject recovery{Quantity::StandardRecovery, u"malate"_s, u"malate"_s};

charts::Series seriesOf(const std::vector<double> &values)
{
    charts::Series series;
    for (const double value : values) {
        auto run = std::make_shared<charts::RunFacts>();
        run->run = static_cast<qint64>(series.size()) + 1;
        run->titleUtf8 = "Tanks";
        run->at =
            QDateTime(QDate(2026, 1, 1), QTime(9, 0), Qt::UTC).addDays(static_cast<qint64>(series.size()));
        charts::Point point;
        point.run = run;
        point.name = u"STD"_s;
        point.value = value;
        point.unit = u"%"_s;
        series.push_back(point);
    }
    return series;
}

Settings fixed(double centre, double deviation)
{
    Settings settings;
    settings.limits = charts::FixedLimits{centre, deviation, u"validation"_s, QDate(2026, 1, 1)};
    return settings;
}

charts::ControlChart chartOf(const std::vector<double> &values)
{
    return charts::controlChart(recovery, seriesOf(values), {}, fixed(100, 2));
}

std::vector<PanelPoint> pointsOf(const std::vector<double> &values)
{
    std::vector<PanelPoint> points;
    for (const double value : values)
        points.push_back({static_cast<double>(points.size() + 1), value});
    return points;
}

class ChartViewTest : public ::testing::Test
{
protected:
    ChartViewTest()
    {
        m_view.resize(800, 500);
        m_view.show();
        m_view.setFocus();
    }
    void press(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        QTest::keyClick(&m_view, static_cast<Qt::Key>(key), modifiers);
    }

    Theme m_theme;
    ChartView m_view{m_theme, u"Control chart"_s};
};

} // namespace

TEST(ThinnedPoints, AreAllWhereThereIsRoom)
{
    EXPECT_THAT(thinnedPoints(pointsOf({1, 5, 2, 4}), 0.5, 4.5, 100), ElementsAre(0u, 1u, 2u, 3u));
    EXPECT_THAT(thinnedPoints({}, 0, 1, 100), IsEmpty());
}

TEST(ThinnedPoints, KeepOneBeyondEitherSideSoThatThePathGoesOn)
{
    EXPECT_THAT(thinnedPoints(pointsOf({1, 5, 2, 4, 3}), 2.5, 3.5, 100), ElementsAre(1u, 2u, 3u));
}

TEST(ThinnedPoints, KeepTheLowestAndTheHighestOfEachPixel)
{
    std::vector<double> values(10000);
    for (std::size_t i = 0; i < values.size(); ++i)
        values[i] = std::sin(static_cast<double>(i));
    values[4321] = 9;
    values[7777] = -9;
    const auto points = pointsOf(values);
    const auto kept = thinnedPoints(points, 0.5, 10000.5, 500);
    EXPECT_LE(kept.size(), 1004u);
    EXPECT_TRUE(std::ranges::is_sorted(kept));
    EXPECT_TRUE(std::ranges::binary_search(kept, 4321u));
    EXPECT_TRUE(std::ranges::binary_search(kept, 7777u));
}

TEST(PanelPicture, HasTheLinesThatTheLimitsSay)
{
    const PanelPicture picture = pictureOf(recovery, chartOf({100, 107, 95}), 0, {});
    ASSERT_THAT(picture.levels, SizeIs(5));
    EXPECT_EQ(picture.levels[0].label, u"centre 100.0"_s);
    EXPECT_EQ(picture.levels[4], (LevelLine{LevelLine::Kind::Action, 106, u"+3 s 106.0"_s}));
    ASSERT_THAT(picture.lines, SizeIs(1));
    EXPECT_EQ(picture.lines[0][1].state, State::Bad);
    EXPECT_EQ(picture.lines[0][2].state, State::Good);
    EXPECT_EQ(picture.highest, 107);
    EXPECT_EQ(picture.lowest, 94);
    // Of the moving range no line lies below zero.
    const PanelPicture ranges = pictureOf(recovery, chartOf({100, 107, 95}), 1, {});
    EXPECT_THAT(ranges.levels, SizeIs(3));
}

TEST_F(ChartViewTest, BothPanelsHaveOneRunAtOneDistanceFromTheLeft)
{
    m_view.setChart(recovery, chartOf({100, 101.5, 98.7, 102.25, 99.1}));
    m_view.resize(700, 420);
    m_view.show();
    QTest::qWait(0);
    const auto panels = m_view.findChildren<PanelView *>();
    ASSERT_THAT(panels, SizeIs(2));
    EXPECT_GT(panels[0]->plot().width(), 300);
    EXPECT_NE(panels[0]->sides().numbers, panels[1]->sides().numbers); // "104" and "4"
    EXPECT_NEAR(panels[0]->plot().left(), panels[1]->plot().left(), 1);
    EXPECT_NEAR(panels[0]->plot().right(), panels[1]->plot().right(), 1);
}

TEST_F(ChartViewTest, StepsFromPointToPointByKeysAndSaysWhatIsThere)
{
    m_view.setChart(recovery, chartOf({100, 107, 95}));
    QSignalSpy chosen(&m_view, &ChartView::pointChosen);
    QSignalSpy opened(&m_view, &ChartView::pointOpened);
    press(Qt::Key_Left);
    EXPECT_EQ(m_view.chosen(), 2u);
    press(Qt::Key_Left);
    EXPECT_EQ(m_view.chosen(), 1u);
    EXPECT_EQ(
        m_view.accessibleDescription(),
        u"2 of 3; run 2 (Tanks, 2026-01-02); STD; 107.0\u00a0%; 3.5 s above the centre; one beyond 3 s, "
        u"above the centre."_s);
    press(Qt::Key_Home);
    press(Qt::Key_Left);
    EXPECT_EQ(m_view.chosen(), 0u);
    press(Qt::Key_End);
    EXPECT_EQ(m_view.chosen(), 2u);
    press(Qt::Key_Return);
    ASSERT_EQ(opened.count(), 1);
    EXPECT_EQ(opened[0][0].toInt(), 2);
    EXPECT_EQ(chosen.count(), 5);
}

TEST_F(ChartViewTest, GoesToWhatIsOutOfControl)
{
    std::vector<double> values(50, 100);
    values[10] = 120;
    values[40] = 80;
    m_view.setChart(recovery, chartOf(values));
    press(Qt::Key_Right, Qt::ControlModifier);
    EXPECT_EQ(m_view.chosen(), 10u);
    press(Qt::Key_Right, Qt::ControlModifier);
    EXPECT_EQ(m_view.chosen(), 11u); // the moving range back
    press(Qt::Key_End);
    press(Qt::Key_Left, Qt::ControlModifier);
    EXPECT_EQ(m_view.chosen(), 41u);
}

TEST_F(ChartViewTest, ShowsTheNewestOfManyAndTheRestByKeys)
{
    m_view.setChart(recovery, chartOf(std::vector<double>(1000, 100)));
    EXPECT_EQ(m_view.windowFrom(), 800.5);
    EXPECT_EQ(m_view.windowTo(), 1000.5);
    press(Qt::Key_0);
    EXPECT_EQ(m_view.windowFrom(), 0.5);
    press(Qt::Key_Plus);
    EXPECT_EQ(m_view.windowTo() - m_view.windowFrom(), 500);
    press(Qt::Key_Home);
    EXPECT_EQ(m_view.windowFrom(), 0.5);
    m_view.pan(-100);
    EXPECT_EQ(m_view.windowFrom(), 0.5);
    m_view.pan(1e6);
    EXPECT_EQ(m_view.windowTo(), 1000.5);
}

TEST_F(ChartViewTest, KeepsWhatIsChosenByItsRun)
{
    m_view.setChart(recovery, chartOf({100, 101, 102}));
    m_view.choose(1);
    charts::Series more = seriesOf({100, 101, 102});
    more.erase(more.begin());
    m_view.setChart(recovery, charts::controlChart(recovery, more, {}, fixed(100, 2)));
    EXPECT_EQ(m_view.chosen(), 0u);
    m_view.setChart(recovery, charts::controlChart(recovery, {}, {}, fixed(100, 2)));
    EXPECT_FALSE(m_view.chosen());
    press(Qt::Key_Left);
    press(Qt::Key_Return);
    EXPECT_FALSE(m_view.chosen());
}

TEST_F(ChartViewTest, WithoutPointsSaysWhatToDo)
{
    m_view.setNothing(u"Accept runs."_s);
    EXPECT_EQ(m_view.accessibleDescription(), u"Accept runs."_s);
}

TEST_F(ChartViewTest, IsSavedAsPictureDrawingAndTable)
{
    charts::Series series = seriesOf({100, 107, 95});
    auto facts = std::make_shared<charts::RunFacts>(*series[2].run);
    facts->titleUtf8 = "=cmd, \"x\"";
    series[2].run = facts;
    series[2].omission = std::make_shared<charts::Omission>(charts::Omission{u"bubble"_s, u"Ada"_s, {}});
    m_view.setChart(recovery, charts::controlChart(recovery, series, {}, fixed(100, 2)));
    QTemporaryDir folder;
    const auto saved = [&](const QString &name) {
        EXPECT_EQ(saveChart(m_view, u"Recovery"_s, folder.filePath(name)), QString());
        QFile file(folder.filePath(name));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll();
    };
    const QImage picture = QImage::fromData(saved(u"a.png"_s), "PNG");
    EXPECT_EQ(picture.size(), QSize(1600, 1000));
    EXPECT_TRUE(saved(u"a.svg"_s).contains("<title>Recovery</title>"));
    const QList<QByteArray> lines = saved(u"a.csv"_s).split('\n');
    ASSERT_EQ(lines.size(), 5);
    EXPECT_EQ(lines[2], "2,Tanks,2026-01-02T09:00:00Z,STD,107,%,,yes,no,,3.5,one beyond 3 s\r");
    EXPECT_EQ(lines[3], "3,\"'=cmd, \"\"x\"\"\",2026-01-03T09:00:00Z,STD,95,%,,yes,yes,bubble,,\r");
    EXPECT_TRUE(saveChart(m_view, u"R"_s, folder.filePath(u"none/a.csv"_s)).contains(u"was not saved"_s));
}

namespace {

template <class Widget> Widget &find(QWidget &parent, const QString &name)
{
    auto *found = parent.findChild<Widget *>(name);
    if (!found)
        qFatal("no %s", qPrintable(name));
    return *found;
}

} // namespace

using ChartSourceOf = test::Bench;

TEST_F(ChartSourceOf, ARunNamesTheReagentOfALotAsTheMethodDoes)
{
    run::Run run = test::exampleRun();
    run.lots = {{u"buffer"_s, u"B-1"_s, {}}, {u"starter"_s, u"E-1"_s, {}}};
    for (run::Tube &tube : run.tubes)
        tube.readings = {{u"A1"_s, 0.1}, {u"A2"_s, tube.role == run::Role::Blank ? 0.11 : 0.61}};
    book->decide(addRun(run), notebook::DecisionKind::Accepted, u"R. Okafor"_s, {});
    ChartSource source(*book, [] { return u"R. Okafor"_s; });
    source.refresh();
    const auto offers = source.offers(Quantity::Blank);
    ASSERT_FALSE(offers.empty());
    const charts::Series series = source.series(offers[0].subject);
    ASSERT_FALSE(series.empty());
    QStringList names;
    for (const charts::LotOf &lot : series[0].run->lots)
        names << lot.component;
    EXPECT_THAT(names, ElementsAre(u"Buffer pH 9"_s, u"Enzyme suspension"_s));
}

TEST(SettingsForm, GivesBackWhatItWasGiven)
{
    Theme theme;
    SettingsForm form(theme);
    Settings settings = fixed(99.5, 1.25);
    settings.kind = Kind::CumulativeSum;
    settings.rules = {quality::RunRule::OneBeyond2};
    settings.k = 0.25;
    QSignalSpy changed(&form, &SettingsForm::changed);
    form.setSettings(Quantity::StandardRecovery, settings);
    EXPECT_EQ(changed.count(), 0);
    EXPECT_EQ(form.settings(), settings);
    for (const Quantity quantity : charts::allQuantities()) {
        form.setSettings(quantity, charts::usualSettings(quantity));
        EXPECT_EQ(form.settings(), charts::usualSettings(quantity)) << quantityWord(quantity).toStdString();
    }
}

TEST(SettingsForm, TakesCommaAndPointAndSaysWhatIsWrong)
{
    Theme theme;
    SettingsForm form(theme);
    form.setSettings(Quantity::StandardRecovery, fixed(99.5, 1.25));
    auto &deviation = find<NumberEntry>(form, u"chartDeviation"_s);
    deviation.setText(u"1,5"_s);
    EXPECT_EQ(std::get<charts::FixedLimits>(form.settings()->limits).deviation, 1.5);
    deviation.setText(u"much"_s);
    EXPECT_FALSE(form.settings());
    EXPECT_EQ(form.fault(), u"Standard deviation: a number is missing or cannot be read."_s);
    deviation.setText(u"0"_s);
    EXPECT_EQ(form.fault(), u"The standard deviation has to be greater than 0."_s);
}

TEST(SettingsForm, SwitchesRulesAndBeginsWhereItIsTold)
{
    Theme theme;
    SettingsForm form(theme);
    form.setSettings(Quantity::StandardRecovery, Settings{});
    QSignalSpy changed(&form, &SettingsForm::changed);
    auto &rules = find<QListWidget>(form, u"chartRules"_s);
    for (int row = 0; row < rules.count(); ++row)
        rules.item(row)->setCheckState(Qt::Unchecked);
    EXPECT_EQ(changed.count(), 3);
    EXPECT_THAT(form.settings()->rules, IsEmpty());
    form.setFirstRun(17);
    EXPECT_EQ(std::get<charts::EarlierRuns>(form.settings()->limits).firstRun, 17);
    find<QPushButton>(form, u"chartBeginFirst"_s).click();
    EXPECT_EQ(std::get<charts::EarlierRuns>(form.settings()->limits).firstRun, 0);
}

TEST(PointPanel, AsksForTheReasonOfWhatIsChosen)
{
    Theme theme;
    PointPanel panel(theme);
    charts::ControlChart chart = chartOf({100, 101});
    panel.setPoint(chart, {});
    EXPECT_FALSE(find<QPushButton>(panel, u"chartOmit"_s).isEnabled());
    panel.setPoint(chart, 1);
    EXPECT_EQ(find<QLabel>(panel, u"chartPoint"_s).text(), charts::pointSentence(chart, 1));
    QSignalSpy wanted(&panel, &PointPanel::omissionWanted);
    find<QLineEdit>(panel, u"chartReason"_s).setText(u" bubble "_s);
    find<QPushButton>(panel, u"chartOmit"_s).click();
    ASSERT_EQ(wanted.count(), 1);
    EXPECT_EQ(wanted[0][0].toString(), u"bubble"_s);
    charts::Series series = chart.series;
    series[1].omission = std::make_shared<charts::Omission>(charts::Omission{u"bubble"_s, u"Ada"_s, {}});
    chart.series = std::move(series);
    panel.setPoint(chart, 1);
    EXPECT_EQ(find<QPushButton>(panel, u"chartOmit"_s).text(), u"Take it &back"_s);
}

TEST(LossPanel, SaysWhatTheFitSays)
{
    Theme theme;
    LossPanel panel(theme);
    EXPECT_TRUE(
        find<QLabel>(panel, u"lossWords"_s).text().startsWith(u"The loss per hour cannot be told yet"_s));
    panel.setRecoveries({{0, 100}, {1, 98.1}, {2, 96.2}, {5, 90.3}}, 0.02);
    EXPECT_EQ(find<QLabel>(panel, u"lossWords"_s).text(), panel.loss().sentence);
    EXPECT_EQ(panel.loss().verdict, charts::StandardLoss::Verdict::Agrees);
}

} // namespace plateau::ui
