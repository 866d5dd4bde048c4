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

std::optional<evaluation::ReportUnit> reportUnitIn(const notebook::StoredRun &stored,
                                                   const planning::Laboratory &laboratory, const QString &sample,
                                                   const QString &measurand, run::Form form)
{
    const QString product = productOf(stored, sample);
    const auto own = planning::reportUnitOf(laboratory, product, measurand, form);
    if (own || !product.isEmpty())
        return own;
    std::set<std::optional<evaluation::ReportUnit>> ofOthers;
    for (const run::Sample &other : stored.run.samples) {
        const QString otherProduct = productOf(stored, other.id);
        if (!otherProduct.isEmpty() && other.form == form)
            ofOthers.insert(planning::reportUnitOf(laboratory, otherProduct, measurand, form));
    }
    return ofOthers.size() == 1 ? *ofOthers.begin() : std::nullopt;
}

UnitsOfRun unitsOfRun(const notebook::StoredRun &stored, const planning::Laboratory &laboratory)
{
    UnitsOfRun units;
    for (const assay::Measurand &measurand : stored.method.measurands) {
        std::set<std::optional<evaluation::ReportUnit>> wanted;
        for (const run::Sample &sample : stored.run.samples)
            wanted.insert(reportUnitIn(stored, laboratory, sample.id, measurand.id, sample.form));
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
