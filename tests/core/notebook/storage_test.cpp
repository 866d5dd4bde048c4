// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/fixture.h"

#include <QDir>
#include <QFile>
#include <QSqlQuery>

#include <csignal>
#include <cstdio>
#include <sys/mount.h>
#include <sys/resource.h>
#include <unistd.h>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::IsEmpty;
using ::testing::SizeIs;
using Kind = Failure::Kind;

namespace {

/// The process is nobody special while this lives: file modes mean something to it.
class WithoutPrivileges
{
public:
    WithoutPrivileges()
    {
        if (::geteuid() == 0)
            m_dropped = ::seteuid(65534) == 0;
    }
    ~WithoutPrivileges()
    {
        if (m_dropped) {
            EXPECT_EQ(::seteuid(0), 0);
        }
    }

private:
    bool m_dropped = false;
};

/// No file may grow over the limit while this lives.
class FileSizeLimit
{
public:
    explicit FileSizeLimit(rlim_t bytes)
    {
        m_handler = std::signal(SIGXFSZ, SIG_IGN);
        ::getrlimit(RLIMIT_FSIZE, &m_before);
        const rlimit limit{bytes, m_before.rlim_max};
        EXPECT_EQ(::setrlimit(RLIMIT_FSIZE, &limit), 0);
    }
    ~FileSizeLimit()
    {
        ::setrlimit(RLIMIT_FSIZE, &m_before);
        std::signal(SIGXFSZ, m_handler);
    }

private:
    rlimit m_before{};
    void (*m_handler)(int) = nullptr;
};

/// A file system of one megabyte in the folder while this lives; mounting needs the right to.
class SmallFileSystem
{
public:
    explicit SmallFileSystem(const QString &folder)
        : m_folder(QFile::encodeName(folder))
    {
        EXPECT_TRUE(QDir().mkpath(folder));
        m_mounted = ::mount("none", m_folder.constData(), "tmpfs", 0, "size=2m") == 0;
    }
    ~SmallFileSystem()
    {
        if (m_mounted) {
            EXPECT_EQ(::umount(m_folder.constData()), 0);
        }
    }
    bool isMounted() const { return m_mounted; }

private:
    QByteArray m_folder;
    bool m_mounted = false;
};

} // namespace

/// Where the storage fails: one sentence, and nothing stored of the step.
class StorageTest : public NotebookTest
{
protected:
    const QString person = u"Ines Kaddour"_s;

    void expectStorage(const std::function<void()> &action)
    {
        const Failure failure = failureOf(action);
        EXPECT_EQ(failure.kind(), Kind::Storage) << failure.what() << failure.details().toStdString();
        expectOneSentence(failure);
        EXPECT_FALSE(failure.details().isEmpty());
    }
};

TEST_F(StorageTest, MissingFolderIsNamed)
{
    const QString path = m_folder.filePath(u"nowhere/notebook.plateau"_s);
    const Failure failure = failureOf([&] { Notebook::create(path); });
    EXPECT_EQ(failure.kind(), Kind::Storage);
    expectOneSentence(failure);
    EXPECT_TRUE(failure.sentence().contains(path));
    EXPECT_THAT(filesInFolder(), IsEmpty());
}

TEST_F(StorageTest, ReadOnlyFileIsNotOpenedForWriting)
{
    create();
    ASSERT_TRUE(QFile::setPermissions(m_folder.path(), QFile::Permissions(0x5555)));
    ASSERT_TRUE(QFile::setPermissions(file(), QFile::Permissions(0x4444)));
    {
        const WithoutPrivileges nobody;
        expectStorage([&] { reopen(); });
        EXPECT_THAT(reopen(Access::ReadOnly)->runs(), IsEmpty());
    }
    QFile::setPermissions(m_folder.path(), QFile::Permissions(0x7777));
}

TEST_F(StorageTest, FolderThatMayNotBeEnteredIsSaidAndNoNotebookIsMissedThere)
{
    create();
    ASSERT_TRUE(QFile::setPermissions(m_folder.path(), QFile::Permissions(0)));
    {
        const WithoutPrivileges nobody;
        const Failure failure = failureOf([&] { Notebook::open(file()); });
        EXPECT_EQ(failure.kind(), Kind::Storage);
        expectOneSentence(failure);
        EXPECT_TRUE(failure.sentence().contains("may not be entered"_L1)) << failure.what();
    }
    QFile::setPermissions(m_folder.path(), QFile::Permissions(0x7777));
}

TEST_F(StorageTest, ReadOnlyFolderTakesNoNewNotebook)
{
    ASSERT_TRUE(QFile::setPermissions(m_folder.path(), QFile::Permissions(0x5555)));
    {
        const WithoutPrivileges nobody;
        expectStorage([&] { create(); });
    }
    QFile::setPermissions(m_folder.path(), QFile::Permissions(0x7777));
    EXPECT_THAT(filesInFolder(), IsEmpty());
}

