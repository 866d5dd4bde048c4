#!/usr/bin/python3
# SPDX-FileCopyrightText: The Plateau developers
# SPDX-License-Identifier: GPL-3.0-only
"""Holds the schemas of the file contract against the files we ship and against our own reader, with an
independent validator. Usage: schema_test.py SOURCE_DIRECTORY CONTRACT_TOOL. Without jsonschema it fails."""

import copy
import json
import pathlib
import subprocess
import sys
import tempfile
import unittest

import jsonschema

SOURCE = pathlib.Path(sys.argv[1])
TOOL = sys.argv[2]
GONE = object()

SCHEMAS = {kind: json.loads((SOURCE / f"resources/schemas/plateau-{kind}-1.schema.json").read_text("utf-8"))
           for kind in ("method", "run", "evaluation", "laboratory", "specifications")}
STORE = {schema["$id"]: schema for schema in SCHEMAS.values()}


def validator(kind):
    schema = SCHEMAS[kind]
    return jsonschema.Draft202012Validator(
        schema, resolver=jsonschema.RefResolver.from_schema(schema, store=STORE))


def faults(kind, document):
    return [f"{error.json_path}: {error.message[:200]}" for error in validator(kind).iter_errors(document)]


def tool(*arguments):
    return subprocess.run([TOOL, *map(str, arguments)], capture_output=True, text=True, timeout=60)


def changed(document, pointer, value):
    """A copy with the value at the pointer replaced, added, or taken away."""
    document = copy.deepcopy(document)
    *path, last = pointer.split("/")[1:]
    parent = document
    for token in path:
        parent = parent[int(token) if isinstance(parent, list) else token]
    last = int(last) if isinstance(parent, list) else last
    if value is GONE:
        del parent[last]
    elif isinstance(parent, list) and last == len(parent):
        parent.append(value)
    else:
        parent[last] = value
    return document


METHOD = json.loads((SOURCE / "resources/methods/total-sulphite.json").read_text("utf-8"))
METHOD["extrapolate"] = {"reading": "A2", "lastReadings": 4}
METHOD["derived"] = [{"id": "bound", "name": "Bound", "terms": [
    {"measurand": "sulphite", "factor": 1}, {"method": "free-sulphite", "measurand": "sulphite", "factor": -1}]}]
METHOD["standard"] = {"concentration_g_per_L": 0.3, "lossPerHour": 0.02}
METHOD["tubes"] = {"blanks": 2, "replicates": 2, "standards": 1}
METHOD["reactions"] = ["One NADH for each."]
METHOD["interferences"] = ["Isothiocyanates."]
METHOD["samplePreparation"] = [{"matrix": "clear", "text": "As it is."}, {"matrix": "solid", "text": "Extract."}]
METHOD["measurands"][0]["typicalRange_g_per_L"] = [0.01, 0.3]
METHOD["acceptance"]["repeatability"] = {"constant_g_per_L": 0.01, "proportional": 0.02}

RUN = {
    "format": "plateau-run/1", "title": "Schema test", "method": "total-sulphite", "wavelength_nm": 340,
    "pathLength_mm": 10, "calibration": "absorptivity", "startedAt": "2026-03-02T09:10:00+01:00",
    "uncertainty": {"absorbance": 0.002, "absorptivity_percent": 0.5},
    "standards": [{"id": "STD", "concentration_g_per_L": 0.3, "measurand": "sulphite",
                   "preparedAt": "2026-03-02T08:10:00+01:00", "usedAt": "2026-03-02T09:40:00+01:00",
                   "lossPerHour": 0.02, "uncertainty_percent": 0.8}],
    "samples": [{"id": "P-104", "form": "liquid", "dilution": [{"take_mL": 5, "makeUpTo_mL": 50}]},
                {"id": "F-22", "form": "solid", "mass_g": 5.012, "extract_mL": 100}],
    "tubes": [{"role": "blank", "readings": {"A1": 1.502, "A2": 1.495}},
              {"role": "standard", "standard": "STD", "readings": {"A1": 1.51, "A2": 0.65}},
              {"role": "sample", "sample": "P-104", "readings": {"A1": 1.5, "A2": 1.1}},
              {"role": "spiked", "sample": "P-104", "spike": {"standard": "STD", "volume_mL": 0.1}},
              {"role": "sampleBlank", "sample": "P-104"},
              {"role": "control", "standard": "STD"},
              {"role": "sample", "sample": "F-22",
               "readings": {"A1": 1.5, "A2": [{"at_min": 15, "absorbance": 1.1}, {"at_min": 20, "absorbance": 1.1}]}}],
    "lots": [{"component": "buffer", "lot": "B-7", "expires": "2027-01-31"}]}

