// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/run/fit.h"

#include "core/assay/label.h"
#include "core/assay/limits.h"
#include "core/run/timefit.h"
#include "core/run/volumes.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace plateau::run {

using namespace Qt::StringLiterals;
using namespace plateau::assay;

namespace {

struct FitWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::run::Fit)
};

QString listed(const std::vector<QString> &names)
{
    QStringList quotedNames;
    for (const QString &name : names)
        quotedNames.append(quoted(name));
    return quotedNames.join(", "_L1);
}

void checkMethod(const Run &run, const Method &method, Problems &problems)
{
    if (run.method != method.id)
        problems.push_back(error(
            u"/method"_s,
            FitWording::tr("the run is made for %1, not for %2").arg(quoted(run.method), quoted(method.id))));
    const int wavelength_nm = run.wavelength_nm.value_or(method.wavelength_nm);
    const bool plausible =
        wavelength_nm >= limit::shortestWavelength_nm && wavelength_nm <= limit::longestWavelength_nm;
    if (!plausible || absorptivity(method, wavelength_nm))
        return;
    std::vector<QString> known;
    for (const auto &[known_nm, value] : method.absorptivity_L_per_mol_cm)
        known.push_back(QString::number(known_nm));
    const QString choice = known.empty() ? u"340"_s : QStringList(known.begin(), known.end()).join(", "_L1);
    problems.push_back(
        error(u"/wavelength_nm"_s, FitWording::tr("the method has no absorptivity for %1 nm; it has one "
                                                  "for %2 nm")
                                       .arg(wavelength_nm)
                                       .arg(choice)));
}

void checkReadings(const Run &run, const Method &method, Problems &problems)
{
    const std::vector<QString> taken = readingsInOrder(method);
    for (std::size_t i = 0; i < run.tubes.size(); ++i) {
        const QString pointer = pointerTo(pointerTo(u"/tubes"_s, static_cast<qsizetype>(i)), u"readings"_s);
        for (const auto &[name, reading] : run.tubes[i].readings) {
            if (std::ranges::find(taken, name) == taken.end())
                problems.push_back(error(pointerTo(pointer, name),
                                         FitWording::tr("the method takes no reading %1; it takes %2")
                                             .arg(quoted(name), listed(taken))));
        }
    }
}

void checkPipetted(const Run &run, const Method &method, Problems &problems)
{
    for (std::size_t i = 0; i < run.tubes.size(); ++i) {
        const QString pointer =
            pointerTo(pointerTo(u"/tubes"_s, static_cast<qsizetype>(i)), u"pipetted_mL"_s);
        for (const auto &[component, volume_mL] : run.tubes[i].pipetted_mL) {
            if (!findComponent(method, component))
                problems.push_back(error(
                    pointerTo(pointer, component),
                    FitWording::tr("the method has no component %1; correct it").arg(quoted(component))));
        }
    }
}

void checkTubeVolumes(const Run &run, const Method &method, Problems &problems)
{
    for (std::size_t i = 0; i < run.tubes.size(); ++i) {
        double volume_mL = 0;
        for (const Addition &addition : additions(method, run.tubes[i]))
            volume_mL += addition.volume_mL;
        if (volume_mL > limit::tubeVolume_mL)
            problems.push_back(
                error(pointerTo(u"/tubes"_s, static_cast<qsizetype>(i)),
                      FitWording::tr("the tube holds %1 mL in the end; at most %2 mL are allowed")
                          .arg(shown(volume_mL), shown(limit::tubeVolume_mL))));
    }
}

void checkNames(const Run &run, const Method &method, Problems &problems)
{
    for (std::size_t i = 0; i < run.standards.size(); ++i) {
        const QString &measurand = run.standards[i].measurand;
        if (!measurand.isEmpty() && !findMeasurand(method, measurand))
            problems.push_back(
                error(pointerTo(pointerTo(u"/standards"_s, static_cast<qsizetype>(i)), u"measurand"_s),
                      FitWording::tr("the method has no measurand %1; leave it out or correct it")
                          .arg(quoted(measurand))));
    }
    for (std::size_t i = 0; i < run.lots.size(); ++i) {
        const QString &component = run.lots[i].component;
        if (!findComponent(method, component))
            problems.push_back(
                error(pointerTo(pointerTo(u"/lots"_s, static_cast<qsizetype>(i)), u"component"_s),
                      FitWording::tr("the method has no component %1; correct it").arg(quoted(component))));
    }
}

/// The different amounts (mg) of the measurand in the tubes with the role standard, as planned: a tube that
/// was spoilt or pipetted otherwise makes no other calibration of the run. By the stated concentration: two
/// tubes of one standard that differ only in age are one level.
std::vector<double> standardAmounts_mg(const Run &run, const Method &method, const QString &measurand)
{
    std::vector<double> amounts;
    for (const Tube &tube : run.tubes) {
        const Standard *standard = tube.role == Role::Standard ? findStandard(run, tube.standard) : nullptr;
        if (!standard || (!standard->measurand.isEmpty() && standard->measurand != measurand))
            continue;
        amounts.push_back(standard->concentration_g_per_L * plannedSampleVolume_mL(method, tube));
    }
    std::ranges::sort(amounts);
    const auto same = [](double a, double b) { return b - a <= 1e-9 * b; };
    amounts.erase(std::unique(amounts.begin(), amounts.end(), same), amounts.end());
    return amounts;
}

void checkCalibration(const Run &run, const Method &method, Problems &problems)
{
    const QString pointer = u"/calibration"_s;
    for (const Measurand &measurand : method.measurands) {
        const std::vector<double> amounts = standardAmounts_mg(run, method, measurand.id);
        if (run.calibration == Calibration::Standard && (amounts.empty() || amounts.back() <= 0))
            problems.push_back(
                error(pointer, FitWording::tr("calibration by the run's own standard needs a tube with "
                                              "a standard of %1")
                                   .arg(quoted(measurand.id))));
        if (run.calibration == Calibration::Line && amounts.size() < 3)
            problems.push_back(
                error(pointer, FitWording::tr("a calibration line needs at least three different "
                                              "standard amounts of %1, not %2")
                                   .arg(quoted(measurand.id))
                                   .arg(amounts.size())));
    }
}

} // namespace

void checkFit(const Run &run, const Method &method, Problems &problems)
{
    checkMethod(run, method, problems);
    checkReadings(run, method, problems);
    checkPipetted(run, method, problems);
    checkTimes(run, method, problems);
    checkTubeVolumes(run, method, problems);
    checkNames(run, method, problems);
    checkCalibration(run, method, problems);
}

} // namespace plateau::run
