// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/backgroundwriter.h"
#include "core/exchange/jsonparts.h"
#include "core/exchange/jsontext.h"
#include "core/exchange/writers.h"

namespace plateau::exchange {

using namespace plateau::assay;
using nlohmann::ordered_json;

namespace {

ordered_json intervalJson(const Interval &interval)
{
    return ordered_json::array({interval.lower, interval.upper});
}

void writeInterval(ordered_json &object, const char *key, const std::optional<Interval> &interval)
{
    if (interval)
        object[key] = intervalJson(*interval);
}

ordered_json componentJson(const Component &component)
{
    ordered_json object{
        {"id", utf8(component.id)}, {"name", utf8(component.name)}, {"volume_mL", component.volume_mL}};
    writeInterval(object, "range_mL", component.range_mL);
    if (component.suspension)
        object["suspension"] = true;
    return object;
}

ordered_json stepJson(const Step &step)
{
    struct Writer {
        ordered_json operator()(const AddStep &add) const { return {{"add", utf8(add.component)}}; }
        ordered_json operator()(const MixStep &) const { return {{"mix", true}}; }
        ordered_json operator()(const WaitStep &wait) const
        {
            ordered_json object{{"wait_min", intervalJson(wait.wait_min)}};
            writeInterval(object, "temperature_C", wait.temperature_C);
            return object;
        }
        ordered_json operator()(const ReadStep &read) const { return {{"read", utf8(read.reading)}}; }
    };
    return std::visit(Writer(), step);
}

ordered_json signalJson(const Signal &signal)
{
    if (const auto *difference = std::get_if<DifferenceSignal>(&signal))
        return {{"kind", "difference"}, {"from", utf8(difference->from)}, {"to", utf8(difference->to)}};
    const auto &coupled = std::get<CoupledIndicatorSignal>(signal);
    return {{"kind", "coupledIndicator"},
            {"base", utf8(coupled.base)},
            {"middle", utf8(coupled.middle)},
            {"final", utf8(coupled.final)}};
}

ordered_json measurandJson(const Measurand &measurand)
{
    ordered_json object{{"id", utf8(measurand.id)},
                        {"name", utf8(measurand.name)},
                        {"molarMass_g_per_mol", measurand.molarMass_g_per_mol},
                        {"chromophorePerMolecule", measurand.chromophorePerMolecule},
                        {"signal", signalJson(measurand.signal)}};
    writeInterval(object, "typicalRange_g_per_L", measurand.typicalRange_g_per_L);
    return object;
}

ordered_json windowJson(const Window &window)
{
    ordered_json object{{"minSignal", window.minSignal}, {"maxSignal", window.maxSignal}};
    writeOptional(object, "maxAbsorbance", window.maxAbsorbance);
    writeOptional(object, "reserveAbsorbance", window.reserveAbsorbance);
    return object;
}

ordered_json acceptanceJson(const Acceptance &acceptance)
{
    ordered_json object = ordered_json::object();
    writeOptional(object, "maxBlankSignal", acceptance.maxBlankSignal);
    writeInterval(object, "standardRecovery_percent", acceptance.standardRecovery_percent);
    writeInterval(object, "spikeRecovery_percent", acceptance.spikeRecovery_percent);
    if (acceptance.repeatability)
        object["repeatability"] = {{"constant_g_per_L", acceptance.repeatability->constant_g_per_L},
                                   {"proportional", acceptance.repeatability->proportional}};
    return object;
}

void writePhotometry(ordered_json &object, const Method &method)
{
    object["chromophore"] = utf8(method.chromophore);
    if (!method.absorptivity_L_per_mol_cm.empty()) {
        ordered_json table = ordered_json::object();
        for (const auto &[wavelength_nm, value] : method.absorptivity_L_per_mol_cm)
            table[std::to_string(wavelength_nm)] = value;
        object["absorptivity_L_per_mol_cm"] = table;
    }
    object["wavelength_nm"] = method.wavelength_nm;
    object["pathLength_mm"] = method.pathLength_mm;
    object["direction"] = method.direction == Direction::Rising ? "rising" : "falling";
    object["volumeCorrection"] = method.volumeCorrection == VolumeCorrection::None ? "none" : "toFinalVolume";
}

} // namespace

ordered_json methodJson(const Method &method)
{
    ordered_json object{{"format", "plateau-method/1"},
                        {"id", utf8(method.id)},
                        {"version", method.version},
                        {"name", utf8(method.name)},
                        {"source", utf8(method.source)}};
    if (!method.principle.isEmpty())
        object["principle"] = utf8(method.principle);
    writePhotometry(object, method);
    object["components"] = listOf(method.components, componentJson);
    object["sample"] = utf8(method.sample);
    object["diluent"] = utf8(method.diluent);
    object["starter"] = utf8(method.starter);
    object["steps"] = listOf(method.steps, stepJson);
    object["measurands"] = listOf(method.measurands, measurandJson);
    object["window"] = windowJson(method.window);
    object["acceptance"] = acceptanceJson(method.acceptance);
    if (method.extrapolate)
        object["extrapolate"] = {{"reading", utf8(method.extrapolate->reading)},
                                 {"lastReadings", method.extrapolate->lastReadings}};
    writeBackground(object, method);
    return object;
}

QByteArray writeMethod(const Method &method)
{
    return jsonText(methodJson(method));
}

} // namespace plateau::exchange
