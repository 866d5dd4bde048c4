// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/faultystorage.h"
#include "tests/core/notebook/fixture.h"

#include <cerrno>
#include <functional>
#include <map>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::IsEmpty;
using Kind = Failure::Kind;
using storage::Call;

struct Fault {
    const char *name;
    Call call;
    int error;
    bool lasting;
};
void PrintTo(const Fault &fault, std::ostream *out)
{
    *out << fault.name;
}

/// Every single write and sync of an act fails in turn.
class FaultTest : public NotebookTest, public ::testing::WithParamInterface<Fault>
{
protected:
    void SetUp() override
    {
        create()->addRun(unreadRun(), risingMethod(), u"Ines Kaddour"_s);
        m_base = bytesOf(file());
    }
    void TearDown() override { storage::work(); }

    using Act = std::function<void(Notebook &)>;
    using Count = std::function<size_t(Notebook &)>;

    static size_t actsOnMethods(Notebook &notebook)
    {
        size_t acts = 0;
        for (const StoredMethod &method : notebook.methods())
            acts += method.acts.size();
        return acts;
    }

    /// As a fresh look at the file finds it; the file has to be sound.
    size_t stored(const Count &count)
    {
        const auto notebook = reopen();
        EXPECT_THAT(notebook->verify().findings, IsEmpty());
        return count(*notebook);
    }

    /// The act adds one to what is counted, or says that it did not, or that it does not know.
    void expectTrueAnswers(const Act &act, const Count &count)
    {
        const Fault fault = GetParam();
        const size_t before = stored(count);
        std::map<Kind, int> answers;
        // The first calls and every thirteenth of the others; all of them in the long form (tests/README.md).
        const bool isLong = qEnvironmentVariableIsSet("PLATEAU_LONG_CAMPAIGNS");
        for (int number = 1; number < 400; number += isLong || number < 12 ? 1 : 13) {
            SCOPED_TRACE(number);
            write(file(), m_base);
            bool done = true;
            bool told = true;
            {
                const auto notebook = reopen();
                storage::failAt(fault.call, number, fault.error, fault.lasting);
                try {
                    act(*notebook);
                } catch (const Failure &failure) {
                    expectOneSentence(failure);
                    ++answers[failure.kind()];
                    done = false;
                    told = failure.kind() != Kind::Unconfirmed;
                }
                const bool reached = storage::count(fault.call) >= number;
                storage::work();
                if (!reached)
                    break;
                if (told) {
                    EXPECT_EQ(count(*notebook), before + (done ? 1U : 0U));
                }
            }
            const size_t found = stored(count);
            if (told) {
                EXPECT_EQ(found, before + (done ? 1U : 0U));
            }
        }
        EXPECT_GT(answers[Kind::Storage] + answers[Kind::Unconfirmed], 2);
        for (const auto &[kind, times] : answers)
            EXPECT_TRUE(kind == Kind::Storage || kind == Kind::Unconfirmed) << int(kind);
        // A single fault leaves it open only at the sync that makes a commit final. One that lasts may also
        // keep the program from looking.
        if (!fault.lasting) {
            EXPECT_EQ(answers[Kind::Unconfirmed], fault.call == Call::Sync ? 1 : 0);
        }
    }

    QByteArray m_base;
};

TEST_P(FaultTest, WhatIsSaidOfTheActIsTrue)
{
    expectTrueAnswers(
        [](Notebook &notebook) { notebook.addReading({1}, 0, u"A1"_s, 0.1, u"0.1"_s, u"Ines Kaddour"_s); },
        [](Notebook &notebook) { return notebook.load({1}).readings.size(); });
}

TEST_P(FaultTest, WhatIsSaidOfASavedMethodIsTrue)
{
    expectTrueAnswers(
        [](Notebook &notebook) { notebook.saveMethod(risingMethod(), u"Ines Kaddour"_s, u"ours"_s, {}); },
        actsOnMethods);
}

TEST_P(FaultTest, WhatIsSaidOfAnImportedMethodIsTrue)
{
    expectTrueAnswers(
        [](Notebook &notebook) {
            notebook.importMethod(otherRisingMethod(), u"rising.json"_s, u"Ines Kaddour"_s, {});
        },
        actsOnMethods);
}