TEST_F(StorageTest, FullNotebookStoresNothingAndGoesOnWhenThereIsRoom)
{
    const auto notebook = create();
    const RunId id = notebook->addRun(unreadRun(), risingMethod(), person);
    const auto setLimit = [](qint64 pages) {
        QSqlQuery query(notebookConnection());
        ASSERT_TRUE(query.exec(u"PRAGMA max_page_count=%1"_s.arg(pages)));
    };
    setLimit(1); // SQLite takes the present size, the smallest there can be
    const AuditHead before = notebook->auditHead();
    const QString longText(4000, u'x');
    bool full = false;
    for (int tube = 0; tube < 4 && !full; ++tube) {
        const StoredRun stored = notebook->load(id);
        try {
            notebook->addReading(id, tube, u"A1"_s, 0.1, longText, person);
        } catch (const Failure &failure) {
            full = true;
            EXPECT_EQ(failure.kind(), Kind::Storage);
            EXPECT_TRUE(failure.sentence().contains("no room"_L1)) << failure.what();
            expectOneSentence(failure);
            EXPECT_EQ(notebook->load(id).readings.size(), stored.readings.size());
        }
    }
    EXPECT_TRUE(full);
    EXPECT_THAT(notebook->verify().findings, IsEmpty());
    setLimit(100000);
    notebook->addReading(id, 3, u"A2"_s, 0.1, longText, person);
    EXPECT_GT(notebook->auditHead().entries, before.entries);
    EXPECT_THAT(notebook->verify().findings, IsEmpty());
}

TEST_F(StorageTest, DiskThatTakesNoMoreStoresNothing)
{
    RunId id;
    {
        const auto notebook = create();
        id = notebook->addRun(unreadRun(), risingMethod(), person);
        const FileSizeLimit limit(rlim_t(QFile(file()).size()));
        int stored = 0;
        const QString longText(4000, u'x');
        const Failure failure = failureOf([&] {
            for (int tube = 0; tube < 4; ++tube, ++stored)
                notebook->addReading(id, tube, u"A1"_s, 0.1, longText, person);
        });
        EXPECT_EQ(failure.kind(), Kind::Storage) << failure.what();
        expectOneSentence(failure);
        EXPECT_THAT(notebook->load(id).readings, SizeIs(stored));
    }
    const auto notebook = reopen();
    EXPECT_THAT(notebook->verify().findings, IsEmpty());
    notebook->addReading(id, 3, u"A2"_s, 0.1, {}, person);
}

TEST_F(StorageTest, DiskTooSmallForANewNotebookIsLeftClean)
{
    const FileSizeLimit limit(8192);
    expectStorage([&] { create(); });
    EXPECT_THAT(filesInFolder(), IsEmpty());
}

TEST_F(StorageTest, FullFileSystemStoresNothing)
{
    const SmallFileSystem small(m_folder.filePath(u"small"_s));
    if (!small.isMounted())
        GTEST_SKIP() << "no right to mount a small file system; the other tests limit sizes instead";
    const QString path = m_folder.filePath(u"small/notebook.plateau"_s);
    {
        const auto notebook = Notebook::create(path, surroundings());
        int stored = 0;
        const Failure failure = failureOf([&] {
            for (; stored < 1000; ++stored)
                notebook->addRun(fullRun(), risingMethod(), person);
        });
        EXPECT_EQ(failure.kind(), Kind::Storage) << failure.what();
        expectOneSentence(failure);
        EXPECT_GT(stored, 0);
        EXPECT_THAT(notebook->runs(), SizeIs(stored));
        EXPECT_THAT(notebook->verify().findings, IsEmpty());
    }
    EXPECT_THAT(Notebook::open(path)->verify().findings, IsEmpty());
}

TEST_F(StorageTest, NotebookThatIsRemovedOrMovedWhileItIsOpenConfirmsNothingMore)
{
    const auto notebook = create();
    const RunId id = notebook->addRun(unreadRun(), risingMethod(), person);
    const auto add = [&](int tube) { notebook->addReading(id, tube, u"A1"_s, 0.1, {}, person); };
    add(0); // the journal has been opened, so that SQLite itself does not look any more
    ASSERT_TRUE(QFile::rename(file(), file(u"elsewhere.plateau"_s)));
    expectStorage([&] { add(1); });
    EXPECT_THAT(notebook->load(id).readings, SizeIs(1));
    // Back where it was, work goes on.
    ASSERT_TRUE(QFile::rename(file(u"elsewhere.plateau"_s), file()));
    add(1);
    ASSERT_TRUE(QFile::remove(file()));
    expectStorage([&] { add(2); });
    EXPECT_THAT(notebook->load(id).readings, SizeIs(2));
}

TEST_F(StorageTest, NotebookThatIsReplacedWhileItIsOpenIsLeftToTheNewOne)
{
    const auto notebook = create();
    const RunId id = notebook->addRun(unreadRun(), risingMethod(), person);
    const QByteArray other = bytesOf(file());
    notebook->addReading(id, 0, u"A1"_s, 0.1, {}, person);
    // As a program does that synchronises folders: the new file is moved over the old one.
    write(file(u"new"_s), other);
    ASSERT_EQ(
        std::rename(QFile::encodeName(file(u"new"_s)).constData(), QFile::encodeName(file()).constData()), 0);
    expectStorage([&] { notebook->addReading(id, 1, u"A1"_s, 0.1, {}, person); });
    EXPECT_EQ(bytesOf(file()), other);
}

TEST_F(StorageTest, FailureHalfWayThroughAnActLeavesNothingOfIt)
{
    const auto notebook = create();
    const AuditHead before = notebook->auditHead();
    run::Run run = fullRun();
    run.lots.push_back({u"buffer"_s, u"lot "_s + QChar(0xD800), {}}); // the very last row of the plan
    EXPECT_EQ(failureOf([&] { notebook->addRun(run, risingMethod(), person); }).kind(), Kind::Refused);
    EXPECT_EQ(notebook->auditHead().hash, before.hash);
    QSqlQuery query(notebookConnection());
    for (const QString &table : {u"method"_s, u"run"_s, u"tube"_s, u"sample"_s, u"standard"_s}) {
        ASSERT_TRUE(query.exec(u"SELECT count(*) FROM "_s + table) && query.next());
        EXPECT_EQ(query.value(0).toInt(), 0) << table.toStdString();
        query.finish();
    }
}

} // namespace plateau::test