# Schema and reader agree on all of these: (pointer, value).
GOOD_METHODS = [
    ("/principle", GONE), ("/cautions", GONE), ("/volumeCorrection", GONE), ("/extrapolate", GONE),
    ("/acceptance", {}), ("/window/maxAbsorbance", GONE), ("/window/reserveAbsorbance", GONE),
    ("/absorptivity_L_per_mol_cm", GONE), ("/version", 2.0), ("/components/3/range_mL", GONE),
    ("/measurands/0/chromophorePerMolecule", 0.5), ("/pathLength_mm", 1000), ("/principle", "two\nlines"),
    ("/measurands/0/signal", {"kind": "difference", "from": "A1", "to": "A2"}),
    ("/measurands/0/typicalRange_g_per_L", GONE), ("/measurands/0/typicalRange_g_per_L", [0, 0]),
    ("/derived", GONE), ("/derived", []), ("/derived/0/terms/1/method", "total-glucose"),
    ("/derived/0/terms/1/factor", -1e-3), ("/standard", GONE), ("/standard", {}), ("/standard/lossPerHour", 0),
    ("/standard/concentration_g_per_L", GONE), ("/reactions", GONE), ("/reactions", []), ("/interferences", GONE),
    ("/tubes", GONE), ("/tubes", {"blanks": 0, "replicates": 1, "standards": 0}),
    ("/tubes", {"blanks": 96, "replicates": 20, "standards": 96}),
    ("/samplePreparation", GONE), ("/samplePreparation/0/matrix", "proteinRich")]
BAD_METHODS = [
    ("/format", "plateau-method/2"), ("/format", GONE), ("/id", " "), ("/id", "a\u202eb"), ("/id", "a\nb"),
    ("/id", "x" * 201), ("/version", 0), ("/version", 1.5), ("/name", GONE), ("/source", GONE), ("/source", "  "),
    ("/operator", "x"), ("/wavelength_nm", 189), ("/wavelength_nm", 340.5), ("/pathLength_mm", 0),
    ("/pathLength_mm", 1001), ("/direction", "up"), ("/volumeCorrection", "yes"), ("/chromophore", ""),
    ("/absorptivity_L_per_mol_cm/340", 0), ("/absorptivity_L_per_mol_cm/340", 1000001),
    ("/absorptivity_L_per_mol_cm/0340", 6300), ("/absorptivity_L_per_mol_cm/1101", 6300),
    ("/components", []), ("/components/0/volume_mL", 0), ("/components/0/volume_mL", 101),
    ("/components/0/volume_mL", "1"), ("/components/0/colour", "red"), ("/components/3/range_mL", [0.1]),
    ("/components/4/suspension", 1), ("/steps", []), ("/steps/4", {"mix": False}), ("/steps/4", {}),
    ("/steps/4", {"mix": True, "temperature_C": [20, 25]}), ("/steps/5/wait_min", [-1, 3]), ("/steps/6/read", " "),
    ("/measurands", []), ("/measurands/0/molarMass_g_per_mol", 0), ("/measurands/0/chromophorePerMolecule", 21),
    ("/measurands/0/signal/kind", "ratio"), ("/measurands/0/signal/base", "A0"), ("/window/minSignal", -1),
    ("/window/maxSignal", GONE), ("/acceptance/standardRecovery_percent", [95]), ("/acceptance/recovery", [95, 105]),
    ("/acceptance/repeatability", {"constant_g_per_L": 0, "proportional": 0}), ("/acceptance", GONE),
    ("/acceptance/repeatability/proportional", GONE), ("/extrapolate/lastReadings", 1), ("/cautions/0", ""),
    ("/measurands/0/typicalRange_g_per_L", [1]), ("/measurands/0/typicalRange_g_per_L", [-1, 1]),
    ("/measurands/0/typicalRange_g_per_L/1", 10001), ("/derived", {}), ("/derived/0/id", " "), ("/derived/0/name", GONE),
    ("/derived/0/terms", []), ("/derived/0/terms", GONE), ("/derived/0/terms/0/factor", 0),
    ("/derived/0/terms/0/factor", GONE), ("/derived/0/terms/0/measurand", ""), ("/derived/0/terms/1/method", ""),
    ("/derived/0/unit", "g/L"), ("/standard", 0.3), ("/standard/concentration_g_per_L", 0), ("/standard/lossPerHour", 1),
    ("/standard/lossPerHour", -0.1), ("/standard/purity", 1), ("/tubes/blanks", GONE), ("/tubes/blanks", 97),
    ("/tubes/blanks", -1), ("/tubes/replicates", 0), ("/tubes/replicates", 21), ("/tubes/standards", 1.5),
    ("/tubes/standards", 97), ("/tubes/spikes", 1), ("/reactions", "one"), ("/reactions/0", " "),
    ("/interferences/0", ""), ("/samplePreparation/0/matrix", "muddy"), ("/samplePreparation/0/matrix", GONE),
    ("/samplePreparation/0/text", " "), ("/samplePreparation/0/time_min", 5)]
