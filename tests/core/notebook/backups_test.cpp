// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/backups.h"

#include "core/notebook/keeping.h"
#include "tests/core/notebook/faultystorage.h"
#include "tests/core/notebook/fixture.h"

#include <QDir>
#include <QFile>

#include <cerrno>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::IsEmpty;
using ::testing::SizeIs;

namespace {

QDateTime at(int year, int month, int day, int hour = 12)
{
    return QDateTime(QDate(year, month, day), QTime(hour, 0), Qt::UTC);
}

bool keeps(const std::vector<QDateTime> &made, const QDateTime &moment, const BackupRule &rule = {})
{
    const std::vector<QDateTime> gone = outlived(made, rule);
    return std::ranges::find(gone, moment) == gone.end();
}

} // namespace

TEST(BackupRule, KeepsTheNewestAndTheLastOfDaysMonthsAndYears)
{
    std::vector<QDateTime> made;
    for (QDate day(2023, 1, 1); day <= QDate(2026, 11, 26); day = day.addDays(1)) {
        made.push_back(QDateTime(day, QTime(9, 0), Qt::UTC));
        made.push_back(QDateTime(day, QTime(17, 0), Qt::UTC));
    }
    // The newest ten are those of five days.
    EXPECT_TRUE(keeps(made, at(2026, 11, 22, 9)));
    EXPECT_FALSE(keeps(made, at(2026, 11, 21, 9)));
    EXPECT_TRUE(keeps(made, at(2026, 11, 21, 17)));
    // thirty days with the newest
    EXPECT_TRUE(keeps(made, at(2026, 10, 28, 17)));
    EXPECT_FALSE(keeps(made, at(2026, 10, 27, 17)));
    // twenty-four months with the newest
    EXPECT_TRUE(keeps(made, at(2024, 12, 31, 17)));
    EXPECT_FALSE(keeps(made, at(2024, 11, 30, 17)));
    // every year
    EXPECT_TRUE(keeps(made, at(2023, 12, 31, 17)));
    EXPECT_FALSE(keeps(made, at(2023, 12, 31, 9)));
    // days 30, the months before the newest two of those days' months: 22, 2023; and five more of the newest
    EXPECT_THAT(outlived(made), SizeIs(made.size() - (5 + 30 + 22 + 1)));
}

TEST(BackupRule, CountsBackupsSoThatAWrongClockTakesNoneAway)
{
    std::vector<QDateTime> made;
    for (int day = 1; day <= 20; ++day)
        made.push_back(at(2026, 3, day));
    made.push_back(at(2036, 3, 1));
    EXPECT_THAT(outlived(made), IsEmpty());
    EXPECT_TRUE(backupRuleText().contains(u"newest 10"_s));
}

class Backups : public OpenNotebookTest
{
protected:
    void SetUp() override
    {
        OpenNotebookTest::SetUp();
        fill(*m_book);
    }
    QString root() const { return m_folder.filePath(u"backups"_s); }
    QString folder() const { return m_book->keeping().backupFolder(root()); }
    QStringList files() const
    {
        return QDir(folder()).entryList(QDir::Files | QDir::Hidden | QDir::NoDotAndDotDot);
    }
};

TEST_F(Backups, AreDatedNotebooksWithTheSameHead)
{
    EXPECT_TRUE(m_book->keeping().hasChangedSinceBackup(root()));
    const BackupMade made = m_book->keeping().backUp(root());
    EXPECT_EQ(made.head.hash, m_book->auditHead().hash);
    EXPECT_EQ(made.removed, 0);
    EXPECT_FALSE(m_book->keeping().hasChangedSinceBackup(root()));
    ASSERT_THAT(backupsIn(folder()), SizeIs(1));
    EXPECT_EQ(backupsIn(folder()).front().path, made.backup.path);
    EXPECT_TRUE(QFileInfo(made.backup.path).fileName().startsWith(u"notebook-2026"_s));
    EXPECT_EQ(QFile::permissions(made.backup.path) & (QFileDevice::ReadGroup | QFileDevice::ReadOther),
              QFileDevice::Permissions());
    const auto copy = Notebook::open(made.backup.path, Access::ReadOnly, surroundings());
    EXPECT_THAT(copy->verify().findings, IsEmpty());
    EXPECT_EQ(copy->runs().size(), m_book->runs().size());

    m_book->addRun(plainRun(), risingMethod(), person);
    EXPECT_TRUE(m_book->keeping().hasChangedSinceBackup(root()));
}