TEST_P(FaultTest, WhatIsSaidOfARetiredMethodIsTrue)
{
    expectTrueAnswers(
        [](Notebook &notebook) { notebook.retireMethod(risingMethod(), u"Ines Kaddour"_s, u"old"_s); },
        actsOnMethods);
}

TEST_P(FaultTest, WhatIsSaidOfATickedRowIsTrue)
{
    expectTrueAnswers(
        [](Notebook &notebook) {
            notebook.pipetting().markDone(
                {1}, {{{0, u"buffer"_s, false}}, {{1, u"buffer"_s, false}}, {{2, u"buffer"_s, false}}},
                u"Ines Kaddour"_s);
        },
        [](Notebook &notebook) { return (notebook.load({1}).marks.size() + 2) / 3; });
}

TEST_P(FaultTest, WhatIsSaidOfTickedDilutionsIsTrue)
{
    const RunId run = reopen()->addRun(fullRun(), risingMethod(), u"Ines Kaddour"_s);
    m_base = bytesOf(file());
    expectTrueAnswers(
        [run](Notebook &notebook) {
            notebook.pipetting().markDilutionsDone(run, {{0, 0}, {0, 1}}, u"Ines Kaddour"_s);
        },
        [run](Notebook &notebook) { return (notebook.load(run).dilutionMarks.size() + 1) / 2; });
}

TEST_P(FaultTest, WhatIsSaidOfAReceivedLotIsTrue)
{
    expectTrueAnswers(
        [](Notebook &notebook) {
            notebook.lots().receive({u"Buffer"_s, u"B-17"_s, {}, {}}, 50, u"Ines Kaddour"_s);
        },
        [](Notebook &notebook) { return notebook.lots().inHand().size(); });
}

TEST_P(FaultTest, WhatIsSaidOfADissolvedLotIsTrue)
{
    reopen()->lots().receiveDry({u"Coenzyme"_s, u"N-12"_s, {}, {}}, 25, u"Ines Kaddour"_s);
    m_base = bytesOf(file());
    expectTrueAnswers(
        [this](Notebook &notebook) {
            notebook.lots().dissolve({1}, {4, u"water"_s, {}, m_now.date(), 14}, u"Ines Kaddour"_s);
        },
        [](Notebook &notebook) { return size_t(notebook.lots().all().at(0).dissolved.has_value()); });
}

TEST_P(FaultTest, WhatIsSaidOfADividedLotIsTrue)
{
    reopen()->lots().receive({u"Buffer"_s, u"B-17"_s, {}, {}}, 50, u"Ines Kaddour"_s);
    m_base = bytesOf(file());
    expectTrueAnswers(
        [this](Notebook &notebook) {
            LotDivision two{2, 1, m_now.date(), 90};
            two.place = planning::StoragePlace{u"freezer"_s, {}, -10};
            notebook.lots().divide({1}, two, u"Ines Kaddour"_s);
        },
        // All of it or nothing: the container and its two aliquots.
        [](Notebook &notebook) { return (notebook.lots().all().size() + 1) / 2; });
}

TEST_P(FaultTest, WhatIsSaidOfADecisionSampleBySampleIsTrue)
{
    expectTrueAnswers(
        [](Notebook &notebook) {
            notebook.decide({1}, {DecisionKind::Rejected,
                                  u"Tomas Brandl"_s,
                                  {},
                                  u"the lamp"_s,
                                  {{u"S"_s, SampleDecisionKind::Repeat, u"anew"_s, dilution({{5, 50}})}}});
        },
        [](Notebook &notebook) { return notebook.load({1}).decisions.size(); });
}

TEST_P(FaultTest, WhatIsSaidOfSavedLimitsIsTrue)
{
    expectTrueAnswers(
        [](Notebook &notebook) { notebook.saveSpecifications(limits(), u"Ines Kaddour"_s, u"new"_s); },
        [](Notebook &notebook) { return notebook.specifications().size(); });
}

TEST_P(FaultTest, WhatIsSaidOfTheSettingsOfAChartIsTrue)
{
    const charts::Subject blanks{charts::Quantity::Blank, u"malate"_s, u"malate"_s};
    expectTrueAnswers(
        [&](Notebook &notebook) { notebook.charts().saveSettings(blanks, {}, u"Ines Kaddour"_s); },
        [&](Notebook &notebook) { return size_t(notebook.charts().settings(blanks).has_value()); });
}

