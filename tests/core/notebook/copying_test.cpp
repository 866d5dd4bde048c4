// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Copies that are made beside the work: a few pages at a time by the notebook's own connection, checked in a
// thread. The threads are the standard library's, so that the thread sanitizer sees all that they share.
#include "core/notebook/copying.h"

#include "core/notebook/backups.h"
#include "core/notebook/opening.h"
#include "core/notebook/pagecopy.h"
#include "core/notebook/stopping.h"
#include "tests/core/notebook/faultystorage.h"
#include "tests/core/notebook/fixture.h"

#include <QDir>
#include <QFile>

#include <cerrno>
#include <future>
#include <thread>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::Each;
using ::testing::Ge;
using ::testing::IsEmpty;
using ::testing::Le;
using ::testing::SizeIs;

class CopyBesideTheWork : public OpenNotebookTest
{
protected:
    void SetUp() override
    {
        OpenNotebookTest::SetUp();
        fill(*m_book);
        m_run = m_book->addRun(unreadRun(), risingMethod(), person);
    }
    /// One more reading on record; false when all tubes have theirs.
    bool keyOne()
    {
        if (m_keyed == int(unreadRun().tubes.size()))
            return false;
        const QString typed = u"0.1%1"_s.arg(m_keyed);
        m_book->addReading(m_run, m_keyed, u"A1"_s, typed.toDouble(), typed, person);
        ++m_keyed;
        return true;
    }
    int keyedIn(const QString &path) const
    {
        int keyed = 0;
        const auto copy = Notebook::open(path, Access::ReadOnly);
        for (const run::Tube &tube : copy->load(m_run).run.tubes)
            keyed += tube.readings.contains(u"A1"_s) ? 1 : 0;
        return keyed;
    }
    QString root() const { return m_folder.filePath(u"backups"_s); }
    QString folder() const { return m_book->keeping().backupFolder(root()); }
    QStringList filesOfBackups() const
    {
        return QDir(folder()).entryList(QDir::Files | QDir::Hidden | QDir::NoDotAndDotDot);
    }
    static std::unique_ptr<CopyToCheck> allOf(BackupUnderWay &backup)
    {
        while (!backup.copy->advance(8))
            ;
        return backup.copy->take();
    }

    RunId m_run;
    int m_keyed = 0;
};

TEST_F(CopyBesideTheWork, IsOfTheMomentOfItsLastPageAndPassesVerification)
{
    BackupUnderWay backup = m_book->keeping().beginBackup(root());
    int steps = 0;
    while (!backup.copy->advance(1)) {
        if (++steps % 10 == 0)
            keyOne();
        ASSERT_LE(backup.copy->donePages(), backup.copy->allPages());
    }
    const int keyedThen = m_keyed;
    EXPECT_EQ(keyedThen, int(unreadRun().tubes.size())) << "all of them between two pages";
    const AuditHead then = m_book->auditHead();
    m_book->addRun(plainRun(), risingMethod(), person); // after the last page
    const auto copy = backup.copy->take();
    EXPECT_EQ(copy->head().hash, then.hash);
    const BackupMade made = backup.finish(*copy, {});
    EXPECT_GT(steps, 50);
    EXPECT_EQ(made.head.hash, then.hash);
    EXPECT_THAT(filesOfBackups(), SizeIs(1));
    EXPECT_EQ(keyedIn(made.backup.path), keyedThen);
    const auto opened = Notebook::open(made.backup.path, Access::ReadOnly);
    EXPECT_EQ(opened->auditHead().hash, then.hash);
    EXPECT_EQ(opened->runs().size() + 1, m_book->runs().size());
    EXPECT_THAT(opened->verify().findings, IsEmpty());
    EXPECT_TRUE(m_book->keeping().hasChangedSinceBackup(root())) << "of the run that came after it";
}

