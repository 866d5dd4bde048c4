// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// An analyst at the bench, by keys alone, against clocks that the test turns.
#include "tests/ui/keyboard.h"
#include "tests/ui/turnedclock.h"
#include "ui/bench/benchsession.h"

#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>

#include <algorithm>

namespace plateau::test {
namespace {

class BenchDay : public Keyboard
{
protected:
    BenchDay()
    {
        book.reset();
        book = notebook::Notebook::create(folder.filePath(u"day.plateau"_s), surroundingsOf(clocks));
    }

    static run::Run rack(const QString &title)
    {
        run::Run run;
        run.title = title;
        run.method = u"example-acid"_s;
        run.uncertainty = run::UncertaintyInputs{0.002, 0.5, 0.2, 0.5, 0.8, 0.4, 0.2};
        run::Tube blank;
        blank.role = run::Role::Blank;
        run.tubes = {blank, blank};
        for (int sample = 1; sample <= 6; ++sample) {
            run.samples.push_back({u"%1-%2"_s.arg(title.left(1)).arg(sample), run::Form::Liquid, {}, {}, {}});
            run::Tube tube;
            tube.sample = run.samples.back().id;
            run.tubes.insert(run.tubes.end(), {tube, tube});
        }
        return run;
    }

    void openDay()
    {
        window = std::make_unique<ui::MainWindow>(*book, library, std::make_unique<QuietDialogs>(dialogs),
                                                  std::make_unique<TurnedClock>(clocks),
                                                  std::make_unique<QuietSounder>(heard));
        window->show();
        window->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    }

    void restartProgram()
    {
        window.reset();
        book.reset();
        book = notebook::Notebook::open(folder.filePath(u"day.plateau"_s), notebook::Access::ReadWrite,
                                        surroundingsOf(clocks));
        start();
    }

    /// As every day begins.
    void start()
    {
        openDay();
        giveName();
        press(Qt::Key_G, Qt::ControlModifier);
    }

    ui::BenchSession &session() const { return *window->findChild<ui::BenchSession *>(); }

    void pass(double seconds)
    {
        clocks->pass(seconds);
        session().tick();
    }

    QString action() const { return labelText(u"nextAction"_s); }
    QString countdown() const
    {
        const auto *label = window->findChild<QLabel *>(u"nextCountdown"_s);
        return label->isVisible() ? label->text() : QString();
    }

    /// Until what the strip says is due.
    void waitUntilDue()
    {
        for (int step = 0; step < 3 && countdown().startsWith(u"in "_s); ++step) {
            const auto next = session().next();
            ASSERT_TRUE(next && next->times);
            pass(std::max(0.5, next->times->opens_s));
        }
    }

    /// What the photometer shows of that tube.
    static QString shown(const ui::NextAction &next)
    {
        const int tube = next.place.tube;
        const double first = 0.100 + 0.001 * (tube % 3);
        const double signal = tube < 2 ? 0.010 : 0.300 + 0.020 * (tube / 2) + 0.002 * (tube % 2);
        return QString::number(next.place.reading == u"A1"_s ? first : first + signal, 'f', 3);
    }

    /// Does what the strip says, with the time it takes; false where only the review is left.
    bool doNext()
    {
        waitUntilDue();
        const auto next = session().next();
        if (!next || next->kind == ui::NextAction::Kind::Review)
            return false;
        if (next->kind == ui::NextAction::Kind::Pipette) {
            press(Qt::Key_F9);
            pass(10);
            return true;
        }
        press(Qt::Key_G, Qt::ControlModifier);
        keyReading(shown(*next));
        pass(12);
        return true;
    }

    template <class Until> void workUntil(Until until)
    {
        for (int act = 0; act < 400 && !until(); ++act)
            ASSERT_TRUE(doNext());
        ASSERT_TRUE(until()) << action().toStdString();
    }

    bool isNext(ui::NextAction::Kind kind, notebook::RunId run, int tube, const QString &reading = {}) const
    {
        const auto next = session().next();
        return next && next->kind == kind && next->run == run && next->tube() == tube &&
               (reading.isEmpty() || next->place.reading == reading);
    }

