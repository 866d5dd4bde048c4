// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/plausibility.h"

#include "core/assay/label.h"

#include <QCoreApplication>

#include <algorithm>

namespace plateau::assay {

using namespace Qt::StringLiterals;

namespace {

struct PlausibilityWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::assay::Plausibility)
};

constexpr int never = -1;

QString stepPointer(int step)
{
    return pointerTo(u"/steps"_s, step);
}

/// Index of the first step of that kind that the condition holds for; never if there is none.
template <class Kind, class Condition> int firstStep(const Method &method, Condition condition)
{
    for (std::size_t i = 0; i < method.steps.size(); ++i) {
        const auto *step = std::get_if<Kind>(&method.steps[i]);
        if (step && condition(*step))
            return static_cast<int>(i);
    }
    return never;
}

int additionOf(const Method &method, const QString &component)
{
    return firstStep<AddStep>(method, [&](const AddStep &step) { return step.component == component; });
}

int stepOf(const Method &method, const QString &reading)
{
    return firstStep<ReadStep>(method, [&](const ReadStep &step) { return step.reading == reading; });
}

int lastReading(const Method &method)
{
    for (int i = static_cast<int>(method.steps.size()) - 1; i >= 0; --i) {
        if (std::holds_alternative<ReadStep>(method.steps[static_cast<std::size_t>(i)]))
            return i;
    }
    return never;
}

void checkWaits(const Method &method, Problems &problems)
{
    bool waited = true;
    for (std::size_t i = 0; i < method.steps.size(); ++i) {
        const Step &step = method.steps[i];
        if (std::holds_alternative<AddStep>(step))
            waited = false;
        else if (std::holds_alternative<WaitStep>(step))
            waited = true;
        else if (const auto *read = std::get_if<ReadStep>(&step); read && !waited)
            problems.push_back(
                warning(pointerTo(stepPointer(static_cast<int>(i)), u"read"_s),
                        PlausibilityWording::tr(
                            "takes %1 with no wait since the last addition; say how long to wait, "
                            "even where it is short")
                            .arg(quoted(read->reading))));
    }
}

void checkStarter(const Method &method, Problems &problems)
{
    const int start = additionOf(method, method.starter);
    const int firstRead = firstStep<ReadStep>(method, [](const ReadStep &) { return true; });
    if (start == never || firstRead == never)
        return;
    const QString pointer = pointerTo(stepPointer(start), u"add"_s);
    if (start < firstRead)
        problems.push_back(warning(
            pointer,
            PlausibilityWording::tr("starts the reaction before anything is read; read the tube first")));
    else if (start > lastReading(method))
        problems.push_back(warning(
            pointer,
            PlausibilityWording::tr("starts the reaction after the last reading; read the tube afterwards")));
}

void checkEnd(const Method &method, Problems &problems)
{
    const int last = lastReading(method);
    if (last == never || last + 1 >= static_cast<int>(method.steps.size()))
        return;
    if (additionOf(method, method.starter) > last)
        return; // said already
    problems.push_back(
        warning(stepPointer(last + 1),
                PlausibilityWording::tr("nothing is read after this step; add a reading or leave "
                                        "the step out")));
}

/// Whether anything goes into the tube between the two steps.
bool addsBetween(const Method &method, int from, int to)
{
    const auto begin = method.steps.begin();
    return std::any_of(begin + from, begin + to,
                       [](const Step &step) { return std::holds_alternative<AddStep>(step); });
}

void checkReadings(const Method &method, const Measurand &measurand, const QString &pointer,
                   Problems &problems)
{
    const QString later = laterReading(measurand.signal);
    const bool coupled = std::holds_alternative<CoupledIndicatorSignal>(measurand.signal);
    const QString place = pointerTo(pointer, coupled ? u"final"_s : u"to"_s);
    const int read = stepOf(method, later);
    const int sample = additionOf(method, method.sample);
    if (read != never && sample > read)
        problems.push_back(
            error(place, PlausibilityWording::tr("the reading %1 is taken before the sample is in the "
                                                 "tube; name one taken afterwards")
                             .arg(quoted(later))));
    const std::vector<QString> readings = readingsOf(measurand.signal);
    for (std::size_t i = 1; i < readings.size(); ++i) {
        const int from = stepOf(method, readings[i - 1]);
        const int to = stepOf(method, readings[i]);
        if (from != never && from < to && !addsBetween(method, from, to))
            problems.push_back(warning(
                pointer,
                PlausibilityWording::tr("nothing is added between %1 and %2, so nothing starts between them")
                    .arg(quoted(readings[i - 1]), quoted(readings[i]))));
    }
}

void checkMakingUp(const Method &method, Problems &problems)
{
    const auto sample = std::ranges::find(method.components, method.sample, &Component::id);
    const Component *diluent = findComponent(method, method.diluent);
    if (sample == method.components.end() || !sample->range_mL || !diluent)
        return;
    const QString pointer = pointerTo(
        pointerTo(pointerTo(u"/components"_s, sample - method.components.begin()), u"range_mL"_s), 1);
    constexpr double roundingSlack_mL = 1e-9;
    if (additionOf(method, method.diluent) == never)
        problems.push_back(warning(
            u"/diluent"_s,
            PlausibilityWording::tr("%1 is never added, so nothing makes up for another sample volume: "
                                    "the tube's volume changes with it")
                .arg(quoted(diluent->name))));
    else if (sample->range_mL->upper - sample->volume_mL > diluent->volume_mL + roundingSlack_mL)
        problems.push_back(warning(
            pointer,
            PlausibilityWording::tr("%1 mL of sample is more than %2 mL of %3 make up for: the tube's volume "
                                    "changes above %4 mL")
                .arg(shown(sample->range_mL->upper), shown(diluent->volume_mL), quoted(diluent->name),
                     shown(sample->volume_mL + diluent->volume_mL))));
}

} // namespace

void checkPlausibility(const Method &method, Problems &problems)
{
    checkWaits(method, problems);
    checkStarter(method, problems);
    checkEnd(method, problems);
    checkMakingUp(method, problems);
    for (std::size_t i = 0; i < method.measurands.size(); ++i)
        checkReadings(method, method.measurands[i],
                      pointerTo(pointerTo(u"/measurands"_s, static_cast<qsizetype>(i)), u"signal"_s),
                      problems);
    const Window &window = method.window;
    if (window.maxAbsorbance && window.maxSignal > *window.maxAbsorbance)
        problems.push_back(
            warning(u"/window/maxSignal"_s,
                    PlausibilityWording::tr("a signal of %1 is more than the photometer may show (%2)")
                        .arg(shown(window.maxSignal), shown(*window.maxAbsorbance))));
}

} // namespace plateau::assay
