// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/print/reports.h"

#include "core/exchange/readers.h"
#include "tests/print/racks.h"

#include <QDir>
#include <QFile>

#include <gtest/gtest.h>

namespace plateau::test {

using namespace Qt::StringLiterals;

namespace {

const QString folder = QStringLiteral(PLATEAU_SOURCE_DIR "/sampledata");

ui::ReportContent stamped(ui::ReportContent content)
{
    content.programVersion = u"1.2.3"_s;
    content.madeAt = QDateTime(QDate(2026, 3, 3), QTime(8, 15), Qt::OffsetFromUTC, 3600);
    content.madeBy = u"M. Keel"_s;
    return content;
}

} // namespace

QStringList sampleRuns()
{
    return QDir(folder).entryList({u"*.json"_s}, QDir::Files);
}

ui::ReportContent reportOfSample(const QString &fileName)
{
    QFile file(folder + u'/' + fileName);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    const auto document =
        exchange::readRun(file.readAll(), [](const QString &id) { return std::optional(shippedMethod(id)); });
    return stamped(ui::reportOf(document.value.value().method, document.value.value().run));
}

ui::ReportContent reportOfRun(const run::Run &run, const assay::Method &method)
{
    return stamped(ui::reportOf(method, run));
}

void accept(ui::ReportContent &content)
{
    ui::ReportRecord record;
    record.run = 12;
    record.notebook = u"cellar.plateau"_s;
    record.state = ui::ReportState::Accepted;
    record.addedAt = content.madeAt;
    ui::ReportDecision decision;
    decision.what = u"accepted"_s;
    decision.act = {u"R. Voss"_s, u"reviewer"_s, u"all in order"_s, content.madeAt, true};
    decision.contentHash = content.contentHash;
    decision.programVersion = u"1.2.3"_s;
    record.decisions.push_back(decision);
    record.auditEntries = 42;
    record.auditHead = QString(64, u'c');
    content.record = record;
}

QString packed(const QString &text)
{
    QString all;
    for (const QChar sign : text) {
        if (!sign.isSpace())
            all += sign;
    }
    return all;
}

} // namespace plateau::test
