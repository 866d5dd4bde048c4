// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/run/volumes.h"

#include <algorithm>

namespace plateau::run {

namespace {

double defaultSampleVolume_mL(const assay::Method &method)
{
    const assay::Component *sample = assay::findComponent(method, method.sample);
    return sample ? sample->volume_mL : 0;
}

double spikeVolume_mL(const Tube &tube)
{
    return tube.spike ? tube.spike->volume_mL : 0;
}

Addition sampleAddition(const assay::Method &method, const Tube &tube)
{
    switch (tube.role) {
    case Role::Blank:
        return {method.sample, Addition::Content::Diluent, defaultSampleVolume_mL(method)};
    case Role::Standard:
        return {method.sample, Addition::Content::Standard, plannedSampleVolume_mL(method, tube)};
    case Role::Control:
        if (!tube.standard.isEmpty())
            return {method.sample, Addition::Content::Standard, plannedSampleVolume_mL(method, tube)};
        break;
    case Role::SampleBlank:
    case Role::Sample:
    case Role::Spiked:
        break;
    }
    return {method.sample, Addition::Content::Component, plannedSampleVolume_mL(method, tube)};
}

} // namespace

double plannedSampleVolume_mL(const assay::Method &method, const Tube &tube)
{
    if (tube.role == Role::Blank)
        return 0;
    return tube.sampleVolume_mL.value_or(defaultSampleVolume_mL(method));
}

double sampleVolume_mL(const assay::Method &method, const Tube &tube)
{
    const auto pipetted = tube.pipetted_mL.find(method.sample);
    if (tube.role == Role::Blank || pipetted == tube.pipetted_mL.end())
        return plannedSampleVolume_mL(method, tube);
    return pipetted->second;
}

std::vector<Addition> additions(const assay::Method &method, const Tube &tube)
{
    std::vector<Addition> added = plannedAdditions(method, tube);
    for (Addition &addition : added) {
        const auto pipetted = tube.pipetted_mL.find(addition.component);
        if (addition.content != Addition::Content::Spike && pipetted != tube.pipetted_mL.end())
            addition.volume_mL = pipetted->second;
    }
    return added;
}

std::vector<Addition> plannedAdditions(const assay::Method &method, const Tube &tube)
{
    // What the sample takes beyond its default, and the spike, the diluent has to give up.
    double surplus_mL = spikeVolume_mL(tube);
    if (tube.role != Role::Blank)
        surplus_mL += plannedSampleVolume_mL(method, tube) - defaultSampleVolume_mL(method);

    std::vector<Addition> added;
    for (const assay::Step &step : method.steps) {
        const auto *add = std::get_if<assay::AddStep>(&step);
        if (!add)
            continue;
        const assay::Component *component = assay::findComponent(method, add->component);
        if (!component)
            continue;
        if (component->id == method.sample) {
            added.push_back(sampleAddition(method, tube));
            if (tube.spike)
                added.push_back({method.sample, Addition::Content::Spike, tube.spike->volume_mL});
        } else if (component->id == method.diluent) {
            const double volume_mL = std::max(0.0, component->volume_mL - surplus_mL);
            added.push_back({component->id, Addition::Content::Diluent, volume_mL});
        } else if (component->id == method.starter && tube.role == Role::SampleBlank) {
            added.push_back({component->id, Addition::Content::Diluent, component->volume_mL});
        } else {
            added.push_back({component->id, Addition::Content::Component, component->volume_mL});
        }
    }
    return added;
}

double volumeAt_mL(const assay::Method &method, const Tube &tube, const QString &reading)
{
    const std::vector<Addition> added = additions(method, tube);
    double volume_mL = 0;
    for (const assay::Step &step : method.steps) {
        if (const auto *add = std::get_if<assay::AddStep>(&step)) {
            for (const Addition &addition : added) {
                if (addition.component == add->component)
                    volume_mL += addition.volume_mL;
            }
        } else if (const auto *read = std::get_if<assay::ReadStep>(&step); read && read->reading == reading) {
            return volume_mL;
        }
    }
    return 0;
}

} // namespace plateau::run
