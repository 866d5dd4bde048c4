// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/laboratory.h"

#include <QCoreApplication>

#include <cmath>

namespace plateau::planning {

namespace {

struct LaboratorySentence {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::Laboratory)
};

/// Half-width of the permissible error as a rectangular distribution, in percent of the volume.
double ofPermissibleError_percent(double error_mL, double volume_mL)
{
    return 100 * error_mL / std::sqrt(3.0) / volume_mL;
}

Pipette oneMark(double volume_mL, double error_mL)
{
    return {LaboratorySentence::tr("bulb pipette %1 mL").arg(volume_mL), volume_mL, volume_mL, 0,
            ofPermissibleError_percent(error_mL, volume_mL)};
}

Flask flask(double volume_mL, double error_mL)
{
    return {LaboratorySentence::tr("flask %1 mL").arg(volume_mL), volume_mL,
            ofPermissibleError_percent(error_mL, volume_mL)};
}

} // namespace

Laboratory usualLaboratory()
{
    Laboratory laboratory;
    laboratory.glassware.pipettes = {
        {LaboratorySentence::tr("piston pipette 10 to 100 µL"), 0.01, 0.1, 0.001, 0.8},
        {LaboratorySentence::tr("piston pipette 100 to 1000 µL"), 0.1, 1.0, 0.01, 0.6},
        {LaboratorySentence::tr("piston pipette 0.5 to 5 mL"), 0.5, 5.0, 0.05, 0.6},
        oneMark(1, 0.008),
        oneMark(2, 0.01),
        oneMark(5, 0.015),
        oneMark(10, 0.02),
        oneMark(20, 0.03),
        oneMark(25, 0.03),
        oneMark(50, 0.05),
    };
    laboratory.glassware.flasks = {flask(10, 0.025), flask(20, 0.04), flask(25, 0.04),
                                   flask(50, 0.06),  flask(100, 0.1), flask(250, 0.15)};
    laboratory.review.rejectionReasons = {
        LaboratorySentence::tr("a mistake in pipetting"),       LaboratorySentence::tr("the blank is out of its limits"),
        LaboratorySentence::tr("the recovery of the standard is outside its limits"),   LaboratorySentence::tr("the control is out of its limits"),
        LaboratorySentence::tr("duplicates lie too far apart"), LaboratorySentence::tr("the wrong sample was taken")};
    return laboratory;
}

} // namespace plateau::planning