GOOD_RUNS = [
    ("/title", GONE), ("/wavelength_nm", GONE), ("/pathLength_mm", GONE), ("/calibration", GONE),
    ("/startedAt", GONE), ("/startedAt", "2026-03-02T09:10:00.25Z"), ("/uncertainty", {}), ("/uncertainty", GONE),
    ("/standards/0/uncertainty_percent", GONE), ("/standards/0/uncertainty_percent", 0),
    ("/standards/0/uncertainty_percent", 100), ("/lots", GONE), ("/standards/0/measurand", GONE), ("/standards/0/usedAt", GONE), ("/method", METHOD),
    ("/samples/0/form", GONE), ("/samples/0/dilution", GONE), ("/samples/1", {"id": "F-22", "repeats": "P-104"}),
    ("/calibration", "standard"),
    ("/tubes/5", {"role": "control", "sample": "P-104"}), ("/tubes/2/sampleVolume_mL", 0.2),
    ("/tubes/2/addedAt_min", {"buffer": 0, "sample": 100000}), ("/tubes/2/readAt_min", {"A1": 5.25, "A2": 30}),
    ("/tubes/2/pipetted_mL", {"buffer": 0, "sample": 0.11}), ("/tubes/2/spoilt", "knocked over"),
    ("/samples/0/dilution/0/uncertainty_percent", 0), ("/samples/0/dilution/0/uncertainty_percent", 100)]
