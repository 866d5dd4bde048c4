// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "sampledata/maker/benchday.h"

#include "core/run/volumes.h"

#include <algorithm>
#include <cmath>

namespace plateau::sampledata {

using namespace Qt::StringLiterals;

namespace {

/// Hands of one person: a tube after the other, so far apart.
constexpr int betweenTubes_s = 25;
constexpr int rowOfDoses_s = 150;
constexpr double ofTheWait = 0.3;
constexpr double minute_s = 60;

/// Something that is done to one tube, so long after the start of its turn.
struct Task {
    QString component;
    QString reading;
    int after_s = 0;
};

/// What is done row by row before the clock of the tubes matters, and then tube by tube.
struct Work {
    QStringList rows;
    std::vector<Task> ofTube;
};

Work workOf(const assay::Method &method)
{
    Work work;
    QStringList before;
    int after_s = 0;
    for (const assay::Step &step : method.steps) {
        if (const auto *add = std::get_if<assay::AddStep>(&step)) {
            if (work.ofTube.empty() && !before.isEmpty())
                work.rows.append(before.takeFirst());
            if (work.ofTube.empty() && after_s == 0)
                before.append(add->component);
            else
                work.ofTube.push_back({add->component, {}, after_s});
        } else if (const auto *wait = std::get_if<assay::WaitStep>(&step)) {
            if (!before.isEmpty())
                work.ofTube.push_back({before.takeFirst(), {}, after_s});
            after_s += int(minute_s * (wait->wait_min.lower +
                                       ofTheWait * (wait->wait_min.upper - wait->wait_min.lower)));
        } else if (const auto *read = std::get_if<assay::ReadStep>(&step)) {
            work.ofTube.push_back({{}, read->reading, after_s});
            after_s += 5;
        }
    }
    return work;
}

struct TimedTask {
    int at_s = 0;
    int tube = 0;
    Task task;
};

std::vector<TimedTask> tasksOf(const Work &work, int tubes)
{
    std::vector<TimedTask> tasks;
    for (int tube = 0; tube < tubes; ++tube) {
        for (const Task &task : work.ofTube)
            tasks.push_back({tube * betweenTubes_s + task.after_s, tube, task});
    }
    std::ranges::stable_sort(tasks, {}, &TimedTask::at_s);
    return tasks;
}

bool getsDose(const assay::Method &method, const run::Tube &tube, const QString &component)
{
    return std::ranges::any_of(run::plannedAdditions(method, tube), [&](const run::Addition &addition) {
        return addition.component == component && addition.volume_mL > 0;
    });
}

/// The worksheet and the readings of one rack, by the acts of the bench.
class BenchRun
{
public:
    BenchRun(notebook::Notebook &notebook, const Rack &rack, const RackReadings &readings, QDateTime &now)
        : m_notebook(notebook)
        , m_rack(rack)
        , m_readings(readings)
        , m_now(now)
    {
    }

    notebook::RunId work(std::optional<int> untilTube)
    {
        run::Run planned = m_rack.run;
        for (run::Standard &standard : planned.standards)
            standard.usedAt.reset(); // the bench tells
        m_run = m_notebook.addRun(planned, m_rack.method, m_rack.analyst, m_rack.plan);
        const Work work = workOf(m_rack.method);
        for (const QString &component : work.rows)
            doseRow(component);
        const QDateTime start = m_now.addSecs(rowOfDoses_s);
        for (const TimedTask &timed : tasksOf(work, int(m_rack.run.tubes.size()))) {
            m_now = start.addSecs(timed.at_s);
            if (!timed.task.component.isEmpty())
                dose(timed.tube, timed.task.component);
            else if (untilTube && timed.tube >= *untilTube)
                break;
            else
                read(timed.tube, timed.task.reading);
        }
        m_now = m_now.addSecs(240);
        return m_run;
    }

private:
    notebook::DoneDose doseOf(int tube, const QString &component) const
    {
        notebook::DoneDose done;
        done.dose = {tube, component, false};
        const auto lot = m_rack.lots.find(component);
        const run::Role role = m_rack.run.tubes[std::size_t(tube)].role;
        const bool isStarterOfBlank = role == run::Role::SampleBlank && component == m_rack.method.starter;
        if (lot != m_rack.lots.end() && !isStarterOfBlank)
            done.lot = lot->second.id;
        return done;
    }

