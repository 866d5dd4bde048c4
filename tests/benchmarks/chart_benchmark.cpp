// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
// A control chart of 10,000 points: computing it, bringing it on show, and each frame of a pan over all of it
// and over a part, painted to the last pixel. One frame at 60 Hz is 16.7 ms. Run by hand, without a display:
// cmake -DPLATEAU_BENCHMARKS=ON, then QT_QPA_PLATFORM=offscreen chart_benchmark.
#include "ui/charts/chartview.h"
#include "ui/shared/theme.h"

#include <QApplication>
#include <QImage>

#include <benchmark/benchmark.h>

#include <cmath>
#include <random>

using namespace Qt::StringLiterals;

namespace plateau::ui {
namespace {

constexpr int pointsOfAll = 10000;

charts::Series manyPoints()
{
    std::mt19937 random(7);
    std::normal_distribution<double> scatter(100, 1.5);
    charts::Series series;
    for (int i = 0; i < pointsOfAll; ++i) {
        auto run = std::make_shared<charts::RunFacts>();
        run->run = i + 1;
        run->titleUtf8 = "Perry tanks, morning";
        run->at = QDateTime(QDate(2000, 1, 1), QTime(9, 0), Qt::UTC).addDays(i);
        run->lots = {{u"Starter"_s, u"17-%1"_s.arg(i / 60)}, {u"Buffer"_s, u"B-%1"_s.arg(i / 90)}};
        charts::Point point;
        point.run = run;
        point.name = u"STD"_s;
        point.value = scatter(random) + (i / 500 % 7 == 3 ? 2 : 0);
        point.unit = u"%"_s;
        series.push_back(point);
    }
    return series;
}

const charts::Subject subject{charts::Quantity::StandardRecovery, u"malate"_s, u"malate"_s};

charts::ControlChart everyRule(const charts::Series &series)
{
    charts::Settings settings;
    const auto rules = quality::allRunRules();
    settings.rules = {rules.begin(), rules.end()};
    return charts::controlChart(subject, series, {}, settings);
}

void computing(benchmark::State &state)
{
    const charts::Series series = manyPoints();
    for (auto _ : state)
        benchmark::DoNotOptimize(everyRule(series));
}
BENCHMARK(computing)->Unit(benchmark::kMillisecond);

class OnShow
{
public:
    OnShow()
    {
        m_view.resize(1400, 700);
        m_view.show();
        m_view.setChart(subject, everyRule(manyPoints()));
    }
    ChartView &view() { return m_view; }
    void paint() { m_view.render(&m_image); }

private:
    Theme m_theme;
    ChartView m_view{m_theme, u"Control chart"_s};
    QImage m_image{1400, 700, QImage::Format_ARGB32_Premultiplied};
};

void bringingOnShow(benchmark::State &state)
{
    OnShow show;
    const charts::ControlChart chart = everyRule(manyPoints());
    for (auto _ : state) {
        show.view().setChart(subject, chart);
        show.paint();
    }
}
BENCHMARK(bringingOnShow)->Unit(benchmark::kMillisecond);

/// So many points in sight.
void panning(benchmark::State &state)
{
    OnShow show;
    show.view().showAll();
    show.view().zoom(static_cast<double>(state.range(0)) / pointsOfAll, pointsOfAll);
    double step = -7;
    for (auto _ : state) {
        if (show.view().windowFrom() < 10 || show.view().windowTo() > pointsOfAll)
            step = -step;
        show.view().pan(step);
        show.paint();
    }
}
BENCHMARK(panning)->Arg(200)->Arg(2000)->Arg(9900)->Unit(benchmark::kMillisecond);

void zoomingOverAll(benchmark::State &state)
{
    OnShow show;
    bool in = true;
    for (auto _ : state) {
        show.view().zoom(in ? 0.5 : 2, 5000);
        in = !in;
        show.paint();
    }
}
BENCHMARK(zoomingOverAll)->Unit(benchmark::kMillisecond);

void stepping(benchmark::State &state)
{
    OnShow show;
    std::size_t point = 9000;
    for (auto _ : state) {
        show.view().choose(point);
        point = point == 9000 ? 9001 : 9000;
        show.paint();
    }
}
BENCHMARK(stepping)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace plateau::ui

int main(int argc, char **argv)
{
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    QApplication::setFont(QFont(u"DejaVu Sans"_s, 10));
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
