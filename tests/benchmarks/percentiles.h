// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <ctime>
#include <vector>

namespace plateau::test {

/// Times single turns of a loop and adds what most of them took to the benchmark's counters, in ms: what a
/// person sees is not the mean but the turn that comes late. cpu_: the thread's own time, which says what the
/// code costs on a machine that is busy with other things.
class Percentiles
{
public:
    template <class Work> void time(Work work)
    {
        const auto before = std::chrono::steady_clock::now();
        const double cpuBefore_ms = threadTime_ms();
        work();
        m_cpu_ms.push_back(threadTime_ms() - cpuBefore_ms);
        const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - before;
        m_took_ms.push_back(took.count());
    }

    void report(benchmark::State &state)
    {
        state.counters["p50_ms"] = at(m_took_ms, 0.50);
        state.counters["p99_ms"] = at(m_took_ms, 0.99);
        state.counters["cpu_p50_ms"] = at(m_cpu_ms, 0.50);
        state.counters["cpu_p99_ms"] = at(m_cpu_ms, 0.99);
    }

private:
    static double threadTime_ms()
    {
        timespec time{};
        clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
        return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_nsec) / 1e6;
    }

    /// The smallest that no more than that part of the turns exceeds.
    static double at(std::vector<double> &times_ms, double part)
    {
        std::ranges::sort(times_ms);
        const auto rank = static_cast<size_t>(part * static_cast<double>(times_ms.size()) + 0.999999);
        return times_ms.empty() ? 0 : times_ms[std::max<size_t>(rank, 1) - 1];
    }

    std::vector<double> m_took_ms;
    std::vector<double> m_cpu_ms;
};

} // namespace plateau::test