BAD_RUNS = [
    ("/format", "plateau-run/2"), ("/method", GONE), ("/method", 7), ("/operator", "me"),
    ("/samples/1/repeats", " "), ("/samples/1/repeats", 1), ("/samples/0/repeats", ["F-22"]),
    ("/samples", GONE), ("/tubes", GONE), ("/tubes", []), ("/tubes", [{"role": "blank"}] * 97),
    ("/wavelength_nm", 1101), ("/wavelength_nm", 340.5), ("/pathLength_mm", -1), ("/calibration", "curve"),
    ("/startedAt", "2026-03-02T09:10:00"), ("/startedAt", "2026-03-02"), ("/uncertainty/absorbance", -0.1),
    ("/uncertainty/extract_percent", 101), ("/uncertainty/pipette_percent", 1), ("/standards/0/id", ""),
    ("/standards/0/concentration_g_per_L", -1), ("/standards/0/lossPerHour", 1), ("/standards/0/preparedAt", GONE),
    ("/standards/0/uncertainty_percent", -0.1), ("/standards/0/uncertainty_percent", 101),
    ("/samples/0/id", "a\u2066b"), ("/samples/0/form", "gas"), ("/samples/0/mass_g", 5),
    ("/samples/0/extract_mL", 100), ("/samples/1/mass_g", GONE), ("/samples/1/extract_mL", 0),
    ("/samples/0/dilution/0/take_mL", 0), ("/samples/0/dilution", "1:10"), ("/tubes/0/role", "probe"),
    ("/tubes/0/sample", "P-104"), ("/tubes/0/sampleVolume_mL", 0.1), ("/tubes/1/standard", GONE),
    ("/tubes/1/sample", "P-104"), ("/tubes/2/sample", GONE), ("/tubes/2/standard", "STD"),
    ("/tubes/2/spike", {"standard": "STD", "volume_mL": 0.1}), ("/tubes/3/spike", GONE),
    ("/tubes/3/spike/volume_mL", 0), ("/tubes/4/sample", GONE), ("/tubes/5/sample", "P-104"),
    ("/tubes/5/standard", GONE), ("/tubes/2/sampleVolume_mL", 101), ("/tubes/2/readings/A1", "1.5"),
    ("/tubes/2/readings/A1", None), ("/tubes/2/readings/A1", 101), ("/tubes/6/readings/A2", []),
    ("/tubes/6/readings/A2/0/at_min", -1), ("/tubes/6/readings/A2/0/absorbance", GONE), ("/lots/0/lot", " "),
    ("/tubes/2/addedAt_min", {}), ("/tubes/2/addedAt_min", {"buffer": -0.1}), ("/tubes/2/addedAt_min", [1]),
    ("/tubes/2/readAt_min", {"A1": 100001}), ("/tubes/2/readAt_min", {"A1": "5"}), ("/tubes/2/readAt_min", {}),
    ("/tubes/2/readAt_min", {" ": 5}), ("/tubes/2/pipetted_mL", {}), ("/tubes/2/pipetted_mL", {"buffer": -0.1}), ("/tubes/2/pipetted_mL", {"buffer": 101}),
    ("/tubes/2/pipetted_mL", {"buffer": "1"}), ("/tubes/2/pipetted_mL", [1]), ("/tubes/2/spoilt", " "),
    ("/tubes/2/spoilt", True), ("/tubes/2/spoilt", "a\nb"), ("/samples/0/dilution/0/uncertainty_percent", -0.1),
    ("/samples/0/dilution/0/uncertainty_percent", 101),
    ("/lots/0/expires", "01/2027"), ("/lots/0/component", GONE)]
LABORATORY = {
    "format": "plateau-laboratory/1", "name": "Cellar", "rackRows": 4, "rackColumns": 6,
    "handling": {"addition_s": 8, "mix_s": 4, "reading_s": 15}, "overage_percent": 10,
    "glassware": {
        "pipettes": [{"name": "piston", "smallest_mL": 0.1, "largest_mL": 1, "step_mL": 0.01, "uncertainty_percent": 0.6},
                     {"name": "bulb", "smallest_mL": 5, "largest_mL": 5, "step_mL": 0, "uncertainty_percent": 0.2}],
        "flasks": [{"name": "50 mL", "volume_mL": 50, "uncertainty_percent": 0.07}]},
    "review": {"reviewerDecides": True, "secondPersonReviews": False, "rejectionReasons": ["spilt"]},
    "reportHead": {
        "address": ["Lane 1", "Town"], "contact": "cellar@example.org", "logo": {"type": "svg", "base64": "PHN2Zy8+"}},
    "reportUnits": [{"product": "cider", "measurand": "Ethanol", "unit": "mg/L"}],
    "photometer": {"name": "P1", "absorbance": 0.0012, "pathLength_percent": 0.1, "source": "Check record 7",
                   "checkedOn": "2026-09-14"},
    "methodUncertainties": [{"method": "ethanol", "source": "Validation\nof 2026", "absorptivity_percent": 0.3}]}
GOOD_LABORATORIES = [
    ("/name", GONE), ("/rackRows", 1), ("/rackRows", 16), ("/handling/mix_s", 0), ("/handling/addition_s", 600),
    ("/overage_percent", 0), ("/overage_percent", 1000), ("/glassware/pipettes", []), ("/glassware/flasks", []),
    ("/glassware/pipettes/1/uncertainty_percent", 0), ("/glassware/flasks/0/volume_mL", 100000),
    ("/review", GONE), ("/review/rejectionReasons", []), ("/reportHead", GONE), ("/reportHead/address", []),
    ("/reportHead/contact", GONE), ("/reportHead/logo", GONE), ("/reportUnits", []), ("/reportUnits/0/measurand", GONE), ("/reportUnits/0/product", GONE),
    ("/reportUnits/0/unit", "mg/kg"),
    ("/photometer", GONE), ("/photometer", {"name": "P1"}), ("/photometer/absorbance", 0), ("/photometer/checkedOn", GONE),
    ("/photometer/pathLength_percent", GONE), ("/methodUncertainties", GONE), ("/methodUncertainties", []),
    ("/methodUncertainties/0/absorbance", 1), ("/methodUncertainties/0/extract_percent", 100)]
