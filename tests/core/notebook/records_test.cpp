// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/fixture.h"

#include <bit>
#include <cmath>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;
using Kind = Failure::Kind;

class RecordsTest : public NotebookTest
{
protected:
    const QString person = u"Ines Kaddour"_s;
};

TEST_F(RecordsTest, RunWithEveryFieldComesBackAsItWent)
{
    const assay::Method method = risingMethod();
    RunId id;
    {
        const auto notebook = create();
        id = notebook->addRun(fullRun(), method, person);
    }
    const StoredRun stored = reopen()->load(id);
    EXPECT_TRUE(stored.run == fullRun());
    EXPECT_TRUE(stored.method == method);
    EXPECT_THAT(stored.readings, SizeIs(13));
    EXPECT_THAT(stored.decisions, IsEmpty());
}

TEST_F(RecordsTest, TimesKeepInstantAndOffset)
{
    const auto notebook = create();
    const StoredRun stored = notebook->load(notebook->addRun(fullRun(), risingMethod(), person));
    const QDateTime prepared = stored.run.standards[0].preparedAt.value();
    EXPECT_EQ(prepared.toString(Qt::ISODateWithMs), u"2026-03-02T08:10:00.123-03:30"_s);
    EXPECT_EQ(prepared.offsetFromUtc(), -12600);
    EXPECT_EQ(stored.summary.createdAt.offsetFromUtc(), 3600);
    EXPECT_EQ(stored.readings.front().at, stored.summary.createdAt);
}

TEST_F(RecordsTest, AStandardIsUsedWhenItsFirstTubeIsRead)
{
    run::Run run = plainRun();
    for (run::Tube &tube : run.tubes)
        tube.readings.clear();
    run::Standard standard;
    standard.id = u"STD"_s;
    standard.concentration_g_per_L = 0.2;
    standard.lossPerHour = 0.02;
    standard.preparedAt = m_now.addSecs(-3600);
    run.startedAt = m_now;
    run.standards = {standard};
    run::Tube tube;
    tube.role = run::Role::Standard;
    tube.standard = u"STD"_s;
    run.tubes.push_back(tube);
    const int last = static_cast<int>(run.tubes.size()) - 1;

    const auto notebook = create();
    const RunId id = notebook->addRun(run, risingMethod(), person);
    notebook->addReading(id, 0, u"A1"_s, 0.1, u"0.1"_s, person);
    EXPECT_FALSE(notebook->load(id).run.standards[0].usedAt) << "a blank is no use of the standard";
    m_now = m_now.addSecs(2 * 3600);
    notebook->addReading(id, last, u"A1"_s, 0.1, u"0.1"_s, person);
    const QDateTime used = notebook->load(id).readings.back().at;
    EXPECT_EQ(notebook->load(id).run.standards[0].usedAt, used);
    m_now = m_now.addSecs(3600);
    notebook->addReading(id, last, u"A2"_s, 0.5, u"0.5"_s, person);
    notebook->correctReading(id, last, u"A1"_s, 0.11, u"0.11"_s, person, u"misread"_s);
    EXPECT_EQ(notebook->load(id).run.standards[0].usedAt, used) << "neither a later reading nor a correction";

    run.standards[0].usedAt = m_now.addSecs(-1800);
    const RunId stated = notebook->addRun(run, risingMethod(), person);
    notebook->addReading(stated, last, u"A1"_s, 0.1, u"0.1"_s, person);
    EXPECT_EQ(notebook->load(stated).run.standards[0].usedAt, run.standards[0].usedAt)
        << "what the run says goes first";

    run.standards[0].usedAt.reset();
    run.tubes.back().readings[u"A1"_s] = 0.1;
    const RunId filed = notebook->addRun(run, risingMethod(), person);
    EXPECT_FALSE(notebook->load(filed).run.standards[0].usedAt)
        << "a reading of a file was keyed at no known time";
}

