// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/notebook.h"
#include "tests/commands/program.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

using namespace plateau::test;
using namespace Qt::StringLiterals;

namespace {

class Print : public ::testing::Test
{
protected:
    QString file(const QString &name) const { return m_folder.filePath(name); }
    QStringList files() const { return QDir(m_folder.path()).entryList(QDir::Files | QDir::Hidden); }
    QString write(const QString &name, const QByteArray &bytes) const
    {
        QFile out(file(name));
        EXPECT_TRUE(out.open(QIODevice::WriteOnly));
        EXPECT_EQ(out.write(bytes), bytes.size());
        return out.fileName();
    }
    static QString sample(const QString &name)
    {
        return QStringLiteral(PLATEAU_SOURCE_DIR "/sampledata/") + name;
    }
    static QString textOf(const QString &pdf)
    {
        QProcess reader;
        reader.start(u"pdftotext"_s, {u"-raw"_s, pdf, u"-"_s});
        EXPECT_TRUE(reader.waitForFinished(60000));
        return QString::fromUtf8(reader.readAllStandardOutput()).simplified();
    }
    QTemporaryDir m_folder;
};

} // namespace

TEST_F(Print, AWorksheetIsWrittenWithoutADisplayAndWithoutAWord)
{
    const Outcome outcome = runProgram({u"worksheet"_s, sample(u"clean-run.json"_s), u"--pdf"_s,
                                        file(u"sheet.pdf"_s), u"--by"_s, u"M. Keel"_s});
    EXPECT_EQ(outcome.status, 0);
    EXPECT_TRUE(outcome.out.isEmpty());
    EXPECT_TRUE(outcome.error.isEmpty()) << outcome.error.toStdString();
    const QString text = textOf(file(u"sheet.pdf"_s));
    for (const QString &part :
         {u"Cider and perry tanks, Monday morning"_s, u"Ice cider, cask 12"_s, u"10 → 20 mL"_s, u"N-1147"_s,
          u"use by 2026-04-15"_s, u"M. Keel"_s, u"page 1 of 1"_s})
        EXPECT_TRUE(text.contains(part)) << part.toStdString();
}

TEST_F(Print, AWorksheetOfANotebookNamesTheLotThatComesNext)
{
    // 1 mL of buffer a tube.
    const QString run =
        write(u"run.json"_s, R"({"format": "plateau-run/1", "title": "Plain", "method": "l-malic-acid",
        "samples": [{"id": "A", "form": "liquid"}], "lots": [{"component": "buffer", "lot": "B-0226"}],
        "tubes": [{"role": "blank"}, {"role": "blank"}, {"role": "sample", "sample": "A"}, {"role": "sample", "sample": "A"}]})");
    {
        const auto book = plateau::notebook::Notebook::create(file(u"book.plateau"_s));
        book->lots().receive({u"Buffer"_s, u"B-0226"_s, {}, {}}, 2.5, u"M. Keel"_s);
        book->lots().receive({u"Buffer"_s, u"B-0301"_s, {}, {}}, 100, u"M. Keel"_s);
    }
    const Outcome outcome = runProgram(
        {u"worksheet"_s, run, u"--pdf"_s, file(u"sheet.pdf"_s), u"--notebook"_s, file(u"book.plateau"_s)});
    EXPECT_EQ(outcome.status, 0) << outcome.error.toStdString();
    const QString text = textOf(file(u"sheet.pdf"_s));
    EXPECT_TRUE(text.contains(u"Tubes 1 to 2: lot B-0226; from tube 3 on: lot B-0301"_s))
        << text.toStdString();
}

TEST_F(Print, EverySampleRunHasAWorksheet)
{
    const QStringList runs =
        QDir(QStringLiteral(PLATEAU_SOURCE_DIR "/sampledata")).entryList({u"*.json"_s}, QDir::Files);
    for (const QString &run : runs) {
        EXPECT_EQ(runProgram({u"worksheet"_s, sample(run), u"--pdf"_s, file(u"sheet.pdf"_s)}).status, 0)
            << run.toStdString();
        EXPECT_TRUE(textOf(file(u"sheet.pdf"_s)).contains(u"page 1 of 1"_s)) << run.toStdString();
    }
}

