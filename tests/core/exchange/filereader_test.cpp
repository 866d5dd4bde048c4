// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/readers.h"

#include "tests/support/print.h"
#include "tests/support/problems.h"

#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <sys/stat.h>
#include <unistd.h>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using test::listed;
using test::names;

namespace {

class FileReader : public testing::Test
{
protected:
    QString path(const QString &name) const { return m_folder.filePath(name); }

    void write(const QString &name, const QByteArray &bytes) const
    {
        QFile file(path(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        ASSERT_EQ(file.write(bytes), bytes.size());
    }

private:
    QTemporaryDir m_folder;
};

} // namespace

TEST_F(FileReader, BytesArriveUnchanged)
{
    write(u"a \u00FC.json"_s, QByteArray("{\0}\r\n", 5));
    EXPECT_EQ(readFile(path(u"a \u00FC.json"_s)).value, QByteArray("{\0}\r\n", 5));
}

TEST_F(FileReader, LinksToRegularFilesAreFollowed)
{
    write(u"a"_s, "{}");
    ASSERT_TRUE(QFile::link(path(u"a"_s), path(u"b"_s)));
    EXPECT_EQ(readFile(path(u"b"_s)).value, "{}");
}

TEST_F(FileReader, SixteenMebibytesAreReadAndOneByteMoreIsNot)
{
    write(u"most"_s, QByteArray(maxFileSize_bytes, ' '));
    EXPECT_EQ(readFile(path(u"most"_s)).value->size(), maxFileSize_bytes);
    write(u"more"_s, QByteArray(maxFileSize_bytes + 1, ' '));
    const auto read = readFile(path(u"more"_s));
    EXPECT_FALSE(read.value);
    EXPECT_TRUE(names(read.problems, "", "larger than 16 MiB")) << listed(read.problems);
}

TEST_F(FileReader, WhatIsNoRegularFileIsRefusedWithoutWaiting)
{
    ASSERT_EQ(::mkfifo(QFile::encodeName(path(u"pipe"_s)).constData(), 0600), 0);
    ASSERT_TRUE(QFile::link(path(u"nowhere"_s), path(u"dangling"_s)));
    struct Row {
        QString path;
        const char *fragment;
    };
    const Row rows[] = {
        {path(u"absent"_s), "no such file"},
        {path(u"dangling"_s), "no such file"},
        {path(u"."_s), "a directory"},
        {path(u"pipe"_s), "a pipe, a socket or a device"},
        {u"/dev/zero"_s, "a pipe, a socket or a device"},
        {u"/dev/null"_s, "a pipe, a socket or a device"},
        {u":/methods/absent.json"_s, "no such file"},
        {QString(), "names no file"},
        {u"a"_s + QChar(0) + u"b"_s, "names no file"},
    };
    for (const Row &row : rows) {
        const auto read = readFile(row.path);
        EXPECT_FALSE(read.value) << row.path.toStdString();
        EXPECT_TRUE(names(read.problems, "", row.fragment))
            << row.path.toStdString() << listed(read.problems);
    }
}

TEST_F(FileReader, AFileWithoutPermissionSaysSo)
{
    write(u"secret"_s, "{}");
    QFile::setPermissions(path(u"secret"_s), {});
    // The superuser may read everything, so the test steps down for a moment.
    const uid_t before = ::geteuid();
    constexpr uid_t nobody = 65534;
    ASSERT_TRUE(before != 0 || ::seteuid(nobody) == 0);
    const auto read = readFile(path(u"secret"_s));
    ASSERT_TRUE(before != 0 || ::seteuid(before) == 0);
    EXPECT_FALSE(read.value);
    EXPECT_TRUE(names(read.problems, "", "permissions")) << listed(read.problems);
}

TEST(ProblemLine, NamesFilePlaceAndSentence)
{
    EXPECT_EQ(problemLine(u"run.json"_s,
                          assay::error(u"/tubes/3/readings/A1"_s, u"expected a number, found text"_s)),
              u"run.json: /tubes/3/readings/A1: expected a number, found text"_s);
    EXPECT_EQ(problemLine(u"run.json"_s, assay::error({}, u"line 3, column 12: not valid JSON"_s)),
              u"run.json: line 3, column 12: not valid JSON"_s);
    EXPECT_EQ(problemLine(u"run.json"_s, assay::warning(u"/samples/1"_s, u"no tube holds it"_s)),
              u"run.json: /samples/1: warning: no tube holds it"_s);
}

TEST(ProblemLine, NoNameMakesASecondLine)
{
    const QString line =
        problemLine(u"a\nb.json"_s, assay::error(u"/x\u2028y/"_s + QString(1000, u'k'), u"wrong"_s));
    EXPECT_FALSE(line.contains(u'\n'));
    EXPECT_FALSE(line.contains(u'\u2028'));
    EXPECT_TRUE(line.startsWith(u"a<U+000A>b.json: /x<U+2028>y/kkk"_s)) << line.toStdString();
    EXPECT_LT(line.size(), 400);
    EXPECT_TRUE(line.endsWith(u": wrong"_s));
}

} // namespace plateau::exchange