TEST_F(RecordsTest, TimeThatTheClockSkippedIsRefused)
{
    const auto notebook = create();
    run::Run run = plainRun();
    run.startedAt = QDateTime();
    const Failure failure = failureOf([&] { notebook->addRun(run, risingMethod(), person); });
    EXPECT_EQ(failure.kind(), Kind::Refused);
    expectOneSentence(failure);
    EXPECT_THAT(notebook->runs(), IsEmpty());
}

TEST_F(RecordsTest, NumbersComeBackBitForBit)
{
    const auto notebook = create();
    run::Run run = unreadRun();
    const double awkward[] = {
        0.1, 1.0 / 3.0, std::nextafter(0.5, 1.0), 5e-324, 2.2250738585072014e-308, 99.99999999999999, -0.1};
    run.tubes.assign(std::size(awkward), run.tubes.front());
    const RunId id = notebook->addRun(run, risingMethod(), person);
    int tube = 0;
    for (const double value : awkward)
        notebook->addReading(id, tube++, u"A1"_s, value, {}, person);
    const StoredRun stored = notebook->load(id);
    tube = 0;
    for (const double value : awkward)
        EXPECT_EQ(
            std::bit_cast<quint64>(std::get<double>(stored.run.tubes[size_t(tube++)].readings.at(u"A1"_s))),
            std::bit_cast<quint64>(value));
}

TEST_F(RecordsTest, MinusZeroIsZeroAndStillSound)
{
    const auto notebook = create();
    const RunId id = notebook->addRun(unreadRun(), risingMethod(), person);
    notebook->addReading(id, 0, u"A1"_s, -0.0, u"-0"_s, person);
    EXPECT_FALSE(std::signbit(std::get<double>(notebook->load(id).readings.at(0).value)));
    EXPECT_THAT(notebook->verify().findings, IsEmpty());
}

TEST_F(RecordsTest, ReadingKeepsWhatWasTypedAndWho)
{
    const auto notebook = create();
    const RunId id = notebook->addRun(unreadRun(), risingMethod(), person);
    const ReadingId reading = notebook->addReading(id, 2, u"A1"_s, 0.5, u"0,50"_s, u"Tomas Brandl"_s);
    const StoredReading stored = notebook->load(id).readings.at(0);
    EXPECT_EQ(stored.id, reading);
    EXPECT_EQ(stored.tube, 2);
    EXPECT_EQ(stored.reading, u"A1"_s);
    EXPECT_EQ(std::get<double>(stored.value), 0.5);
    EXPECT_EQ(stored.typed, u"0,50"_s);
    EXPECT_EQ(stored.person, u"Tomas Brandl"_s);
    EXPECT_EQ(stored.at, m_now);
    EXPECT_FALSE(stored.corrects.has_value());
}

TEST_F(RecordsTest, SeriesIsStoredAsItsPoints)
{
    const auto notebook = create();
    const RunId id = notebook->addRun(unreadRun(), risingMethod(), person);
    const run::ReadingSeries series{{0, 0.1}, {0.5, 0.3}, {15, 0.512}};
    notebook->addReading(id, 1, u"A2"_s, series, {}, person);
    EXPECT_EQ(std::get<run::ReadingSeries>(notebook->load(id).run.tubes[1].readings.at(u"A2"_s)), series);
    EXPECT_THAT(notebook->verify().findings, IsEmpty());
}

TEST_F(RecordsTest, CorrectionsKeepEveryValueInOrder)
{
    const auto notebook = create();
    const RunId id = notebook->addRun(unreadRun(), risingMethod(), person);
    const ReadingId first = notebook->addReading(id, 0, u"A1"_s, 0.51, u"0.51"_s, person);
    const ReadingId second =
        notebook->correctReading(id, 0, u"A1"_s, 0.15, u"0.15"_s, person, u"digits swapped"_s);
    notebook->correctReading(id, 0, u"A1"_s, 0.151, u"0.151"_s, u"Tomas Brandl"_s,
                             u"third digit\nforgotten"_s);
    const StoredRun stored = notebook->load(id);
    ASSERT_THAT(stored.readings, SizeIs(3));
    EXPECT_EQ(std::get<double>(stored.readings[0].value), 0.51);
    EXPECT_EQ(stored.readings[1].corrects, first);
    EXPECT_EQ(stored.readings[2].corrects, second);
    EXPECT_EQ(stored.readings[2].reason, u"third digit\nforgotten"_s);
    EXPECT_EQ(std::get<double>(stored.run.tubes[0].readings.at(u"A1"_s)), 0.151);
    EXPECT_EQ(stored.summary.readingsTaken, 1);
}

