// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Reads and checks run files and does nothing with them: what `plateau evaluate` of the same files is held
// against.
#include "core/exchange/library.h"
#include "core/exchange/readers.h"

#include <QCoreApplication>
#include <QFile>

#include <cstdio>

using namespace plateau;

int main(int argc, char **argv)
{
    const QCoreApplication application(argc, argv);
    const exchange::MethodLibrary library =
        exchange::MethodLibrary::load(QStringLiteral(PLATEAU_SOURCE_DIR "/resources/methods"));
    int read = 0;
    for (int i = 1; i < argc; ++i) {
        QFile file(QString::fromLocal8Bit(argv[i]));
        if (file.open(QIODevice::ReadOnly) && exchange::readRun(file.readAll(), library.lookup()).value)
            ++read;
    }
    std::printf("%d runs\n", read);
    return read == argc - 1 ? 0 : 1;
}
