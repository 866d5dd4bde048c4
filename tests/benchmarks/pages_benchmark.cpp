// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Every page of the window with a large notebook beside the same with an empty one: from the key to the
// painted page, the second time it is shown, and the memory that the window holds after all of them. Run by
// hand: cmake -DPLATEAU_BENCHMARKS=ON, then pages_benchmark NOTEBOOK (a copy: it is opened for writing).
#include "core/exchange/library.h"
#include "core/notebook/notebook.h"
#include "ui/mainwindow.h"

#include <QAbstractItemView>
#include <QAction>
#include <QApplication>
#include <QElapsedTimer>
#include <QProcess>
#include <QScrollBar>
#include <QTemporaryDir>

#include <cstdio>
#include <functional>
#include <map>

#include <malloc.h>

using namespace Qt::StringLiterals;
using namespace plateau;

namespace {

const QStringList pages{u"actionToday"_s,   u"actionNotebook"_s, u"actionCharts"_s,     u"actionMethods"_s,
                        u"actionSamples"_s, u"actionLots"_s,     u"actionStandards"_s,  u"actionEquipment"_s,
                        u"actionLimits"_s,  u"actionPersons"_s,  u"actionLaboratory"_s, u"actionRecords"_s,
                        u"actionNewRun"_s};

double timed_ms(const std::function<void()> &work)
{
    QElapsedTimer clock;
    clock.start();
    work();
    QApplication::processEvents();
    return double(clock.nsecsElapsed()) / 1e6;
}

long resident_kB()
{
    QFile file(u"/proc/self/statm"_s);
    return file.open(QIODevice::ReadOnly) ? file.readAll().split(' ').value(1).toLong() * 4 : 0;
}

void say(const QString &what, double value)
{
    std::printf("%s\t%.3f\n", qPrintable(what), value);
}

int lookThrough(int argc, char **argv)
{
    const QApplication application(argc, argv);
    const auto book = notebook::Notebook::openOrCreate(QString::fromLocal8Bit(argv[2]));
    ui::MainWindow window(*book, exchange::MethodLibrary{});
    window.resize(1280, 800);
    window.show();
    QApplication::processEvents();
    window.findChild<QAction *>(u"actionNotebook"_s)->trigger();
    auto *runs = window.findChild<QAbstractItemView *>(u"runs"_s);
    say(u"ten screens further down the runs"_s, timed_ms([runs] {
            for (int screen = 0; screen < 10; ++screen) {
                runs->verticalScrollBar()->setValue(runs->verticalScrollBar()->maximum());
                QApplication::processEvents();
            }
        }));
    say(u"memory with the list of runs, kB"_s, double(resident_kB()));
    for (const int turn : {1, 2}) {
        for (const QString &page : pages) {
            auto *action = window.findChild<QAction *>(page);
            const double taken_ms = timed_ms([action] { action->trigger(); });
            if (turn == 2)
                say(page.mid(6), taken_ms);
        }
    }
    say(u"memory after all pages, kB"_s, double(resident_kB()));
    const auto heap = mallinfo2();
    say(u"of which the heap holds, kB"_s, double(heap.uordblks + heap.hblkhd) / 1024);
    return 0;
}

std::vector<std::pair<QString, double>> looked(const QString &notebook)
{
    QProcess process;
    process.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    process.start(QCoreApplication::applicationFilePath(), {u"--look"_s, notebook});
    process.waitForFinished(-1);
    std::vector<std::pair<QString, double>> lines;
    for (const QByteArray &line : process.readAllStandardOutput().trimmed().split('\n'))
        lines.emplace_back(QString::fromUtf8(line.split('\t').value(0)),
                           line.split('\t').value(1).toDouble());
    return lines;
}

} // namespace

int main(int argc, char **argv)
{
    if (argc > 2 && QByteArrayView(argv[1]) == QByteArrayView("--look"))
        return lookThrough(argc, argv);
    const QCoreApplication application(argc, argv);
    if (argc != 2) {
        std::fprintf(stderr, "pages_benchmark NOTEBOOK\n");
        return 2;
    }
    const QTemporaryDir folder;
    const auto empty = looked(folder.filePath(u"empty.plateau"_s));
    const auto large = looked(QString::fromLocal8Bit(argv[1]));
    std::printf("%-36s %12s %12s %8s\n", "", "empty", "notebook", "ratio");
    for (std::size_t i = 0; i < std::min(empty.size(), large.size()); ++i)
        std::printf("%-36s %12.1f %12.1f %8.2f\n", qPrintable(empty[i].first), empty[i].second,
                    large[i].second, large[i].second / empty[i].second);
    return 0;
}
