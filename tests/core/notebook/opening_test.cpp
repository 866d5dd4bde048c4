// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/opening.h"
#include "tests/core/notebook/fixture.h"

#include <QDir>
#include <QFile>
#include <QSqlQuery>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;
using Kind = Failure::Kind;

class OpeningTest : public NotebookTest
{
protected:
    void expectOpening(Kind kind, Access access = Access::ReadWrite)
    {
        const Failure failure = failureOf([&] { reopen(access); });
        EXPECT_EQ(failure.kind(), kind) << failure.what() << failure.details().toStdString();
        expectOneSentence(failure);
        EXPECT_TRUE(failure.sentence().contains("notebook.plateau"_L1)) << failure.what();
    }
};

TEST_F(OpeningTest, NewNotebookIsOneFileThatOnlyItsOwnerReads)
{
    create();
    EXPECT_THAT(filesInFolder(), ElementsAre(u"notebook.plateau"_s));
    EXPECT_EQ(QFile::permissions(file()) & ~(QFile::ReadUser | QFile::WriteUser),
              QFile::ReadOwner | QFile::WriteOwner);
    const QByteArray header = bytesOf(file()).left(100);
    EXPECT_EQ(header.left(16), QByteArray("SQLite format 3\0", 16));
    EXPECT_EQ(header.mid(68, 4), "Plat");
    EXPECT_EQ(header.mid(60, 4), QByteArray(3, '\0') + char(entriesOfANewOne()));
}

TEST_F(OpeningTest, NewNotebookIsEmptyAndSound)
{
    const auto notebook = create();
    EXPECT_THAT(notebook->runs(), IsEmpty());
    const Verification verification = notebook->verify();
    EXPECT_THAT(verification.findings, IsEmpty());
    EXPECT_TRUE(verification.sound());
    EXPECT_EQ(verification.auditEntries, entriesOfANewOne());
    EXPECT_EQ(verification.runsChecked, 0);
}

TEST_F(OpeningTest, EveryConnectionHasTheSafeSettings)
{
    create();
    for (const Access access : {Access::ReadWrite, Access::ReadOnly}) {
        const auto notebook = reopen(access);
        const auto setting = [](const QString &name) {
            QSqlQuery query(notebookConnection());
            return query.exec(u"PRAGMA "_s + name) && query.next() ? query.value(0).toString() : u"?"_s;
        };
        EXPECT_EQ(setting(u"journal_mode"_s), u"delete"_s);
        EXPECT_EQ(setting(u"synchronous"_s), u"3"_s);
        EXPECT_EQ(setting(u"foreign_keys"_s), u"1"_s);
        EXPECT_EQ(setting(u"trusted_schema"_s), u"0"_s);
        EXPECT_EQ(setting(u"recursive_triggers"_s), u"1"_s);
        EXPECT_EQ(setting(u"cell_size_check"_s), u"1"_s);
        EXPECT_EQ(setting(u"mmap_size"_s), u"0"_s);
        EXPECT_EQ(setting(u"busy_timeout"_s), u"2000"_s);
        EXPECT_EQ(setting(u"locking_mode"_s), access == Access::ReadWrite ? u"exclusive"_s : u"normal"_s);
    }
    EXPECT_FALSE(notebookConnection().isValid());
}

TEST_F(OpeningTest, MistypedNameCreatesNothing)
{
    expectOpening(Kind::NotFound);
    expectOpening(Kind::NotFound, Access::ReadOnly);
    EXPECT_THAT(filesInFolder(), IsEmpty());
}

TEST_F(OpeningTest, NameWithSpecialSignsIsTakenAsItIs)
{
    const QString names[] = {u"a b?mode=memory#x.plateau"_s, u"100%41.plateau"_s,
                             u"it's \"mine\".plateau"_s,     u"\u00FCber \U0001F9EA.plateau"_s,
                             u"line\nbreak.plateau"_s,       u"file:x"_s};
    for (const QString &name : names) {
        Notebook::create(file(name), surroundings())->addRun(plainRun(), risingMethod(), u"Ines"_s);
        EXPECT_TRUE(QFile::exists(file(name)));
        EXPECT_THAT(Notebook::open(file(name))->runs(), SizeIs(1));
    }
    EXPECT_THAT(filesInFolder(), SizeIs(std::size(names)));
}

