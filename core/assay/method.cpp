// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/method.h"

#include <algorithm>

namespace plateau::assay {

std::vector<QString> readingsOf(const Signal &signal)
{
    if (const auto *difference = std::get_if<DifferenceSignal>(&signal))
        return {difference->from, difference->to};
    const auto &coupled = std::get<CoupledIndicatorSignal>(signal);
    return {coupled.base, coupled.middle, coupled.final};
}

QString laterReading(const Signal &signal)
{
    return readingsOf(signal).back();
}

const Component *findComponent(const Method &method, const QString &id)
{
    const auto found = std::ranges::find(method.components, id, &Component::id);
    return found == method.components.end() ? nullptr : &*found;
}

const Measurand *findMeasurand(const Method &method, const QString &id)
{
    const auto found = std::ranges::find(method.measurands, id, &Measurand::id);
    return found == method.measurands.end() ? nullptr : &*found;
}

std::vector<QString> readingsInOrder(const Method &method)
{
    std::vector<QString> readings;
    for (const Step &step : method.steps) {
        if (const auto *read = std::get_if<ReadStep>(&step))
            readings.push_back(read->reading);
    }
    return readings;
}

std::optional<Interval> waitBefore(const Method &method, const QString &reading)
{
    std::optional<Interval> wait;
    for (const Step &step : method.steps) {
        if (std::holds_alternative<AddStep>(step)) {
            wait.reset();
        } else if (const auto *waiting = std::get_if<WaitStep>(&step)) {
            if (wait)
                wait = Interval{wait->lower + waiting->wait_min.lower, wait->upper + waiting->wait_min.upper};
            else
                wait = waiting->wait_min;
        } else if (const auto *read = std::get_if<ReadStep>(&step); read && read->reading == reading) {
            return wait;
        }
    }
    return std::nullopt;
}

std::optional<double> absorptivity(const Method &method, int wavelength_nm)
{
    const auto found = method.absorptivity_L_per_mol_cm.find(wavelength_nm);
    if (found != method.absorptivity_L_per_mol_cm.end())
        return found->second;
    const bool coenzyme =
        method.chromophore == QLatin1String("NADH") || method.chromophore == QLatin1String("NADPH");
    if (method.absorptivity_L_per_mol_cm.empty() && coenzyme && wavelength_nm == 340)
        return 6300.0;
    return std::nullopt;
}

} // namespace plateau::assay