    /// Every tube that counts was read in its time.
    static void expectTimely(const notebook::StoredRun &stored, const std::vector<int> &butFor = {})
    {
        const evaluation::Evaluation evaluation = notebook::evaluationOf(stored);
        for (const evaluation::Check &check : evaluation.checks) {
            if (check.id != evaluation::CheckId::ReadingEarly && check.id != evaluation::CheckId::ReadingLate)
                continue;
            for (const int tube : check.passed ? std::vector<int>() : check.tubes)
                EXPECT_TRUE(std::ranges::find(butFor, tube) != butFor.end()) << check.message().toStdString();
        }
    }

    std::shared_ptr<Clocks> clocks = std::make_shared<Clocks>();
};

TEST_F(BenchDay, TwoRacksOverlapWithASlipASpoiltTubeARestartAndALateTube)
{
    const notebook::RunId a = book->addRun(rack(u"Apple"_s), method(), u"R. Okafor"_s);
    start();
    // Buffer and water to all tubes at once, the sample tube by tube in a rhythm.
    type(u"*"_s);
    pass(60);
    type(u"*"_s);
    pass(60);
    ASSERT_TRUE(action().contains(u"tube 1: add 100\u00a0µL"_s)) << action().toStdString();
    press(Qt::Key_R, Qt::AltModifier);
    ASSERT_TRUE(waitFor([&] { return session().find(a)->beat.has_value(); }));
    EXPECT_EQ(session().find(a)->beat->interval_s, 30);
    press(Qt::Key_F9);
    EXPECT_EQ(countdown(), u"in 0:30"_s);
    EXPECT_TRUE(labelText(u"pipetteAction"_s).startsWith(u"Tube 2: "_s)) << "the worksheet goes on with it";
    // The second rack comes to the bench while the first is at work.
    const notebook::RunId b = book->addRun(rack(u"Birch"_s), method(), u"R. Okafor"_s);
    session().reload();
    workUntil([&] { return isNext(ui::NextAction::Kind::Read, a, 4, u"A2"_s); });

    // A slip of the decimal point is asked about, retyped and never stored.
    waitUntilDue();
    press(Qt::Key_G, Qt::ControlModifier);
    keyReading(u"4,41"_s);
    EXPECT_FALSE(noticeText().isEmpty());
    EXPECT_TRUE(isNext(ui::NextAction::Kind::Read, a, 4, u"A2"_s));
    press(Qt::Key_Escape);
    keyReading(u"0,441"_s);
    EXPECT_EQ(std::get<double>(book->load(a).run.tubes[4].readings.at(u"A2"_s)), 0.441);

    // A tube is dropped.
    workUntil([&] {
        return isNext(ui::NextAction::Kind::Read, b, 5, u"A1"_s) ||
               isNext(ui::NextAction::Kind::Read, b, 5, u"A2"_s);
    });
    press(Qt::Key_G, Qt::ControlModifier);
    ASSERT_EQ(focusName(), u"readingEntry"_s);
    type(u"/"_s);
    ASSERT_EQ(focusName(), u"correctionReason"_s);
    type(u"dropped"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(book->load(b).run.tubes[5].spoilt, u"dropped"_s);

    // The program is ended and started again: the bench is as it was, to the second.
    const QString before = action() + countdown();
    const QString entry = labelText(u"place"_s);
    restartProgram();
    EXPECT_EQ(action() + countdown(), before);
    EXPECT_EQ(session().racks().size(), 2U);

    // The last tube comes late.
    workUntil([&] { return isNext(ui::NextAction::Kind::Read, b, 13, u"A2"_s); });
    pass(60 * 45);
    EXPECT_TRUE(countdown().startsWith(u"late by "_s)) << countdown().toStdString();
    EXPECT_TRUE(std::ranges::find(heard, ui::Sound::Late) != heard.end());
    workUntil([&] { return session().next()->kind == ui::NextAction::Kind::Review; });

    const notebook::StoredRun first = book->load(a);
    const notebook::StoredRun second = book->load(b);
    EXPECT_EQ(first.summary.readingsTaken, 28);
    EXPECT_EQ(second.summary.readingsTaken, 26);
    expectTimely(first);
    expectTimely(second, {13});
    const evaluation::Evaluation late = notebook::evaluationOf(second);
    EXPECT_TRUE(std::ranges::any_of(late.checks, [](const evaluation::Check &check) {
        return check.id == evaluation::CheckId::ReadingLate && !check.passed;
    }));
    // The rhythm was kept: a tube that came late, since a reading was due, did not push the others.
    for (std::size_t tube = 1; tube < first.run.tubes.size(); ++tube) {
        const double beat_min = 0.5 * static_cast<double>(tube);
        const double after_min = first.run.tubes[tube].addedAt_min.at(u"sample"_s) -
                                 first.run.tubes[0].addedAt_min.at(u"sample"_s) - beat_min;
        EXPECT_GE(after_min, -0.02) << tube;
        EXPECT_LE(after_min, 0.25) << tube;
    }
    EXPECT_TRUE(book->verify().sound());
}

/// A tube with its sample in, to be read 3 to 10 minutes later.
class Waiting : public BenchDay
{
protected:
    void begin()
    {
        run::Run run = exampleRun();
        run.tubes.erase(run.tubes.begin() + 1, run.tubes.begin() + 3);
        id = book->addRun(run, method(), u"R. Okafor"_s);
        start();
        type(u"****"_s); // of the sample, which starts the wait, it is asked for once more
        session().tick();
        ASSERT_EQ(countdown(), u"in 3:00"_s) << action().toStdString();
    }
    notebook::RunId id;
};

TEST_F(Waiting, IsSaidOnItsOwnPageWhileAnotherRackLeadsUntilTheHandsMustBeFreeForIt)
{
    begin();
    const auto *own = window->findChild<QLabel *>(u"rackOwnNext"_s);
    ASSERT_TRUE(own);
    EXPECT_FALSE(own->isVisible()) << "the strip says it";
    book->addRun(rack(u"Birch"_s), method(), u"R. Okafor"_s);
    session().reload();
    EXPECT_TRUE(action().startsWith(u"Rack B, tube 1: add"_s)) << action().toStdString();
    ASSERT_TRUE(own->isVisible());
    EXPECT_EQ(own->text(), u"This rack in 3:00: Rack A, tube 1: key A1"_s);
    // An addition and its mixing keep the hands for 12 s, and 20 s before its time a reading is next anyway.
    pass(147.5);
    EXPECT_TRUE(action().startsWith(u"Rack B"_s)) << "32.5 s are left";
    EXPECT_TRUE(own->text().startsWith(u"This rack in 0:33: "_s)) << own->text().toStdString();
    pass(1);
    EXPECT_TRUE(action().startsWith(u"Rack A, tube 1: key A1"_s)) << "31.5 s are left: " << action().toStdString();
    EXPECT_EQ(countdown(), u"in 0:32"_s);
    EXPECT_FALSE(own->isVisible());
}

TEST_F(Waiting, LeadsTheLongerAheadTheSlowerTheLaboratorysHandsAre)
{
    begin();
    book->addRun(rack(u"Birch"_s), method(), u"R. Okafor"_s);
    session().reload();
    planning::HandlingTimes slow;
    slow.addition_s = 30;
    slow.mix_s = 10;
    session().setHandling(slow);
    pass(119);
    EXPECT_TRUE(action().startsWith(u"Rack B"_s)) << "61 s are left";
    pass(2);
    EXPECT_TRUE(action().startsWith(u"Rack A"_s)) << "59 s are left";
}

TEST_F(Waiting, CountsDownThenWhatIsLeftThenUp)
{
    begin();
    pass(60);
    EXPECT_EQ(countdown(), u"in 2:00"_s);
    pass(120);
    EXPECT_EQ(countdown(), u"now, 7:00 left"_s);
    pass(7 * 60);
    EXPECT_EQ(countdown(), u"now, 0:00 left"_s);
    pass(30);
    EXPECT_EQ(countdown(), u"late by 0:30"_s);
}

TEST_F(Waiting, SoundsSoonNowAndLateOnceEach)
{
    begin();
    EXPECT_TRUE(heard.empty());
    pass(159);
    EXPECT_TRUE(heard.empty());
    pass(1);
    EXPECT_EQ(heard, (std::vector{ui::Sound::Soon}));
    pass(20);
    EXPECT_EQ(heard, (std::vector{ui::Sound::Soon, ui::Sound::Now}));
    pass(60);
    pass(6 * 60 + 1);
    EXPECT_EQ(heard, (std::vector{ui::Sound::Soon, ui::Sound::Now, ui::Sound::Late}));
    pass(60);
    EXPECT_EQ(heard.size(), 3U);
}

TEST_F(Waiting, IsNotMovedByAClockThatIsSetAndSaysSo)
{
    begin();
    pass(60);
    clocks->set(3600);
    session().tick();
    EXPECT_EQ(countdown(), u"in 2:00"_s);
    EXPECT_TRUE(noticeText().contains(u"1 h 00 min forward"_s)) << noticeText().toStdString();
    pass(60);
    clocks->set(-2 * 3600);
    session().tick();
    EXPECT_EQ(countdown(), u"in 1:00"_s);
    const notebook::StoredRun stored = book->load(id);
    ASSERT_EQ(stored.clockJumps.size(), 2U);
    EXPECT_EQ(stored.clockJumps[0].shift_ms, 3600 * 1000);
    EXPECT_EQ(stored.clockJumps[1].shift_ms, -7200 * 1000);
    // What is read now was read two and a half minutes after the sample, whatever the wall says.
    pass(30);
    press(Qt::Key_G, Qt::ControlModifier);
    keyReading(u"0.1"_s);
    press(Qt::Key_Return); // half a minute too early, which was asked about
    const run::Tube tube = book->load(id).run.tubes[0];
    EXPECT_NEAR(tube.readAt_min.at(u"A1"_s) - tube.addedAt_min.at(u"sample"_s), 2.5, 0.001);
    EXPECT_TRUE(book->verify().sound());
}

TEST_F(Waiting, GoesOnWhileTheMachineSleeps)
{
    begin();
    clocks->pass(150); // no tick: nothing runs
    session().tick();
    EXPECT_EQ(countdown(), u"in 0:30"_s);
    EXPECT_TRUE(book->load(id).clockJumps.empty());
}

TEST_F(Waiting, GoesOnThroughMidnightAndSummerTime)
{
    clocks->wall = QDateTime::fromString(u"2026-03-28T23:59:00+01:00"_s, Qt::ISODate);
    begin();
    pass(120);
    EXPECT_EQ(countdown(), u"in 1:00"_s);
    clocks->wall = clocks->wall.toOffsetFromUtc(2 * 3600); // the same moment, as summer time writes it
    session().tick();
    EXPECT_EQ(countdown(), u"in 1:00"_s);
    EXPECT_TRUE(book->load(id).clockJumps.empty());
}

TEST_F(Waiting, GoesOnWhenTheProgramOrTheMachineIsStartedAgain)
{
    begin();
    pass(60);
    restartProgram();
    EXPECT_EQ(countdown(), u"in 2:00"_s);
    clocks->restartMachine(60);
    restartProgram();
    EXPECT_EQ(countdown(), u"in 1:00"_s);
}

TEST_F(Waiting, AJumpWhileTheProgramWasOffIsNoticedAtItsStart)
{
    begin();
    clocks->pass(60);
    clocks->set(1800);
    restartProgram();
    session().tick();
    EXPECT_EQ(countdown(), u"in 2:00"_s);
    ASSERT_EQ(book->load(id).clockJumps.size(), 1U);
    EXPECT_EQ(book->load(id).clockJumps[0].shift_ms, 1800 * 1000);
}

} // namespace
} // namespace plateau::test