    void doseRow(const QString &component)
    {
        std::vector<notebook::DoneDose> doses;
        for (int tube = 0; tube < int(m_rack.run.tubes.size()); ++tube) {
            if (getsDose(m_rack.method, m_rack.run.tubes[std::size_t(tube)], component))
                doses.push_back(doseOf(tube, component));
        }
        m_now = m_now.addSecs(rowOfDoses_s);
        if (!doses.empty())
            m_notebook.pipetting().markDone(m_run, doses, m_rack.analyst);
    }

    void dose(int tube, const QString &component)
    {
        if (getsDose(m_rack.method, m_rack.run.tubes[std::size_t(tube)], component))
            m_notebook.pipetting().markDone(m_run, {doseOf(tube, component)}, m_rack.analyst);
    }

    void read(int tube, const QString &reading)
    {
        const double value = m_readings[std::size_t(tube)].at(reading);
        m_notebook.addReading(m_run, tube, reading, value, QString::number(value, 'f', 3), m_rack.analyst);
    }

    notebook::Notebook &m_notebook;
    const Rack &m_rack;
    const RackReadings &m_readings;
    QDateTime &m_now;
    notebook::RunId m_run;
};

} // namespace

RackReadings readingsOf(const Rack &rack, Chance &chance)
{
    RackReadings all;
    for (std::size_t tube = 0; tube < rack.run.tubes.size(); ++tube)
        all.push_back(readingsOf(rack.method, rack.run.tubes[tube], rack.truths[tube], chance));
    return all;
}

std::optional<Slip> slipInto(RackReadings &readings, const Rack &rack, Chance &chance)
{
    for (int tries = 0; tries < 20; ++tries) {
        Slip slip;
        slip.tube = chance.whole(0, int(readings.size()) - 1);
        if (rack.run.tubes[std::size_t(slip.tube)].role != run::Role::Sample)
            continue;
        auto &[name, value] = *readings[std::size_t(slip.tube)].rbegin();
        QString digits = QString::number(value, 'f', 3);
        std::swap(digits[2], digits[3]);
        slip.reading = name;
        slip.right = value;
        slip.wrong = digits.toDouble();
        if (std::abs(slip.right - slip.wrong) < 0.05)
            continue;
        value = slip.wrong;
        return slip;
    }
    return std::nullopt;
}

void placeTimes(run::Run &run, const assay::Method &method)
{
    const Work work = workOf(method);
    const double rows_min = rowOfDoses_s / minute_s;
    double row_min = 0;
    for (const QString &component : work.rows) {
        for (run::Tube &tube : run.tubes) {
            if (getsDose(method, tube, component))
                tube.addedAt_min[component] = row_min;
        }
        row_min += rows_min;
    }
    for (const TimedTask &timed : tasksOf(work, int(run.tubes.size()))) {
        run::Tube &tube = run.tubes[std::size_t(timed.tube)];
        const double at_min = std::round((row_min + timed.at_s / minute_s) * 100) / 100;
        if (!timed.task.reading.isEmpty())
            tube.readAt_min[timed.task.reading] = at_min;
        else if (getsDose(method, tube, timed.task.component))
            tube.addedAt_min[timed.task.component] = at_min;
    }
}

int durationOf_s(const assay::Method &method, int samples)
{
    constexpr int others = 5; // blanks, standards, control
    const Work work = workOf(method);
    const int tubes = others + 3 * samples; // were all of them coloured
    return int(work.rows.size()) * rowOfDoses_s + tubes * betweenTubes_s + work.ofTube.back().after_s + 300;
}

notebook::RunId bringIn(notebook::Notebook &notebook, Rack &rack, const RackReadings &readings)
{
    placeTimes(rack.run, rack.method);
    for (std::size_t tube = 0; tube < rack.run.tubes.size(); ++tube) {
        for (const auto &[name, value] : readings[tube])
            rack.run.tubes[tube].readings[name] = value;
    }
    for (const assay::Component &component : rack.method.components) {
        const auto lot = rack.lots.find(component.id);
        if (lot != rack.lots.end())
            rack.run.lots.push_back({component.id, lot->second.label.lot, lot->second.lastGood()});
    }
    return notebook.addRun(rack.run, rack.method, rack.analyst, rack.plan);
}

notebook::RunId workAtBench(notebook::Notebook &notebook, Rack &rack, const RackReadings &readings,
                            QDateTime &now, std::optional<int> untilTube)
{
    return BenchRun(notebook, rack, readings, now).work(untilTube);
}

} // namespace plateau::sampledata