TEST_P(FaultTest, WhatIsSaidOfAValueLeftOutIsTrue)
{
    const ChartValue value{charts::Quantity::Blank, {1}, u"malate"_s, {}};
    expectTrueAnswers(
        [&](Notebook &notebook) { notebook.charts().leaveOut(value, u"Ines Kaddour"_s, u"bubble"_s); },
        [&](Notebook &notebook) {
            return size_t(notebook.history({1}).back().action == "chartValueLeftOut"_L1);
        });
}

TEST_P(FaultTest, WhatIsSaidOfAPersonIsTrue)
{
    expectTrueAnswers(
        [](Notebook &notebook) { notebook.persons().addFirst(u"Ines Kaddour"_s, u"four apples"_s); },
        [](Notebook &notebook) { return notebook.persons().all().size(); });
}

TEST_P(FaultTest, WhatIsSaidOfOneMoreReadingIsTrue)
{
    {
        const auto notebook = reopen();
        notebook->pipetting().markDone({1}, {{{0, u"starter"_s, false}}}, u"Ines Kaddour"_s);
        notebook->addReading({1}, 0, u"A2"_s, 0.1, u"0.1"_s, u"Ines Kaddour"_s);
    }
    m_base = bytesOf(file());
    expectTrueAnswers(
        [](Notebook &notebook) {
            notebook.readAgain({1}, 0, u"A2"_s, 0.11, u"0.11"_s, u"Ines Kaddour"_s,
                               {ReadingOrigin::Kind::Serial, u"ttyUSB0"_s, u"0.11"_s});
        },
        [](Notebook &notebook) { return notebook.load({1}).readings.size(); });
}

TEST_P(FaultTest, WhatIsSaidOfFurtherTubesIsTrue)
{
    expectTrueAnswers(
        [](Notebook &notebook) {
            run::Sample again = liquid("S/2", {{1, 4}});
            again.repeats = u"S"_s;
            run::Tube tube = unreadRun().tubes[1];
            tube.sample = again.id;
            notebook.addTubes({1}, {again}, {tube}, {}, u"Ines Kaddour"_s);
        },
        [](Notebook &notebook) { return notebook.load({1}).run.tubes.size(); });
}

TEST_P(FaultTest, WhatIsSaidOfAClockThatWasSetIsTrue)
{
    expectTrueAnswers([](Notebook &notebook) { notebook.noteClockJump(3'600'000, u"Ines Kaddour"_s); },
                      [](Notebook &notebook) { return notebook.load({1}).clockJumps.size(); });
}

TEST_P(FaultTest, NotebookGoesOnAfterAFault)
{
    const Fault fault = GetParam();
    const auto notebook = reopen();
    storage::failAt(fault.call, 2, fault.error, fault.lasting);
    const auto add = [&] { notebook->addReading({1}, 0, u"A1"_s, 0.1, {}, u"Ines Kaddour"_s); };
    EXPECT_EQ(failureOf(add).kind(),
              fault.call == Call::Sync && fault.lasting ? Kind::Unconfirmed : Kind::Storage);
    storage::work();
    add();
    EXPECT_THAT(notebook->verify().findings, IsEmpty());
    EXPECT_EQ(notebook->auditHead().entries, entriesOfANewOne() + 2);
}

INSTANTIATE_TEST_SUITE_P(Calls, FaultTest,
                         ::testing::Values(Fault{"fullOnce", Call::Write, ENOSPC, false},
                                           Fault{"fullFromThenOn", Call::Write, ENOSPC, true},
                                           Fault{"brokenWrite", Call::Write, EIO, false},
                                           Fault{"brokenSync", Call::Sync, EIO, false},
                                           Fault{"brokenSyncFromThenOn", Call::Sync, EIO, true}),
                         [](const auto &row) { return std::string(row.param.name); });

TEST_F(NotebookTest, CommitReachesTheDiskBeforeItIsReported)
{
    const auto notebook = create();
    notebook->addRun(unreadRun(), risingMethod(), u"Ines Kaddour"_s);
    storage::work();
    notebook->addReading({1}, 0, u"A1"_s, 0.1, {}, u"Ines Kaddour"_s);
    // Journal, its header, the file, and the end of the journal.
    EXPECT_GE(storage::count(Call::Sync), 4);
    EXPECT_GT(storage::count(Call::Write), 4);
}

} // namespace plateau::test
