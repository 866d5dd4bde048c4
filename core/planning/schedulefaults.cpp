// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/schedule.h"

#include "core/evaluation/format.h"

#include <QCoreApplication>

#include <algorithm>

namespace plateau::planning {

using namespace Qt::StringLiterals;

namespace {

struct SchedulefaultsWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::Schedule)
};

/// Minutes and seconds, as a stopwatch shows them.
QString clockText(int time_s)
{
    const int rest_s = std::abs(time_s);
    return u"%1%2:%3"_s.arg(time_s < 0 ? u"-"_s : QString())
        .arg(rest_s / 60)
        .arg(rest_s % 60, 2, 10, QChar(u'0'));
}

QString nameOf(const Operation &operation)
{
    QStringList names(operation.names.begin(), operation.names.end());
    if (names.isEmpty())
        return SchedulefaultsWording::tr("mixing");
    return operation.kind == Operation::Kind::Read
               ? SchedulefaultsWording::tr("reading %1").arg(evaluation::andJoined(names))
               : SchedulefaultsWording::tr("adding %1").arg(evaluation::andJoined(names));
}

/// Finds the faults of one schedule.
class Inspection
{
public:
    Inspection(const Schedule &schedule, const Procedure &procedure)
        : m_schedule(schedule)
        , m_timed(procedure.timed)
    {
    }

    void inspectTube(int tube)
    {
        const Task *before = nullptr;
        for (std::size_t operation = 0; operation < m_timed.size(); ++operation) {
            const Task *task = onlyTask(tube, static_cast<int>(operation));
            if (task && task->end_s - task->start_s < m_timed[operation].handling_s)
                m_faults.push_back(SchedulefaultsWording::tr("Tube %1: %2 has %3, it needs %4.")
                                       .arg(tube + 1)
                                       .arg(nameOf(m_timed[operation]),
                                            clockText(task->end_s - task->start_s),
                                            clockText(m_timed[operation].handling_s)));
            if (task && before)
                inspectWait(*before, *task);
            before = task;
        }
    }

    /// A task that belongs to no tube or operation of the rack.
    void inspectStrangers(int tubes)
    {
        for (const Task &task : m_schedule.tasks) {
            if (task.tube < 0 || task.tube >= tubes || task.operation < 0 ||
                task.operation >= static_cast<int>(m_timed.size()))
                m_faults.push_back(SchedulefaultsWording::tr(
                                       "At %1 there is a task for tube %2, step %3, which this rack does "
                                       "not have.")
                                       .arg(clockText(task.start_s))
                                       .arg(task.tube + 1)
                                       .arg(task.operation + 1));
        }
    }

    void inspectHands(const std::vector<Span> &busy)
    {
        const std::vector<Task> &tasks = m_schedule.tasks;
        for (std::size_t one = 0; one < tasks.size(); ++one) {
            for (std::size_t other = one + 1; other < tasks.size(); ++other) {
                if (tasks[one].start_s < tasks[other].end_s && tasks[other].start_s < tasks[one].end_s)
                    m_faults.push_back(
                        SchedulefaultsWording::tr("Tube %1 and tube %2 both need the hands at %3.")
                            .arg(tasks[one].tube + 1)
                            .arg(tasks[other].tube + 1)
                            .arg(clockText(std::max(tasks[one].start_s, tasks[other].start_s))));
            }
            for (const Span &span : busy) {
                if (tasks[one].start_s < span.end_s && span.start_s < tasks[one].end_s)
                    m_faults.push_back(SchedulefaultsWording::tr(
                                           "Tube %1 needs the hands at %2, when the other rack does too.")
                                           .arg(tasks[one].tube + 1)
                                           .arg(clockText(std::max(tasks[one].start_s, span.start_s))));
            }
        }
    }

    std::vector<QString> faults() { return std::move(m_faults); }

private:
    const Task *onlyTask(int tube, int operation)
    {
        const auto is = [tube, operation](const Task &task) {
            return task.tube == tube && task.operation == operation;
        };
        const std::vector<Task> &tasks = m_schedule.tasks;
        const auto found = std::find_if(tasks.begin(), tasks.end(), is);
        const QString name = nameOf(m_timed[static_cast<std::size_t>(operation)]);
        if (found == tasks.end()) {
            m_faults.push_back(SchedulefaultsWording::tr("Tube %1: %2 is missing.").arg(tube + 1).arg(name));
            return nullptr;
        }
        if (std::find_if(found + 1, tasks.end(), is) != tasks.end())
            m_faults.push_back(
                SchedulefaultsWording::tr("Tube %1: %2 is there twice.").arg(tube + 1).arg(name));
        return &*found;
    }

    void inspectWait(const Task &before, const Task &after)
    {
        const Operation &operation = m_timed[static_cast<std::size_t>(before.operation)];
        const int wait_s = after.start_s - before.end_s;
        const QString next = nameOf(m_timed[static_cast<std::size_t>(after.operation)]);
        if (wait_s < operation.smallestWait_s)
            m_faults.push_back(
                SchedulefaultsWording::tr("Tube %1: %2 comes %3 after %4, at least %5 is needed.")
                    .arg(after.tube + 1)
                    .arg(next, clockText(wait_s), nameOf(operation), clockText(operation.smallestWait_s)));
        if (operation.largestWait_s && wait_s > *operation.largestWait_s)
            m_faults.push_back(
                SchedulefaultsWording::tr("Tube %1: %2 comes %3 after %4, at most %5 is allowed.")
                    .arg(after.tube + 1)
                    .arg(next, clockText(wait_s), nameOf(operation), clockText(*operation.largestWait_s)));
    }

    const Schedule &m_schedule;
    const std::vector<Operation> &m_timed;
    std::vector<QString> m_faults;
};

} // namespace

std::vector<QString> faultsOf(const Schedule &schedule, const Procedure &procedure, int tubes,
                              const std::vector<Span> &busy)
{
    Inspection inspection(schedule, procedure);
    inspection.inspectStrangers(tubes);
    for (int tube = 0; tube < tubes; ++tube)
        inspection.inspectTube(tube);
    inspection.inspectHands(busy);
    return inspection.faults();
}

} // namespace plateau::planning
