// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// What opening notices of a notebook that is looked through as a whole, and of one that is too large for it.
#include "core/notebook/opening.h"
#include "tests/core/notebook/fixture.h"

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::IsEmpty;
using ::testing::Not;

class OpeningLimit : public NotebookTest
{
protected:
    void SetUp() override
    {
        makeFilledFile();
        m_entries = RawFile(file()).value(u"SELECT max(id) FROM audit"_s).toInt();
        ASSERT_GT(m_entries, 2 * lookedAt);
    }
    void change(const QString &statement)
    {
        RawFile raw(file());
        raw.behindTheTriggers([&] { raw.execute(statement); });
    }
    /// Empty where it opens.
    QString foundBy(qint64 mostEntries)
    {
        try {
            OpeningManner manner;
            manner.mostEntries = mostEntries;
            manner.lastEntries = lookedAt;
            openNotebookFile(file(), Access::ReadWrite, schemaSteps(), surroundings(), manner);
            return {};
        } catch (const Failure &failure) {
            EXPECT_EQ(failure.kind(), Failure::Kind::Damaged);
            expectOneSentence(failure);
            return failure.sentence();
        }
    }
    QString foundInAWholeOne() { return foundBy(m_entries); }
    QString foundInALargeOne() { return foundBy(m_entries - 1); }

    static constexpr int lookedAt = 5;
    int m_entries = 0;
};

TEST_F(OpeningLimit, ASoundNotebookOpensOnBothSides)
{
    EXPECT_TRUE(foundInAWholeOne().isEmpty());
    EXPECT_TRUE(foundInALargeOne().isEmpty());
}

TEST_F(OpeningLimit, IsTwentyThousandEntriesOfWhichTheLastHundredAreLookedAt)
{
    EXPECT_EQ(OpeningManner().mostEntries, 20'000);
    EXPECT_EQ(OpeningManner().lastEntries, 100);
}

TEST_F(OpeningLimit, AnEntryOfLongAgoIsNoticedInAWholeOneOnly)
{
    const int old = m_entries - lookedAt;
    change(u"UPDATE audit SET person = person || 'x' WHERE id = %1"_s.arg(old));
    EXPECT_TRUE(foundInAWholeOne().contains(u"audit entry %1"_s.arg(old)));
    EXPECT_TRUE(foundInALargeOne().isEmpty());
}

TEST_F(OpeningLimit, AnEntryOfTheEndIsNoticedInBoth)
{
    const int late = m_entries - lookedAt + 1;
    change(u"UPDATE audit SET person = person || 'x' WHERE id = %1"_s.arg(late));
    EXPECT_TRUE(foundInAWholeOne().contains(u"audit entry %1"_s.arg(late)));
    EXPECT_TRUE(foundInALargeOne().contains(u"audit entry %1"_s.arg(late)));
}

TEST_F(OpeningLimit, AMissingEntryOfTheEndIsNoticedInBoth)
{
    change(u"DELETE FROM audit WHERE id = %1"_s.arg(m_entries - 2));
    EXPECT_FALSE(foundInAWholeOne().isEmpty());
    EXPECT_FALSE(foundInALargeOne().isEmpty());
}

TEST_F(OpeningLimit, ARowThatNamesOneThatIsGoneIsNoticedInAWholeOneOnly)
{
    change(u"DELETE FROM method WHERE id = (SELECT min(method) FROM run)"_s);
    EXPECT_FALSE(foundInAWholeOne().isEmpty());
    EXPECT_TRUE(foundInALargeOne().isEmpty());
}

TEST_F(OpeningLimit, AMissingTriggerIsNoticedInBoth)
{
    {
        RawFile raw(file());
        const QString trigger =
            raw.value(u"SELECT name FROM sqlite_schema WHERE type = 'trigger' LIMIT 1"_s).toString();
        raw.execute(u"DROP TRIGGER \"%1\""_s.arg(trigger));
    }
    EXPECT_FALSE(foundInAWholeOne().isEmpty());
    EXPECT_FALSE(foundInALargeOne().isEmpty());
}

TEST_F(OpeningLimit, AChangedValueIsNoticedByVerificationAlone)
{
    change(u"UPDATE reading SET typed = typed || '9' WHERE id = (SELECT max(id) FROM reading)"_s);
    EXPECT_TRUE(foundInAWholeOne().isEmpty());
    EXPECT_TRUE(foundInALargeOne().isEmpty());
    EXPECT_THAT(reopen(Access::ReadOnly)->verify().findings, Not(IsEmpty()));
}

} // namespace plateau::test
