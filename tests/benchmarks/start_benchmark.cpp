// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// From the start of the process to a window that takes keys, with a notebook, beside an empty window of Qt
// Widgets with a chart in it (emptywindow), a program of its own that carries no library which it does not need. Run by hand: cmake -DPLATEAU_BENCHMARKS=ON, then start_benchmark NOTEBOOK (a
// copy: it is opened for writing); start_benchmark --stages NOTEBOOK says once where the time goes.
#include "core/exchange/library.h"
#include "core/notebook/notebook.h"
#include "ui/mainwindow.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QProcess>
#include <QTimer>

#include <algorithm>
#include <cstdio>
#include <vector>

using namespace Qt::StringLiterals;
using namespace plateau;

namespace {

constexpr int turns = 11;

/// The first time there is nothing left to do: laid out, painted, waiting for a key.
int untilIdle(QWidget &window)
{
    window.show();
    QTimer::singleShot(0, [] { QTimer::singleShot(0, qApp, &QCoreApplication::quit); });
    return QApplication::exec();
}

int whole(int argc, char **argv, bool saysStages)
{
    QElapsedTimer clock;
    clock.start();
    const auto stage = [&](const char *name) {
        if (saysStages)
            std::printf("%-40s %6.1f ms\n", name, static_cast<double>(clock.nsecsElapsed()) / 1e6);
        clock.restart();
    };
    const QApplication application(argc, argv);
    stage("libraries of the window");
    const auto book = notebook::Notebook::open(QString::fromLocal8Bit(argv[2]));
    stage("notebook opened");
    ui::MainWindow window(*book, exchange::MethodLibrary{});
    stage("window made");
    window.show();
    stage("shown");
    const int code = untilIdle(window);
    stage("painted, waiting for a key");
    return code;
}

double once_ms(const QString &program, const QStringList &arguments)
{
    QElapsedTimer clock;
    clock.start();
    QProcess process;
    process.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    process.start(program, arguments);
    if (!process.waitForFinished(-1) || process.exitCode() != 0)
        std::fprintf(stderr, "failed: %s\n", qPrintable(arguments.join(u' ')));
    return static_cast<double>(clock.nsecsElapsed()) / 1e6;
}

double median(std::vector<double> all)
{
    std::ranges::sort(all);
    return all[all.size() / 2];
}

} // namespace

int main(int argc, char **argv)
{
    if (argc > 2 && QByteArrayView(argv[1]) == QByteArrayView("--whole"))
        return whole(argc, argv, false);
    if (argc > 2 && QByteArrayView(argv[1]) == QByteArrayView("--stages"))
        return whole(argc, argv, true);
    const QCoreApplication application(argc, argv);
    if (argc != 2) {
        std::fprintf(stderr, "start_benchmark NOTEBOOK\n");
        return 2;
    }
    std::vector<double> empties;
    std::vector<double> wholes;
    for (int turn = 0; turn < turns; ++turn) {
        empties.push_back(once_ms(QCoreApplication::applicationDirPath() + u"/emptywindow"_s, {}));
        wholes.push_back(once_ms(QCoreApplication::applicationFilePath(),
                                 {u"--whole"_s, QString::fromLocal8Bit(argv[1])}));
    }
    std::printf("empty window %.1f ms, with the notebook %.1f ms, ratio %.2f (medians of %d)\n",
                median(empties), median(wholes), median(wholes) / median(empties), turns);
    return 0;
}
