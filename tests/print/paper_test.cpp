// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/paper.h"
#include "ui/print/pdf.h"
#include "ui/print/qrcode.h"

#include "tests/support/print.h"

#include <QDir>
#include <QFile>
#include <QLocale>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <csignal>
#include <sys/resource.h>

namespace plateau::ui {

using namespace Qt::StringLiterals;

namespace {

QByteArray bytesOf(const QString &path)
{
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

/// No file may grow beyond so many bytes while this lives, as on a disk that is full.
class FullDisk
{
public:
    explicit FullDisk(rlim_t bytes)
    {
        m_handler = std::signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &m_before);
        const rlimit limit{bytes, m_before.rlim_max};
        setrlimit(RLIMIT_FSIZE, &limit);
    }
    ~FullDisk()
    {
        setrlimit(RLIMIT_FSIZE, &m_before);
        std::signal(SIGXFSZ, m_handler);
    }
    FullDisk(const FullDisk &) = delete;
    FullDisk &operator=(const FullDisk &) = delete;

private:
    rlimit m_before{};
    void (*m_handler)(int) = nullptr;
};

} // namespace

TEST(Paper, IsLetterWhereLetterIsSold)
{
    EXPECT_EQ(usualPaper(QLocale(QLocale::English, QLocale::UnitedStates)), Paper::Letter);
    EXPECT_EQ(usualPaper(QLocale(QLocale::French, QLocale::Canada)), Paper::Letter);
    EXPECT_EQ(usualPaper(QLocale(QLocale::English, QLocale::UnitedKingdom)), Paper::A4);
    EXPECT_EQ(usualPaper(QLocale(QLocale::German, QLocale::Germany)), Paper::A4);
    EXPECT_EQ(usualPaper(QLocale::c()), Paper::A4);
    EXPECT_EQ(paperFromWord(u"A4"_s), Paper::A4);
    EXPECT_EQ(paperFromWord(u"letter"_s), Paper::Letter);
    EXPECT_EQ(paperFromWord(u"a5"_s), std::nullopt);
}

TEST(QrCodeOf, IsSmallForTheTextOfARunAndEmptyForNone)
{
    EXPECT_EQ(qrCodeOf(u"PLATEAU RUN 4096 2231 7785"_s).side, 25); // version 2 of the standard
    EXPECT_EQ(qrCodeOf({}).side, 0);
    EXPECT_EQ(qrCodeOf(QString(5000, u'x')).side, 0);
}

TEST(SavePdf, WritesTheWholeFile)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(u"a.pdf"_s);
    EXPECT_EQ(savePdf(path, "%PDF-first"), QString());
    EXPECT_EQ(savePdf(path, "%PDF-second"), QString());
    EXPECT_EQ(bytesOf(path), "%PDF-second");
}

TEST(SavePdf, LeavesWhatWasThereWhenTheDiskIsFull)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(u"a.pdf"_s);
    ASSERT_EQ(savePdf(path, "%PDF-first"), QString());
    QString fault;
    {
        const FullDisk full(4096);
        fault = savePdf(path, "%PDF-" + QByteArray(100000, 'x'));
    }
    EXPECT_TRUE(fault.contains(path)) << fault.toStdString();
    EXPECT_EQ(bytesOf(path), "%PDF-first");
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files), QStringList{u"a.pdf"_s});
}

TEST(SavePdf, SaysWhereItCannotWriteAndWritesNothingOfNothing)
{
    const QTemporaryDir folder;
    const QString missing = folder.filePath(u"none/a.pdf"_s);
    EXPECT_TRUE(savePdf(missing, "%PDF-").contains(missing));
    const QString path = folder.filePath(u"a.pdf"_s);
    EXPECT_TRUE(savePdf(path, {}).contains(path));
    EXPECT_FALSE(QFile::exists(path));
}

} // namespace plateau::ui