BAD_LABORATORIES = [
    ("/format", "plateau-laboratory/2"), ("/format", GONE), ("/name", " "), ("/name", 7), ("/rackRows", 0), ("/rackRows", 97),
    ("/rackColumns", 1.5), ("/rackColumns", GONE), ("/handling", GONE), ("/handling/addition_s", 0),
    ("/handling/addition_s", 601), ("/handling/mix_s", -1), ("/handling/mix_s", 601), ("/handling/reading_s", 0),
    ("/handling/reading_s", "15"), ("/handling/read_s", 15), ("/overage_percent", -1), ("/overage_percent", 1001),
    ("/overage_percent", GONE), ("/glassware", []), ("/glassware/pipettes", GONE), ("/glassware/flasks", {}),
    ("/glassware/pipettes/0/name", ""), ("/glassware/pipettes/0/smallest_mL", 0), ("/glassware/pipettes/0/largest_mL", 1001),
    ("/glassware/pipettes/0/step_mL", -0.01), ("/glassware/pipettes/0/step_mL", GONE),
    ("/glassware/pipettes/0/uncertainty_percent", 101), ("/glassware/pipettes/0/colour", "red"),
    ("/glassware/flasks/0/volume_mL", 0), ("/glassware/flasks/0/volume_mL", 100001),
    ("/glassware/flasks/0/uncertainty_percent", -1), ("/glassware/flasks/0/uncertainty_percent", GONE),
    ("/glassware/flasks", [{"name": str(i), "volume_mL": 50, "uncertainty_percent": 0} for i in range(101)]),
    ("/glassware/beakers", []), ("/operator", "me"),
    ("/review/reviewerDecides", GONE), ("/review/secondPersonReviews", 1), ("/review/rejectionReasons", [" "]),
    ("/review/rejectionReasons", [str(i) for i in range(101)]), ("/review/boss", "me"), ("/reportHead/address", GONE),
    ("/reportHead/address", [str(i) for i in range(9)]), ("/reportHead/contact", ""), ("/reportHead/logo/type", "gif"),
    ("/reportHead/logo/base64", "PHN2Zy8"), ("/reportHead/logo/base64", "PHN2Zy8*"), ("/reportHead/logo/base64", ""),
    ("/reportUnits", [{"unit": "mg/L"}]), ("/reportUnits/0/product", ""), ("/reportUnits/0/unit", "g/l"), ("/reportUnits/0/measurand", ""),
    ("/reportUnits", [{"product": str(i), "unit": "g/L"} for i in range(1001)]),
    ("/photometer", 7), ("/photometer/name", GONE), ("/photometer/name", " "), ("/photometer/absorbance", 1.1),
    ("/photometer/absorbance", "0.001"), ("/photometer/pathLength_percent", -1), ("/photometer/source", GONE),
    ("/photometer/source", " "), ("/photometer/checkedOn", "September"), ("/photometer/lamp", "new"),
    ("/methodUncertainties", {}), ("/methodUncertainties/0/method", GONE), ("/methodUncertainties/0/method", ""),
    ("/methodUncertainties/0/source", GONE), ("/methodUncertainties/0/source", ""),
    ("/methodUncertainties/0/absorptivity_percent", GONE), ("/methodUncertainties/0/absorptivity_percent", 101),
    ("/methodUncertainties/0/repeatability", 1), ("/methodUncertainties/0/dilution_percent", "1")]

