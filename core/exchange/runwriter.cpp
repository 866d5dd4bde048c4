// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/jsonparts.h"
#include "core/exchange/jsontext.h"
#include "core/exchange/moment.h"
#include "core/exchange/writers.h"

namespace plateau::exchange {

using namespace plateau::run;
using nlohmann::ordered_json;

namespace {

const char *calibrationWord(Calibration calibration)
{
    switch (calibration) {
    case Calibration::Absorptivity:
        break;
    case Calibration::Standard:
        return "standard";
    case Calibration::Line:
        return "line";
    }
    return "absorptivity";
}

ordered_json uncertaintyJson(const UncertaintyInputs &inputs)
{
    return {{"absorbance", inputs.absorbance},
            {"absorptivity_percent", inputs.absorptivity_percent},
            {"pathLength_percent", inputs.pathLength_percent},
            {"totalVolume_percent", inputs.totalVolume_percent},
            {"sampleVolume_percent", inputs.sampleVolume_percent},
            {"dilution_percent", inputs.dilution_percent},
            {"extract_percent", inputs.extract_percent}};
}

ordered_json standardJson(const Standard &standard)
{
    ordered_json object{{"id", utf8(standard.id)}, {"concentration_g_per_L", standard.concentration_g_per_L}};
    if (!standard.measurand.isEmpty())
        object["measurand"] = utf8(standard.measurand);
    if (standard.preparedAt)
        object["preparedAt"] = utf8(momentText(*standard.preparedAt));
    if (standard.usedAt)
        object["usedAt"] = utf8(momentText(*standard.usedAt));
    object["lossPerHour"] = standard.lossPerHour;
    writeOptional(object, "uncertainty_percent", standard.uncertainty_percent);
    return object;
}

ordered_json sampleJson(const Sample &sample)
{
    ordered_json object{{"id", utf8(sample.id)}, {"form", sample.form == Form::Liquid ? "liquid" : "solid"}};
    writeOptional(object, "mass_g", sample.mass_g);
    writeOptional(object, "extract_mL", sample.extract_mL);
    object["dilution"] = dilutionJson(sample.dilution);
    if (!sample.repeats.isEmpty())
        object["repeats"] = utf8(sample.repeats);
    return object;
}

ordered_json readingJson(const Reading &reading)
{
    if (const auto *single = std::get_if<double>(&reading))
        return *single;
    return listOf(std::get<ReadingSeries>(reading), [](const TimedAbsorbance &timed) -> ordered_json {
        return {{"at_min", timed.at_min}, {"absorbance", timed.absorbance}};
    });
}

/// Only where there is something to say.
void writeNumbers(ordered_json &object, const char *key, const std::map<QString, double> &numbers)
{
    if (numbers.empty())
        return;
    ordered_json byName = ordered_json::object();
    for (const auto &[name, number] : numbers)
        byName[utf8(name)] = number;
    object[key] = std::move(byName);
}

ordered_json tubeJson(const Tube &tube)
{
    ordered_json object{{"role", utf8(roleWord(tube.role))}};
    if (!tube.sample.isEmpty())
        object["sample"] = utf8(tube.sample);
    if (!tube.standard.isEmpty())
        object["standard"] = utf8(tube.standard);
    writeOptional(object, "sampleVolume_mL", tube.sampleVolume_mL);
    if (tube.spike)
        object["spike"] = {{"standard", utf8(tube.spike->standard)}, {"volume_mL", tube.spike->volume_mL}};
    writeNumbers(object, "pipetted_mL", tube.pipetted_mL);
    if (!tube.spoilt.isEmpty())
        object["spoilt"] = utf8(tube.spoilt);
    ordered_json readings = ordered_json::object();
    for (const auto &[name, reading] : tube.readings)
        readings[utf8(name)] = readingJson(reading);
    object["readings"] = readings;
    writeNumbers(object, "addedAt_min", tube.addedAt_min);
    writeNumbers(object, "readAt_min", tube.readAt_min);
    return object;
}

ordered_json lotJson(const LotUse &use)
{
    ordered_json object{{"component", utf8(use.component)}, {"lot", utf8(use.lot)}};
    if (use.expires)
        object["expires"] = utf8(dateText(*use.expires));
    return object;
}

} // namespace

ordered_json dilutionJson(const std::vector<DilutionStep> &steps)
{
    return listOf(steps, [](const DilutionStep &step) -> ordered_json {
        ordered_json object{{"take_mL", step.take_mL}, {"makeUpTo_mL", step.makeUpTo_mL}};
        writeOptional(object, "uncertainty_percent", step.uncertainty_percent);
        return object;
    });
}

QByteArray writeRun(const Run &run, const assay::Method *method)
{
    ordered_json object{{"format", "plateau-run/1"}};
    if (!run.title.isEmpty())
        object["title"] = utf8(run.title);
    if (method)
        object["method"] = methodJson(*method);
    else
        object["method"] = utf8(run.method);
    writeOptional(object, "wavelength_nm", run.wavelength_nm);
    writeOptional(object, "pathLength_mm", run.pathLength_mm);
    object["calibration"] = calibrationWord(run.calibration);
    if (run.startedAt)
        object["startedAt"] = utf8(momentText(*run.startedAt));
    if (run.uncertainty)
        object["uncertainty"] = uncertaintyJson(*run.uncertainty);
    object["standards"] = listOf(run.standards, standardJson);
    object["samples"] = listOf(run.samples, sampleJson);
    object["tubes"] = listOf(run.tubes, tubeJson);
    if (!run.lots.empty())
        object["lots"] = listOf(run.lots, lotJson);
    return jsonText(object);
}

} // namespace plateau::exchange
