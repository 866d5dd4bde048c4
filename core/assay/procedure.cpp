// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/procedure.h"

#include "core/assay/label.h"
#include "core/assay/limits.h"

#include <QCoreApplication>
#include <QSet>

#include <algorithm>

namespace plateau::assay {

using namespace Qt::StringLiterals;

namespace {

struct ProcedureWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::assay::Procedure)
};

/// Walks the steps and remembers what is in the tube and what has been read.
class Walk
{
public:
    Walk(const Method &method, Problems &problems)
        : m_method(method)
        , m_problems(problems)
    {
        for (std::size_t i = 0; i < method.steps.size(); ++i) {
            m_pointer = pointerTo(u"/steps"_s, static_cast<qsizetype>(i));
            std::visit([this](const auto &step) { take(step); }, method.steps[i]);
        }
    }

    bool added(const QString &component) const { return m_added.contains(component); }
    double volume_mL() const { return m_volume_mL; }
    bool hasRead() const { return !m_read.isEmpty(); }

private:
    void complain(const QString &key, const QString &message)
    {
        m_problems.push_back(error(pointerTo(m_pointer, key), message));
    }

    void take(const AddStep &step)
    {
        const Component *component = findComponent(m_method, step.component);
        if (!component)
            complain(
                u"add"_s,
                ProcedureWording::tr("adds %1, which is none of the components").arg(quoted(step.component)));
        else if (added(step.component))
            complain(u"add"_s, ProcedureWording::tr(
                                   "adds %1 a second time; list a second portion as a component of its own")
                                   .arg(quoted(component->name)));
        else
            m_volume_mL += component->volume_mL;
        m_added.insert(step.component);
    }

    void take(const MixStep &) {}

    void take(const WaitStep &step)
    {
        checkInterval(m_problems, pointerTo(m_pointer, u"wait_min"_s), step.wait_min, 0, limit::wait_min,
                      u"min"_s);
        if (step.temperature_C)
            checkInterval(m_problems, pointerTo(m_pointer, u"temperature_C"_s), *step.temperature_C, 0, 100,
                          u"°C"_s);
    }

    void take(const ReadStep &step)
    {
        checkLabel(m_problems, pointerTo(m_pointer, u"read"_s), step.reading,
                   ProcedureWording::tr("the reading's name"));
        if (m_added.isEmpty())
            complain(u"read"_s,
                     ProcedureWording::tr("reads %1 before anything is in the tube; add something first")
                         .arg(quoted(step.reading)));
        if (m_read.contains(step.reading))
            complain(u"read"_s, ProcedureWording::tr(
                                    "takes the reading %1 a second time; give each reading its own name")
                                    .arg(quoted(step.reading)));
        m_read.insert(step.reading);
    }

    const Method &m_method;
    Problems &m_problems;
    QString m_pointer;
    QSet<QString> m_added;
    QSet<QString> m_read;
    double m_volume_mL = 0;
};

/// True if the part names a component.
bool checkPart(const Method &method, const QString &key, const QString &id, Problems &problems)
{
    if (findComponent(method, id))
        return true;
    problems.push_back(
        error(pointerTo({}, key),
              id.isEmpty()
                  ? ProcedureWording::tr("no component plays this part; say which one does")
                  : ProcedureWording::tr("must be the id of a component, and %1 is none").arg(quoted(id))));
    return false;
}

void checkParts(const Method &method, const Walk &walk, Problems &problems)
{
    if (checkPart(method, u"sample"_s, method.sample, problems) && !walk.added(method.sample))
        problems.push_back(
            error(u"/sample"_s, ProcedureWording::tr("the sample is never added; give it a step")));
    checkPart(method, u"diluent"_s, method.diluent, problems);
    if (checkPart(method, u"starter"_s, method.starter, problems) && !walk.added(method.starter))
        problems.push_back(
            error(u"/starter"_s, ProcedureWording::tr("the starter is never added; give it a step")));
    if (!method.diluent.isEmpty() && method.diluent == method.sample)
        problems.push_back(
            error(u"/diluent"_s, ProcedureWording::tr("the sample cannot be its own diluent")));
    if (!method.starter.isEmpty() && (method.starter == method.sample || method.starter == method.diluent))
        problems.push_back(
            error(u"/starter"_s, ProcedureWording::tr("the starter must be a component of its own, neither "
                                                      "sample nor diluent")));
    for (std::size_t i = 0; i < method.components.size(); ++i) {
        const QString &id = method.components[i].id;
        if (!walk.added(id) && id != method.sample && id != method.starter && id != method.diluent)
            problems.push_back(
                warning(pointerTo(u"/components"_s, static_cast<qsizetype>(i)),
                        ProcedureWording::tr("%1 is never added").arg(quoted(method.components[i].name))));
    }
}

/// Places of the readings in the order of the steps; -1 for one that is never taken, which is a problem.
int placeOf(const std::vector<QString> &order, const QString &reading, const QString &pointer,
            Problems &problems)
{
    const auto found = std::ranges::find(order, reading);
    if (found != order.end())
        return static_cast<int>(found - order.begin());
    problems.push_back(
        error(pointer, ProcedureWording::tr("the reading %1 is never taken; name one of the steps' readings")
                           .arg(quoted(reading))));
    return -1;
}

std::vector<QString> keysOf(const Signal &signal)
{
    if (std::holds_alternative<DifferenceSignal>(signal))
        return {u"from"_s, u"to"_s};
    return {u"base"_s, u"middle"_s, u"final"_s};
}

void checkSignal(const Signal &signal, const std::vector<QString> &order, const QString &pointer,
                 Problems &problems)
{
    const std::vector<QString> readings = readingsOf(signal);
    const std::vector<QString> keys = keysOf(signal);
    int earlier = -1;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const QString place = pointerTo(pointer, keys[i]);
        const int taken = placeOf(order, readings[i], place, problems);
        if (i > 0 && taken >= 0 && earlier >= 0 && taken <= earlier)
            problems.push_back(
                error(place, ProcedureWording::tr("must be read after %1 (%2), and %3 is not")
                                 .arg(quoted(readings[i - 1]), keys[i - 1], quoted(readings[i]))));
        earlier = taken;
    }
}

} // namespace

void checkProcedure(const Method &method, Problems &problems)
{
    const Walk walk(method, problems);
    checkParts(method, walk, problems);
    if (!walk.hasRead())
        problems.push_back(
            error(u"/steps"_s, ProcedureWording::tr("a method needs at least one step that reads")));
    if (walk.volume_mL() > limit::tubeVolume_mL)
        problems.push_back(error(
            u"/steps"_s, ProcedureWording::tr("the tube holds %1 mL in the end; at most %2 mL are allowed")
                             .arg(shown(walk.volume_mL()), shown(limit::tubeVolume_mL))));
}

void checkSignals(const Method &method, Problems &problems)
{
    const std::vector<QString> order = readingsInOrder(method);
    for (std::size_t i = 0; i < method.measurands.size(); ++i)
        checkSignal(method.measurands[i].signal, order,
                    pointerTo(pointerTo(u"/measurands"_s, static_cast<qsizetype>(i)), u"signal"_s), problems);
    if (!method.extrapolate)
        return;
    placeOf(order, method.extrapolate->reading, u"/extrapolate/reading"_s, problems);
    if (method.extrapolate->lastReadings < 2)
        problems.push_back(error(u"/extrapolate/lastReadings"_s,
                                 ProcedureWording::tr("a straight line needs at least 2 readings, not %1")
                                     .arg(method.extrapolate->lastReadings)));
}

} // namespace plateau::assay
