// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/charts/chartwords.h"
#include "tests/support/print.h"
#include "tests/ui/bench.h"
#include "ui/charts/chartexport.h"
#include "ui/charts/chartkey.h"
#include "ui/charts/chartsource.h"
#include "ui/charts/chartview.h"
#include "ui/charts/panelpicture.h"
#include "ui/charts/panelview.h"
#include "ui/charts/pointpanel.h"
#include "ui/charts/settingsform.h"
#include "ui/charts/subjectform.h"
#include "ui/shared/losspanel.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QChart>
#include <QChartView>
#include <QComboBox>
#include <QImage>
#include <QLabel>
#include <QLegend>
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

TEST(ChartKey, SaysWhatIsShownAndNothingElse)
{
    const auto shapesOf = [](const charts::ControlChart &chart, bool hasChanges) {
        const PanelPicture upper = pictureOf(recovery, chart, 0, {});
        std::vector<KeyShape> shapes;
        for (const ChartKeyEntry &entry : keyOf({&upper}, false, hasChanges))
            shapes.push_back(entry.shape);
        return shapes;
    };
    EXPECT_THAT(shapesOf(chartOf({100, 101, 99}), false), ElementsAre(KeyShape::ActionLine, KeyShape::WarningLine));
    EXPECT_THAT(shapesOf(chartOf({100, 107, 99}), true),
                ElementsAre(KeyShape::OutOfControl, KeyShape::ActionLine, KeyShape::WarningLine, KeyShape::Change));
    charts::Series series = seriesOf({100, 101, 99});
    series[1].omission = std::make_shared<charts::Omission>(charts::Omission{u"bubble"_s, u"Ada"_s, {}});
    EXPECT_THAT(shapesOf(charts::controlChart(recovery, series, {}, fixed(100, 2)), false),
                ElementsAre(KeyShape::LeftOut, KeyShape::ActionLine, KeyShape::WarningLine));
    PanelPicture trend;
    trend.levels = {{LevelLine::Kind::Limit, 200, u"limit 200"_s}, {LevelLine::Kind::Threshold, 10, u"threshold 10"_s}};
    trend.lines = {{PanelPoint{1, 210, State::Bad}}};
    EXPECT_EQ(keyOf({&trend}, true, false), (std::vector<ChartKeyEntry>{{KeyShape::OutOfControl, u"outside a limit"_s}}))
        << "limits of a product have their words beside them";
}

