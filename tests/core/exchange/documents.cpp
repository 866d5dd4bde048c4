// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/exchange/documents.h"

#include "core/exchange/readers.h"

namespace plateau::test {

using namespace Qt::StringLiterals;
using nlohmann::ordered_json;

ordered_json methodDocument()
{
    return ordered_json::parse(R"({
 "format": "plateau-method/1", "id": "example-acid", "version": 1, "name": "Example acid", "source": "title, section",
 "principle": "One NADH for each.", "chromophore": "NADH",
 "absorptivity_L_per_mol_cm": {"334": 6180, "340": 6300, "365": 3400},
 "wavelength_nm": 340, "pathLength_mm": 10, "direction": "rising", "volumeCorrection": "none",
 "components": [{"id": "buffer", "name": "Buffer pH 9", "volume_mL": 1.0},
                {"id": "water", "name": "Water", "volume_mL": 1.0},
                {"id": "sample", "name": "Sample", "volume_mL": 0.1, "range_mL": [0.05, 0.5]},
                {"id": "starter", "name": "Enzyme suspension", "volume_mL": 0.02, "suspension": true}],
 "sample": "sample", "diluent": "water", "starter": "starter",
 "steps": [{"add": "buffer"}, {"add": "water"}, {"add": "sample"}, {"mix": true},
           {"wait_min": [3, 10], "temperature_C": [20, 25]}, {"read": "A1"},
           {"add": "starter"}, {"mix": true}, {"wait_min": [15, 40]}, {"read": "A2"}],
 "measurands": [{"id": "example-acid", "name": "Example acid", "molarMass_g_per_mol": 134.09,
                 "chromophorePerMolecule": 1, "signal": {"kind": "difference", "from": "A1", "to": "A2"},
                 "typicalRange_g_per_L": [0.5, 12]}],
 "window": {"minSignal": 0.1, "maxSignal": 1.0, "maxAbsorbance": 2.0, "reserveAbsorbance": 0.1},
 "acceptance": {"maxBlankSignal": 0.05, "standardRecovery_percent": [95, 105], "spikeRecovery_percent": [90, 110],
                "repeatability": {"constant_g_per_L": 0.03, "proportional": 0.03}},
 "extrapolate": {"reading": "A2", "lastReadings": 4},
 "derived": [{"id": "bound-acid", "name": "Bound acid",
              "terms": [{"measurand": "example-acid", "factor": 1.5},
                        {"method": "free-acid", "measurand": "acid", "factor": -1}]}],
 "standard": {"concentration_g_per_L": 0.2, "lossPerHour": 0.02},
 "tubes": {"blanks": 1, "replicates": 2, "standards": 3},
 "reactions": ["Acid + NAD -> base + NADH: one NADH for each."],
 "interferences": ["Other acids.", "Tannins."],
 "samplePreparation": [{"matrix": "clear", "text": "Pipette as it is."}, {"matrix": "proteinRich", "text": "Clarify."}],
 "cautions": ["Local rules come first."]})");
}

ordered_json runDocument()
{
    return ordered_json::parse(R"({
 "format": "plateau-run/1", "title": "Perry tanks, morning", "method": "example-acid", "wavelength_nm": 340,
 "pathLength_mm": 10, "calibration": "absorptivity", "startedAt": "2026-03-02T09:10:00+01:00",
 "uncertainty": {"absorbance": 0.002, "absorptivity_percent": 0.5, "pathLength_percent": 0.2,
                 "totalVolume_percent": 0.5, "sampleVolume_percent": 0.8, "dilution_percent": 0.4, "extract_percent": 0.2},
 "standards": [{"id": "STD", "concentration_g_per_L": 0.2, "measurand": "example-acid",
                "preparedAt": "2026-03-02T08:10:00+01:00", "usedAt": "2026-03-02T09:40:00+01:00", "lossPerHour": 0.02,
                "uncertainty_percent": 0.75}],
 "samples": [{"id": "P-104", "form": "liquid", "dilution": [{"take_mL": 5, "makeUpTo_mL": 50, "uncertainty_percent": 0.15}]},
             {"id": "F-22", "form": "solid", "mass_g": 5.012, "extract_mL": 100, "dilution": []}],
 "tubes": [{"role": "blank", "readings": {"A1": 0.102, "A2": 0.115}},
           {"role": "standard", "standard": "STD", "readings": {"A1": 0.110, "A2": 0.560}},
           {"role": "sample", "sample": "P-104", "readings": {"A1": 0.121, "A2": 0.481},
            "addedAt_min": {"sample": 1.25, "starter": 6.5}, "readAt_min": {"A1": 5.5, "A2": 22.0}},
           {"role": "sample", "sample": "P-104", "sampleVolume_mL": 0.2,
            "pipetted_mL": {"buffer": 1.1, "sample": 0.21}, "readings": {"A1": 0.141}},
           {"role": "sampleBlank", "sample": "P-104", "spoilt": "knocked over", "readings": {}},
           {"role": "spiked", "sample": "P-104", "spike": {"standard": "STD", "volume_mL": 0.1}, "readings": {"A1": 0.12}},
           {"role": "control", "standard": "STD", "readings": {"A1": 0.120}},
           {"role": "sample", "sample": "F-22", "readings": {"A1": 0.121,
             "A2": [{"at_min": 15, "absorbance": 0.512}, {"at_min": 20, "absorbance": 0.514}]}}],
 "lots": [{"component": "buffer", "lot": "B-7", "expires": "2027-01-31"}, {"component": "starter", "lot": "E 12"}]})");
}

std::optional<assay::Method> installed(const QString &id)
{
    const auto read = exchange::readMethod(bytes(methodDocument()));
    return read.value && read.value->id == id ? read.value : std::nullopt;
}

QByteArray bytes(const ordered_json &document)
{
    return QByteArray::fromStdString(document.dump());
}

ordered_json changed(ordered_json document, const Change &change)
{
    const ordered_json::json_pointer pointer(change.pointer);
    if (change.value) {
        document[pointer] = ordered_json::parse(change.value);
    } else if (ordered_json &parent = document[pointer.parent_pointer()]; parent.is_array()) {
        parent.erase(std::stoul(pointer.back()));
    } else {
        parent.erase(pointer.back());
    }
    return document;
}

} // namespace plateau::test
