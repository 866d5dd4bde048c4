// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// The first page: what it lists, and where its lines lead.
#include "tests/ui/keyboard.h"
#include "ui/bench/benchsession.h"
#include "ui/shared/sentencelist.h"
#include "ui/today/todaylines.h"

#include <QAbstractItemModelTester>
#include <QAction>

namespace plateau::test {
namespace {

class Today : public Keyboard
{
protected:
    notebook::RunId addRead(const QString &title, double sampleSignal = 0.5)
    {
        run::Run run = exampleRun();
        run.title = title;
        for (run::Tube &tube : run.tubes)
            tube.readings = {{u"A1"_s, 0.1},
                             {u"A2"_s, tube.role == run::Role::Blank ? 0.11 : 0.11 + sampleSignal}};
        return addRun(run);
    }

    QStringList linesOf(const QString &section) const
    {
        const auto *list = find<ui::SentenceList>(section);
        QStringList lines;
        for (int row = 0; row < list->model()->rowCount(); ++row)
            lines << list->model()->index(row, 0).data().toString();
        return lines;
    }
};

TEST_F(Today, AnEmptyNotebookSaysHowToBegin)
{
    openWindow();
    EXPECT_TRUE(labelText(u"todayBenchNothing"_s).contains(u"New run"_s));
    EXPECT_TRUE(labelText(u"todayWaitingNothing"_s).contains(u"Samples"_s));
    EXPECT_TRUE(labelText(u"todayDecidedNothing"_s).contains(u"Notebook"_s));
}

TEST_F(Today, ListsRacksWithWhatIsNextRepeatsAndDecisions)
{
    const notebook::RunId strong = addRead(u"Perry, too strong"_s, 1.5);
    notebook::RunDecision decision{notebook::DecisionKind::Accepted, u"R. Okafor"_s, {}, u"the rest"_s, {}};
    book->decide(strong, decision);
    const notebook::RunId good = addRead(u"Perry, good"_s);
    book->decide(good, notebook::DecisionKind::Rejected, u"M. Lindqvist"_s, u"wrong cuvettes"_s);
    run::Run open = exampleRun();
    open.title = u"Cider of today"_s;
    open.samples[0].id = u"C-7"_s;
    for (run::Tube &tube : open.tubes) {
        if (!tube.sample.isEmpty())
            tube.sample = u"C-7"_s;
    }
    const notebook::RunId rack = addRun(open);
    openWindow();
    press(Qt::Key_0, Qt::ControlModifier);
    EXPECT_EQ(linesOf(u"todayBench"_s),
              QStringList{u"Cider of today: 0 of 8 read. Rack A, tube 1: add 1\u00a0mL buffer pH 9."_s});
    ASSERT_EQ(linesOf(u"todayWaiting"_s).size(), 1);
    EXPECT_TRUE(linesOf(u"todayWaiting"_s)[0].startsWith(u"P-104: repeat of run 1 (failed: largest net signal): dilute"_s))
        << linesOf(u"todayWaiting"_s)[0].toStdString();
    const QStringList decided = linesOf(u"todayDecided"_s);
    ASSERT_EQ(decided.size(), 2);
    EXPECT_TRUE(decided[0].startsWith(u"Run 2, Perry, good: rejected by M. Lindqvist, "_s));
    EXPECT_TRUE(decided[1].startsWith(u"Run 1, Perry, too strong: accepted by R. Okafor, "_s));
    EXPECT_TRUE(decided[1].endsWith(u"(1 sample(s) to repeat, unsigned)"_s)) << decided[1].toStdString();

    const auto *session = window->findChild<ui::BenchSession *>();
    EXPECT_EQ(ui::benchLines(*session).at(0).run, rack);
    QAbstractItemModelTester tester(find<ui::SentenceList>(u"todayDecided"_s)->model(),
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
}

TEST_F(Today, ItsLinesLeadToTheRackAndToTheRecordByKeys)
{
    const notebook::RunId done = addRead(u"Perry, good"_s);
    book->decide(done, notebook::DecisionKind::Accepted, u"R. Okafor"_s, {});
    addRun(exampleRun());
    openWindow();
    press(Qt::Key_0, Qt::ControlModifier);
    EXPECT_EQ(focusName(), u"todayBench"_s);
    press(Qt::Key_Home);
    press(Qt::Key_Return);
    EXPECT_EQ(labelText(u"rackLetter"_s), u"Rack A"_s);
    press(Qt::Key_0, Qt::ControlModifier);
    tabTo(u"todayDecided"_s);
    press(Qt::Key_Home);
    press(Qt::Key_Return);
    EXPECT_TRUE(window->windowTitle().startsWith(u"Perry, good"_s)) << window->windowTitle().toStdString();
}

TEST_F(Today, FollowsTheBenchWhileItIsSeen)
{
    const notebook::RunId rack = addRun(exampleRun());
    openWindow();
    giveName();
    press(Qt::Key_0, Qt::ControlModifier);
    auto *session = window->findChild<ui::BenchSession *>();
    session->tick(rack, {{{0, u"buffer"_s, false}}});
    EXPECT_TRUE(linesOf(u"todayBench"_s)[0].contains(u"tube 2: add"_s))
        << linesOf(u"todayBench"_s)[0].toStdString();
}

} // namespace
} // namespace plateau::test
