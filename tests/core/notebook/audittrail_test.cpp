// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/audittrail.h"

#include "core/notebook/keeping.h"
#include "core/notebook/recordwords.h"
#include "tests/core/notebook/fixture.h"

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

namespace {

class AuditTrail : public OpenNotebookTest
{
protected:
    std::vector<AuditItem> of(const AuditFilter &filter) const { return m_book->keeping().audit(filter); }
    /// What the newest act of that kind changed.
    std::vector<AuditChange> newest(const QString &action) const
    {
        const auto items = of({.actions = {action}});
        EXPECT_FALSE(items.empty()) << action.toStdString();
        return items.empty() ? std::vector<AuditChange>()
                             : m_book->keeping().changes(items.front().entry.number);
    }
};

} // namespace

TEST_F(AuditTrail, HasAWordForEveryKindOfRecord)
{
    const QStringList told{u"bench_stamp"_s,   u"reading_point"_s, u"decision_mark"_s,
                           u"decision_size"_s, u"reading_again"_s, u"decision_repeat"_s,
                           u"mark_lot_day"_s}; // with what they are part of
    int seen = 0;
    for (const auto &[table, columns] : layoutAfter(schemaSteps(), schemaSteps().back().number).columns) {
        if (isDerived(table) || table.startsWith("audit"_L1) || table.startsWith("sqlite_"_L1) || told.contains(table))
            continue;
        ++seen;
        if (table.contains(u'_') && table != "wrong_passphrase"_L1) { // which is a word
            EXPECT_NE(recordWord(table), QString(table).replace(u'_', u' ')) << table.toStdString();
        }
    }
    EXPECT_GT(seen, 60);
}

TEST_F(AuditTrail, TellsOldAndNewValueAndReasonOfACorrection)
{
    const RunId run = m_book->addRun(plainRun(), risingMethod(), person);
    const double old = std::get<double>(plainRun().tubes[1].readings.at(u"A2"_s));
    m_book->correctReading(run, 1, u"A2"_s, 0.631, u"0,631"_s, person, u"tubes mixed up"_s);
    const auto changes = newest(u"readingCorrected"_s);
    ASSERT_THAT(changes, SizeIs(1));
    EXPECT_EQ(changes[0],
              (AuditChange{u"tube 2, A2"_s, QString::number(old, 'f', 3), u"0.631"_s, u"tubes mixed up"_s}));
}

TEST_F(AuditTrail, TellsWhatBecameOfARunAndWhy)
{
    const RunId run = m_book->addRun(plainRun(), risingMethod(), person);
    m_book->decide(run, DecisionKind::Rejected, u"Tomas Brandl"_s, u"the flask leaked"_s);
    EXPECT_EQ(newest(u"runRejected"_s).front(),
              (AuditChange{u"the run"_s, u"on the bench"_s, u"rejected"_s, u"the flask leaked"_s}));
    m_book->reopen(run, u"Tomas Brandl"_s, u"it did not"_s);
    EXPECT_EQ(newest(u"runReopened"_s).front(),
              (AuditChange{u"the run"_s, u"rejected"_s, u"on the bench"_s, u"it did not"_s}));
}

TEST_F(AuditTrail, TellsWhatOfSettingsWasChanged)
{
    planning::Laboratory laboratory = planning::usualLaboratory();
    laboratory.name = u"Kaddour cidery"_s;
    m_book->saveLaboratory(laboratory, person);
    laboratory.name = u"Kaddour and Daughters"_s;
    m_book->saveLaboratory(laboratory, person);
    const auto changes = newest(u"laboratorySaved"_s);
    ASSERT_THAT(changes, SizeIs(1));
    EXPECT_EQ(changes[0].before, u"/name: Kaddour cidery"_s);
    EXPECT_EQ(changes[0].after, u"/name: Kaddour and Daughters"_s);
}

TEST_F(AuditTrail, TellsWhatWasWrittenOnAContainerBefore)
{
    const LotId lot = m_book->lots().receive({u"Buffer"_s, u"B-17"_s, QDate(2026, 9, 30), 28}, 50, person);
    m_book->lots().relabel(lot, {u"Buffer"_s, u"B-17"_s, QDate(2027, 9, 30), 28}, person, u"year misread"_s);
    const auto changes = newest(u"lotChanged"_s);
    ASSERT_THAT(changes, SizeIs(1));
    EXPECT_EQ(changes[0].before, u"last good day: 2026-09-30"_s);
    EXPECT_EQ(changes[0].after, u"last good day: 2027-09-30"_s);
    EXPECT_EQ(changes[0].reason, u"year misread"_s);
}