TEST_F(RecordsTest, SameMethodIsStoredOnceAndAnotherContentAgain)
{
    {
        const auto notebook = create();
        notebook->addRun(plainRun(), risingMethod(), person);
        notebook->addRun(plainRun(), risingMethod(), person);
        assay::Method changed = risingMethod();
        changed.window.maxSignal = 1.1; // the version was forgotten: the content still tells them apart
        const RunId third = notebook->addRun(plainRun(), changed, person);
        EXPECT_EQ(notebook->load(third).method.window.maxSignal, 1.1);
    }
    RawFile raw(file());
    EXPECT_EQ(raw.value(u"SELECT count(*) FROM method"_s).toInt(), 2);
    EXPECT_EQ(raw.value(u"SELECT count(DISTINCT method) FROM run"_s).toInt(), 2);
}

TEST_F(RecordsTest, ListIsNewestFirstWithItsCounts)
{
    const auto notebook = create();
    fill(*notebook);
    const std::vector<RunSummary> runs = notebook->runs();
    ASSERT_THAT(runs, SizeIs(3));
    EXPECT_EQ(runs[0].title, u"Unread"_s);
    EXPECT_EQ(runs[0].state, RunState::OnBench);
    EXPECT_EQ(runs[0].tubes, 4);
    EXPECT_EQ(runs[0].readingsTaken, 0);
    EXPECT_EQ(runs[0].readingsPlanned, 8);
    EXPECT_EQ(runs[0].decidedBy, QString());
    EXPECT_EQ(runs[1].state, RunState::Rejected);
    EXPECT_THAT(runs[1].samples, ElementsAre(u"P-104"_s, u"F-22"_s));
    EXPECT_EQ(runs[1].readingsTaken, 14);
    EXPECT_EQ(runs[1].readingsPlanned, 14);
    EXPECT_EQ(runs[2].state, RunState::Accepted);
    EXPECT_EQ(runs[2].decidedBy, u"Tomas Brandl"_s);
    EXPECT_EQ(runs[2].methodName, u"Rising"_s);
    EXPECT_EQ(runs[2].readingsTaken, 6);
    EXPECT_GT(runs[2].decidedAt, runs[2].createdAt);
}

struct Hostile {
    const char *name;
    QString text;
};
void PrintTo(const Hostile &hostile, std::ostream *out)
{
    *out << hostile.name;
}
class HostileTextTest : public RecordsTest, public ::testing::WithParamInterface<Hostile>
{
};

TEST_P(HostileTextTest, ComesBackAsItWas)
{
    const QString text = GetParam().text;
    RunId id;
    {
        const auto notebook = create();
        run::Run run = unreadRun();
        run.title = text;
        id = notebook->addRun(run, risingMethod(), person);
        notebook->addReading(id, 0, u"A1"_s, 0.1, text, person);
        notebook->correctReading(id, 0, u"A1"_s, 0.2, text, person, u"because "_s + text);
    }
    const auto notebook = reopen();
    const StoredRun stored = notebook->load(id);
    EXPECT_EQ(stored.run.title, text);
    EXPECT_EQ(stored.readings.at(1).typed, text);
    EXPECT_EQ(stored.readings.at(1).reason, u"because "_s + text);
    EXPECT_THAT(notebook->verify().findings, IsEmpty());
}