SPECIFICATIONS = {"format": "plateau-specifications/1", "specifications": [
    {"product": "perry", "measurand": "sulphite", "kind": "maximum", "upper": 200, "unit": "mg/L",
     "source": "Customer", "date": "2026-01-15", "rule": "simpleAcceptance"},
    {"product": "perry", "measurand": "sulphite", "kind": "labelThreshold", "upper": 10, "unit": "mg/L",
     "source": "Customer", "date": "2026-01-15", "rule": "guardedBoth", "guard": {"kind": "oneSided95"}},
    {"product": "apple rings", "measurand": "Sucrose", "kind": "range", "lower": 1, "upper": 5, "unit": "g/100 g",
     "source": "House rule\nof 2025", "date": "2025-12-31", "rule": "guardedAcceptance",
     "guard": {"kind": "expandedUncertainty", "size": 0.5}}]}
GOOD_SPECIFICATIONS = [
    ("/specifications", []), ("/specifications/2/lower", 0), ("/specifications/0/upper", 10000000),
    ("/specifications/0/unit", "mmol/L"), ("/specifications/2/guard/size", 10), ("/specifications/1/rule", "guardedRejection"),
    ("/specifications/1/guard", {"kind": "absolute", "size": 2}),
    ("/specifications/0", {"product": "p", "measurand": "m", "kind": "minimum", "lower": 1, "unit": "g/kg", "source": "s",
                           "date": "2026-01-15", "rule": "simpleAcceptance"})]
BAD_SPECIFICATIONS = [
    ("/format", "plateau-specifications/2"), ("/format", GONE), ("/specifications", GONE), ("/specifications", {}),
    ("/operator", "me"), ("/specifications/0/product", " "), ("/specifications/0/product", GONE),
    ("/specifications/0/measurand", ""), ("/specifications/0/measurand", "a\nb"), ("/specifications/0/kind", "most"),
    ("/specifications/0/kind", GONE), ("/specifications/0/kind", "minimum"), ("/specifications/0/kind", "range"),
    ("/specifications/0/upper", GONE), ("/specifications/0/upper", 0), ("/specifications/0/upper", "200"),
    ("/specifications/0/upper", 10000001), ("/specifications/0/lower", 1), ("/specifications/2/lower", GONE),
    ("/specifications/2/lower", -1), ("/specifications/0/unit", "ppm"), ("/specifications/0/unit", GONE),
    ("/specifications/0/source", " "), ("/specifications/0/source", GONE), ("/specifications/0/date", "15.01.2026"),
    ("/specifications/0/date", GONE), ("/specifications/0/rule", "fair"), ("/specifications/0/rule", GONE),
    ("/specifications/0/rule", "guardedBoth"), ("/specifications/0/guard", {"kind": "oneSided95"}),
    ("/specifications/1/guard", GONE), ("/specifications/1/guard", 5), ("/specifications/1/guard/size", 1),
    ("/specifications/1/guard/kind", "absolute"), ("/specifications/1/guard", {}), ("/specifications/2/guard/size", GONE),
    ("/specifications/2/guard/size", 11), ("/specifications/2/guard/size", 0), ("/specifications/2/guard/kind", "U"),
    ("/specifications/0/law", "x")]