TEST_F(AuditTrail, TellsWhenALotWasOpenedInsteadAndWhy)
{
    const LotId lot = m_book->lots().receive({u"Buffer"_s, u"B-17"_s, {}, 28}, 50, person);
    m_book->lots().open(lot, QDate(2026, 3, 1), person);
    m_book->lots().correctOpening(lot, QDate(2026, 2, 27), person, u"on Friday"_s);
    EXPECT_THAT(newest(u"lotOpeningCorrected"_s),
                ElementsAre(AuditChange{u"lot B-17"_s, u"opened on 2026-03-01"_s, u"opened on 2026-02-27"_s,
                                        u"on Friday"_s}));
    m_book->lots().correctOpening(lot, std::nullopt, person, u"it was B-18"_s);
    EXPECT_THAT(newest(u"lotOpeningCorrected"_s),
                ElementsAre(AuditChange{u"lot B-17"_s, u"opened on 2026-02-27"_s, u"not opened"_s,
                                        u"it was B-18"_s}));
    m_book->lots().open(lot, QDate(2026, 3, 2), person);
    EXPECT_THAT(newest(u"lotOpened"_s),
                ElementsAre(AuditChange{u"lot B-17"_s, u"not opened"_s, u"opened on 2026-03-02"_s, {}}));
}

TEST_F(AuditTrail, NeverShowsAPassphrase)
{
    fillPersons(*m_book);
    for (const AuditItem &item : of({})) {
        for (const AuditChange &change : m_book->keeping().changes(item.entry.number))
            EXPECT_FALSE(change.after.contains(u"argon2"_s)) << change.after.toStdString();
    }
}

TEST_F(AuditTrail, OfARunPutOnTheBenchIsCounted)
{
    run::Run run = plainRun();
    while (run.tubes.size() < 40) // more than are told one by one
        run.tubes.push_back(run.tubes.back());
    m_book->addRun(run, risingMethod(), person);
    const auto changes = newest(u"runAdded"_s);
    const auto tubes = std::ranges::find(changes, u"tube"_s, &AuditChange::subject);
    ASSERT_NE(tubes, changes.end());
    EXPECT_EQ(tubes->after, QString::number(run.tubes.size()));
}

TEST_F(AuditTrail, IsFilteredByRunPersonActDayAndText)
{
    fill(*m_book);
    const auto all = of({.most = 1000});
    EXPECT_EQ(int(all.size()), m_book->auditHead().entries);
    EXPECT_GT(all.front().entry.number, all.back().entry.number);

    const RunId run = m_book->runs().back().id;
    for (const AuditItem &item : of({.run = run}))
        EXPECT_EQ(item.entry.run, std::optional(run));
    EXPECT_EQ(of({.run = run}).size(), m_book->history(run).size());
    for (const AuditItem &item : of({.person = u"Tomas Brandl"_s}))
        EXPECT_EQ(item.entry.person, u"Tomas Brandl"_s);
    EXPECT_THAT(of({.person = u"Nobody"_s}), IsEmpty());
    EXPECT_FALSE(of({.actions = {u"runReopened"_s}}).empty());
    EXPECT_THAT(of({.text = u"TOMAS"_s}), SizeIs(of({.person = u"Tomas Brandl"_s}).size()));

    const QDate day = all.back().entry.at.date();
    EXPECT_THAT(of({.to = day.addDays(-1)}), IsEmpty());
    EXPECT_THAT(of({.from = day, .to = day, .most = 1000}), SizeIs(all.size()));
}

TEST_F(AuditTrail, ComesInPartsThatFollowEachOther)
{
    fill(*m_book);
    std::vector<AuditItem> found;
    AuditFilter filter{.most = 3};
    for (auto part = of(filter); !part.empty(); part = of(filter)) {
        found.insert(found.end(), part.begin(), part.end());
        filter.before = part.back().entry.number;
    }
    EXPECT_EQ(found, of({.most = 1000}));
}

TEST_F(AuditTrail, NamesEveryActThatTheNotebookKnows)
{
    fill(*m_book);
    EXPECT_TRUE(m_book->keeping().actions().contains(u"readingCorrected"_s));
    EXPECT_TRUE(m_book->keeping().persons().contains(u"Tomas Brandl"_s));
}

TEST_F(AuditTrail, IsVerifiedStepByStepAndCanBeStopped)
{
    fill(*m_book);
    qint64 last = 0;
    qint64 of = 0;
    const Verification whole = m_book->verify([&](qint64 done, qint64 all) {
        EXPECT_GT(done, last);
        last = done;
        of = all;
        return true;
    });
    EXPECT_THAT(whole.findings, IsEmpty());
    EXPECT_EQ(last, of);
    EXPECT_GT(of, m_book->auditHead().entries);
    EXPECT_THROW(m_book->verify([](qint64, qint64) { return false; }), Stopped);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

} // namespace plateau::test