TEST_F(Backups, OfOneSecondHaveTwoNamesAndWhatAKilledProgramLeftGoes)
{
    m_book->keeping().backUp(root());
    write(folder() + u"/notebook-20260101-000000Z.plateau.part"_s, "half");
    write(folder() + u"/notes.txt"_s, "mine");
    m_now = m_now.addSecs(-120); // the clock was set back
    m_book->keeping().backUp(root());
    EXPECT_THAT(backupsIn(folder()), SizeIs(2));
    EXPECT_TRUE(files().contains(u"notes.txt"_s));
    EXPECT_FALSE(files().contains(u"notebook-20260101-000000Z.plateau.part"_s));
}

TEST_F(Backups, GoByTheRuleButNeverTheOneJustMade)
{
    QDir().mkpath(folder());
    for (int hour = 0; hour < 20; ++hour)
        write(folder() + u"/notebook-20250101-%1"_s.arg(hour, 2, 10, QChar(u'0')) + u"0000Z.plateau"_s, "old");
    const BackupMade made = m_book->keeping().backUp(root());
    // nine of the others are among the newest ten; the last of their day, month and year is one of them
    EXPECT_EQ(made.removed, 11);
    EXPECT_THAT(backupsIn(folder()), SizeIs(10));
    EXPECT_TRUE(QFileInfo::exists(made.backup.path));
}

TEST_F(Backups, ToATargetThatFailsAreOneSentenceAndLeaveTheNotebookAlone)
{
    write(root(), "a file, no folder");
    const AuditHead before = m_book->auditHead();
    const Failure failure = failureOf([&] { m_book->keeping().backUp(root()); });
    expectOneSentence(failure);
    EXPECT_TRUE(failure.sentence().contains(u"the notebook itself is whole"_s));
    EXPECT_EQ(m_book->auditHead().hash, before.hash);
    m_book->addRun(plainRun(), risingMethod(), person);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(Backups, AreThereAsAWholeOrNotAtAllWhicheverWriteFails)
{
    int failed = 0;
    for (const storage::Call call : {storage::Call::Write, storage::Call::Sync}) {
        for (int number = 1; number < 400; ++number) {
            SCOPED_TRACE(number);
            QDir(root()).removeRecursively();
            storage::failAt(call, number, ENOSPC, true);
            bool done = true;
            try {
                m_book->keeping().backUp(root());
            } catch (const Failure &failure) {
                expectOneSentence(failure);
                done = false;
            }
            const bool reached = storage::count(call) >= number;
            storage::work();
            EXPECT_THAT(files(), SizeIs(done ? 1 : 0));
            failed += done ? 0 : 1;
            if (!reached)
                break;
            number += 6; // a page is as good as its neighbour
        }
    }
    EXPECT_GT(failed, 3);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(Backups, AreRestoredUnderANewNameAndStay)
{
    const BackupMade made = m_book->keeping().backUp(root());
    const QString target = file(u"restored.plateau"_s);
    restoreBackup(made.backup.path, target);
    EXPECT_TRUE(QFileInfo::exists(made.backup.path));
    const auto restored = Notebook::open(target, Access::ReadWrite, surroundings());
    EXPECT_EQ(restored->auditHead().hash, m_book->auditHead().hash);
    EXPECT_THAT(restored->verify().findings, IsEmpty());
    restored->addRun(plainRun(), risingMethod(), person);

    const Failure taken = failureOf([&] { restoreBackup(made.backup.path, target); });
    EXPECT_EQ(taken.kind(), Failure::Kind::Refused);
    expectOneSentence(taken);
}

TEST_F(Backups, ThatAreDamagedForeignOrNewerAreNotRestored)
{
    const BackupMade made = m_book->keeping().backUp(root());
    const QByteArray whole = bytesOf(made.backup.path);
    const QString target = file(u"restored.plateau"_s);
    const auto refused = [&](const QString &path) {
        const Failure failure = failureOf([&] { restoreBackup(path, target); });
        expectOneSentence(failure);
        EXPECT_FALSE(QFileInfo::exists(target));
        EXPECT_FALSE(QFileInfo::exists(target + u".part"_s));
        return failure.kind();
    };
    const QString other = file(u"other.plateau"_s);
    write(other, whole);
    {
        RawFile raw(other);
        raw.behindTheTriggers([&] { raw.execute(u"UPDATE audit SET person = 'Somebody' WHERE id = 7"_s); });
    }
    EXPECT_EQ(refused(other), Failure::Kind::Damaged);
    write(other, whole);
    RawFile(other).execute(u"PRAGMA user_version = 1000"_s);
    EXPECT_EQ(refused(other), Failure::Kind::NewerVersion);
    write(other, "no notebook");
    EXPECT_EQ(refused(other), Failure::Kind::NotANotebook);
}

TEST_F(Backups, OfTwoNotebooksOfOneNameDoNotMix)
{
    const QString first = m_book->keeping().backupFolder(root());
    m_book.reset();
    QFile::remove(file());
    m_book = create();
    EXPECT_NE(m_book->keeping().backupFolder(root()), first);
}

} // namespace plateau::test
