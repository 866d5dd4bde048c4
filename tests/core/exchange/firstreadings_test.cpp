// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// The first reading of every sample run is stored without a question, and with a slipped decimal point is not.

#include "core/evaluation/doubts.h"
#include "core/exchange/library.h"
#include "core/exchange/readers.h"
#include "tests/support/print.h"
#include "tests/support/problems.h"

#include <QDir>

#include <gtest/gtest.h>

namespace plateau::exchange {

using namespace Qt::StringLiterals;

namespace {

/// The same run before anything was read.
run::Run unread(run::Run run)
{
    for (run::Tube &tube : run.tubes)
        tube.readings.clear();
    return run;
}

} // namespace

TEST(FirstReadings, OfTheSampleRunsRaiseNoDoubtButSlippedOnesDo)
{
    const QDir folder(QStringLiteral(PLATEAU_SOURCE_DIR) + u"/sampledata"_s);
    const MethodLibrary library = MethodLibrary::load(u":/methods"_s);
    int runs = 0;
    int falling = 0;
    for (const QString &name : folder.entryList({u"*.json"_s}, QDir::Files, QDir::Name)) {
        SCOPED_TRACE(name.toStdString());
        QFile file(folder.filePath(name));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        const auto read = readRun(file.readAll(), library.lookup());
        ASSERT_TRUE(read.value) << test::listed(read.problems);
        const assay::Method &method = read.value->method;
        const run::Run &run = read.value->run;
        const QString first = assay::readingsInOrder(method).front();
        const double absorbance = std::get<double>(run.tubes.front().readings.at(first));
        EXPECT_EQ(evaluation::doubtsAbout(method, unread(run), 0, first, absorbance).size(), 0U);
        ++runs;
        if (method.direction != assay::Direction::Falling)
            continue;
        ++falling;
        EXPECT_NE(evaluation::doubtAbout(method, unread(run), 0, first, absorbance / 10), QString());
        EXPECT_NE(evaluation::doubtAbout(method, unread(run), 0, first, absorbance * 10), QString());
    }
    EXPECT_GT(runs, 10);
    EXPECT_GT(falling, 5);
}

} // namespace plateau::exchange
