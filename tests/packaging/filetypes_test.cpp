// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/notebook.h"
#include "core/notebook/schema.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QMimeDatabase>
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

/// The database of file types as it is once ours are installed; read once in a process.
class FileTypes : public ::testing::Test
{
protected:
    static void SetUpTestSuite()
    {
        data = new QTemporaryDir;
        QDir(data->path()).mkpath(u"mime/packages"_s);
        // Beside those of the desktop, as in the folder that packages install to; and no others.
        for (const QString &types : {QStringLiteral(PLATEAU_SOURCE_DIR "/app/packaging/plateau-files.xml"),
                                     u"/usr/share/mime/packages/freedesktop.org.xml"_s})
            QFile::copy(types, data->filePath(u"mime/packages/"_s + QFileInfo(types).fileName()));
        isReady = QProcess::execute(u"update-mime-database"_s, {data->filePath(u"mime"_s)}) == 0;
        qputenv("XDG_DATA_HOME", data->path().toUtf8());
        qputenv("XDG_DATA_DIRS", data->path().toUtf8());
    }
    void SetUp() override
    {
        if (!isReady)
            GTEST_SKIP() << "update-mime-database (package shared-mime-info) is not installed";
    }
    static void TearDownTestSuite() { delete data; }

    QString write(const QString &name, const QByteArray &bytes) const
    {
        QFile file(folder.filePath(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        return file.fileName();
    }
    QString typeOf(const QString &path, QMimeDatabase::MatchMode mode) const
    {
        return QMimeDatabase().mimeTypeForFile(path, mode).name();
    }

    static QTemporaryDir *data;
    static bool isReady;
    QTemporaryDir folder;
};
QTemporaryDir *FileTypes::data = nullptr;
bool FileTypes::isReady = false;

TEST_F(FileTypes, RunAndMethodFilesAreKnownByTheirNames)
{
    EXPECT_EQ(typeOf(write(u"perry 2.1.plateau-run.json"_s, "{}"), QMimeDatabase::MatchExtension),
              u"application/x-plateau-run+json"_s);
    EXPECT_EQ(typeOf(write(u"acid.plateau-method.json"_s, "{}"), QMimeDatabase::MatchExtension),
              u"application/x-plateau-method+json"_s);
    EXPECT_EQ(typeOf(write(u"acid.json"_s, "{}"), QMimeDatabase::MatchExtension), u"application/json"_s)
        << "other JSON stays what it is";
}

TEST_F(FileTypes, AndByTheFormatThatTheirContractAsksFor)
{
    QFile run(QStringLiteral(PLATEAU_SOURCE_DIR "/sampledata/clean-run.json"));
    QFile method(QStringLiteral(PLATEAU_SOURCE_DIR "/resources/methods/total-sulphite.json"));
    ASSERT_TRUE(run.open(QIODevice::ReadOnly) && method.open(QIODevice::ReadOnly));
    EXPECT_EQ(typeOf(write(u"a"_s, run.readAll()), QMimeDatabase::MatchContent),
              u"application/x-plateau-run+json"_s);
    EXPECT_EQ(typeOf(write(u"b"_s, method.readAll()), QMimeDatabase::MatchContent),
              u"application/x-plateau-method+json"_s);
    const QMimeType type = QMimeDatabase().mimeTypeForName(u"application/x-plateau-run+json"_s);
    EXPECT_TRUE(type.inherits(u"application/json"_s)) << "any program that reads JSON can open it";
}

TEST_F(FileTypes, ANotebookIsKnownByTheMarkInItsHead)
{
    const QString path = folder.filePath(u"bench"_s);
    notebook::Notebook::openOrCreate(path);
    EXPECT_EQ(typeOf(path, QMimeDatabase::MatchContent), u"application/x-plateau-notebook"_s);
    QFile xml(QStringLiteral(PLATEAU_SOURCE_DIR "/app/packaging/plateau-files.xml"));
    ASSERT_TRUE(xml.open(QIODevice::ReadOnly));
    EXPECT_TRUE(xml.readAll().contains("0x" + QByteArray::number(notebook::applicationId, 16).toUpper()));
}

} // namespace
} // namespace plateau::test
