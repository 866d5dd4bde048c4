// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/plan/schedulepicture.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct SchedulePictureWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::SchedulePicture)
};

QString operationName(const planning::Operation &operation, const assay::Method &method)
{
    if (operation.kind == planning::Operation::Kind::Read)
        return operation.names.empty() ? QString() : operation.names.front();
    QStringList names;
    for (const QString &id : operation.names) {
        const assay::Component *component = assay::findComponent(method, id);
        names << (component ? component->name : id);
    }
    return names.isEmpty() ? SchedulePictureWords::tr("mix") : names.join(u", "_s);
}

TimeRow rowOf(int tube, const QString &name, const planning::Schedule &schedule,
              const planning::Procedure &procedure, const assay::Method &method)
{
    TimeRow row{name, {}};
    for (const planning::Task &task : schedule.tasks) {
        if (task.tube != tube)
            continue;
        const planning::Operation &operation = procedure.timed[static_cast<std::size_t>(task.operation)];
        const auto kind =
            operation.kind == planning::Operation::Kind::Read ? TimeBar::Kind::Read : TimeBar::Kind::Add;
        if (!row.bars.empty() && row.bars.back().end_s < task.start_s)
            row.bars.push_back({TimeBar::Kind::Wait, row.bars.back().end_s, task.start_s, {}});
        row.bars.push_back({kind, task.start_s, task.end_s, operationName(operation, method)});
    }
    return row;
}

TimeRack rackOf(const QString &title, const planning::Schedule &schedule,
                const planning::Procedure &procedure, const assay::Method &method, const QStringList &names)
{
    TimeRack rack{title, {}};
    int tubes = 0;
    for (const planning::Task &task : schedule.tasks)
        tubes = std::max(tubes, task.tube + 1);
    for (int tube = 0; tube < tubes; ++tube) {
        const QString number = QString::number(tube + 1);
        const QString name = tube < names.size() ? u"%1  %2"_s.arg(number, names[tube]) : number;
        rack.rows.push_back(rowOf(tube, name, schedule, procedure, method));
    }
    return rack;
}

} // namespace

TimeChartData pictureOf(const Feasibility &feasibility, const assay::Method &method, const QStringList &names,
                        const assay::Method *secondMethod)
{
    TimeChartData data;
    if (!feasibility.schedule)
        return data;
    const bool two = feasibility.second && secondMethod;
    data.racks.push_back(rackOf(two ? SchedulePictureWords::tr("This rack") : QString(),
                                *feasibility.schedule, feasibility.procedure, method, names));
    if (two)
        data.racks.push_back(rackOf(SchedulePictureWords::tr("Second rack"), *feasibility.second,
                                    feasibility.secondProcedure, *secondMethod, {}));
    for (const planning::Span &span : feasibility.free)
        data.free.push_back({span.start_s, span.end_s});
    return data;
}

} // namespace plateau::ui