INSTANTIATE_TEST_SUITE_P(
    Texts, HostileTextTest,
    ::testing::Values(
        Hostile{"quotes", u"it's \"quoted\"; DROP TABLE reading; --"_s},
        Hostile{"newline", u"two\nlines\tand a tab"_s},
        Hostile{"emoji", u"\U0001F9EA\U0001F469\u200D\U0001F52C"_s},
        Hostile{"rightToLeft", u"\u05E9\u05DC\u05D5\u05DD abc \u0645\u0631\u062D\u0628\u0627"_s},
        Hostile{"combining", u"e\u0301 is not \u00E9"_s}, Hostile{"long", QString(3900, u'\u00FC')},
        Hostile{"placeholders", u"? :a @b $c %1 %s ?1"_s}, Hostile{"backslash", u"\\u0000 \\' \\\\"_s}),
    [](const auto &row) { return std::string(row.param.name); });

TEST_F(RecordsTest, TextThatWouldComeBackAnotherIsRefused)
{
    const auto notebook = create();
    const RunId id = notebook->addRun(unreadRun(), risingMethod(), person);
    const QString texts[] = {u"a"_s + QChar(0) + u'b', QString(QChar(0xFFFE)) + u"a"_s,
                             u"a"_s + QChar(0xFFFF),   u"a"_s + QChar(0xD800),
                             QString(QChar(0xDC00)),   QString(QChar(0xFEFF)) + u"0.1"_s};
    for (const QString &text : texts) {
        const Failure failure = failureOf([&] { notebook->addReading(id, 0, u"A1"_s, 0.1, text, person); });
        EXPECT_EQ(failure.kind(), Kind::Refused);
        expectOneSentence(failure);
    }
    EXPECT_THAT(notebook->load(id).readings, IsEmpty());
    notebook->addReading(id, 0, u"A1"_s, 0.1, u"a\uFEFFb"_s, person); // no byte-order mark inside a text
    EXPECT_EQ(notebook->load(id).readings.at(0).typed, u"a\uFEFFb"_s);
}

TEST_F(RecordsTest, NumberThatIsNoneIsRefusedBeforeItIsStored)
{
    const auto notebook = create();
    const RunId id = notebook->addRun(unreadRun(), risingMethod(), person);
    for (const double value : {std::nan(""), HUGE_VAL, -HUGE_VAL, 1e9}) {
        const Failure failure =
            failureOf([&] { notebook->addReading(id, 0, u"A1"_s, value, u"x"_s, person); });
        EXPECT_EQ(failure.kind(), Kind::Refused);
        expectOneSentence(failure);
        EXPECT_EQ(
            failureOf([&] {
                notebook->addReading(id, 0, u"A1"_s, run::ReadingSeries{{1, 0.1}, {2, value}}, {}, person);
            }).kind(),
            Kind::Refused);
    }
    run::Run run = plainRun();
    run.standards = {{u"STD"_s, std::nan(""), {}, {}, {}, 0}};
    EXPECT_EQ(failureOf([&] { notebook->addRun(run, risingMethod(), person); }).kind(), Kind::Refused);
    EXPECT_THAT(notebook->load(id).readings, IsEmpty());
    EXPECT_THAT(notebook->runs(), SizeIs(1));
}

