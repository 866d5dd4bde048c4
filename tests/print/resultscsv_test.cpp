// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/resultscsv.h"

#include "core/evaluation/format.h"
#include "tests/print/reports.h"
#include "tests/support/print.h"
#include "ui/print/decimalsign.h"
#include "ui/print/reportfields.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLocale>
#include <QProcess>

#include <gtest/gtest.h>

namespace plateau::ui {

using namespace Qt::StringLiterals;

namespace {

/// Read by a script that shares no code with us. It is told nothing: what separates cells stands behind the
/// first column's name, and says which decimal sign numbers have.
QJsonArray readBack(const QByteArray &csvBytes)
{
    const QString script = uR"(
import csv, io, json, sys
text = sys.stdin.buffer.read().decode('utf-8')
separator = text[len('report')]
rows = list(csv.DictReader(io.StringIO(text, newline=''), delimiter=separator, strict=True))
numbers = ['value', 'expanded_uncertainty', 'coverage_factor', 'less_than', 'greater_than', 'spread']
for row in rows:
    assert None not in row and None not in row.values(), row
    for name in numbers:
        cell = row[name].replace(',', '.') if separator == ';' else row[name]
        row[name] = float(cell) if cell else None
print(json.dumps(rows))
)"_s;
    QProcess python;
    python.start(u"python3"_s, {u"-c"_s, script});
    python.write(csvBytes);
    python.closeWriteChannel();
    EXPECT_TRUE(python.waitForFinished(60000));
    EXPECT_EQ(python.exitCode(), 0) << python.readAllStandardError().toStdString();
    return QJsonDocument::fromJson(python.readAllStandardOutput()).array();
}

void expectNumber(const QJsonValue &found, std::optional<double> wanted)
{
    EXPECT_EQ(found.isDouble(), wanted.has_value());
    if (wanted) {
        EXPECT_EQ(found.toDouble(), *wanted);
    }
}

QByteArray firstRow(const QByteArray &csv)
{
    return csv.split('\n').at(1);
}

} // namespace

TEST(ResultsCsv, IsReadBackToTheLastDigitInBothForms)
{
    for (const QString &file : test::sampleRuns()) {
        for (const DecimalSign sign : {DecimalSign::Point, DecimalSign::Comma}) {
            SCOPED_TRACE(file.toStdString());
            ReportContent content = test::reportOfSample(file);
            content.decimalSign = sign;
            const QJsonArray rows = readBack(resultsCsv(content, CsvCells::Exact));
            const auto &results = content.evaluation.results;
            ASSERT_EQ(rows.size(), static_cast<qsizetype>(results.size()));
            for (std::size_t i = 0; i < results.size(); ++i) {
                const QJsonObject row = rows[static_cast<qsizetype>(i)].toObject();
                EXPECT_EQ(row[u"sample"_s].toString(), results[i].sample);
                EXPECT_EQ(row[u"measurand"_s].toString(), results[i].measurand);
                EXPECT_EQ(row[u"unit"_s].toString(), results[i].unit);
                // A bound is the result: no number stands beside it.
                const bool isBound = results[i].lessThan || results[i].greaterThan;
                const auto ofValue = [&](std::optional<double> number) { return isBound ? std::nullopt : number; };
                expectNumber(row[u"value"_s], ofValue(results[i].value));
                expectNumber(row[u"expanded_uncertainty"_s], ofValue(results[i].expandedUncertainty));
                expectNumber(row[u"coverage_factor"_s], ofValue(results[i].coverageFactor));
                expectNumber(row[u"less_than"_s], results[i].lessThan);
                expectNumber(row[u"greater_than"_s], results[i].greaterThan);
                EXPECT_EQ(row[u"content_sha256"_s].toString(), content.contentHash);
                EXPECT_EQ(row[u"state"_s].toString(), u"draft"_s);
            }
        }
    }
}

