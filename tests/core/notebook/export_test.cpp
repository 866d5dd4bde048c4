// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/exportfolder.h"

#include "core/exchange/readers.h"
#include "core/notebook/importfolder.h"
#include "core/notebook/keeping.h"
#include "tests/core/notebook/faultystorage.h"
#include "tests/core/notebook/fixture.h"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <cerrno>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::IsEmpty;

namespace {

/// Every kind of row there is.
class Export : public OpenNotebookTest
{
protected:
    void SetUp() override
    {
        OpenNotebookTest::SetUp();
        fill(*m_book);
        fillDerived(*m_book);
        fillBench(*m_book);
        fillReview(*m_book);
        m_head = m_book->auditHead();
    }
    void exportIt() { m_book->keeping().exportTo(m_target); }
    QString table(const QString &name) const { return u"%1/tables/%2"_s.arg(m_target, name); }
    QJsonObject json(const QString &path) const
    {
        return QJsonDocument::fromJson(bytesOf(m_target + u'/' + path)).object();
    }
    /// What stands in the file by table: every row with the kind of each value.
    std::map<QString, std::vector<QVariantList>> rowsOf(const QString &path) const
    {
        RawFile raw(path);
        std::map<QString, std::vector<QVariantList>> all;
        for (const QVariantList &name :
             raw.rows(u"SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' "
                      "AND name NOT LIKE 'search_text%'"_s)) {
            const QString table = name[0].toString();
            QStringList columns;
            for (const QVariantList &column :
                 raw.rows(u"SELECT name FROM pragma_table_info('%1')"_s.arg(table)))
                columns << u"typeof(%1), quote(%1)"_s.arg(column[0].toString());
            all[table] = raw.rows(u"SELECT %1 FROM %2"_s.arg(columns.join(u", "_s), table));
        }
        return all;
    }
    Failure refusedImport()
    {
        const Failure failure = failureOf([&] { importNotebook(m_target, m_again); });
        expectOneSentence(failure);
        EXPECT_FALSE(QFile::exists(m_again));
        EXPECT_FALSE(QFile::exists(m_again + u".part"_s));
        return failure;
    }
    void change(const QString &path, const QByteArray &from, const QByteArray &to)
    {
        QByteArray bytes = bytesOf(path);
        ASSERT_TRUE(bytes.contains(from)) << path.toStdString();
        write(path, bytes.replace(bytes.indexOf(from), from.size(), to));
    }

    AuditHead m_head;
    const QString m_target = m_folder.filePath(QStringLiteral("export"));
    const QString m_again = m_folder.filePath(QStringLiteral("again.plateau"));
};

} // namespace

TEST_F(Export, ImportedGivesTheSameNotebookRowByRow)
{
    exportIt();
    importNotebook(m_target, m_again);
    m_book.reset();
    const auto before = rowsOf(file());
    const auto after = rowsOf(m_again);
    ASSERT_EQ(before.size(), after.size());
    for (const auto &[table, rows] : before) {
        EXPECT_EQ(rows, after.at(table)) << table.toStdString();
    }
    EXPECT_GT(before.at(u"audit_record"_s).size(), 100U);
    const auto notebook = Notebook::open(m_again, Access::ReadWrite, surroundings());
    EXPECT_EQ(notebook->auditHead().hash, m_head.hash);
    EXPECT_EQ(notebook->auditHead().entries, m_head.entries);
    EXPECT_THAT(notebook->verify().findings, IsEmpty());
    notebook->addRun(plainRun(), risingMethod(), theAnalyst.name); // and goes on
}

TEST_F(Export, ImportedAndExportedAgainGivesTheSameTables)
{
    exportIt();
    importNotebook(m_target, m_again);
    const QString second = m_folder.filePath(u"second"_s);
    Notebook::open(m_again, Access::ReadOnly, surroundings())->keeping().exportTo(second);
    const QStringList names = QDir(m_target + u"/tables"_s).entryList(QDir::Files);
    EXPECT_GT(names.size(), 80);
    for (const QString &name : names)
        EXPECT_EQ(bytesOf(table(name)), bytesOf(u"%1/tables/%2"_s.arg(second, name))) << name.toStdString();
}

TEST_F(Export, SaysHowItIsReadAndWhatThereIs)
{
    exportIt();
    const QString readme = QString::fromUtf8(bytesOf(m_target + u"/README.txt"_s));
    for (const QString &part :
         {u"tables/NAME.json"_s, u"plateau-audit/1"_s, u"plateau import"_s, m_head.hash})
        EXPECT_TRUE(readme.contains(part)) << part.toStdString();
    const QJsonObject manifest = json(u"manifest.json"_s);
    EXPECT_EQ(manifest[u"format"_s].toString(), u"plateau-export/1"_s);
    EXPECT_EQ(manifest[u"audit"_s][u"head"_s].toString(), m_head.hash);
    for (const QJsonValue &each : manifest[u"tables"_s].toArray()) {
        const QString name = each[u"table"_s].toString();
        const QJsonArray rows = json(u"tables/%1.json"_s.arg(name))[u"rows"_s].toArray();
        EXPECT_EQ(rows.size(), each[u"rows"_s].toInt()) << name.toStdString();
    }
}

