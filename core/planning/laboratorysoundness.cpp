// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/label.h"
#include "core/assay/limits.h"
#include "core/planning/glassware.h"
#include "core/planning/laboratory.h"

#include <QCoreApplication>
#include <QSet>

#include <cmath>

namespace plateau::planning {

using namespace Qt::StringLiterals;
using namespace plateau::assay;

namespace {

struct LaboratorySoundnessWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::LaboratorySoundness)
};

void checkRack(const Laboratory &laboratory, Problems &problems)
{
    const auto before = problems.size();
    checkWithin(problems, u"/rackRows"_s, laboratory.rackRows, 1, limit::tubesOfARack, {});
    checkWithin(problems, u"/rackColumns"_s, laboratory.rackColumns, 1, limit::tubesOfARack, {});
    const qint64 places = qint64(laboratory.rackRows) * laboratory.rackColumns; // any int may have come in
    if (problems.size() == before && places > limit::tubesOfARack)
        problems.push_back(error(
            u"/rackColumns"_s,
            LaboratorySoundnessWording::tr("makes a rack of %1 places with %2 rows; at most %3 are allowed")
                .arg(places)
                .arg(laboratory.rackRows)
                .arg(limit::tubesOfARack)));
}

void checkHandling(const HandlingTimes &handling, Problems &problems)
{
    checkAbove(problems, u"/handling/addition_s"_s, handling.addition_s, 0, longestHandling_s, u"s"_s);
    checkWithin(problems, u"/handling/mix_s"_s, handling.mix_s, 0, longestHandling_s, u"s"_s);
    checkAbove(problems, u"/handling/reading_s"_s, handling.reading_s, 0, longestHandling_s, u"s"_s);
}

void checkSteps(const Pipette &pipette, const QString &pointer, Problems &problems)
{
    const QString place = pointerTo(pointer, u"step_mL"_s);
    if (pipette.largest_mL < pipette.smallest_mL) {
        problems.push_back(error(pointerTo(pointer, u"largest_mL"_s),
                                 LaboratorySoundnessWording::tr("must not be smaller than smallest_mL: %1 "
                                                                "is less than %2")
                                     .arg(shown(pipette.largest_mL), shown(pipette.smallest_mL))));
        return;
    }
    if (pipette.largest_mL == pipette.smallest_mL) {
        if (pipette.step_mL != 0)
            problems.push_back(
                error(place, LaboratorySoundnessWording::tr("must be 0 for a fixed-volume pipette, not %1")
                                 .arg(shown(pipette.step_mL))));
        return;
    }
    if (pipette.step_mL == 0)
        return; // not known
    const double range_mL = pipette.largest_mL - pipette.smallest_mL;
    if (!(pipette.step_mL > 0 && pipette.step_mL <= range_mL * (1 + 1e-9))) {
        problems.push_back(error(
            place, LaboratorySoundnessWording::tr("must be greater than 0 and at most %1 mL, the width of "
                                                  "the pipette's range, not %2")
                       .arg(shown(range_mL), shown(pipette.step_mL))));
        return;
    }
    const double steps = range_mL / pipette.step_mL;
    if (steps > mostSettings - 1)
        problems.push_back(
            error(place, LaboratorySoundnessWording::tr("makes more than %1 settings; give a coarser step")
                             .arg(mostSettings)));
    else if (std::abs(steps - std::round(steps)) > 1e-6)
        problems.push_back(error(
            place, LaboratorySoundnessWording::tr("must go a whole number of times into the %1 mL between "
                                                  "smallest_mL and largest_mL")
                       .arg(shown(range_mL))));
}

/// Names that look alike on paper are one name.
void checkName(const QString &name, const QString &pointer, QSet<QString> &taken, Problems &problems)
{
    const QString place = pointerTo(pointer, u"name"_s);
    checkLabel(problems, place, name, LaboratorySoundnessWording::tr("the name"));
    const QString key = name.normalized(QString::NormalizationForm_C);
    if (taken.contains(key))
        problems.push_back(error(
            place, LaboratorySoundnessWording::tr("the name %1 is taken by an earlier one; give each its own")
                       .arg(quoted(name))));
    taken.insert(key);
}

void checkUncertainty(double uncertainty_percent, const QString &pointer, Problems &problems)
{
    checkWithin(problems, pointerTo(pointer, u"uncertainty_percent"_s), uncertainty_percent, 0, 100, u"%"_s);
}

void checkNumber(std::size_t number, const QString &pointer, Problems &problems)
{
    if (number > mostGlassware)
        problems.push_back(
            error(pointer, LaboratorySoundnessWording::tr("lists %1 pieces; at most %2 are allowed")
                               .arg(number)
                               .arg(mostGlassware)));
}

void checkPipettes(const std::vector<Pipette> &pipettes, Problems &problems)
{
    const QString list = u"/glassware/pipettes"_s;
    checkNumber(pipettes.size(), list, problems);
    QSet<QString> taken;
    for (std::size_t i = 0; i < pipettes.size(); ++i) {
        const Pipette &pipette = pipettes[i];
        const QString pointer = pointerTo(list, static_cast<qsizetype>(i));
        checkName(pipette.name, pointer, taken, problems);
        const auto before = problems.size();
        checkWithin(problems, pointerTo(pointer, u"smallest_mL"_s), pipette.smallest_mL,
                    limit::smallestVolume_mL, largestPipette_mL, u"mL"_s);
        checkWithin(problems, pointerTo(pointer, u"largest_mL"_s), pipette.largest_mL,
                    limit::smallestVolume_mL, largestPipette_mL, u"mL"_s);
        if (problems.size() == before)
            checkSteps(pipette, pointer, problems);
        checkUncertainty(pipette.uncertainty_percent, pointer, problems);
    }
}

void checkFlasks(const std::vector<Flask> &flasks, Problems &problems)
{
    const QString list = u"/glassware/flasks"_s;
    checkNumber(flasks.size(), list, problems);
    QSet<QString> taken;
    for (std::size_t i = 0; i < flasks.size(); ++i) {
        const QString pointer = pointerTo(list, static_cast<qsizetype>(i));
        checkName(flasks[i].name, pointer, taken, problems);
        checkAbove(problems, pointerTo(pointer, u"volume_mL"_s), flasks[i].volume_mL, 0,
                   limit::flaskVolume_mL, u"mL"_s);
        checkUncertainty(flasks[i].uncertainty_percent, pointer, problems);
    }
}

} // namespace

Problems problemsOf(const Laboratory &laboratory)
{
    Problems problems;
    if (!laboratory.name.isEmpty())
        checkLabel(problems, u"/name"_s, laboratory.name, LaboratorySoundnessWording::tr("the name"));
    checkRack(laboratory, problems);
    checkHandling(laboratory.handling, problems);
    checkWithin(problems, u"/overage_percent"_s, laboratory.overage_percent, 0, largestOverage_percent,
                u"%"_s);
    checkPipettes(laboratory.glassware.pipettes, problems);
    checkFlasks(laboratory.glassware.flasks, problems);
    checkReporting(laboratory, problems);
    checkMeasuring(laboratory, problems);
    return problems;
}

} // namespace plateau::planning