TEST(ResultsCsv, KeepsFormulasOutOfSpreadsheetsAndMinusSignsInNumbers)
{
    ReportContent content = test::reportOfSample(u"clean-run.json"_s);
    auto &result = content.evaluation.results.front();
    result.value = -0.001;
    for (const QString &name : {u"=1+1"_s, u"+1"_s, u"-1"_s, u"@sum"_s, u"\tx"_s}) {
        result.sample = name;
        const QJsonObject safe = readBack(resultsCsv(content, CsvCells::Safe)).at(0).toObject();
        EXPECT_EQ(safe[u"sample"_s].toString(), u'\'' + name);
        EXPECT_EQ(safe[u"value"_s].toDouble(), -0.001);
        const QJsonObject exact = readBack(resultsCsv(content, CsvCells::Exact)).at(0).toObject();
        EXPECT_EQ(exact[u"sample"_s].toString(), name);
    }
    result.sample = u"a=b"_s;
    EXPECT_TRUE(firstRow(resultsCsv(content, CsvCells::Safe)).contains(",a=b,"));
}

TEST(ResultsCsv, QuotesWhatHasToBeQuoted)
{
    ReportContent content = test::reportOfSample(u"clean-run.json"_s);
    for (const QString &name : {u"a, b"_s, u"a; b"_s, u"a \"b\""_s, u"two\r\nlines"_s}) {
        content.evaluation.results.front().sample = name;
        for (const DecimalSign sign : {DecimalSign::Point, DecimalSign::Comma}) {
            content.decimalSign = sign;
            const QJsonObject row = readBack(resultsCsv(content, CsvCells::Exact)).at(0).toObject();
            EXPECT_EQ(row[u"sample"_s].toString(), name);
        }
    }
    EXPECT_TRUE(resultsCsv(content, CsvCells::Exact).endsWith("\r\n"));
}

TEST(LocalNumbers, ChangeNothingButTheDecimalSign)
{
    const auto comma = [](const QString &text, const QStringList &names = {}) {
        return localNumbers(text, DecimalSign::Comma, names);
    };
    EXPECT_EQ(comma(u"0.151\u00a0g/L"_s), u"0,151\u00a0g/L"_s);
    EXPECT_EQ(comma(u"2.00 x √(0.0012² + 0.5²)"_s), u"2,00 x √(0,0012² + 0,5²)"_s);
    EXPECT_EQ(comma(u"-0.5"_s), u"-0,5"_s);
    EXPECT_EQ(comma(u"1.5e-05"_s), u"1,5e-05"_s);
    EXPECT_EQ(comma(u"12345.6"_s), u"12345,6"_s);
    EXPECT_EQ(comma(u"95.4 %."_s), u"95,4 %."_s);
    EXPECT_EQ(comma(u"version 1.2.3, lot N1.5"_s), u"version 1.2.3, lot N1.5"_s);
    EXPECT_EQ(comma(u"tank 1.5: 0.2"_s, {u"tank 1.5"_s}), u"tank 1.5: 0,2"_s);
    EXPECT_EQ(localNumbers(u"0.151"_s, DecimalSign::Point), u"0.151"_s);
    EXPECT_EQ(usualDecimalSign(QLocale(QLocale::German)), DecimalSign::Comma);
    EXPECT_EQ(usualDecimalSign(QLocale(QLocale::English)), DecimalSign::Point);
    EXPECT_EQ(usualDecimalSign(QLocale(QLocale::Arabic, QLocale::Egypt)), DecimalSign::Point);
}

TEST(ReportFields, RefuseWhatWouldBeLost)
{
    ReportFields fields;
    EXPECT_EQ(fields.add(u"customer=Threnholt=Cider"_s), QString());
    EXPECT_EQ(fields.value(u"customer"_s), u"Threnholt=Cider"_s);
    EXPECT_EQ(fields.add(u"received=2026-03-01"_s), QString());
    EXPECT_EQ(fields.add(u"received/A/1=2026-03-02"_s), QString());
    EXPECT_EQ(fields.value(u"received"_s, u"A/1"_s), u"2026-03-02"_s);
    EXPECT_EQ(fields.value(u"received"_s, u"B"_s), u"2026-03-01"_s);
    EXPECT_EQ(fields.samples(), QStringList{u"A/1"_s});
    for (const QString &wrong : {u"customer"_s, u"customer=again"_s, u"order="_s, u"order=  "_s, u"price=4"_s,
                                 u"order/A=4"_s, u"=4"_s, QString()})
        EXPECT_NE(fields.add(wrong), QString()) << wrong.toStdString();
    EXPECT_NE(fields.add(u"order="_s + QString(4001, u'x')), QString());
    EXPECT_EQ(fields.add(u"order="_s + QString(4000, u'x')), QString());
}

} // namespace plateau::ui
