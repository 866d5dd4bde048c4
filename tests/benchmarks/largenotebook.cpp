// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Makes a notebook of any size that can be opened for writing, for the benchmarks of the window:
//   largenotebook RUNS FILE
#include "tests/support/largenotebook.h"

#include <QCoreApplication>
#include <QFileInfo>

#include <cstdio>

int main(int argc, char **argv)
{
    const QCoreApplication application(argc, argv);
    const int runs = argc == 3 ? QByteArray(argv[1]).toInt() : 0;
    if (runs < 1 || QFileInfo::exists(QString::fromLocal8Bit(argv[2]))) {
        std::fprintf(stderr, "largenotebook RUNS FILE, where no file is\n");
        return 2;
    }
    plateau::test::makeLargeNotebook(QString::fromLocal8Bit(argv[2]),
                                     {.runs = runs, .made = std::min(runs, 120), .allDecided = true});
    return 0;
}
