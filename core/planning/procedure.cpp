// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/procedure.h"

#include <algorithm>
#include <cmath>

namespace plateau::planning {

namespace {

/// Waits come from minutes in decimal fractions: 0.1 min is 6 s, not a hair more.
constexpr double hair_s = 1e-6;

int secondsUp(double seconds)
{
    return static_cast<int>(std::ceil(seconds - hair_s));
}

int secondsDown(double seconds)
{
    return static_cast<int>(std::floor(seconds + hair_s));
}

bool isAddition(const assay::Step &step)
{
    return std::holds_alternative<assay::AddStep>(step);
}

/// Index of the step that the timed part begins with; the number of steps if there is nothing to time.
std::size_t beginOfTimed(const std::vector<assay::Step> &steps)
{
    const auto first = std::find_if(steps.begin(), steps.end(), isAddition);
    const auto timed = std::find_if(first, steps.end(), [](const assay::Step &step) {
        return std::holds_alternative<assay::WaitStep>(step) || std::holds_alternative<assay::ReadStep>(step);
    });
    if (timed == steps.end())
        return steps.size();
    const auto last = std::find_if(std::make_reverse_iterator(timed), steps.rend(), isAddition);
    return static_cast<std::size_t>(last.base() - steps.begin()) - 1;
}

/// Puts operations together step by step.
class Assembly
{
public:
    Assembly(const assay::Method &method, const HandlingTimes &handling, bool withSpikes)
        : m_method(method)
        , m_handling(handling)
        , m_withSpikes(withSpikes)
    {
    }

    void take(const assay::Step &step)
    {
        if (const auto *add = std::get_if<assay::AddStep>(&step)) {
            const bool twice = m_withSpikes && add->component == m_method.sample;
            hands(Operation::Kind::Add, (twice ? 2 : 1) * m_handling.addition_s);
            m_operations.back().names.push_back(add->component);
        } else if (std::holds_alternative<assay::MixStep>(step)) {
            hands(Operation::Kind::Add, m_handling.mix_s);
        } else if (const auto *wait = std::get_if<assay::WaitStep>(&step)) {
            pause(wait->wait_min);
        } else if (const auto *read = std::get_if<assay::ReadStep>(&step)) {
            reading(read->reading);
        }
    }

    /// What comes next is an operation of its own.
    void putDown() { m_continues = false; }

    std::vector<Operation> finished()
    {
        if (!m_operations.empty()) {
            m_operations.back().smallestWait_s = 0;
            m_operations.back().largestWait_s.reset();
        }
        return std::move(m_operations);
    }

private:
    void hands(Operation::Kind kind, double seconds)
    {
        if (!m_continues || m_operations.empty() || m_operations.back().kind != kind) {
            m_operations.push_back({kind, {}, 0, 0, {}});
            m_seconds = 0;
        }
        m_seconds += seconds;
        m_operations.back().handling_s = std::max(1, secondsUp(m_seconds));
        m_continues = true;
    }

    void reading(const QString &name)
    {
        int times = 1;
        if (m_method.extrapolate && m_method.extrapolate->reading == name)
            times = std::max(1, m_method.extrapolate->lastReadings);
        for (int time = 0; time < times; ++time) {
            if (time > 0)
                m_operations.back().smallestWait_s = seriesSpacing_s;
            m_continues = false;
            hands(Operation::Kind::Read, m_handling.reading_s);
            m_operations.back().names = {name};
        }
        m_continues = false;
    }

    void pause(const assay::Interval &wait_min)
    {
        m_continues = false;
        if (m_operations.empty())
            return;
        Operation &before = m_operations.back();
        const int smallest_s = std::max(0, secondsUp(60 * wait_min.lower));
        // Two waits in a row are one.
        before.largestWait_s = before.largestWait_s.value_or(before.smallestWait_s) +
                               std::max(smallest_s, secondsDown(60 * wait_min.upper));
        before.smallestWait_s += smallest_s;
    }

    const assay::Method &m_method;
    const HandlingTimes &m_handling;
    bool m_withSpikes;
    std::vector<Operation> m_operations;
    double m_seconds = 0;
    bool m_continues = false;
};

} // namespace

Procedure procedureOf(const assay::Method &method, const HandlingTimes &handling, bool withSpikes)
{
    Assembly setUp(method, handling, withSpikes);
    Assembly timed(method, handling, withSpikes);
    const std::size_t begin = beginOfTimed(method.steps);
    for (std::size_t step = 0; step < method.steps.size(); ++step) {
        if (step < begin) {
            // Made in rounds, one component across all tubes.
            if (isAddition(method.steps[step]))
                setUp.putDown();
            setUp.take(method.steps[step]);
        } else {
            timed.take(method.steps[step]);
        }
    }
    return {setUp.finished(), timed.finished()};
}

} // namespace plateau::planning