TEST_F(ChartViewTest, HasItsKeyBelow)
{
    auto &key = *m_view.findChild<ChartKey *>();
    EXPECT_TRUE(key.isHidden()) << "there is nothing to explain";
    m_view.setChart(recovery, chartOf({100, 107, 99}));
    EXPECT_FALSE(key.isHidden());
    EXPECT_TRUE(key.accessibleDescription().contains(u"action limit"_s)) << key.accessibleDescription().toStdString();
    EXPECT_GT(key.heightIn(120), key.heightIn(2000)) << "where it is narrow it goes on below";
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

TEST(PanelPicture, SaysThatLimitsAreProvisional)
{
    const std::vector<double> values{100, 102, 100, 102, 100, 102, 100, 102, 100, 102, 100, 102};
    const PanelPicture few =
        pictureOf(recovery, charts::controlChart(recovery, seriesOf(values), {}, {}), 0, {});
    EXPECT_TRUE(few.isProvisional);
    EXPECT_EQ(few.quantity, u"Recovery in %; limits provisional"_s);
    EXPECT_THAT(few.levels, SizeIs(5));
    const PanelPicture fixedOnes = pictureOf(recovery, chartOf({100, 107}), 0, {});
    EXPECT_FALSE(fixedOnes.isProvisional);
    EXPECT_EQ(fixedOnes.quantity, u"Recovery in %"_s);
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

TEST_F(ChartSourceOf, SettingsSavedForAllMaterialsHoldForEachUntilItHasItsOwn)
{
    ChartSource source(*book, [] { return u"R. Okafor"_s; });
    ASSERT_TRUE(source.save(recovery, fixed(99.5, 1.25)));
    Subject one = recovery;
    one.name = u"STD"_s;
    ASSERT_TRUE(source.kept(one));
    EXPECT_TRUE(source.kept(one)->isOfAll);
    EXPECT_EQ(source.settings(one), fixed(99.5, 1.25));
    ASSERT_TRUE(source.save(one, fixed(100, 1)));
    EXPECT_FALSE(source.kept(one)->isOfAll);
    EXPECT_EQ(source.settings(one), fixed(100, 1));
    EXPECT_EQ(source.settings(recovery), fixed(99.5, 1.25)) << "nothing is lost";
    // The centre of a control is its own.
    Subject control = one;
    control.quantity = Quantity::ControlMaterial;
    Subject controls = control;
    controls.name.clear();
    ASSERT_TRUE(source.save(controls, fixed(0.5, 0.01)));
    EXPECT_FALSE(source.kept(control));
    EXPECT_EQ(source.settings(control), charts::usualSettings(Quantity::ControlMaterial));
}

TEST_F(ChartSourceOf, AChartBeginsWithTheMaterialOfMostValues)
{
    for (const QStringList &used : {QStringList{u"A-1"_s, u"STD"_s}, QStringList{u"STD"_s}}) {
        run::Run run = test::exampleRun();
        for (const QString &name : used) {
            run::Tube tube = run.tubes.back();
            tube.role = run::Role::Standard;
            tube.sample.clear();
            tube.standard = name;
            run.standards.push_back({name, 0.168, {}, {}, {}, 0}); // of 0.5 x 0.33651 found
            run.tubes.push_back(tube);
        }
        for (run::Tube &tube : run.tubes)
            tube.readings = {{u"A1"_s, 0.1}, {u"A2"_s, tube.role == run::Role::Blank ? 0.11 : 0.61}};
        book->decide(addRun(run), notebook::DecisionKind::Accepted, u"R. Okafor"_s, {});
    }
    Theme theme;
    ChartSource source(*book, [] { return u"R. Okafor"_s; });
    source.refresh();
    SubjectForm form(theme, source);
    form.refresh();
    const auto &names = find<QComboBox>(form, u"chartName"_s);
    ASSERT_TRUE(form.subject());
    EXPECT_EQ(form.subject()->name, u"STD"_s);
    ASSERT_EQ(names.count(), 3);
    EXPECT_EQ(names.itemText(0), u"A-1"_s);
    EXPECT_EQ(names.itemText(2), u"all of them, without limits"_s);
    EXPECT_EQ(names.toolTip(), tipText(u"STD"_s));
    find<QComboBox>(form, u"chartName"_s).setCurrentIndex(2);
    EXPECT_EQ(names.toolTip(), tipText(u"all of them, without limits"_s)) << "whole, whatever is chosen";
    find<QComboBox>(form, u"chartName"_s).setCurrentIndex(names.findText(u"STD"_s));
    // All of another quantity is not taken over.
    const auto choose = [&](Quantity quantity) {
        auto &box = find<QComboBox>(form, u"chartQuantity"_s);
        box.setCurrentIndex(box.findData(charts::quantityWord(quantity)));
        form.refresh();
        return form.subject() ? form.subject()->name : u"nothing"_s;
    };
    EXPECT_EQ(choose(Quantity::Blank), QString());
    EXPECT_EQ(choose(Quantity::StandardStrength), u"STD"_s);
    EXPECT_EQ(choose(Quantity::DuplicateRange), QString());
    EXPECT_EQ(choose(Quantity::StandardRecovery), u"STD"_s);
}

TEST(SettingsForm, SaysHowManyValuesLimitsNeed)
{
    Theme theme;
    SettingsForm form(theme);
    form.setSettings(Quantity::StandardRecovery, Settings{});
    const auto &fewest = find<QLabel>(form, u"chartFewest"_s);
    EXPECT_EQ(fewest.text(), u"At least 10. With fewer than 20 the limits are provisional."_s);
    find<NumberEntry>(form, u"chartValues"_s).setText(u"9"_s);
    EXPECT_EQ(form.fault(), u"Limits from earlier runs need 10 to 10000 values."_s);
    Settings means;
    means.kind = Kind::MeanAndRange;
    form.setSettings(Quantity::StandardRecovery, means);
    EXPECT_EQ(fewest.text(), u"At least 20. With fewer than 40 the limits are provisional."_s);
    EXPECT_TRUE(form.settings());
    find<NumberEntry>(form, u"chartSubgroup"_s).setText(u"3"_s);
    EXPECT_EQ(fewest.text(), u"At least 30. With fewer than 60 the limits are provisional."_s);
    EXPECT_FALSE(form.settings());
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

TEST(SettingsForm, TheRulesScrollWithThePageAlone)
{
    Theme theme;
    SettingsForm form(theme);
    form.setSettings(Quantity::StandardRecovery, Settings{});
    form.resize(380, 1400);
    form.show();
    QTest::qWait(20); // a list lays its rows out a little later
    auto &rules = find<QListWidget>(form, u"chartRules"_s);
    const QRect last = rules.visualItemRect(rules.item(rules.count() - 1));
    EXPECT_GE(rules.viewport()->height(), last.bottom()) << "all of them are in sight";
    EXPECT_LE(rules.viewport()->height(), last.bottom() + last.height()) << "and no room is lost below";
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
    EXPECT_EQ(find<QPushButton>(panel, u"chartOmit"_s).text(), u"&Let it count again"_s);
}

TEST(LossPanel, SaysWhatTheFitSays)
{
    Theme theme;
    LossPanel panel(theme);
    EXPECT_TRUE(
        find<QLabel>(panel, u"lossWords"_s).text().startsWith(u"The loss per hour cannot be told yet"_s));
    const auto *view = panel.findChild<QChartView *>();
    ASSERT_TRUE(view);
    EXPECT_EQ(view->chart()->legend()->markerShape(), QLegend::MarkerShapeFromSeries) << "as they are drawn";
    panel.setRecoveries({{0, 100}, {1, 98.1}, {2, 96.2}, {5, 90.3}}, 0.02);
    EXPECT_EQ(find<QLabel>(panel, u"lossWords"_s).text(), unbroken(panel.loss().sentence));
    EXPECT_EQ(panel.loss().verdict, charts::StandardLoss::Verdict::Agrees);
}

} // namespace plateau::ui
