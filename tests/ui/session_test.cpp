// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/bench.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/verdicts.h"

#include <QSignalSpy>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

class Session : public Bench
{
protected:
    Session() { session.setPerson(u"R. Okafor"_s); }

    void readAll(notebook::RunId id, double sampleSignal)
    {
        for (const ui::Place &place : ui::readingOrder(method(), exampleRun())) {
            const double later = place.tube < 2 ? 0.11 : 0.11 + sampleSignal;
            session.storeReading(id, place, place.reading == u"A1"_s ? 0.1 : later, {});
        }
    }

    ui::BenchSession session{*book};
};

TEST_F(Session, ReadsOnePointOfAllTubesBeforeTheNext)
{
    const std::vector<ui::Place> order = ui::readingOrder(method(), exampleRun());
    ASSERT_EQ(order.size(), 8U);
    EXPECT_EQ(order[0], (ui::Place{0, u"A1"_s}));
    EXPECT_EQ(order[3], (ui::Place{3, u"A1"_s}));
    EXPECT_EQ(order[4], (ui::Place{0, u"A2"_s}));
}

TEST_F(Session, NextUnreadGoesOnFromThePlaceAndRoundToTheStart)
{
    run::Run run = exampleRun();
    EXPECT_EQ(ui::nextUnread(method(), run), (ui::Place{0, u"A1"_s}));
    run.tubes[2].readings[u"A1"_s] = 0.1;
    EXPECT_EQ(ui::nextUnread(method(), run, ui::Place{2, u"A1"_s}), (ui::Place{3, u"A1"_s}));
    run.tubes[3].readings[u"A2"_s] = 0.1;
    EXPECT_EQ(ui::nextUnread(method(), run, ui::Place{3, u"A2"_s}), (ui::Place{0, u"A1"_s}));
    for (run::Tube &tube : run.tubes)
        tube.readings = {{u"A1"_s, 0.1}, {u"A2"_s, 0.2}};
    EXPECT_FALSE(ui::nextUnread(method(), run, ui::Place{1, u"A2"_s}));
    run.tubes[1].readings.clear();
    run.tubes[1].spoilt = u"dropped"_s;
    EXPECT_FALSE(ui::nextUnread(method(), run)) << "nobody reads a spoilt tube";
}

TEST_F(Session, TheOldestRackWithWorkLeftIsNext)
{
    EXPECT_FALSE(session.next());
    const notebook::RunId first = session.addRun(exampleRun(), method());
    const notebook::RunId second = session.addRun(exampleRun(), method());
    EXPECT_EQ(session.find(first)->letter, u"A"_s);
    EXPECT_EQ(session.find(second)->letter, u"B"_s);
    EXPECT_EQ(session.next()->run, first);
    readAll(first, 0.5);
    EXPECT_EQ(session.next()->run, second);
    EXPECT_EQ(session.next()->kind, ui::NextAction::Kind::Pipette);
    session.takeFromPaper(second);
    EXPECT_EQ(session.next()->kind, ui::NextAction::Kind::Read);
    readAll(second, 0.5);
    EXPECT_EQ(session.next()->kind, ui::NextAction::Kind::Review);
    EXPECT_EQ(session.next()->run, first);
    const QSignalSpy next(&session, &ui::BenchSession::nextChanged);
    session.takeInHand(second);
    EXPECT_EQ(session.next()->run, second) << "what one works on comes before what is older";
    EXPECT_EQ(next.count(), 1);
    session.takeInHand(first);
    EXPECT_EQ(session.next()->run, first);
    session.decide(first, notebook::DecisionKind::Accepted, u"M. Lindqvist"_s, {});
    EXPECT_EQ(session.next()->run, second);
    EXPECT_EQ(session.find(second)->letter, u"B"_s) << "a rack keeps its letter";
    session.decide(second, notebook::DecisionKind::Rejected, u"M. Lindqvist"_s, u"rack fell over"_s);
    EXPECT_FALSE(session.next());
    session.reopen(second, session.person(), u"wrong rack rejected"_s);
    EXPECT_EQ(session.next()->run, second);
}

