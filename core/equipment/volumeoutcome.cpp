// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/equipment/volumeoutcome.h"

#include "core/equipment/protocol.h"
#include "core/equipment/series.h"
#include "core/equipment/water.h"
#include "core/evaluation/format.h"
#include "core/quality/statistics.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace plateau::equipment {

using namespace Qt::StringLiterals;
using evaluation::plainText;
using evaluation::withUnit;

namespace {

struct VolumeoutcomeWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::equipment::Outcome)
};

double zOf(const Check &check)
{
    return zFactor_uL_per_mg({check.conditions.at(u"temperature_C"_s), check.conditions.at(u"pressure_kPa"_s),
                              check.conditions.at(u"humidity_percent"_s)});
}

Outcome ofPiston(const Item &item, const Check &check)
{
    Outcome outcome;
    const double z = zOf(check);
    const double systematic_uL = check.conditions.at(u"systematic_limit_uL"_s);
    const double random_uL = check.conditions.at(u"random_limit_uL"_s);
    double worst_percent = 0;
    for (const VolumeSeries &series : volumeSeries(check)) {
        if (series.masses.empty())
            continue;
        std::vector<double> volumes_uL;
        for (const double mass_mg : series.masses)
            volumes_uL.push_back((mass_mg + check.conditions.at(u"evaporation_mg"_s)) * z);
        const double off_uL = *quality::mean(volumes_uL) - series.set;
        const double s_uL = *quality::standardDeviation(volumes_uL);
        const QString at = withUnit(plainText(series.set), u"µL"_s);
        const int decimals = evaluation::decimalsFor(random_uL > 0 ? random_uL : series.set / 100, 2);
        const QString limit = u"ISO 8655-2:2002"_s;
        outcome.findings.push_back(
            held({VolumeoutcomeWording::tr("systematic error at %1").arg(at), off_uL, u"µL"_s, -systematic_uL,
                  systematic_uL, true, sourceOf(item, check, u"systematic_limit_uL"_s, limit), decimals}));
        outcome.findings.push_back(
            held({VolumeoutcomeWording::tr("random error at %1").arg(at), s_uL, u"µL"_s, std::nullopt,
                  random_uL, true, sourceOf(item, check, u"random_limit_uL"_s, limit), decimals}));
        worst_percent = std::max(worst_percent, 100 * std::hypot(off_uL, s_uL) / series.set);
    }
    outcome.figures.volume_percent = worst_percent;
    return outcome;
}

Outcome ofGlass(const Item &item, const Check &check)
{
    Outcome outcome;
    const double z = zOf(check);
    std::vector<double> volumes_mL;
    for (const double mass_g : columnOf(check, 0)) {
        volumes_mL.push_back(volumeAt20_mL(mass_g * z, check.conditions.at(u"temperature_C"_s),
                                           check.conditions.at(u"expansion_per_C"_s)));
    }
    const double limit_mL = check.conditions.at(u"limit_mL"_s);
    const double off_mL = *quality::mean(volumes_mL) - item.nominal_mL;
    const double s_mL = *quality::standardDeviation(volumes_mL);
    const QString offered = item.kind == Kind::Flask ? VolumeoutcomeWording::tr("class A, ISO 1042:1998")
                                                     : VolumeoutcomeWording::tr("class A, ISO 648:2008");
    const int decimals = evaluation::decimalsFor(limit_mL > 0 ? limit_mL : item.nominal_mL / 1000, 2);
    outcome.findings.push_back(
        held({VolumeoutcomeWording::tr("mean minus the nominal volume, at 20 °C"), off_mL, u"mL"_s, -limit_mL,
              limit_mL, true, sourceOf(item, check, u"limit_mL"_s, offered), decimals}));
    outcome.findings.push_back(held({VolumeoutcomeWording::tr("standard deviation of the fillings"),
                                     s_mL,
                                     u"mL"_s,
                                     std::nullopt,
                                     std::nullopt,
                                     true,
                                     {},
                                     decimals}));
    outcome.figures.volume_percent = 100 * std::hypot(off_mL, s_mL) / item.nominal_mL;
    return outcome;
}

} // namespace

Outcome volumeOutcome(const Item &item, const Check &check)
{
    return item.kind == Kind::PistonPipette ? ofPiston(item, check) : ofGlass(item, check);
}

} // namespace plateau::equipment
