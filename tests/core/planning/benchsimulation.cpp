// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/planning/benchsimulation.h"

#include <algorithm>
#include <map>

namespace plateau::test {

using namespace plateau::planning;

namespace {

/// What has been done to one tube.
struct Watch {
    int done = 0;
    int putDownAt_s = 0;
};

std::string atSecond(int second)
{
    return " at second " + std::to_string(second);
}

std::string beginTask(const Procedure &procedure, const Watch &watch, const Task &task)
{
    if (task.operation != watch.done)
        return "step out of turn" + atSecond(task.start_s);
    if (task.operation == 0)
        return {};
    const Operation &before = procedure.timed[static_cast<std::size_t>(task.operation - 1)];
    const int waited_s = task.start_s - watch.putDownAt_s;
    if (waited_s < before.smallestWait_s)
        return "too early" + atSecond(task.start_s);
    if (before.largestWait_s && waited_s > *before.largestWait_s)
        return "too late" + atSecond(task.start_s);
    return {};
}

/// Seconds in which the hands are taken.
class Diary
{
public:
    explicit Diary(std::size_t seconds)
        : m_taken(seconds, 0)
    {
    }
    bool isFree(int from_s, int seconds) const
    {
        for (int second = from_s; second < from_s + seconds; ++second) {
            if (m_taken.at(static_cast<std::size_t>(second)))
                return false;
        }
        return true;
    }
    void add(int from_s, int seconds, int hands)
    {
        for (int second = from_s; second < from_s + seconds; ++second)
            m_taken.at(static_cast<std::size_t>(second)) += hands;
    }
    int lastTaken() const
    {
        const auto last =
            std::find_if(m_taken.rbegin(), m_taken.rend(), [](int hands) { return hands != 0; });
        return static_cast<int>(m_taken.rend() - last);
    }

private:
    std::vector<int> m_taken;
};

class Trial
{
public:
    Trial(const Procedure &procedure, int tubes, int interval_s, const Bench &bench)
        : m_timed(procedure.timed)
        , m_tubes(tubes)
        , m_interval_s(interval_s)
        , m_bench(bench)
        , m_diary(20000)
    {
        for (const Span &span : bench.busy)
            m_diary.add(span.start_s, span.end_s - span.start_s, 1);
        for (const Operation &operation : m_timed) {
            bool onGrid = !operation.largestWait_s;
            for (int wait_s = operation.smallestWait_s; !onGrid && wait_s <= *operation.largestWait_s;
                 ++wait_s)
                onGrid = (operation.handling_s + wait_s) % 5 == 0;
            if (!onGrid)
                m_step_s = 1;
        }
    }

    std::vector<int> run()
    {
        return place(0, m_bench.earliestStart_s, std::max(m_bench.earliestStart_s, m_diary.lastTaken()))
                   ? m_starts
                   : std::vector<int>();
    }

private:
    bool place(std::size_t operation, int from_s, int to_s)
    {
        const int handling_s = m_timed[operation].handling_s;
        for (int start_s = (from_s + m_step_s - 1) / m_step_s * m_step_s; start_s <= to_s + m_step_s;
             start_s += m_step_s) {
            if (start_s > to_s && operation > 0 && m_timed[operation - 1].largestWait_s)
                break;
            int tubes = 0;
            while (tubes < m_tubes && m_diary.isFree(start_s + tubes * m_interval_s, handling_s))
                m_diary.add(start_s + tubes++ * m_interval_s, handling_s, 1);
            m_starts.push_back(start_s);
            if (tubes == m_tubes && inTime(start_s + handling_s) && placeNext(operation))
                return true;
            m_starts.pop_back();
            while (tubes-- > 0)
                m_diary.add(start_s + tubes * m_interval_s, handling_s, -1);
        }
        return false;
    }

    bool placeNext(std::size_t operation)
    {
        if (operation + 1 == m_timed.size())
            return true;
        const Operation &here = m_timed[operation];
        const int end_s = m_starts.back() + here.handling_s;
        const int soonest_s = end_s + here.smallestWait_s;
        return place(operation + 1, soonest_s,
                     here.largestWait_s ? end_s + *here.largestWait_s
                                        : std::max(soonest_s, m_diary.lastTaken()));
    }

    bool inTime(int end_s) const
    {
        return !m_bench.latestEnd_s || end_s + (m_tubes - 1) * m_interval_s <= *m_bench.latestEnd_s;
    }

    const std::vector<Operation> &m_timed;
    int m_tubes;
    int m_interval_s;
    const Bench &m_bench;
    Diary m_diary;
    int m_step_s = 5;
    std::vector<int> m_starts;
};

} // namespace

std::vector<std::string> workedAtTheBench(const Schedule &schedule, const Procedure &procedure, int tubes,
                                          const std::vector<Span> &busy)
{
    std::vector<std::string> faults;
    std::map<int, std::vector<Task>> beginning;
    int lastSecond = 0;
    for (const Task &task : schedule.tasks) {
        beginning[task.start_s].push_back(task);
        lastSecond = std::max(lastSecond, task.end_s);
    }
    std::vector<Watch> watches(static_cast<std::size_t>(tubes));
    int handsFreeAt_s = 0;
    for (int second = 0; second <= lastSecond; ++second) {
        const bool elsewhere = std::any_of(busy.begin(), busy.end(), [second](const Span &span) {
            return span.start_s <= second && second < span.end_s;
        });
        if (elsewhere && second < handsFreeAt_s)
            faults.push_back("hands at both racks" + atSecond(second));
        for (const Task &task : beginning[second]) {
            Watch &watch = watches.at(static_cast<std::size_t>(task.tube));
            if (const std::string fault = beginTask(procedure, watch, task); !fault.empty())
                faults.push_back("tube " + std::to_string(task.tube) + ": " + fault);
            if (second < handsFreeAt_s || (elsewhere && task.end_s > second))
                faults.push_back("a third hand" + atSecond(second));
            handsFreeAt_s = second + procedure.timed[static_cast<std::size_t>(task.operation)].handling_s;
            watch = {watch.done + 1, handsFreeAt_s};
        }
    }
    for (const Watch &watch : watches) {
        if (watch.done != static_cast<int>(procedure.timed.size()))
            faults.push_back("a tube was not finished");
    }
    return faults;
}

std::vector<int> startsByTrial(const Procedure &procedure, int tubes, int interval_s, const Bench &bench)
{
    return Trial(procedure, tubes, interval_s, bench).run();
}

} // namespace plateau::test