TEST_F(OpeningTest, ExistingFileIsNotReplaced)
{
    write(file(), "precious");
    const Failure failure = failureOf([&] { create(); });
    EXPECT_EQ(failure.kind(), Kind::Refused);
    expectOneSentence(failure);
    EXPECT_EQ(bytesOf(file()), "precious");
    EXPECT_THAT(filesInFolder(), SizeIs(1));
}

TEST_F(OpeningTest, OpenOrCreateDoesEither)
{
    Notebook::openOrCreate(file())->addRun(plainRun(), risingMethod(), u"Ines"_s);
    EXPECT_THAT(Notebook::openOrCreate(file())->runs(), SizeIs(1));
}

TEST_F(OpeningTest, ForeignFileIsLeftAsItIs)
{
    for (const QByteArray &bytes :
         {QByteArray("not a database at all, but longer than a header would be ........."
                     "............................................................"),
          QByteArray(), QByteArray("x"), QByteArray(4096, '\0')}) {
        write(file(), bytes);
        expectOpening(Kind::NotANotebook);
        expectOpening(Kind::NotANotebook, Access::ReadOnly);
        EXPECT_EQ(bytesOf(file()), bytes);
    }
}

TEST_F(OpeningTest, DatabaseOfAnotherProgramIsLeftAsItIs)
{
    {
        RawFile raw(file());
        raw.execute(u"PRAGMA journal_mode=WAL"_s);
        raw.execute(u"CREATE TABLE theirs (x)"_s);
    }
    const QByteArray before = bytesOf(file());
    expectOpening(Kind::NotANotebook);
    EXPECT_EQ(bytesOf(file()), before);
}

TEST_F(OpeningTest, FolderAndDeviceAreNoNotebooks)
{
    ASSERT_TRUE(QDir(m_folder.path()).mkdir(u"notebook.plateau"_s));
    expectOpening(Kind::NotANotebook);
    EXPECT_EQ(failureOf([] { Notebook::open(u"/dev/null"_s); }).kind(), Kind::NotANotebook);
}

TEST_F(OpeningTest, NewerSchemaIsRefusedPolitely)
{
    create();
    RawFile(file()).execute(u"PRAGMA user_version=999"_s);
    const QByteArray before = bytesOf(file());
    expectOpening(Kind::NewerVersion);
    expectOpening(Kind::NewerVersion, Access::ReadOnly);
    EXPECT_EQ(bytesOf(file()), before);
}

TEST_F(OpeningTest, SchemaNumberZeroIsDamage)
{
    create();
    RawFile(file()).execute(u"PRAGMA user_version=0"_s);
    expectOpening(Kind::Damaged);
}

TEST_F(OpeningTest, SecondWriterIsKeptOut)
{
    const auto first = create();
    expectOpening(Kind::Locked);
    expectOpening(Kind::Locked, Access::ReadOnly);
    first->addRun(plainRun(), risingMethod(), u"Ines"_s); // the first works on
    EXPECT_THAT(first->runs(), SizeIs(1));
}

TEST_F(OpeningTest, AnotherProgramCannotWriteMeanwhile)
{
    const auto notebook = create();
    RawFile raw(file());
    raw.execute(u"PRAGMA busy_timeout=1"_s);
    EXPECT_FALSE(raw.tryExecute(u"CREATE TABLE theirs (x)"_s));
    EXPECT_FALSE(raw.tryExecute(u"SELECT * FROM run"_s));
}

TEST_F(OpeningTest, WriterThatIsGoneLeavesNoLock)
{
    create();
    reopen();
    EXPECT_THAT(reopen()->runs(), IsEmpty());
    EXPECT_THAT(filesInFolder(), ElementsAre(u"notebook.plateau"_s));
}

TEST_F(OpeningTest, ReadersShareAndStoreNothing)
{
    create()->addRun(plainRun(), risingMethod(), u"Ines"_s);
    const QByteArray before = bytesOf(file());
    {
        const auto one = reopen(Access::ReadOnly);
        const auto two = reopen(Access::ReadOnly);
        EXPECT_THAT(one->runs(), SizeIs(1));
        EXPECT_THAT(two->verify().findings, IsEmpty());
        const Failure failure = failureOf([&] { one->addRun(plainRun(), risingMethod(), u"Ines"_s); });
        EXPECT_EQ(failure.kind(), Kind::Storage);
        expectOneSentence(failure);
    }
    EXPECT_EQ(bytesOf(file()), before);
}

