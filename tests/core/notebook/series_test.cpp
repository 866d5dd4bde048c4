// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/rawline.h"
#include "tests/core/notebook/benchtime.h"

#include <cmath>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::IsEmpty;
using ::testing::SizeIs;

class SeriesTest : public BenchTimeTest
{
protected:
    /// Tube 2 with its starter in for 15 min, and one reading A2 then.
    void SetUp() override
    {
        BenchTimeTest::SetUp();
        m_run = m_book->addRun(unreadRun(), risingMethod(), person);
        tick(m_run, 1, u"buffer");
        pass(1);
        tick(m_run, 1, u"sample");
        pass(3);
        read(m_run, 1, u"A1", 0.12);
        pass(1);
        tick(m_run, 1, u"starter");
        pass(15);
        read(m_run, 1, u"A2", 0.5);
    }
    ReadingId again(double absorbance, int tube = 1, const QString &reading = u"A2"_s)
    {
        return m_book->readAgain(m_run, tube, reading, absorbance, QString::number(absorbance), person);
    }
    run::ReadingSeries series() const
    {
        return std::get<run::ReadingSeries>(tube(m_run, 1).readings.at(u"A2"_s));
    }
    RunId m_run;
};

TEST_F(SeriesTest, GrowsByEachReadingWithItsMinutes)
{
    const ReadingId first = load(m_run).readings.back().id;
    pass(1);
    const ReadingId second = again(0.51);
    EXPECT_EQ(series(), (run::ReadingSeries{{15, 0.5}, {16, 0.51}}));
    pass(1.5);
    again(0.512);
    EXPECT_EQ(series(), (run::ReadingSeries{{15, 0.5}, {16, 0.51}, {17.5, 0.512}}));
    const StoredRun stored = load(m_run);
    EXPECT_EQ(stored.run.tubes[1].readAt_min.at(u"A2"_s), 22.5) << "of a series, the last";
    EXPECT_EQ(stored.summary.readingsTaken, 2) << "a series is one reading";
    ASSERT_THAT(stored.readings, SizeIs(4));
    EXPECT_TRUE(stored.readings[2].again);
    EXPECT_EQ(stored.readings[2].corrects, first);
    EXPECT_EQ(stored.readings[2].reason, QString());
    EXPECT_EQ(stored.readings[2].typed, u"0.51"_s);
    EXPECT_EQ(stored.readings[3].corrects, second);
    EXPECT_FALSE(stored.readings[1].again);
    EXPECT_EQ(m_book->history(m_run).back().action, u"readingAgain"_s);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(SeriesTest, GoesOnAfterTheWallWasSetAndTheProgramStartedAnew)
{
    pass(1);
    again(0.51);
    setWall(-300);
    restartProgram();
    pass(1);
    again(0.52);
    EXPECT_EQ(series(), (run::ReadingSeries{{15, 0.5}, {16, 0.51}, {17, 0.52}}));
}

TEST_F(SeriesTest, CountsFromTheLastAdditionBeforeItsPoint)
{
    m_book->pipetting().markUndone(m_run, {{1, u"starter"_s, false}}, person);
    again(0.13, 1, u"A1"_s);
    EXPECT_EQ(std::get<run::ReadingSeries>(tube(m_run, 1).readings.at(u"A1"_s)),
              (run::ReadingSeries{{3, 0.12}, {19, 0.13}}))
        << "from the sample on";
    expectRefused([&] { again(0.13, 2, u"A1"_s); }, "has no reading A1 yet"_L1);
}

TEST_F(SeriesTest, NeedsTheTimeOfThatAddition)
{
    read(m_run, 2, u"A2", 0.5);
    pass(1);
    expectRefused([&] { again(0.51, 2); }, "tick Enzyme of tube 3 first"_L1);
    tick(m_run, 2, u"starter");
    pass(1);
    expectRefused([&] { again(0.51, 2); }, "was read before Enzyme was ticked"_L1);
    tick(m_run, 3, u"starter");
    read(m_run, 3, u"A2", 0.5);
    pass(1);
    again(0.51, 3);
    EXPECT_EQ(std::get<run::ReadingSeries>(tube(m_run, 3).readings.at(u"A2"_s)),
              (run::ReadingSeries{{0, 0.5}, {1, 0.51}}));
}

TEST_F(SeriesTest, NeedsTheTimeOfTheReadingBefore)
{
    const RunId filed = m_book->addRun(plainRun(), risingMethod(), person);
    tick(filed, 1, u"starter");
    pass(1);
    expectRefused([&] { m_book->readAgain(filed, 1, u"A2"_s, 0.6, u"0.6"_s, person); },
                  "not known when the one before was read"_L1);
    run::Run said = plainRun();
    said.tubes[1].addedAt_min = {{u"starter"_s, 5}};
    said.tubes[1].readAt_min = {{u"A2"_s, 20}};
    const RunId unknown = m_book->addRun(said, risingMethod(), person);
    expectRefused([&] { m_book->readAgain(unknown, 1, u"A2"_s, 0.6, u"0.6"_s, person); },
                  "not known when Enzyme went in"_L1);
    said.startedAt = m_now.addSecs(-1800);
    const RunId known = m_book->addRun(said, risingMethod(), person);
    m_book->readAgain(known, 1, u"A2"_s, 0.6, u"0.6"_s, person);
    const auto points = std::get<run::ReadingSeries>(tube(known, 1).readings.at(u"A2"_s));
    ASSERT_THAT(points, SizeIs(2));
    EXPECT_EQ(points[0].at_min, 15);
    EXPECT_EQ(points[1], (run::TimedAbsorbance{25, 0.6}));
}

TEST_F(SeriesTest, EndsWithTheNextAddition)
{
    expectRefused([&] { again(0.13, 1, u"A1"_s); }, "Enzyme is ticked there already"_L1);
}

TEST_F(SeriesTest, TimesOfASeriesGoUp)
{
    expectRefused([&] { again(0.51); }, "was not stored"_L1); // in the same moment
    pass(1);
    again(0.51);
}

TEST_F(SeriesTest, RefusesWhatAReadingIsRefusedFor)
{
    pass(1);
    expectRefused([&] { again(std::nan("")); }, "was not stored"_L1);
    expectRefused([&] { again(1e9); }, "was not stored"_L1);
    expectRefused([&] { again(0.5, 9); }, "no tube 10"_L1);
    m_book->decide(m_run, DecisionKind::Rejected, person, u"spilt"_s);
    expectRefused([&] { again(0.5); }, "is rejected"_L1);
}

TEST_F(SeriesTest, ItsLastPointIsCorrected)
{
    pass(1);
    again(0.51);
    pass(5);
    m_book->correctLastOfSeries(m_run, 1, u"A2"_s, 0.151, u"0.151"_s, person, u"digits swapped"_s);
    EXPECT_EQ(series(), (run::ReadingSeries{{15, 0.5}, {16, 0.151}}));
    EXPECT_EQ(tube(m_run, 1).readAt_min.at(u"A2"_s), 21) << "it was read when it was read";
    const StoredReading corrected = load(m_run).readings.back();
    EXPECT_FALSE(corrected.again);
    EXPECT_EQ(corrected.reason, u"digits swapped"_s);
    pass(1);
    again(0.52);
    EXPECT_EQ(series(), (run::ReadingSeries{{15, 0.5}, {16, 0.151}, {22, 0.52}}));
    m_book->correctReading(m_run, 1, u"A2"_s, run::ReadingSeries{{15, 0.5}, {16, 0.51}}, u"0.5 0.51"_s,
                           person, u"the third was of tube 3"_s);
    EXPECT_EQ(series(), (run::ReadingSeries{{15, 0.5}, {16, 0.51}}));
    m_book->correctLastOfSeries(m_run, 1, u"A1"_s, 0.121, u"0.121"_s, person, u"misread"_s);
    EXPECT_EQ(std::get<double>(tube(m_run, 1).readings.at(u"A1"_s)), 0.121) << "or the only one";
    expectRefused([&] { m_book->correctLastOfSeries(m_run, 1, u"A2"_s, 0.5, u"0.5"_s, person, u" "_s); },
                  "needs a reason"_L1);
    expectRefused([&] { m_book->correctLastOfSeries(m_run, 3, u"A2"_s, 0.5, u"0.5"_s, person, u"why"_s); },
                  "no reading A2 to correct"_L1);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(SeriesTest, AnyOtherProgramCannotCallASingleReadingASeries)
{
    m_book.reset();
    RawFile raw(file());
    EXPECT_FALSE(raw.tryExecute(u"INSERT INTO reading_again (reading) VALUES (1)"_s));
    EXPECT_TRUE(raw.error().contains("only a series"_L1)) << raw.error().toStdString();
}

class OriginTest : public SeriesTest
{
protected:
    using Kind = ReadingOrigin::Kind;
};

TEST_F(OriginTest, IsKeptWithTheReading)
{
    const ReadingOrigin origins[] = {{Kind::Serial, u"ttyUSB0"_s, u"T03\\t0.512 A\\r\\n"_s},
                                     {Kind::Network, u"photometer.local:4001"_s, u"0.512"_s},
                                     {Kind::File, u"morning.csv"_s, u"3;0,512"_s},
                                     {Kind::Pasted, {}, u"0.512"_s}};
    for (int tube = 0; const ReadingOrigin &origin : origins) {
        pass(1);
        if (tube == 1)
            m_book->readAgain(m_run, tube, u"A2"_s, 0.512, u"0.512"_s, person, origin);
        else
            m_book->addReading(m_run, tube, u"A2"_s, 0.512, u"0.512"_s, person, origin);
        EXPECT_EQ(load(m_run).readings.back().origin, origin);
        EXPECT_EQ(load(m_run).readings.back().typed, u"0.512"_s);
        ++tube;
    }
    EXPECT_EQ(load(m_run).readings.front().origin, ReadingOrigin{});
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(OriginTest, ThatCannotBeKeptIsRefused)
{
    const auto add = [&](const ReadingOrigin &origin) {
        m_book->addReading(m_run, 0, u"A1"_s, 0.1, u"0.1"_s, person, origin);
    };
    expectRefused([&] { add({Kind::Serial, {}, u"0.1"_s + QChar(0)}); }, "cannot be kept"_L1);
    expectRefused([&] { add({Kind::Serial, {}, QString(1001, u'1')}); }, "more than 1000"_L1);
    expectRefused([&] { add({Kind::Serial, QString(QChar(7)), u"0.1"_s}); }, "cannot be used"_L1);
    expectRefused([&] { add({Kind::Keyed, {}, u"0.1"_s}); }, "no line it came in"_L1);
    add({Kind::Serial, {}, QString(1000, u'1')});
    EXPECT_THAT(load(m_run).readings, SizeIs(3));
}

TEST(RawLineTest, ShowsWhatIsNotPrintableByItsCode)
{
    EXPECT_EQ(rawLine("0.512 A"), u"0.512 A"_s);
    EXPECT_EQ(rawLine("0,512\t A\r\n"), u"0,512\\t A\\r\\n"_s);
    EXPECT_EQ(rawLine(QByteArray("a\0b\x1b[2J", 7)), u"a\\x00b\\x1B[2J"_s);
    EXPECT_EQ(rawLine("\\x00"), u"\\\\x00"_s) << "what looks like a code is told apart from one";
    EXPECT_EQ(rawLine("\xC3\xA4 \xE2\x82\xAC"), u"ä €"_s);
    EXPECT_EQ(rawLine("\xFF\xC3"), u"\\xFF\\xC3"_s);
    EXPECT_EQ(rawLine("\xED\xA0\x80"), u"\\xED\\xA0\\x80"_s) << "a lone surrogate";
    EXPECT_EQ(rawLine("\xE2\x80\xAE"), u"\\xE2\\x80\\xAE"_s) << "it would turn the line around";
    EXPECT_EQ(rawLine("\xEF\xBB\xBF"
                      "0.5"),
              u"\\xEF\\xBB\\xBF0.5"_s);
    EXPECT_EQ(rawLine({}), QString());
}

TEST(RawLineTest, IsAsLongAsCanBeKept)
{
    EXPECT_EQ(rawLine(QByteArray(1000, '1')), QString(1000, u'1'));
    EXPECT_EQ(rawLine(QByteArray(1001, '1')), QString(997, u'1') + u"..."_s);
    EXPECT_EQ(rawLine(QByteArray(5000, '\t')), QString(u"\\t"_s).repeated(498) + u"..."_s);
    EXPECT_EQ(rawLine(QByteArray(1'000'000, '\0')).size(), 999);
}

} // namespace plateau::test
