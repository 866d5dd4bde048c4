// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/glassfor.h"

#include "core/planning/glassware.h"

#include <QStringList>

#include <algorithm>
#include <cmath>

namespace plateau::planning {

namespace {

/// Volumes are typed in mL with up to four decimals; nearer together they are the same.
constexpr double sameVolume_mL = 1e-6;

QString sourceOf(const Pipette &pipette, const Flask &flask)
{
    QStringList sources{pipette.source, flask.source};
    sources.removeAll(QString());
    return sources.join(QStringLiteral(", "));
}

} // namespace

bool makes(const Pipette &pipette, double volume_mL)
{
    if (volume_mL < pipette.smallest_mL - sameVolume_mL || volume_mL > pipette.largest_mL + sameVolume_mL)
        return false;
    const double step_mL = settingStep_mL(pipette);
    if (step_mL <= 0)
        return true;
    const double steps = (volume_mL - pipette.smallest_mL) / step_mL;
    return std::abs(steps - std::round(steps)) * step_mL < sameVolume_mL;
}

bool isDelivered(double volume_mL, const Glassware &glassware)
{
    return volume_mL < sameVolume_mL ||
           std::ranges::any_of(glassware.pipettes,
                               [volume_mL](const Pipette &pipette) { return makes(pipette, volume_mL); });
}

double diluentBeside_mL(const assay::Method &method, double sampleVolume_mL)
{
    const assay::Component *sample = assay::findComponent(method, method.sample);
    const assay::Component *diluent = assay::findComponent(method, method.diluent);
    if (!sample || !diluent)
        return 0;
    return std::max(0.0, diluent->volume_mL + sample->volume_mL - sampleVolume_mL);
}

std::optional<GlassForStep> glassFor(const run::DilutionStep &step, const Glassware &glassware)
{
    const Pipette *pipette = nullptr;
    for (const Pipette &each : glassware.pipettes) {
        if (makes(each, step.take_mL) &&
            (!pipette || each.uncertainty_percent < pipette->uncertainty_percent))
            pipette = &each;
    }
    const Flask *flask = nullptr;
    for (const Flask &each : glassware.flasks) {
        if (std::abs(each.volume_mL - step.makeUpTo_mL) < sameVolume_mL &&
            (!flask || each.uncertainty_percent < flask->uncertainty_percent))
            flask = &each;
    }
    if (!pipette || !flask || step.take_mL >= step.makeUpTo_mL)
        return std::nullopt;
    return GlassForStep{pipette->name, flask->name,
                        std::hypot(pipette->uncertainty_percent, flask->uncertainty_percent),
                        sourceOf(*pipette, *flask)};
}

} // namespace plateau::planning
