// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/unitsofrun.h"

#include "core/planning/laboratory.h"
#include "core/planning/reporting.h"

#include <algorithm>
#include <set>

namespace plateau::ui {

QString productOf(const notebook::StoredRun &stored, const QString &sample)
{
    if (!stored.plan)
        return {};
    const auto planned = std::ranges::find_if(
        stored.plan->samples, [&](const planning::PlannedSample &p) { return p.sample.id == sample; });
    return planned == stored.plan->samples.end() ? QString() : planned->sample.product;
}

UnitsOfRun unitsOfRun(const notebook::StoredRun &stored, const planning::Laboratory &laboratory)
{
    UnitsOfRun units;
    for (const assay::Measurand &measurand : stored.method.measurands) {
        std::set<std::optional<evaluation::ReportUnit>> wanted;
        for (const run::Sample &sample : stored.run.samples)
            wanted.insert(planning::reportUnitOf(laboratory, productOf(stored, sample.id), measurand.id, sample.form));
        if (wanted.size() != 1 || !*wanted.begin())
            continue;
        const evaluation::ReportUnit unit = **wanted.begin();
        const auto factor = evaluation::conversionFactor(evaluation::ReportUnit::GramPerLitre, unit,
                                                         measurand.molarMass_g_per_mol);
        if (factor.value)
            units[measurand.id] = {unit, *factor.value};
    }
    return units;
}

ShownUnit shownUnit(const UnitsOfRun &units, const QString &measurand)
{
    const auto found = units.find(measurand);
    return found == units.end() ? ShownUnit() : found->second;
}

} // namespace plateau::ui
