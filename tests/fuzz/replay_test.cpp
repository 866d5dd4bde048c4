// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Every seed and everything that fuzzing ever found, in the usual build: seeds/<target>, the shipped methods
// and the sample runs, each whole, cut off at several places, and with single bytes changed.
#include "tests/fuzz/targets.h"

#include <QDir>
#include <QFile>

#include <gtest/gtest.h>

namespace plateau::fuzz {
namespace {

using namespace Qt::StringLiterals;

std::vector<QByteArray> filesIn(const QString &folder)
{
    std::vector<QByteArray> files;
    const QDir dir(QStringLiteral(PLATEAU_SOURCE_DIR) + u'/' + folder);
    for (const QString &name : dir.entryList(QDir::Files, QDir::Name)) {
        QFile file(dir.filePath(name));
        if (file.open(QIODevice::ReadOnly))
            files.push_back(file.readAll());
    }
    return files;
}

void tryAll(void (*target)(const QByteArray &), const QStringList &folders, int steps)
{
    int tried = 0;
    for (const QString &folder : folders) {
        for (const QByteArray &whole : filesIn(folder)) {
            target(whole);
            ++tried;
            for (int step = 1; step < steps; ++step) {
                const qsizetype at = whole.size() * step / steps;
                target(whole.left(at));
                QByteArray changed = whole;
                if (at < changed.size())
                    changed[at] = char(changed[at] ^ (1 << (step % 8)));
                target(changed);
            }
        }
    }
    EXPECT_GT(tried, 3);
}

} // namespace

TEST(FuzzReplay, RunsHold)
{
    tryAll(tryRun, {u"sampledata"_s, u"tests/fuzz/seeds/run"_s}, 12);
}

TEST(FuzzReplay, MethodsHold)
{
    tryAll(tryMethod, {u"resources/methods"_s, u"tests/fuzz/seeds/method"_s}, 12);
}

TEST(FuzzReplay, ColumnsHold)
{
    tryAll(tryColumn, {u"tests/fuzz/seeds/column"_s}, 40);
}

TEST(FuzzReplay, LinesHold)
{
    tryAll(tryLine, {u"tests/fuzz/seeds/line"_s}, 40);
}

TEST(FuzzReplay, NumbersHold)
{
    tryAll(tryNumber, {u"tests/fuzz/seeds/number"_s}, 12);
}

} // namespace plateau::fuzz
