// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// A day at the bench: racks worked by keys in the program's own window, pages looked at in between, finished
// runs decided, while a turned clock goes through the hours second by second. Memory that is still held
// afterwards is told after every rack. Ends with 1 where what is held goes on growing: the last quarter of
// the day holds more than the third by more than its racks could explain.
//
//   benchday NOTEBOOK HOURS SEED
#include "tests/crash/analyst.h"
#include "tests/crash/quickrack.h"
#include "tests/ui/bench.h"
#include "tests/ui/turnedclock.h"

#include <QAction>
#include <QApplication>
#include <QFont>
#include <QSettings>
#include <QStyleFactory>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>
#include <malloc.h>
#include <numeric>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

/// What has been allocated and not been given back, small and large pieces.
double held_kB()
{
    const struct mallinfo2 info = mallinfo2();
    return double(info.uordblks + info.hblkhd) / 1024;
}

double resident_kB()
{
    QFile file(u"/proc/self/statm"_s);
    if (!file.open(QIODevice::ReadOnly))
        return 0;
    return file.readAll().split(' ').value(1).toDouble() * 4;
}

class Day
{
public:
    Day(const QString &path, unsigned seed)
        : m_clocks(std::make_shared<Clocks>())
        , m_methods(quickMethod(m_folder.path()))
        , m_book(notebook::Notebook::create(path, surroundingsOf(m_clocks)))
        , m_window(*m_book, m_methods, std::make_unique<QuietDialogs>(m_dialogs),
                   std::make_unique<TurnedClock>(m_clocks), std::make_unique<QuietSounder>(m_heard))
        , m_session(*m_window.findChild<ui::BenchSession *>())
        , m_analyst(m_window, m_session, seed, [](const QByteArray &, int) {})
    {
        m_window.show();
        m_window.activateWindow();
        (void)QTest::qWaitForWindowActive(&m_window);
        m_analyst.giveName();
    }

    /// False where memory was not flat.
    bool work(double hours)
    {
        const QDateTime end = m_clocks->wall.addSecs(qint64(hours * 3600));
        std::printf("%8s %6s %6s %12s %12s\n", "minute", "racks", "acts", "held kB", "resident kB");
        const QDateTime begun = m_clocks->wall;
        while (m_clocks->wall < end) {
            pass(8);
            if (m_analyst.doNext()) {
                ++m_acts;
                continue;
            }
            decideAll();
            lookAround();
            m_session.addRun(quickRack(), m_methods.methods().front());
            m_heard.clear();
            QApplication::processEvents();
            // Without an event loop that runs, what is to be deleted later waits for this.
            QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
            m_held.push_back(held_kB());
            std::printf("%8.1f %6zu %6d %12.0f %12.0f\n", double(begun.secsTo(m_clocks->wall)) / 60,
                        m_held.size(), m_acts, m_held.back(), resident_kB());
            std::fflush(stdout);
        }
        return isFlat();
    }

private:
    void pass(int seconds)
    {
        for (int second = 0; second < seconds; ++second) {
            m_clocks->pass(1);
            m_session.tick();
            QApplication::processEvents();
        }
    }

    void decideAll()
    {
        std::vector<notebook::RunId> done;
        for (const ui::Rack &rack : m_session.racks())
            done.push_back(rack.id);
        for (const notebook::RunId run : done) {
            trigger("actionReview");
            m_session.decide(run,
                             {notebook::DecisionKind::Rejected, u"R. Okafor"_s, {}, u"a made-up rack"_s});
        }
    }

    void lookAround()
    {
        for (const char *page :
             {"actionToday", "actionNotebook", "actionSamples", "actionMethods", "actionLots",
              "actionStandards", "actionEquipment", "actionCharts", "actionLimits", "actionRecords",
              "actionPersons", "actionLaboratory", "actionNewRun", "actionRead"}) {
            trigger(page);
            pass(3);
        }
        trigger("actionNext");
    }

    void trigger(const char *name)
    {
        auto *action = m_window.findChild<QAction *>(QString::fromLatin1(name));
        if (!action)
            qFatal("no action %s", name);
        action->trigger();
        QApplication::processEvents();
    }

    static double median(std::vector<double> values)
    {
        std::ranges::sort(values);
        return values.empty() ? 0 : values[values.size() / 2];
    }

    /// Caches fill through the first half of a day (SQLite's pages, glyphs, pictures, the rows that a list
    /// holds); after that a rack leaves a line here and there.
    bool isFlat() const
    {
        const auto quarter = std::ptrdiff_t(m_held.size() / 4);
        if (quarter < 2) {
            std::printf("too short to say anything of memory\n");
            return false;
        }
        const double third = median({m_held.end() - 2 * quarter, m_held.end() - quarter});
        const double last = median({m_held.end() - quarter, m_held.end()});
        constexpr double mostOfARack_kB = 40;
        std::printf("%.0f kB in the third quarter, %.0f kB in the last: %.2f kB a rack\n", third, last,
                    (last - third) / double(quarter));
        return last - third <= mostOfARack_kB * double(quarter);
    }

    QTemporaryDir m_folder;
    std::shared_ptr<Clocks> m_clocks;
    exchange::MethodLibrary m_methods;
    QuietDialogs::Log m_dialogs;
    std::vector<ui::Sound> m_heard;
    std::unique_ptr<notebook::Notebook> m_book;
    ui::MainWindow m_window;
    ui::BenchSession &m_session;
    Analyst m_analyst;
    int m_acts = 0;
    std::vector<double> m_held;
};

} // namespace
} // namespace plateau::test

int main(int argc, char **argv)
{
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    if (argc != 4)
        return 2;
    QApplication::setStyle(QStyleFactory::create(u"Fusion"_s));
    QApplication::setFont(QFont(u"DejaVu Sans"_s, 10));
    QApplication::setApplicationName(u"plateau"_s);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope,
                       QFileInfo(QString::fromLocal8Bit(argv[1])).absolutePath() + u"/settings"_s);
    try {
        return plateau::test::Day(QString::fromLocal8Bit(argv[1]), QByteArray(argv[3]).toUInt())
                       .work(QByteArray(argv[2]).toDouble())
                   ? 0
                   : 1;
    } catch (const plateau::notebook::Failure &failure) {
        std::fprintf(stderr, "%s\n", failure.what());
        return 2;
    }
}