class Contract(unittest.TestCase):
    def expect_valid(self, kind, path):
        self.assertEqual(faults(kind, json.loads(pathlib.Path(path).read_text("utf-8"))), [], str(path))

    def verdicts(self, kind, base, changes):
        """For every change (row, what the schema finds, what the reader says)."""
        documents = [changed(base, pointer, value) for pointer, value in changes]
        with tempfile.TemporaryDirectory() as folder:
            paths = []
            for index, document in enumerate(documents):
                path = pathlib.Path(folder) / f"{index}-{kind}.json"
                path.write_text(json.dumps(document), "utf-8")
                paths.append(path)
            answers = tool("read", *paths).stdout.split()
        self.assertEqual(len(answers), len(changes))
        return zip(changes, [faults(kind, document) for document in documents], answers)

    def expect_accepted(self, kind, base, changes):
        for row, found, answer in self.verdicts(kind, base, changes):
            with self.subTest(kind=kind, change=str(row)[:150]):
                self.assertEqual(found, [])
                self.assertEqual(answer, "accepted")

    def expect_refused(self, kind, base, changes):
        for row, found, answer in self.verdicts(kind, base, changes):
            with self.subTest(kind=kind, change=str(row)[:150]):
                self.assertNotEqual(found, [], "the schema lets it pass")
                self.assertEqual(answer, "refused")

    def test_schemas_are_schemas(self):
        for schema in SCHEMAS.values():
            jsonschema.Draft202012Validator.check_schema(schema)

    def test_shipped_methods_are_valid(self):
        paths = sorted((SOURCE / "resources/methods").glob("*.json"))
        self.assertGreaterEqual(len(paths), 23)
        for path in paths:
            self.expect_valid("method", path)

    def test_sample_runs_and_their_evaluations_are_valid(self):
        paths = sorted((SOURCE / "sampledata").glob("*.json"))
        self.assertGreaterEqual(len(paths), 8)
        for path in paths:
            with self.subTest(run=path.name):
                self.expect_valid("run", path)
                for command, kind in (("evaluate", "evaluation"), ("rewrite", "run")):
                    answer = tool(command, path)
                    self.assertEqual(answer.returncode, 0, answer.stderr)
                    self.assertEqual(faults(kind, json.loads(answer.stdout)), [])

    def test_schema_and_reader_accept_the_same_variations(self):
        self.expect_accepted("method", METHOD, [("/name", METHOD["name"]), *GOOD_METHODS])
        self.expect_accepted("run", RUN, [("/title", RUN["title"]), *GOOD_RUNS])
        self.expect_accepted("laboratory", LABORATORY, [("/name", LABORATORY["name"]), *GOOD_LABORATORIES])
        self.expect_accepted("specifications", SPECIFICATIONS,
                             [("/format", SPECIFICATIONS["format"]), *GOOD_SPECIFICATIONS])

    def test_schema_and_reader_refuse_the_same_faults(self):
        self.expect_refused("method", METHOD, BAD_METHODS)
        self.expect_refused("run", RUN, BAD_RUNS)
        self.expect_refused("laboratory", LABORATORY, BAD_LABORATORIES)
        self.expect_refused("specifications", SPECIFICATIONS, BAD_SPECIFICATIONS)

    def test_a_method_inside_a_run_is_held_to_the_methods_schema(self):
        run = changed(RUN, "/method", METHOD)
        self.expect_refused("run", run, [("/method/components/0/volume_mL", 0), ("/method/colour", "red")])

    def test_an_evaluation_of_another_shape_is_refused(self):
        with tempfile.TemporaryDirectory() as folder:
            path = pathlib.Path(folder) / "run.json"
            path.write_text(json.dumps(RUN), "utf-8")
            evaluation = json.loads(tool("evaluate", path).stdout)
        self.assertEqual(faults("evaluation", evaluation), [])
        for pointer, value in [("/acceptable", GONE), ("/colour", "red"), ("/results/0/verdict", "fine"),
                               ("/results/0/unit", "mg/L"), ("/checks/0/id", "too-blue"), ("/tubes/0/signal", "0.1"),
                               ("/checks/0/advice", {"kind": "dilute"}), ("/blanks/0/mean", GONE)]:
            self.assertNotEqual(faults("evaluation", changed(evaluation, pointer, value)), [], pointer)

    def test_a_derived_result_says_what_it_comes_from(self):
        double = [{"id": "double", "name": "Double", "terms": [{"measurand": "sulphite", "factor": 2}]}]
        run = changed(RUN, "/method", changed(METHOD, "/derived", double))
        with tempfile.TemporaryDirectory() as folder:
            path = pathlib.Path(folder) / "run.json"
            path.write_text(json.dumps(run), "utf-8")
            evaluation = json.loads(tool("evaluate", path).stdout)
        self.assertEqual(faults("evaluation", evaluation), [])
        derived = [i for i, result in enumerate(evaluation["results"]) if "terms" in result]
        self.assertNotEqual(derived, [])
        self.assertEqual({evaluation["results"][i]["measurand"] for i in derived}, {"double"})
        terms = f"/results/{derived[0]}/terms"
        measured = next(i for i, result in enumerate(evaluation["results"]) if "terms" not in result)
        for pointer, value in [(terms, []), (f"{terms}/0/factor", GONE), (f"{terms}/0/unit", "g/L"),
                               (f"/results/{derived[0]}/spread", 0), (f"/results/{measured}/spread", GONE)]:
            self.assertNotEqual(faults("evaluation", changed(evaluation, pointer, value)), [], pointer)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
