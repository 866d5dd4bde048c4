// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
// From a key in the entry to what comes of it on show, in the whole window with a rack of 96 tubes, and the
// same for Enter, which stores the reading first. One frame at 60 Hz is 16.7 ms. Run by hand, without a
// display: cmake -DPLATEAU_BENCHMARKS=ON, then QT_QPA_PLATFORM=offscreen window_benchmark.
#include "tests/benchmarks/percentiles.h"
#include "tests/ui/keyboard.h"

#include <QApplication>
#include <QLineEdit>

#include <gtest/gtest.h>

namespace plateau::test {
namespace {

constexpr int turns = 1000;

/// Two blanks and 47 samples in duplicate, everything read but the last tube's A2.
run::Run rackOf96(int tubesRead)
{
    run::Run run = exampleRun();
    run.samples.clear();
    run.tubes.resize(2);
    for (int sample = 0; sample < 47; ++sample) {
        run.samples.push_back({u"Vat %1"_s.arg(sample), run::Form::Liquid, {}, {}, {}, {}});
        run::Tube tube;
        tube.sample = run.samples.back().id;
        run.tubes.insert(run.tubes.end(), {tube, tube});
    }
    for (int tube = 0; tube < tubesRead; ++tube) {
        run.tubes[static_cast<std::size_t>(tube)].readings = {
            {u"A1"_s, 0.1 + 0.001 * (tube % 5)}, {u"A2"_s, tube < 2 ? 0.11 : 0.4 + 0.01 * (tube / 2)}};
    }
    return run;
}

class Keying : public Keyboard
{
public:
    void TestBody() override {}
    void start(int tubesRead)
    {
        addRun(rackOf96(tubesRead));
        openWindow();
        window->resize(1280, 800);
        giveName();
        press(Qt::Key_2, Qt::ControlModifier);
        QApplication::processEvents();
    }
    QLineEdit *entry() const { return find<QLineEdit>(u"readingEntry"_s); }
};

void keyToResults(benchmark::State &state)
{
    Keying keying;
    keying.start(95);
    QLineEdit *entry = keying.entry();
    Percentiles percentiles;
    int turn = 0;
    for (auto _ : state) {
        // 0, 0., 0.5, 0.51, 0.512 and from the beginning.
        const QString text = u"0.512"_s.left(turn++ % 5);
        entry->setText(text);
        QApplication::processEvents();
        percentiles.time([&] {
            QTest::keyClicks(entry, QString(u"0.512"_s[text.size()]));
            QApplication::processEvents();
        });
    }
    percentiles.report(state);
}

/// The wait for the disk is in it: what is shown is on disk.
void enterToResults(benchmark::State &state)
{
    Keying keying;
    keying.start(20);
    Percentiles percentiles;
    for (auto _ : state) {
        keying.entry()->setText(u"0.512"_s);
        QApplication::processEvents();
        percentiles.time([&] {
            QTest::keyClick(keying.entry(), Qt::Key_Return);
            QApplication::processEvents();
        });
        if (!keying.entry()->text().isEmpty()) { // asked about: yes
            QTest::keyClick(keying.entry(), Qt::Key_Return);
            QApplication::processEvents();
        }
    }
    percentiles.report(state);
}

} // namespace
} // namespace plateau::test

BENCHMARK(plateau::test::keyToResults)->Iterations(plateau::test::turns)->Unit(benchmark::kMillisecond);
BENCHMARK(plateau::test::enterToResults)->Iterations(70)->Unit(benchmark::kMillisecond);

int main(int argc, char **argv)
{
    QApplication app(argc, argv);
    testing::InitGoogleTest(&argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