TEST_F(Export, HoldsRunsAsDocumentsAndResultsAsATable)
{
    exportIt();
    for (const RunSummary &run : m_book->runs()) {
        const QString path =
            u"%1/documents/runs/%2.json"_s.arg(m_target).arg(run.id.value, 6, 10, QChar(u'0'));
        const auto read = exchange::readRun(bytesOf(path), [](const QString &) { return std::nullopt; });
        ASSERT_TRUE(read.value) << path.toStdString();
        EXPECT_EQ(read.value->run.title, run.title);
    }
    const QByteArray results = bytesOf(m_target + u"/documents/results.csv"_s);
    qsizetype expected = 1;
    for (const RunSummary &run : m_book->runs()) {
        for (const Decision &decision : m_book->load(run.id).decisions)
            expected += static_cast<qsizetype>(exchange::readResults(decision.evaluation).value->size());
    }
    EXPECT_EQ(results.count("\r\n"), expected);
}

TEST_F(Export, TellsNothingFromAnEmptyTextInCsv)
{
    exportIt();
    const QList<QByteArray> lines = bytesOf(table(u"reading.csv"_s)).split('\n');
    EXPECT_EQ(lines.front().trimmed(),
              "\"id\",\"tube\",\"name\",\"absorbance\",\"points\",\"typed\",\"person\","
              "\"at_utc\",\"at_offset_min\",\"corrects\",\"reason\"");
    EXPECT_TRUE(lines[1].trimmed().endsWith(",60,,\"\"")) << lines[1].toStdString();
}

TEST_F(Export, NeedsAFreeNameOrAnEmptyFolder)
{
    QDir().mkpath(m_target);
    exportIt();
    const QByteArray manifest = bytesOf(m_target + u"/manifest.json"_s);
    const Failure failure = failureOf([&] { exportIt(); });
    EXPECT_EQ(failure.kind(), Failure::Kind::Refused);
    expectOneSentence(failure);
    EXPECT_EQ(bytesOf(m_target + u"/manifest.json"_s), manifest);
}

TEST_F(Export, StoppedLeavesNothing)
{
    qint64 told = 0;
    EXPECT_THROW(m_book->keeping().exportTo(m_target,
                                            [&](qint64 done, qint64 of) {
                                                told = of;
                                                return done < of / 2;
                                            }),
                 Stopped);
    EXPECT_GT(told, 100);
    EXPECT_FALSE(QFileInfo::exists(m_target));
    EXPECT_THAT(QDir(m_folder.path()).entryList({u"export*"_s}), IsEmpty());
    exportIt();
    EXPECT_THROW(importNotebook(m_target, m_again, [](qint64, qint64) { return false; }), Stopped);
    EXPECT_THAT(QDir(m_folder.path()).entryList({u"again*"_s}, QDir::Files | QDir::Hidden), IsEmpty());
}

TEST_F(Export, ThatWasChangedIsRefused)
{
    exportIt();
    const QByteArray readings = bytesOf(table(u"reading.json"_s));
    change(table(u"reading.json"_s), "Ines Kaddour", "Ines Kaddowr");
    EXPECT_EQ(refusedImport().kind(), Failure::Kind::Damaged);
    QFile::remove(table(u"reading.json"_s));
    EXPECT_EQ(refusedImport().kind(), Failure::Kind::NotFound);
    write(table(u"reading.json"_s), readings);

    // with a manifest that was changed to fit, the chain still tells
    const QByteArray reopening = bytesOf(table(u"reopening.json"_s));
    const auto hash = [](const QByteArray &bytes) {
        return QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex();
    };
    change(table(u"reopening.json"_s), "second reading", "third reading");
    change(m_target + u"/manifest.json"_s, hash(reopening), hash(bytesOf(table(u"reopening.json"_s))));
    const Failure failure = refusedImport();
    EXPECT_EQ(failure.kind(), Failure::Kind::Damaged);
    EXPECT_TRUE(failure.sentence().contains(u"reopening 1"_s)) << failure.sentence().toStdString();
}

TEST_F(Export, OfANewerSchemaOrNoneAtAllIsRefused)
{
    exportIt();
    const QByteArray schema = "\"schema\": " + QByteArray::number(qint64(schemaSteps().back().number));
    change(m_target + u"/manifest.json"_s, schema, "\"schema\": 1000");
    EXPECT_EQ(refusedImport().kind(), Failure::Kind::NewerVersion);
    write(m_target + u"/manifest.json"_s, "{}");
    EXPECT_EQ(refusedImport().kind(), Failure::Kind::NotANotebook);
    QFile::remove(m_target + u"/manifest.json"_s);
    EXPECT_EQ(refusedImport().kind(), Failure::Kind::NotFound);
}

TEST_F(Export, IsImportedAsAWholeOrNotAtAllWhicheverWriteFails)
{
    exportIt();
    int failed = 0;
    for (int number = 1; number < 4000; number += 23) {
        storage::failAt(storage::Call::Write, number, ENOSPC, true);
        bool done = true;
        try {
            importNotebook(m_target, m_again);
        } catch (const Failure &failure) {
            expectOneSentence(failure);
            done = false;
        }
        storage::work();
        EXPECT_EQ(QFile::exists(m_again), done) << number;
        EXPECT_FALSE(QFile::exists(m_again + u".part"_s)) << number;
        if (done)
            break;
        ++failed;
    }
    EXPECT_GT(failed, 1);
}

} // namespace plateau::test