TEST_F(OpeningTest, DamagedNotebookIsReadButNotWritten)
{
    makeFilledFile();
    {
        RawFile raw(file());
        raw.behindTheTriggers([&] { raw.execute(u"UPDATE audit SET person = 'nobody' WHERE id = 3"_s); });
    }
    const Failure failure = failureOf([&] { reopen(); });
    EXPECT_EQ(failure.kind(), Kind::Damaged);
    expectOneSentence(failure);
    EXPECT_TRUE(failure.sentence().contains("audit entry 3"_L1)) << failure.what();
    const auto notebook = reopen(Access::ReadOnly);
    EXPECT_THAT(notebook->runs(), SizeIs(3));
    EXPECT_FALSE(notebook->verify().sound());
}

TEST_F(OpeningTest, ForeignTriggerIsNamed)
{
    create();
    RawFile(file()).execute(u"CREATE TRIGGER theirs AFTER INSERT ON reading BEGIN SELECT 1; END"_s);
    const Failure failure = failureOf([&] { reopen(); });
    EXPECT_EQ(failure.kind(), Kind::Damaged);
    EXPECT_TRUE(failure.sentence().contains("trigger theirs"_L1)) << failure.what();
}

TEST_F(OpeningTest, TruncatedNotebookIsDamaged)
{
    makeFilledFile();
    QFile::resize(file(), QFile(file()).size() / 2);
    expectOpening(Kind::Damaged);
}

TEST_F(OpeningTest, StaleJournalIsNotTakenForTheNewNotebooks)
{
    write(file() + u"-journal"_s, QByteArray(512, 'x'));
    const Failure failure = failureOf([&] { create(); });
    EXPECT_EQ(failure.kind(), Kind::Refused);
    EXPECT_TRUE(failure.sentence().contains("notebook.plateau-journal"_L1)) << failure.what();
    EXPECT_THAT(filesInFolder(), ElementsAre(u"notebook.plateau-journal"_s));
}

/// Half a step of another program on the file, as it stands on the disk when the power goes: called with it.
template <class Copy> void halfAStep(const QString &path, Copy copy)
{
    RawFile raw(path);
    raw.execute(u"PRAGMA cache_size=1"_s); // so that pages reach the file before the end of the step
    raw.behindTheTriggers([&] {
        raw.execute(u"UPDATE reading SET person = person || ' '"_s);
        raw.execute(u"UPDATE audit SET person = person || ' '"_s);
        copy();
    });
}

// SQLite rolls back whatever journal lies beside the file, and cannot tell whose it is.
TEST_F(OpeningTest, JournalOfAnotherNotebookIsNoticedAndTheBackupNamed)
{
    makeFilledFile();
    const QString other = file(u"other.plateau"_s);
    ASSERT_TRUE(QFile::rename(file(), other));
    create()->addRun(unreadRun(), risingMethod(), u"Ines Kaddour"_s);
    halfAStep(other, [&] { ASSERT_TRUE(QFile::copy(other + u"-journal"_s, file() + u"-journal"_s)); });
    for (int turn = 0; turn < 2; ++turn) {
        const Failure failure = failureOf([&] { reopen(); });
        EXPECT_EQ(failure.kind(), Kind::Damaged) << failure.what();
        EXPECT_TRUE(failure.sentence().contains("backup"_L1)) << failure.what();
    }
}

TEST_F(OpeningTest, JournalThatWasTakenAwayAfterACrashIsNoticedAndTheBackupNamed)
{
    makeFilledFile();
    const QString torn = file(u"torn.plateau"_s);
    halfAStep(file(), [&] { ASSERT_TRUE(QFile::copy(file(), torn)); });
    const Failure failure = failureOf([&] { Notebook::open(torn); });
    EXPECT_EQ(failure.kind(), Kind::Damaged) << failure.what();
    EXPECT_TRUE(failure.sentence().contains("backup"_L1)) << failure.what();
}

} // namespace plateau::test
