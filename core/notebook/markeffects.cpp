// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/markstore.h"
#include "core/run/volumes.h"

#include <algorithm>

namespace plateau::notebook {

namespace {

using Content = run::Addition::Content;

std::optional<run::Addition> additionOf(const assay::Method &method, const run::Tube &planned,
                                        const Dose &dose)
{
    for (const run::Addition &addition : run::plannedAdditions(method, planned)) {
        if (addition.component == dose.component && (addition.content == Content::Spike) == dose.spike)
            return addition;
    }
    return std::nullopt;
}

/// The marks that say that a dose is done, as they count.
std::vector<const StoredMark *> doneMarks(const std::vector<StoredMark> &marks)
{
    std::vector<const StoredMark *> done;
    for (const StoredMark &mark : marks) {
        if (mark.kind == MarkKind::Done && doneMark(marks, mark.dose) == &mark)
            done.push_back(&mark);
    }
    return done;
}

/// Another volume of the spike leaves the diluent as it was planned.
void placeSpike(run::Tube &tube, const assay::Method &method, const run::Tube &planned, double volume_mL)
{
    tube.spike->volume_mL = volume_mL;
    if (const auto diluent = plannedVolume_mL(method, planned, {0, method.diluent, false}))
        tube.pipetted_mL.try_emplace(method.diluent, *diluent);
}

void placeVolume(run::Run &run, const assay::Method &method, const run::Run &planned, const StoredMark &mark)
{
    if (mark.volume_mL == mark.planned_mL)
        return;
    const auto index = static_cast<std::size_t>(mark.dose.tube);
    run::Tube &tube = run.tubes.at(index);
    if (!mark.dose.spike)
        tube.pipetted_mL[mark.dose.component] = mark.volume_mL;
    else if (tube.spike)
        placeSpike(tube, method, planned.tubes[index], mark.volume_mL);
}

/// The lots that were taken stand in place of those that were planned, but for a component of which some dose
/// says no lot: it may have come from the planned one.
void placeLots(run::Run &run, const assay::Method &method, const std::vector<const StoredMark *> &done)
{
    std::vector<run::LotUse> taken;
    std::vector<QString> unsaid;
    for (const StoredMark *mark : done) {
        const QString component =
            takenFrom(method, run.tubes.at(static_cast<std::size_t>(mark->dose.tube)), mark->dose);
        const run::LotUse use{component, mark->lotName, mark->lotExpires};
        if (!mark->lot)
            unsaid.push_back(component);
        else if (std::ranges::find(taken, use) == taken.end())
            taken.push_back(use);
    }
    std::erase_if(run.lots, [&](const run::LotUse &planned) {
        const bool said = std::ranges::find(taken, planned.component, &run::LotUse::component) != taken.end();
        return said && std::ranges::find(unsaid, planned.component) == unsaid.end();
    });
    for (const run::LotUse &use : taken) {
        const bool known = std::ranges::any_of(run.lots, [&](const run::LotUse &planned) {
            return planned.component == use.component && planned.lot == use.lot;
        });
        if (!known)
            run.lots.push_back(use);
    }
}

} // namespace

std::optional<double> plannedVolume_mL(const assay::Method &method, const run::Tube &planned,
                                       const Dose &dose)
{
    const auto addition = additionOf(method, planned, dose);
    return addition ? std::optional(addition->volume_mL) : std::nullopt;
}

QString takenFrom(const assay::Method &method, const run::Tube &planned, const Dose &dose)
{
    const auto addition = additionOf(method, planned, dose);
    if (!addition)
        return {};
    switch (addition->content) {
    case Content::Component:
        return dose.component == method.sample ? QString() : dose.component;
    case Content::Diluent:
        return method.diluent;
    case Content::Standard:
    case Content::Spike:
        break;
    }
    return {};
}

void placeMarks(run::Run &run, const assay::Method &method, const std::vector<StoredMark> &marks,
                MarkId newest)
{
    std::vector<StoredMark> counted;
    std::ranges::copy_if(marks, std::back_inserter(counted),
                         [&](const StoredMark &mark) { return mark.id <= newest; });
    if (counted.empty())
        return;
    const run::Run planned = run;
    for (std::size_t tube = 0; tube < run.tubes.size(); ++tube) {
        if (const StoredMark *spoilt = spoiltMark(counted, static_cast<int>(tube)))
            run.tubes[tube].spoilt = spoilt->note;
    }
    const std::vector<const StoredMark *> done = doneMarks(counted);
    placeLots(run, method, done);
    for (const StoredMark *mark : done)
        placeVolume(run, method, planned, *mark);
}

} // namespace plateau::notebook
