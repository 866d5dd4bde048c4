// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/jsonparts.h"
#include "core/exchange/jsontext.h"
#include "core/exchange/measuringparts.h"
#include "core/exchange/reportingparts.h"
#include "core/exchange/writers.h"

namespace plateau::exchange {

using namespace plateau::planning;
using nlohmann::ordered_json;

namespace {

ordered_json pipetteJson(const Pipette &pipette)
{
    return {{"name", utf8(pipette.name)},
            {"smallest_mL", pipette.smallest_mL},
            {"largest_mL", pipette.largest_mL},
            {"step_mL", pipette.step_mL},
            {"uncertainty_percent", pipette.uncertainty_percent}};
}

ordered_json flaskJson(const Flask &flask)
{
    return {{"name", utf8(flask.name)},
            {"volume_mL", flask.volume_mL},
            {"uncertainty_percent", flask.uncertainty_percent}};
}

} // namespace

QByteArray writeLaboratory(const Laboratory &laboratory)
{
    ordered_json object{{"format", "plateau-laboratory/1"}};
    if (!laboratory.name.isEmpty())
        object["name"] = utf8(laboratory.name);
    object["rackRows"] = laboratory.rackRows;
    object["rackColumns"] = laboratory.rackColumns;
    object["handling"] = {{"addition_s", laboratory.handling.addition_s},
                          {"mix_s", laboratory.handling.mix_s},
                          {"reading_s", laboratory.handling.reading_s}};
    object["overage_percent"] = laboratory.overage_percent;
    object["glassware"] = {{"pipettes", listOf(laboratory.glassware.pipettes, pipetteJson)},
                           {"flasks", listOf(laboratory.glassware.flasks, flaskJson)}};
    writeReporting(object, laboratory);
    writeMeasuring(object, laboratory);
    return jsonText(object);
}

} // namespace plateau::exchange