TEST_F(RecordsTest, ReadingHasToFitTheRun)
{
    const auto notebook = create();
    const RunId id = notebook->addRun(unreadRun(), risingMethod(), person);
    notebook->addReading(id, 0, u"A1"_s, 0.1, {}, person);
    const auto refused = [&](const std::function<void()> &action) {
        const Failure failure = failureOf(action);
        EXPECT_EQ(failure.kind(), Kind::Refused) << failure.what();
        expectOneSentence(failure);
    };
    refused([&] { notebook->addReading({99}, 0, u"A1"_s, 0.1, {}, person); });
    refused([&] { notebook->addReading(id, 4, u"A1"_s, 0.1, {}, person); });
    refused([&] { notebook->addReading(id, -1, u"A1"_s, 0.1, {}, person); });
    refused([&] { notebook->addReading(id, 1, u"A9"_s, 0.1, {}, person); });
    refused([&] { notebook->addReading(id, 1, u""_s, 0.1, {}, person); });
    refused([&] { notebook->addReading(id, 1, u"A1"_s, run::ReadingSeries{}, {}, person); });
    refused([&] {
        notebook->addReading(id, 1, u"A2"_s, run::ReadingSeries{{2, 0.1}, {1, 0.2}}, {}, person);
    });
    refused([&] { notebook->addReading(id, 0, u"A1"_s, 0.1, {}, person); }); // there is one: correct it
    refused([&] {
        notebook->correctReading(id, 1, u"A1"_s, 0.1, {}, person, u"why"_s);
    }); // there is none: add it
    refused([&] { notebook->correctReading(id, 0, u"A1"_s, 0.1, {}, person, u"why"_s); }); // it is that already
    refused([&] { notebook->load({99}); });
    EXPECT_THAT(notebook->load(id).readings, SizeIs(1));
}

TEST_F(RecordsTest, RunThatCannotBeWorkedOutIsRefusedAsAWhole)
{
    const auto notebook = create();
    run::Run run = plainRun();
    run.tubes.push_back(sampleTube("NOBODY", 0.1, 0.2));
    Failure failure = failureOf([&] { notebook->addRun(run, risingMethod(), person); });
    EXPECT_EQ(failure.kind(), Kind::Refused);
    EXPECT_TRUE(failure.sentence().contains("/tubes/3/sample"_L1)) << failure.what();
    assay::Method method = risingMethod();
    method.components.clear();
    failure = failureOf([&] { notebook->addRun(plainRun(), method, person); });
    EXPECT_EQ(failure.kind(), Kind::Refused);
    expectOneSentence(failure);
    EXPECT_EQ(failureOf([&] { notebook->addRun(plainRun(), fallingMethod(), person); }).kind(),
              Kind::Refused);
    EXPECT_THAT(notebook->runs(), IsEmpty());
    EXPECT_EQ(notebook->auditHead().entries, entriesOfANewOne());
}

TEST_F(RecordsTest, EveryActNeedsAPerson)
{
    const auto notebook = create();
    const RunId id = notebook->addRun(plainRun(), risingMethod(), person);
    const QString nobodies[] = {QString(),         u""_s,     u"  \t"_s,         u"\u00A0\u3000"_s,
                                u"\u200B\u200E"_s, u"a\nb"_s, QString(201, u'x')};
    for (const QString &nobody : nobodies) {
        const std::function<void()> acts[] = {
            [&] { notebook->addRun(plainRun(), risingMethod(), nobody); },
            [&] { notebook->addReading(id, 0, u"A1"_s, 0.1, {}, nobody); },
            [&] { notebook->correctReading(id, 0, u"A1"_s, 0.1, {}, nobody, u"why"_s); },
            [&] { notebook->decide(id, DecisionKind::Accepted, nobody, {}); },
            [&] { notebook->reopen(id, nobody, u"why"_s); },
        };
        for (const auto &act : acts) {
            const Failure failure = failureOf(act);
            EXPECT_EQ(failure.kind(), Kind::Refused);
            expectOneSentence(failure);
        }
    }
    EXPECT_EQ(notebook->auditHead().entries, entriesOfANewOne() + 1);
}

TEST_F(RecordsTest, CorrectionNeedsAReasonThatSaysSomething)
{
    const auto notebook = create();
    const RunId id = notebook->addRun(plainRun(), risingMethod(), person);
    for (const QString &blank : {QString(), u" \n "_s, u"\u00A0"_s, u"\u200B"_s}) {
        const Failure failure =
            failureOf([&] { notebook->correctReading(id, 0, u"A1"_s, 0.1, {}, person, blank); });
        EXPECT_EQ(failure.kind(), Kind::Refused);
        expectOneSentence(failure);
    }
    EXPECT_THAT(notebook->load(id).readings, SizeIs(6));
}

} // namespace plateau::test