TEST_F(CopyBesideTheWork, IsCheckedInAThreadWhileReadingsAreStored)
{
    keyOne();
    BackupUnderWay backup = m_book->keeping().beginBackup(root());
    const auto copy = allOf(backup);
    const int keyedThen = m_keyed;
    std::promise<void> checking;
    std::promise<void> keyed;
    std::optional<BackupMade> made;
    bool first = true;
    std::thread thread([&] {
        made = backup.finish(*copy, [&](qint64, qint64) {
            if (first) {
                first = false;
                checking.set_value();
                keyed.get_future().wait(); // in the middle of the check until the main thread has stored
            }
            return true;
        });
    });
    checking.get_future().wait();
    while (keyOne())
        ;
    EXPECT_THAT(filesOfBackups(), ::testing::ElementsAre(::testing::ResultOf(
                                      [](const QString &name) { return name.endsWith(u".part"_s); }, true)))
        << "it has no name before it is checked";
    keyed.set_value();
    thread.join();
    ASSERT_TRUE(made);
    EXPECT_EQ(keyedIn(made->backup.path), keyedThen);
    EXPECT_LT(keyedThen, m_keyed);
    EXPECT_THAT(Notebook::open(made->backup.path, Access::ReadOnly)->verify().findings, IsEmpty());
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(CopyBesideTheWork, SeveralThreadsCheckTheirOwnWhileTheNotebookIsWorkedWith)
{
    std::vector<std::unique_ptr<CopyToCheck>> copies;
    for (const QString &name : {u"one.plateau"_s, u"two.plateau"_s}) {
        const auto copy = m_book->keeping().beginCopy(file(name));
        while (!copy->advance(16))
            ;
        copies.push_back(copy->take());
    }
    std::vector<std::thread> threads;
    for (const auto &copy : copies)
        threads.emplace_back([&copy] {
            copy->check();
            copy->publish();
        });
    while (keyOne())
        ;
    for (std::thread &thread : threads)
        thread.join();
    EXPECT_EQ(keyedIn(file(u"one.plateau"_s)), 0);
    EXPECT_EQ(keyedIn(file(u"two.plateau"_s)), 0);
}

TEST_F(CopyBesideTheWork, WaitsWhereAnActIsUnderWay)
{
    m_book.reset();
    const Database database(file(), Access::ReadWrite);
    const QString part = file(u"part"_s);
    write(part, {});
    PageCopy copy(database, part);
    EXPECT_FALSE(copy.step(2));
    const qint64 done = copy.donePages();
    EXPECT_EQ(done, 2);
    {
        Transaction act(database, Transaction::Kind::Write);
        database.execute(u"UPDATE search_run SET title = title || '!'"_s);
        EXPECT_FALSE(copy.step(1000));
        EXPECT_EQ(copy.donePages(), done);
        // taken back, so that none of it is in the copy
    }
    EXPECT_TRUE(copy.step(1000));
    const Database made(part, Access::ReadOnly);
    EXPECT_EQ(made.single(u"SELECT count(*) FROM search_run WHERE title LIKE '%!'"_s).toInt(), 0);
    EXPECT_EQ(made.single(u"PRAGMA integrity_check"_s).toString(), u"ok"_s);
}

TEST_F(CopyBesideTheWork, ThatIsStoppedLeavesNothingAtWhateverLookItWas)
{
    { // among its pages
        const BackupUnderWay backup = m_book->keeping().beginBackup(root());
        EXPECT_FALSE(backup.copy->advance(5));
        EXPECT_THAT(filesOfBackups(), SizeIs(1));
    }
    EXPECT_THAT(filesOfBackups(), IsEmpty());
    int stopped = 0;
    for (int looks = 0;; ++looks) { // in its check
        SCOPED_TRACE(looks);
        BackupUnderWay backup = m_book->keeping().beginBackup(root());
        std::unique_ptr<CopyToCheck> copy = allOf(backup);
        int left = looks;
        bool done = true;
        try {
            backup.finish(*copy, [&left](qint64, qint64) { return left-- > 0; });
        } catch (const Stopped &) {
            done = false;
            ++stopped;
        }
        copy.reset();
        EXPECT_THAT(filesOfBackups(), SizeIs(done ? 1 : 0));
        if (done)
            break;
    }
    EXPECT_GE(stopped, 1);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(CopyBesideTheWork, WhoseTargetVanishesIsOneSentence)
{
    const auto expectSaid = [this](const Failure &failure) {
        EXPECT_EQ(failure.kind(), Failure::Kind::Storage);
        expectOneSentence(failure);
        EXPECT_TRUE(failure.sentence().startsWith(u"No backup was made in"_s)) << failure.what();
        EXPECT_FALSE(QFileInfo::exists(root()));
    };
    for (const int pages : {2, 100000}) { // in the middle of its pages, and after the last one
        SCOPED_TRACE(pages);
        BackupUnderWay backup = m_book->keeping().beginBackup(root());
        backup.copy->advance(pages);
        QDir(root()).removeRecursively();
        expectSaid(failureOf([&] {
            std::unique_ptr<CopyToCheck> copy = pages > 2 ? backup.copy->take() : allOf(backup);
            backup.finish(*copy, {});
        }));
    }
    // and between its check and its name
    BackupUnderWay backup = m_book->keeping().beginBackup(root());
    const auto copy = allOf(backup);
    copy->check();
    QDir(root()).removeRecursively();
    expectSaid(failureOf([&] { copy->publish(); }));
    keyOne();
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(CopyBesideTheWork, OnADiskThatIsFullIsOneSentenceAndLeavesTheNotebookAlone)
{
    int failed = 0;
    for (int number = 1; number < 2000; number += 11) {
        SCOPED_TRACE(number);
        storage::work();
        BackupUnderWay backup = m_book->keeping().beginBackup(root());
        storage::failAt(storage::Call::Write, number, ENOSPC, true);
        const auto copyAll = [&] {
            while (!backup.copy->advance(8))
                ;
        };
        bool done = true;
        try {
            copyAll();
        } catch (const Failure &failure) {
            done = false;
            expectOneSentence(failure);
            EXPECT_TRUE(failure.sentence().startsWith(u"No backup was made in"_s)) << failure.what();
            EXPECT_THAT(filesOfBackups(), IsEmpty());
        }
        storage::work();
        if (done)
            break;
        ++failed;
    }
    EXPECT_GT(failed, 2);
    keyOne();
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(CopyBesideTheWork, OfADamagedNotebookSaysThatItIsAndIsTakenAway)
{
    const int entries = m_book->auditHead().entries;
    m_book.reset();
    {
        RawFile raw(file());
        raw.behindTheTriggers([&] { raw.execute(u"UPDATE audit SET person = 'x' WHERE id = 5"_s); });
    }
    OpeningManner asALargeOne;
    asALargeOne.mostEntries = 5;
    asALargeOne.lastEntries = entries - 5;
    const auto database =
        openNotebookFile(file(), Access::ReadWrite, schemaSteps(), surroundings(), asALargeOne);
    const Failure failure = failureOf([&] { makeBackup(*database, root(), m_now); });
    EXPECT_EQ(failure.kind(), Failure::Kind::Damaged);
    expectOneSentence(failure);
    EXPECT_TRUE(failure.sentence().contains(u"audit entry 5"_s)) << failure.what();
    EXPECT_FALSE(failure.sentence().contains(u"the notebook itself is whole"_s));
    EXPECT_THAT(QDir(root()).entryList(QDir::Files), IsEmpty());
}

TEST_F(CopyBesideTheWork, TellsHowFarItHasCome)
{
    std::vector<qint64> told;
    {
        m_book.reset();
        const Database database(file(), Access::ReadOnly);
        backUp(database, file(u"copy.plateau"_s), [&told](qint64 done, qint64 of) {
            EXPECT_EQ(of, 1000);
            told.push_back(done);
            return true;
        });
    }
    EXPECT_TRUE(std::ranges::is_sorted(told));
    EXPECT_THAT(told, Each(Ge(0)));
    EXPECT_THAT(told, Each(Le(1000)));
    EXPECT_GE(told.back(), copiedPart);
}

TEST_F(CopyBesideTheWork, LeftByAKilledProgramIsTakenAwayAtTheNextStart)
{
    QDir().mkpath(folder());
    write(folder() + u"/notebook-20260101-000000Z.plateau.part"_s, "half");
    write(folder() + u"/notebook-20260101-000000Z.plateau.part-journal"_s, "half");
    write(folder() + u"/notes.part"_s, "mine");
    m_book->keeping().tidyBackups(root());
    EXPECT_THAT(filesOfBackups(), ::testing::ElementsAre(u"notes.part"_s));

    write(file(u"notebook-20260101-000000-schema3.plateau.part"_s), "half");
    write(file(u"other-20260101-000000-schema3.plateau.part"_s), "another notebook's");
    m_book.reset();
    m_book = reopen();
    EXPECT_FALSE(QFileInfo::exists(file(u"notebook-20260101-000000-schema3.plateau.part"_s)));
    EXPECT_TRUE(QFileInfo::exists(file(u"other-20260101-000000-schema3.plateau.part"_s)));
}

TEST_F(CopyBesideTheWork, RestoredOrArchivedIsStoppedWithoutALeftover)
{
    const BackupMade made = m_book->keeping().backUp(root());
    const QStringList before = filesInFolder();
    const auto stopsEverywhere = [&](const std::function<void(const Watch &)> &task) {
        for (int looks = 0;; ++looks) {
            SCOPED_TRACE(looks);
            int left = looks;
            try {
                task([&left](qint64, qint64) { return left-- > 0; });
                return looks;
            } catch (const Stopped &) {
                EXPECT_EQ(filesInFolder(), before);
            }
        }
    };
    EXPECT_GE(stopsEverywhere([&](const Watch &watch) {
                  restoreBackup(made.backup.path, file(u"restored.plateau"_s), watch);
              }),
              2);
    QFile::remove(file(u"restored.plateau"_s));
    EXPECT_GE(stopsEverywhere([&](const Watch &watch) {
                  m_book->keeping().archive(2026, file(u"archive.plateau"_s), watch);
              }),
              4);
}

TEST_F(CopyBesideTheWork, AStatementThatTakesLongIsStoppedInItsMiddle)
{
    m_book.reset();
    const Database database(file(), Access::ReadOnly);
    const QString endless =
        u"WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n) SELECT count(*) FROM n"_s;
    int looks = 0;
    {
        const StopsStatements stops(database, [&looks] { return ++looks < 5; });
        EXPECT_THROW(database.single(endless), Stopped);
        EXPECT_EQ(looks, 5);
        EXPECT_GT(database.single(u"SELECT count(*) FROM audit"_s).toInt(), 0) << "what tidies up runs";
    }
    EXPECT_GT(database.single(u"SELECT count(*) FROM audit"_s).toInt(), 0);
    EXPECT_EQ(looks, 5);
}

} // namespace plateau::test
