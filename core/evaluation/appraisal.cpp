// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/appraisal.h"

#include "core/assay/label.h"
#include "core/assay/soundness.h"
#include "core/run/reagent.h"
#include "core/run/volumes.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <set>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

namespace {

struct AppraisalWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::evaluation::Appraisal)
};

constexpr double quantificationPerDetection = 10 / 3.3;

run::Tube tubeWith(std::optional<double> sampleVolume_mL)
{
    run::Tube tube;
    tube.sampleVolume_mL = sampleVolume_mL;
    return tube;
}

std::optional<double> factor_g_per_L(const assay::Method &method, const assay::Measurand &measurand,
                                     int wavelength_nm, const run::Tube &tube)
{
    const auto absorptivity = assay::absorptivity(method, wavelength_nm);
    if (!absorptivity)
        return std::nullopt;
    const double path_cm = method.pathLength_mm / 10;
    const double volume_mL = run::volumeAt_mL(method, tube, assay::laterReading(measurand.signal));
    const double factor =
        volume_mL * measurand.molarMass_g_per_mol /
        (*absorptivity * path_cm * run::sampleVolume_mL(method, tube) * measurand.chromophorePerMolecule);
    return std::isfinite(factor) && factor > 0 ? std::optional(factor) : std::nullopt;
}

std::vector<WavelengthFactor> factorsOf(const assay::Method &method)
{
    std::set<int> wavelengths_nm;
    for (const auto &[wavelength_nm, value] : method.absorptivity_L_per_mol_cm)
        wavelengths_nm.insert(wavelength_nm);
    if (assay::absorptivity(method, method.wavelength_nm))
        wavelengths_nm.insert(method.wavelength_nm);
    std::vector<WavelengthFactor> factors;
    for (const int wavelength_nm : wavelengths_nm) {
        WavelengthFactor row{wavelength_nm, {}};
        for (const assay::Measurand &measurand : method.measurands)
            row.factors_g_per_L.push_back(factor_g_per_L(method, measurand, wavelength_nm, tubeWith({})));
        factors.push_back(std::move(row));
    }
    return factors;
}

std::vector<double> volumesOf(const assay::Method &method)
{
    const assay::Component *sample = assay::findComponent(method, method.sample);
    return sample ? usualSampleVolumes_mL(*sample) : std::vector<double>();
}

double volumeAtLastReading_mL(const assay::Method &method, const run::Tube &tube)
{
    const std::vector<QString> readings = assay::readingsInOrder(method);
    return readings.empty() ? 0 : run::volumeAt_mL(method, tube, readings.back());
}

VolumeRange rangeAt(const assay::Method &method, double sampleVolume_mL)
{
    const run::Tube tube = tubeWith(sampleVolume_mL);
    VolumeRange row;
    row.sampleVolume_mL = sampleVolume_mL;
    row.tubeVolume_mL = volumeAtLastReading_mL(method, tube);
    constexpr double roundingSlack_mL = 1e-9;
    row.madeUp =
        std::abs(row.tubeVolume_mL - volumeAtLastReading_mL(method, tubeWith({}))) < roundingSlack_mL;
    const assay::Window &window = method.window;
    for (const assay::Measurand &measurand : method.measurands) {
        const auto factor = factor_g_per_L(method, measurand, method.wavelength_nm, tube);
        const bool known = factor && window.maxSignal > window.minSignal;
        row.ranges.push_back(
            known ? std::optional(ConcentrationRange{window.minSignal * *factor, window.maxSignal * *factor})
                  : std::nullopt);
    }
    return row;
}

void addLimits(const assay::Method &method, const AppraisalInputs &inputs, Appraisal &appraisal)
{
    const double smallest = inputs.smallestAbsorbance;
    appraisal.quantificationByWindow = method.window.minSignal > 0;
    appraisal.quantificationSignal =
        appraisal.quantificationByWindow ? method.window.minSignal : smallest * quantificationPerDetection;
    if (appraisal.quantificationByWindow && method.window.minSignal < smallest)
        appraisal.remarks.push_back(assay::warning(
            u"/window/minSignal"_s, AppraisalWording::tr("the window starts at %1, below the smallest "
                                                         "difference in absorbance that can be resolved (%2)")
                                        .arg(assay::shown(method.window.minSignal), assay::shown(smallest))));
    const std::vector<double> volumes = volumesOf(method);
    for (const assay::Measurand &measurand : method.measurands) {
        const auto factor = volumes.empty() ? std::nullopt
                                            : factor_g_per_L(method, measurand, method.wavelength_nm,
                                                             tubeWith(volumes.back()));
        appraisal.limits.push_back(
            factor && smallest > 0
                ? std::optional(Limits{smallest * *factor, appraisal.quantificationSignal * *factor})
                : std::nullopt);
    }
}

std::vector<double> volumesAfterSteps_mL(const assay::Method &method)
{
    const std::vector<run::Addition> added = run::additions(method, run::Tube{});
    std::vector<double> volumes_mL;
    double volume_mL = 0;
    for (const assay::Step &step : method.steps) {
        if (const auto *add = std::get_if<assay::AddStep>(&step)) {
            const auto found = std::ranges::find(added, add->component, &run::Addition::component);
            volume_mL += found == added.end() ? 0 : found->volume_mL;
        }
        volumes_mL.push_back(volume_mL);
    }
    return volumes_mL;
}

std::vector<ComponentNeed> needsOf(const assay::Method &method, const AppraisalInputs &inputs)
{
    std::vector<ComponentNeed> needs;
    for (const assay::Component &component : method.components) {
        if (component.id == method.sample)
            continue;
        ComponentNeed need{component.id, component.volume_mL, {}};
        const auto bottle = inputs.bottle_mL.find(component.id);
        if (bottle != inputs.bottle_mL.end())
            need.tubes = run::tubesServed(bottle->second, component.volume_mL);
        needs.push_back(need);
    }
    return needs;
}

} // namespace

std::vector<double> usualSampleVolumes_mL(const assay::Component &sample)
{
    if (!(sample.volume_mL > 0))
        return {};
    std::set<double> volumes{sample.volume_mL};
    const bool ranged = sample.range_mL && sample.range_mL->lower > 0 &&
                        sample.range_mL->upper >= sample.range_mL->lower && sample.range_mL->upper <= 100;
    if (ranged) {
        volumes.insert({sample.range_mL->lower, sample.range_mL->upper});
        // What pipettes are set to, 1 uL to 50 mL (common practice, no source).
        for (const int decade : {-3, -2, -1, 0, 1}) {
            for (const int digit : {1, 2, 5}) {
                const double volume_mL =
                    decade < 0 ? digit / std::pow(10.0, -decade) : digit * std::pow(10.0, decade);
                if (volume_mL > sample.range_mL->lower && volume_mL < sample.range_mL->upper)
                    volumes.insert(volume_mL);
            }
        }
    }
    return {volumes.begin(), volumes.end()};
}

Appraisal appraise(const assay::Method &method, const AppraisalInputs &inputs)
{
    Appraisal appraisal;
    appraisal.factors = factorsOf(method);
    for (const double volume_mL : volumesOf(method))
        appraisal.volumes.push_back(rangeAt(method, volume_mL));
    addLimits(method, inputs, appraisal);
    appraisal.volumeAfterStep_mL = volumesAfterSteps_mL(method);
    appraisal.needs = needsOf(method, inputs);
    for (assay::Problem &remark : assay::templateRemarks(method))
        appraisal.remarks.push_back(std::move(remark));
    return appraisal;
}

} // namespace plateau::evaluation
