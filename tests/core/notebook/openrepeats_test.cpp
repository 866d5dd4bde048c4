// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/openrepeats.h"

#include "tests/core/notebook/fixture.h"

#include <algorithm>
#include <random>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;

/// The table that acts keep up to date against the rule asked of all records.
class OpenRepeatsTest : public OpenNotebookTest
{
protected:
    const QStringList names{u"P-1"_s, u"P-2"_s, u"P-3"_s};

    /// isRepeated: the sample is run once more in the same rack, and that is within the window.
    RunId add(int sample, int method, bool isTooStrong, bool isRepeated = false)
    {
        assay::Method by = risingMethod();
        by.id = method == 0 ? u"rising"_s : u"other"_s;
        run::Run run = plainRun();
        run.method = by.id;
        run.samples[0].id = names[sample];
        for (run::Tube &tube : run.tubes) {
            if (tube.role != run::Role::Sample)
                continue;
            tube.sample = names[sample];
            tube.readings[u"A2"_s] = std::get<double>(tube.readings[u"A2"_s]) + (isTooStrong ? 0.7 : 0);
        }
        if (isRepeated) {
            run::Sample again = run.samples[0];
            again.id = names[sample] + u"/2"_s;
            again.repeats = names[sample];
            run.samples.push_back(again);
            for (const double reading : {0.500, 0.502})
                run.tubes.push_back(sampleTube(qPrintable(again.id), 0.100, reading));
        }
        return m_book->addRun(run, by, person);
    }
    void decide(RunId run, DecisionKind kind, std::optional<SampleDecisionKind> own)
    {
        RunDecision decision{kind, person, {}, u"seen by both"_s, {}};
        if (own)
            decision.samples = {{m_book->load(run).run.samples.back().id, *own, u"looked odd"_s, {}}};
        m_book->decide(run, decision);
    }
    /// Once the notebook is closed: the file as it lies there.
    std::vector<OpenRepeat> stored() const
    {
        const Database database(file(), Access::ReadOnly);
        std::vector<OpenRepeat> repeats = openRepeats(database);
        std::sort(repeats.begin(), repeats.end());
        return repeats;
    }
    std::vector<OpenRepeat> derived() const
    {
        const Database database(file(), Access::ReadOnly);
        return derivedOpenRepeats(database);
    }
};

TEST_F(OpenRepeatsTest, AreWhatTheRecordsSayAfterAnyActs)
{
    std::mt19937 chance(20260302);
    const auto pick = [&chance](std::size_t of) {
        return std::uniform_int_distribution<std::size_t>(0, of - 1)(chance);
    };
    std::vector<RunId> onBench;
    std::vector<RunId> decided;
    const auto take = [&](std::vector<RunId> &from) {
        const auto at = from.begin() + std::ptrdiff_t(pick(from.size()));
        const RunId run = *at;
        from.erase(at);
        return run;
    };
    std::size_t most = 0;
    int waived = 0;
    for (int act = 0; act < 140; ++act) {
        const std::size_t kind = pick(10);
        if (kind < 4) {
            onBench.push_back(add(int(pick(3)), int(pick(2)), pick(2) == 0, pick(4) == 0));
        } else if (kind < 8 && !onBench.empty()) {
            const RunId run = take(onBench);
            const bool isRejected = pick(3) == 0;
            const std::size_t own = isRejected ? 3 : pick(4);
            decide(run, isRejected ? DecisionKind::Rejected : DecisionKind::Accepted,
                   own == 0   ? std::optional(SampleDecisionKind::Repeat)
                   : own == 1 ? std::optional(SampleDecisionKind::Rejected)
                              : std::nullopt);
            decided.push_back(run);
        } else if (kind == 8 && !decided.empty()) {
            const RunId run = take(decided);
            m_book->reopen(run, person, u"look again"_s);
            onBench.push_back(run);
        } else if (kind == 9) {
            const std::vector<WaitingSample> waiting = m_book->shelf().waiting();
            if (!waiting.empty()) {
                const WaitingSample &sample = waiting[pick(waiting.size())];
                m_book->shelf().waiveRepeat(sample.repeat->run, sample.sample.id, person, u"poured away"_s);
                ++waived;
            }
        }
        m_book.reset(); // lets others read
        const std::vector<OpenRepeat> open = stored();
        ASSERT_TRUE(open == derived()) << "after act " << act;
        most = std::max(most, open.size());
        m_book = reopen();
    }
    EXPECT_GE(most, 2U) << "or it was tried on next to nothing";
    EXPECT_GE(waived, 1);
}

TEST_F(OpenRepeatsTest, AreTheSampleAndNotWhatRepeatsItInTheRack)
{
    decide(add(0, 0, true, true), DecisionKind::Accepted, std::nullopt);
    decide(add(1, 0, true, true), DecisionKind::Accepted, SampleDecisionKind::Repeat);
    decide(add(2, 0, true, false), DecisionKind::Accepted, std::nullopt);
    m_book.reset();
    const std::vector<OpenRepeat> open = stored();
    ASSERT_EQ(open.size(), 2U) << "the first is settled by its repeat";
    EXPECT_EQ(open[0].sample, u"P-2"_s) << "somebody wants the repeat repeated";
    EXPECT_EQ(open[1].sample, u"P-3"_s);
    EXPECT_TRUE(open == derived());
}

TEST_F(OpenRepeatsTest, DamageToOneRunKeepsNoOtherFromBeingStored)
{
    const RunId first = add(0, 0, true, true);
    decide(first, DecisionKind::Accepted, std::nullopt);
    m_book.reset();
    {
        RawFile raw(file());
        raw.behindTheTriggers([&] {
            raw.execute(u"UPDATE tube SET sample_volume_mL = -1 WHERE run = %1"_s.arg(first.value));
        });
    }
    const auto database = std::make_unique<Database>(file(), Access::ReadOnly);
    EXPECT_TRUE(derivedOpenRepeats(*database).empty()) << "settled, as it was found then";
}

TEST_F(OpenRepeatsTest, MadeAnewAreTheSame)
{
    decide(add(0, 0, true), DecisionKind::Accepted, std::nullopt);
    decide(add(0, 1, true), DecisionKind::Accepted, std::nullopt);
    m_book.reset();
    const std::vector<OpenRepeat> before = stored();
    EXPECT_EQ(before.size(), 2U) << "one of each method";
    {
        RawFile raw(file());
        raw.execute(u"DELETE FROM search_repeat"_s);
    }
    EXPECT_EQ(stored().size(), 0U);
    {
        const Database database(file(), Access::ReadWrite);
        Transaction transaction(database, Transaction::Kind::Write);
        rebuildOpenRepeats(database);
        transaction.commit();
    }
    EXPECT_TRUE(stored() == before);
}

} // namespace plateau::test
