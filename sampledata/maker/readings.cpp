// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "sampledata/maker/readings.h"

#include "core/run/volumes.h"

#include <algorithm>
#include <cmath>

namespace plateau::sampledata {

using namespace Qt::StringLiterals;

namespace {

/// Where a reagent that is used up ends.
constexpr double leastAbsorbance = 0.031;
/// What the photometer shows of anything darker.
constexpr double mostAbsorbance = 3.2;
/// The indicator's own step before the starter, of the coupled kind.
constexpr double indicatorStep = 0.045;

/// In the tube when it is read at that point.
double volumeWhenRead_mL(const assay::Method &method, const run::Tube &tube, const QString &reading)
{
    const std::vector<run::Addition> all = run::plannedAdditions(method, tube);
    double volume_mL = 0;
    for (const assay::Step &step : method.steps) {
        if (const auto *add = std::get_if<assay::AddStep>(&step)) {
            for (const run::Addition &addition : all)
                volume_mL += addition.component == add->component ? addition.volume_mL : 0;
        } else if (const auto *read = std::get_if<assay::ReadStep>(&step); read && read->reading == reading) {
            break;
        }
    }
    return volume_mL;
}

/// Readings one after the other, each on the one before.
class Cuvette
{
public:
    Cuvette(const assay::Method &method, const TubeTruth &truth)
        : m_rises(method.direction == assay::Direction::Rising)
        , m_truth(truth)
    {
    }

    double at(const QString &reading) const
    {
        const auto found = m_true.find(reading);
        return found == m_true.end() ? m_truth.background : found->second;
    }
    void change(const QString &from, const QString &to, double by)
    {
        const double before = at(from);
        m_true.try_emplace(from, before);
        m_true[to] = std::max(m_rises ? before + by : before - by, std::min(before, leastAbsorbance));
    }
    const std::map<QString, double> &all() const { return m_true; }

private:
    bool m_rises;
    const TubeTruth &m_truth;
    std::map<QString, double> m_true;
};

} // namespace

double signalOf(const assay::Method &method, const assay::Measurand &measurand, double pipetted_g_per_L,
                const run::Tube &tube)
{
    const double volume_mL = volumeWhenRead_mL(method, tube, assay::laterReading(measurand.signal));
    const double absorptivity = method.absorptivity_L_per_mol_cm.at(method.wavelength_nm);
    constexpr double mm_per_cm = 10;
    return pipetted_g_per_L / measurand.molarMass_g_per_mol * run::sampleVolume_mL(method, tube) / volume_mL *
           absorptivity * measurand.chromophorePerMolecule * method.pathLength_mm / mm_per_cm;
}

std::map<QString, double> readingsOf(const assay::Method &method, const run::Tube &tube,
                                     const TubeTruth &truth, Chance &chance)
{
    Cuvette cuvette(method, truth);
    for (const assay::Measurand &measurand : method.measurands) {
        const auto content = truth.pipetted_g_per_L.find(measurand.id);
        const double held =
            content == truth.pipetted_g_per_L.end() || truth.withoutStarter ? 0 : content->second;
        const double signal = signalOf(method, measurand, held, tube) * truth.dosed * truth.conversion;
        const double creep = truth.withoutStarter ? truth.blankSignal / 4 : truth.blankSignal;
        if (const auto *plain = std::get_if<assay::DifferenceSignal>(&measurand.signal)) {
            cuvette.change(plain->from, plain->to, signal + creep);
        } else {
            const auto &coupled = std::get<assay::CoupledIndicatorSignal>(measurand.signal);
            const double step = truth.withoutStarter ? 0 : indicatorStep;
            // The last reading from which (A2 - A0) - (A1 - A0)^2 / (A2 - A0) is the signal.
            const double wanted = signal + creep;
            const double whole = (wanted + std::sqrt(wanted * wanted + 4 * step * step)) / 2;
            cuvette.change(coupled.base, coupled.middle, step);
            cuvette.change(coupled.base, coupled.final, whole);
        }
    }
    std::map<QString, double> shown;
    for (const auto &[reading, absorbance] : cuvette.all())
        shown[reading] =
            std::round(std::min(mostAbsorbance, absorbance * truth.scale + chance.scatter(truth.noise)) *
                       1000) /
            1000;
    return shown;
}

} // namespace plateau::sampledata
