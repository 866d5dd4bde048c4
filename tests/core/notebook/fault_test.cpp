// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/faultystorage.h"
#include "tests/core/notebook/fixture.h"

#include <cerrno>
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

    /// Readings of the run as a fresh look at the file finds them; the file has to be sound.
    size_t readingsStored()
    {
        const auto notebook = reopen();
        EXPECT_THAT(notebook->verify().findings, IsEmpty());
        return notebook->load({1}).readings.size();
    }

    QByteArray m_base;
};

TEST_P(FaultTest, WhatIsSaidOfTheActIsTrue)
{
    const Fault fault = GetParam();
    std::map<Kind, int> answers;
    for (int number = 1; number < 200; ++number) {
        SCOPED_TRACE(number);
        write(file(), m_base);
        bool stored = true;
        bool told = true;
        {
            const auto notebook = reopen();
            storage::failAt(fault.call, number, fault.error, fault.lasting);
            try {
                notebook->addReading({1}, 0, u"A1"_s, 0.1, u"0.1"_s, u"Ines Kaddour"_s);
            } catch (const Failure &failure) {
                expectOneSentence(failure);
                ++answers[failure.kind()];
                stored = false;
                told = failure.kind() != Kind::Unconfirmed;
            }
            const bool reached = storage::count(fault.call) >= number;
            storage::work();
            if (!reached)
                break;
            if (told) {
                EXPECT_EQ(notebook->load({1}).readings.size(), stored ? 1U : 0U);
            }
        }
        const size_t found = readingsStored();
        if (told) {
            EXPECT_EQ(found, stored ? 1U : 0U);
        }
    }
    EXPECT_GT(answers[Kind::Storage] + answers[Kind::Unconfirmed], 2);
    for (const auto &[kind, count] : answers)
        EXPECT_TRUE(kind == Kind::Storage || kind == Kind::Unconfirmed) << int(kind);
    // A single fault leaves it open only at the sync that makes a commit final. One that lasts may also keep
    // the program from looking.
    if (!fault.lasting) {
        EXPECT_EQ(answers[Kind::Unconfirmed], fault.call == Call::Sync ? 1 : 0);
    }
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
    EXPECT_EQ(notebook->auditHead().entries, 3);
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
