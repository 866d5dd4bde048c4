// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/commands/program.h"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QRegularExpression>
#include <QTemporaryDir>

using namespace plateau::test;
using namespace Qt::StringLiterals;

namespace {

class Report : public ::testing::Test
{
protected:
    QString file(const QString &name) const { return m_folder.filePath(name); }
    QStringList files() const { return QDir(m_folder.path()).entryList(QDir::Files | QDir::Hidden); }
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
    static QByteArray bytesOf(const QString &path)
    {
        QFile in(path);
        EXPECT_TRUE(in.open(QIODevice::ReadOnly)) << path.toStdString();
        return in.readAll();
    }
    QTemporaryDir m_folder;
};

} // namespace

TEST_F(Report, OfARunFileIsWrittenWithoutAWord)
{
    const QString run = sample(u"clean-run.json"_s);
    const Outcome outcome =
        runProgram({u"report"_s, run, u"--pdf"_s, file(u"report.pdf"_s), u"--csv"_s, file(u"results.csv"_s),
                    u"--field"_s, u"customer=Threnholt Cider"_s, u"--field"_s, u"order=A-17"_s,
                    u"--decimal"_s, u"comma"_s, u"--letter"_s});
    EXPECT_EQ(outcome.status, 0) << outcome.error.toStdString();
    EXPECT_TRUE(outcome.out.isEmpty());
    EXPECT_TRUE(outcome.error.isEmpty()) << outcome.error.toStdString();
    const QString text = textOf(file(u"report.pdf"_s));
    for (const QString &part : {u"Threnholt Cider"_s, u"A-17"_s, u"DRAFT"_s, u"0,1480 0,0037 g/L 2,00"_s})
        EXPECT_TRUE(text.contains(part)) << part.toStdString();
    EXPECT_TRUE(bytesOf(file(u"results.csv"_s)).startsWith("report;revision;state;"));
}

TEST_F(Report, AsARunRecordHoldsTheCalculation)
{
    const Outcome outcome =
        runProgram({u"report"_s, sample(u"clean-run.json"_s), u"--record"_s, u"--pdf"_s,
                    file(u"record.pdf"_s), u"--decimal"_s, u"point"_s, u"--by"_s, u"M. Keel"_s});
    EXPECT_EQ(outcome.status, 0) << outcome.error.toStdString();
    const QString text = textOf(file(u"record.pdf"_s));
    for (const QString &part : {u"Run record"_s, u"by M. Keel"_s, u"1.387 − 1.375"_s, u"SHA-256 of the run"_s,
                                u"Plateau " PLATEAU_VERSION ""_s})
        EXPECT_TRUE(text.contains(part)) << part.toStdString();
}

TEST_F(Report, OfEverySampleRunHasAStatusThatSaysWhetherItIsReportable)
{
    const QStringList runs =
        QDir(QStringLiteral(PLATEAU_SOURCE_DIR "/sampledata")).entryList({u"*.json"_s}, QDir::Files);
    for (const QString &run : runs) {
        const int evaluated = runProgram({u"evaluate"_s, sample(run)}).status;
        EXPECT_EQ(runProgram({u"report"_s, sample(run), u"--csv"_s, file(u"r.csv"_s), u"--exact"_s}).status,
                  evaluated)
            << run.toStdString();
    }
}

TEST_F(Report, OfARunInANotebookSaysWhoDecidedAndTheHashThatVerifyConfirms)
{
    const QString notebook = file(u"cellar.plateau"_s);
    ASSERT_EQ(runProgram({u"sample"_s, notebook}).status, 0);
    const QByteArray before = bytesOf(notebook);
    const Outcome verified = runProgram({u"verify"_s, notebook});
    ASSERT_EQ(verified.status, 0) << verified.out.toStdString();
    bool sawAccepted = false;
    for (int run = 1; run <= 18; ++run) {
        const Outcome outcome =
            runProgram({u"report"_s, u"--notebook"_s, notebook, u"--run"_s, QString::number(run),
                        u"--record"_s, u"--pdf"_s, file(u"record.pdf"_s), u"--decimal"_s, u"point"_s});
        ASSERT_NE(outcome.status, 2) << run << outcome.error.toStdString();
        const QString text = textOf(file(u"record.pdf"_s));
        const QRegularExpression head(u"head ([0-9a-f]{64})"_s);
        const QString found = head.match(text).captured(1);
        EXPECT_FALSE(found.isEmpty());
        EXPECT_TRUE(verified.out.contains(found.toUtf8()));
        if (!text.contains(u"COPY"_s))
            continue;
        sawAccepted = true;
        EXPECT_EQ(outcome.status, 0);
        EXPECT_TRUE(text.contains(u"(the same)"_s)) << run;
        EXPECT_TRUE(text.contains(u"cellar.plateau, run %1"_s.arg(run))) << run;
    }
    EXPECT_TRUE(sawAccepted);
    EXPECT_EQ(bytesOf(notebook), before);
}

