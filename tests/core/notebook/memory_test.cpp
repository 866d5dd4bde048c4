// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/fixture.h"

#include <QSqlQuery>

#include <sqlite3.h>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::IsEmpty;
using ::testing::SizeIs;
using Kind = Failure::Kind;

/// The engine gets no memory beyond what it has and some bytes, in all connections of the process.
class ScarceMemory
{
public:
    explicit ScarceMemory(sqlite3_int64 some) { sqlite3_hard_heap_limit64(sqlite3_memory_used() + some); }
    ~ScarceMemory() { sqlite3_hard_heap_limit64(0); }
    ScarceMemory(const ScarceMemory &) = delete;
    ScarceMemory &operator=(const ScarceMemory &) = delete;
};

using MemoryTest = NotebookTest;

TEST_F(MemoryTest, ActWithoutEnoughOfItIsStoredWholeOrNotAtAllAndSaysWhich)
{
    create()->addRun(unreadRun(), risingMethod(), u"Ines Kaddour"_s);
    const QByteArray base = bytesOf(file());
    int refused = 0;
    bool stored = false;
    for (sqlite3_int64 some = 0; !stored && some < 4'000'000; some += some / 16 + 400) {
        SCOPED_TRACE(some);
        write(file(), base);
        const auto notebook = reopen();
        {
            const ScarceMemory scarce(some);
            try {
                notebook->addReading({1}, 0, u"A1"_s, 0.1, u"0.1"_s, u"Ines Kaddour"_s);
                stored = true;
            } catch (const Failure &failure) {
                EXPECT_EQ(failure.kind(), Kind::Storage) << failure.details().toStdString();
                expectOneSentence(failure);
                ++refused;
            }
        }
        EXPECT_THAT(notebook->load({1}).readings, SizeIs(stored ? 1 : 0));
        EXPECT_THAT(notebook->verify().findings, IsEmpty());
        if (!stored) {
            notebook->addReading({1}, 0, u"A1"_s, 0.1, u"0.1"_s, u"Ines Kaddour"_s);
            EXPECT_THAT(notebook->load({1}).readings, SizeIs(1)) << "with memory again, work goes on";
        }
    }
    EXPECT_TRUE(stored);
    EXPECT_GT(refused, 5);
}

} // namespace plateau::test
