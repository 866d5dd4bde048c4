// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/recoveries.h"

#include "core/evaluation/contribution.h"
#include "core/quality/statistics.h"

#include <span>
#include <vector>

namespace plateau::evaluation {

namespace {

std::vector<double> pipettedOf(const Layout &layout, const Evaluation &evaluation, size_t measurand,
                               std::span<const int> tubes)
{
    std::vector<double> values;
    for (const int tube : tubes) {
        if (const auto &value = valueAt(evaluation, layout, tube, measurand).pipetted_g_per_L)
            values.push_back(*value);
    }
    return values;
}

/// (amount found in the tube - amount from the unspiked sample at that volume) / amount added x 100 %, mean
/// over the spiked tubes.
std::optional<double> spikeRecovery_percent(const Layout &layout, const Evaluation &evaluation,
                                            size_t measurand, std::span<const int> spiked,
                                            double unspiked_g_per_L)
{
    const assay::Measurand &analyte = *layout.measurands()[measurand].measurand;
    std::vector<double> recoveries;
    for (const int tube : spiked) {
        const run::Spike &spike = *layout.run().tubes[static_cast<size_t>(tube)].spike;
        const run::Standard &standard = *run::findStandard(layout.run(), spike.standard);
        const TubeValue &value = valueAt(evaluation, layout, tube, measurand);
        const double added_mg =
            Layout::holds(standard, analyte) ? layout.strength_g_per_L(standard) * spike.volume_mL : 0;
        if (!value.pipetted_g_per_L || added_mg <= 0)
            continue;
        const double excess_mg = (*value.pipetted_g_per_L - unspiked_g_per_L) * value.sampleVolume_mL;
        recoveries.push_back(excess_mg / added_mg * 100);
    }
    return quality::mean(recoveries);
}

} // namespace

void addStandards(const Layout &layout, size_t measurand, Evaluation &evaluation)
{
    const run::Run &run = layout.run();
    const assay::Measurand &analyte = *layout.measurands()[measurand].measurand;
    for (const run::Standard &standard : run.standards) {
        if (!Layout::holds(standard, analyte))
            continue;
        std::vector<int> tubes;
        for (int i = 0; i < static_cast<int>(run.tubes.size()); ++i) {
            const run::Tube &tube = run.tubes[static_cast<size_t>(i)];
            const bool measured = tube.role == run::Role::Standard || tube.role == run::Role::Control;
            if (measured && tube.standard == standard.id)
                tubes.push_back(i);
        }
        if (tubes.empty())
            continue;
        StandardRecovery recovery;
        recovery.standard = standard.id;
        recovery.measurand = analyte.id;
        recovery.expected_g_per_L = layout.strength_g_per_L(standard);
        recovery.found_g_per_L = quality::mean(pipettedOf(layout, evaluation, measurand, tubes));
        if (recovery.found_g_per_L && recovery.expected_g_per_L > 0)
            recovery.recovery_percent = *recovery.found_g_per_L / recovery.expected_g_per_L * 100;
        evaluation.standards.push_back(std::move(recovery));
    }
}

void addSpikes(const Layout &layout, size_t measurand, Evaluation &evaluation)
{
    for (const run::Sample &sample : layout.run().samples) {
        const std::vector<int> spiked = layout.tubesWith(run::Role::Spiked, sample.id);
        if (spiked.empty())
            continue;
        SpikeRecovery recovery{sample.id, layout.measurands()[measurand].measurand->id, std::nullopt};
        const auto unspiked =
            quality::mean(pipettedOf(layout, evaluation, measurand, layout.resultTubes(sample.id)));
        if (unspiked)
            recovery.recovery_percent =
                spikeRecovery_percent(layout, evaluation, measurand, spiked, *unspiked);
        evaluation.spikes.push_back(std::move(recovery));
    }
}

} // namespace plateau::evaluation