TEST_F(Report, AFieldThatWouldBeLostIsRefusedByName)
{
    const Outcome outcome =
        runProgram({u"report"_s, sample(u"clean-run.json"_s), u"--record"_s, u"--pdf"_s,
                    file(u"record.pdf"_s), u"--field"_s, u"deviations=none"_s});
    EXPECT_EQ(outcome.status, 2);
    EXPECT_TRUE(outcome.error.contains("--field is for the report of results")) << outcome.error.toStdString();
    EXPECT_FALSE(QFile::exists(file(u"record.pdf"_s)));
}

TEST_F(Report, WhatCannotBeUsedIsOneLineAndLeavesNoFile)
{
    const QString run = sample(u"clean-run.json"_s);
    const QString pdf = file(u"out.pdf"_s);
    const QString notebook = file(u"cellar.plateau"_s);
    ASSERT_EQ(runProgram({u"sample"_s, notebook}).status, 0);
    const QStringList wrong[] = {
        {u"report"_s},
        {u"report"_s, run},
        {u"report"_s, u"--pdf"_s, pdf},
        {u"report"_s, run, run, u"--pdf"_s, pdf},
        {u"report"_s, run, u"--pdf"_s},
        {u"report"_s, run, u"--pdf"_s, pdf, u"--pdf"_s, pdf},
        {u"report"_s, run, u"--pdf"_s, pdf, u"--csv"_s, pdf},
        {u"report"_s, run, u"--pdf"_s, pdf, u"--colour"_s, u"red"_s},
        {u"report"_s, run, u"--pdf"_s, pdf, u"--paper"_s, u"a5"_s},
        {u"report"_s, run, u"--pdf"_s, pdf, u"--decimal"_s, u"dot"_s},
        {u"report"_s, run, u"--pdf"_s, pdf, u"--field"_s, u"price=4"_s},
        {u"report"_s, run, u"--pdf"_s, pdf, u"--field"_s, u"customer"_s},
        {u"report"_s, run, u"--pdf"_s, pdf, u"--field"_s, u"received/Nobody=2026-03-01"_s},
        {u"report"_s, run, u"--pdf"_s, pdf, u"--exact"_s},
        {u"report"_s, run, u"--csv"_s, file(u"out.csv"_s), u"--record"_s},
        {u"report"_s, run, u"--pdf"_s, pdf, u"--record"_s, u"--field"_s, u"deviations=none"_s},
        {u"report"_s, run, u"--csv"_s, file(u"out.csv"_s), u"--field"_s, u"deviations=none"_s},
        {u"report"_s, u"--notebook"_s, notebook, u"--run"_s, u"1"_s, u"--record"_s, u"--field"_s,
         u"received/P-104=2026-03-01"_s, u"--pdf"_s, pdf, u"--csv"_s, file(u"out.csv"_s)},
        {u"report"_s, run, u"--pdf"_s, pdf, u"--run"_s, u"1"_s},
        {u"report"_s, u"--run"_s, u"1"_s, u"--pdf"_s, pdf},
        {u"report"_s, run, u"--revision"_s, u"1"_s, u"--pdf"_s, pdf},
        {u"report"_s, u"--notebook"_s, notebook, u"--run"_s, u"1"_s, u"--revision"_s, u"0"_s, u"--pdf"_s,
         pdf},
        {u"report"_s, u"--notebook"_s, notebook, u"--run"_s, u"1"_s, u"--revision"_s, u"9"_s, u"--pdf"_s,
         pdf},
        {u"report"_s, u"--notebook"_s, notebook, u"--run"_s, u"0"_s, u"--pdf"_s, pdf},
        {u"report"_s, u"--notebook"_s, notebook, u"--run"_s, u"one"_s, u"--pdf"_s, pdf},
        {u"report"_s, u"--notebook"_s, notebook, u"--run"_s, u"999"_s, u"--pdf"_s, pdf},
        {u"report"_s, u"--notebook"_s, notebook, u"--run"_s, u"1"_s, u"--with"_s, run, u"--pdf"_s, pdf},
        {u"report"_s, u"--notebook"_s, file(u"none.plateau"_s), u"--run"_s, u"1"_s, u"--pdf"_s, pdf},
        {u"report"_s, run, u"--with"_s, sample(u"solid.json"_s), u"--pdf"_s, pdf},
        {u"report"_s, file(u"absent.json"_s), u"--pdf"_s, pdf},
        {u"report"_s, run, u"--pdf"_s, file(u"none/out.pdf"_s)},
        {u"report"_s, run, u"--pdf"_s, m_folder.path()},
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