TEST_F(Print, LabelsSayWhatStandsInWhichFlask)
{
    const Outcome outcome = runProgram(
        {u"labels"_s, sample(u"clean-run.json"_s), u"--pdf"_s, file(u"labels.pdf"_s), u"--first"_s, u"3"_s});
    EXPECT_EQ(outcome.status, 0) << outcome.error.toStdString();
    EXPECT_TRUE(outcome.error.isEmpty()) << outcome.error.toStdString();
    const QString text = textOf(file(u"labels.pdf"_s));
    for (const QString &part :
         {u"SO2 working standard"_s, u"0.2 g/L"_s, u"made 2026-03-02 08:10"_s, u"use by 2026-03-02 16:12"_s,
          u"Ice cider, cask 12"_s, u"1 in 2: 10 → 20 mL"_s})
        EXPECT_TRUE(text.contains(part)) << part.toStdString();
    EXPECT_EQ(runProgram({u"labels"_s, sample(u"clean-run.json"_s), u"--pdf"_s, file(u"own.pdf"_s),
                          u"--sheet"_s, u"2x4,99x68,5x12.5,2x0"_s})
                  .status,
              0);
}

TEST_F(Print, WhatCannotBeUsedIsOneLineAndLeavesNoFile)
{
    const QString run = sample(u"clean-run.json"_s);
    const QString pdf = file(u"out.pdf"_s);
    const QStringList wrong[] = {
        {u"worksheet"_s},
        {u"worksheet"_s, run},
        {u"worksheet"_s, run, run, u"--pdf"_s, pdf},
        {u"worksheet"_s, run, u"--pdf"_s},
        {u"worksheet"_s, run, u"--pdf"_s, pdf, u"--pdf"_s, pdf},
        {u"worksheet"_s, run, u"--pdf"_s, pdf, u"--colour"_s, u"red"_s},
        {u"worksheet"_s, run, u"--pdf"_s, pdf, u"--paper"_s, u"a5"_s},
        {u"worksheet"_s, run, u"--pdf"_s, pdf, u"--first"_s, u"1"_s},
        {u"worksheet"_s, file(u"absent.json"_s), u"--pdf"_s, pdf},
        {u"worksheet"_s, write(u"empty.json"_s, ""), u"--pdf"_s, pdf},
        {u"worksheet"_s, run, u"--pdf"_s, file(u"none/out.pdf"_s)},
        {u"worksheet"_s, run, u"--pdf"_s, m_folder.path()},
        {u"worksheet"_s, run, u"--pdf"_s, pdf, u"--notebook"_s, file(u"absent.plateau"_s)},
        {u"labels"_s, run},
        {u"labels"_s, run, u"--pdf"_s, pdf, u"--first"_s, u"0"_s},
        {u"labels"_s, run, u"--pdf"_s, pdf, u"--first"_s, u"66"_s},
        {u"labels"_s, run, u"--pdf"_s, pdf, u"--first"_s, u"two"_s},
        {u"labels"_s, run, u"--pdf"_s, pdf, u"--sheet"_s, u"5x13"_s},
        {u"labels"_s, run, u"--pdf"_s, pdf, u"--sheet"_s, u"5x13,5x5,0x0"_s},
        {u"labels"_s, run, u"--pdf"_s, pdf, u"--sheet"_s, u"9x13,38.1x21.2,4x10"_s},
        {u"labels"_s, run, u"--pdf"_s, pdf, u"--sheet"_s, u"1.5x13,38.1x21.2,4x10"_s},
    };
    const QStringList before = files();
    for (const QStringList &words : wrong) {
        const Outcome outcome = runProgram(words);
        EXPECT_EQ(outcome.status, 2) << words.join(u' ').toStdString();
        EXPECT_EQ(outcome.errorLines().size(), 1) << outcome.error.toStdString();
        EXPECT_TRUE(outcome.out.isEmpty());
    }
    EXPECT_EQ(files(), before);
}

TEST_F(Print, ARunWithNothingToLabelSaysSo)
{
    const QString run =
        write(u"plain.json"_s, R"({"format": "plateau-run/1", "title": "Plain", "method": "l-malic-acid",
        "samples": [{"id": "A", "form": "liquid"}], "tubes": [{"role": "blank"}, {"role": "sample", "sample": "A"}]})");
    const Outcome outcome = runProgram({u"labels"_s, run, u"--pdf"_s, file(u"out.pdf"_s)});
    EXPECT_EQ(outcome.status, 2);
    EXPECT_TRUE(outcome.error.contains("nothing to label")) << outcome.error.toStdString();
    EXPECT_FALSE(QFile::exists(file(u"out.pdf"_s)));
}

TEST_F(Print, WhatWasThereStaysWhenTheInputIsWrong)
{
    const QString pdf = write(u"sheet.pdf"_s, "an older sheet");
    EXPECT_EQ(runProgram({u"worksheet"_s, write(u"bad.json"_s, "{"), u"--pdf"_s, pdf}).status, 2);
    QFile kept(pdf);
    ASSERT_TRUE(kept.open(QIODevice::ReadOnly));
    EXPECT_EQ(kept.readAll(), "an older sheet");
}