TEST_F(Session, StoredReadingsAreInTheNotebookBeforeTheCallReturns)
{
    const notebook::RunId id = session.addRun(exampleRun(), method());
    const QSignalSpy changed(&session, &ui::BenchSession::rackChanged);
    session.storeReading(id, {2, u"A1"_s}, 0.512, u"0,512"_s);
    EXPECT_EQ(changed.count(), 1);
    const notebook::StoredRun stored = book->load(id);
    ASSERT_EQ(stored.readings.size(), 1U);
    EXPECT_EQ(std::get<double>(stored.readings[0].value), 0.512);
    EXPECT_EQ(stored.readings[0].typed, u"0,512"_s);
    EXPECT_EQ(stored.readings[0].person, u"R. Okafor"_s);
}

TEST_F(Session, APreviewStoresNothing)
{
    const notebook::RunId id = session.addRun(exampleRun(), method());
    ui::preview(session.find(id)->stored, {2, u"A1"_s}, 0.512);
    EXPECT_TRUE(book->load(id).readings.empty());
}

TEST_F(Session, LettersGoOnBehindZ)
{
    EXPECT_EQ(ui::rackLetter(0), u"A"_s);
    EXPECT_EQ(ui::rackLetter(25), u"Z"_s);
    EXPECT_EQ(ui::rackLetter(26), u"AA"_s);
    EXPECT_EQ(ui::rackLetter(27), u"AB"_s);
}

TEST_F(Session, TheVerdictOfTheRunIsWordAndState)
{
    const notebook::RunId id = session.addRun(exampleRun(), method());
    const auto verdict = [&] {
        const ui::Rack &rack = *session.find(id);
        return ui::overallVerdict(rack.stored.run, rack.evaluation, {});
    };
    evaluation::CheckLine open;
    open.outcome = evaluation::CheckOutcome::NotMade;
    open.what = u"Recovery of the standard"_s;
    EXPECT_EQ(verdict().state, ui::State::Pending);
    readAll(id, 0.5);
    EXPECT_EQ(verdict(), (ui::Sentence{ui::State::Good, u"All results are reportable"_s}));
    const ui::Rack &rack = *session.find(id);
    EXPECT_EQ(ui::overallVerdict(rack.stored.run, rack.evaluation, {open}),
              (ui::Sentence{ui::State::Attention, u"Not every check could be made"_s}));
    EXPECT_EQ(ui::failureText({open}),
              u"No check failed. Not made, though the method asks for it: recovery of the standard."_s);
    session.correctReading(id, {2, u"A2"_s}, 1.5, u"1.5"_s, u"misread"_s);
    session.correctReading(id, {3, u"A2"_s}, 1.5, u"1.5"_s, u"misread"_s);
    EXPECT_EQ(verdict(), (ui::Sentence{ui::State::Attention, u"1 of 1 to repeat"_s}));
    const evaluation::Evaluation &evaluation = session.find(id)->evaluation;
    const std::vector<ui::Sentence> failures = 
        ui::failureSentences(session.find(id)->stored.run, evaluation, evaluation.results.front());
    ASSERT_FALSE(failures.empty());
    EXPECT_NE(failures.front().state, ui::State::Good);
}

TEST_F(Session, ReadingsShowThreeDecimalsOrWhatWasRead)
{
    EXPECT_EQ(ui::readingText(0.5), u"0.500"_s);
    EXPECT_EQ(ui::readingText(0.5123), u"0.5123"_s);
    EXPECT_EQ(ui::readingText(0.1 + 0.2), u"0.300"_s);
    EXPECT_EQ(ui::readingText(run::Reading(run::ReadingSeries{{15, 0.5}, {20, 0.52}})),
              u"2 readings, last 0.520"_s);
}

} // namespace
} // namespace plateau::test
