# SPDX-FileCopyrightText: The Plateau developers
# SPDX-License-Identifier: GPL-3.0-only
"""Every reported value of the sample notebook, followed by hand from the printed readings to the printed result.

The program makes the sample notebook and prints the run record of every run; from there on only the text of the pages is
used. The value, its bound, its spread, every line of its budget, its coverage factor and its expanded uncertainty are
worked out again and have to be what is printed, to the last printed digit.

Usage: record_test.py PROGRAM
"""

import math
import subprocess
import sys
import tempfile
from pathlib import Path

from byhand import Model, budget, combined, coverage
from printedrecord import Record, number, packed

PER_EVALUATED = {
    ("g/L", "g/L"): 1.0,
    ("mg/L", "g/L"): 1e3,
    ("mg/100 mL", "g/L"): 1e2,
    ("g/100 g", "g/100 g"): 1.0,
    ("mg/kg", "g/100 g"): 1e4,
}


class Test:
    def __init__(self, program):
        self.program = program
        self.failures = []
        self.seen = {}

    def count(self, what):
        self.seen[what] = self.seen.get(what, 0) + 1

    def expect(self, place, printed, value):
        """The printed number is the value rounded to the printed digits."""
        decimals = len(printed.partition(".")[2])
        if abs(float(printed) - value) > 0.5000001 * 10.0**-decimals + 1e-9 * abs(value):
            self.failures.append("%s: printed %s, by hand %.8g" % (place, printed, value))
        self.count("numbers")

    def program_output(self, *arguments, accepted=(0,)):
        done = subprocess.run([self.program, *map(str, arguments)], capture_output=True, text=True)
        if done.returncode not in accepted:
            raise RuntimeError(done.stderr or "status %d" % done.returncode)
        return done.stdout

    def run(self, folder):
        notebook = folder / "sample.plateau"
        self.program_output("sample", notebook)
        for number_of_run in range(1, 1000):
            pdf = folder / ("record%d.pdf" % number_of_run)
            try:
                self.program_output(
                    "report", "--notebook", notebook, "--run", number_of_run, "--record", "--decimal", "point",
                    "--paper", "a4", "--pdf", pdf, accepted=(0, 1),
                )
            except RuntimeError as end:
                if "no run" not in str(end) or number_of_run == 1:
                    raise
                break
            self.check_record("run %d" % number_of_run, Record(pdf))
            self.count("records")

    def check_record(self, place, record):
        for row in record.results:
            where = "%s, %s, %s" % (place, row["sample"], row["quantity"])
            if row["result"] == "–":
                continue
            self.count("results")
            if packed(row["quantity"]) in record.run.measured:
                self.check_measured(where, record, row)
            else:
                self.check_derived(where, record, row)
        for name, (owner, source) in record.run.owners.items():
            if not owner or not source:
                self.failures.append("%s: nobody answers for %s" % (place, name))

    def check_measured(self, where, record, row):
        model = Model(record.run, row["sample"], row["quantity"])
        self.count(record.run.calibration)
        if record.run.samples[model.sample]["mass_g"]:
            self.count("solid")
        if len(model.steps) > 1:
            self.count("several dilution steps")
        if model.own_blanks:
            self.count("sample blank")
        if len(model.names) == 3:
            self.count("coupled indicator")
        if record.run.last_of_series:
            self.count("series")
        if len({record.run.tubes[n]["v"] for n in model.tubes}) > 1:
            self.count("several sample volumes")
        printed, unit = record.budget(row["sample"], row["quantity"])
        self.check_result(where, row, model.value(), [model.of_tube(n, {}) for n in model.tubes], model.smallest(), unit)
        terms = [(name, abs(u), nu) for name, u, nu in budget(model)]
        self.check_budget(where, row, printed, terms, unit)

    def check_derived(self, where, record, row):
        self.count("derived")
        total = []
        value = 0.0
        absorptivities = {}
        terms = record.sum_of(row["sample"], row["quantity"])
        for factor, measurand, method in terms:
            run = next(r for r in [record.run] + record.others if r.method == method)
            if len(run.measured) != 1:
                raise RuntimeError("which quantity is " + measurand)
            model = Model(run, row["sample"], next(iter(run.measured)))
            value += factor * model.value()
            for name, u, nu in budget(model):
                if name == "absorptivity":
                    key = (run.wavelength, run.absorptivity)
                    absorptivities[key] = absorptivities.get(key, 0.0) + factor * u
                else:
                    total.append(("%s: %s" % (method, name), abs(factor) * u, nu))
        total += [("absorptivity", abs(u), math.inf) for u in absorptivities.values()]
        printed, unit = record.budget(row["sample"], row["quantity"])
        self.check_result(where, row, value, [], None, unit)
        self.check_budget(where, row, printed, total, unit)

    def check_result(self, where, row, value, by_tube, smallest, unit):
        per = PER_EVALUATED[(row["unit"], unit or row["unit"])]
        text = row["result"]
        if text.startswith("<"):
            self.count("less than")
            self.expect_bound(where, text, smallest * per, upwards=True)
        elif text.startswith(">"):
            self.count("greater than")
            self.expect_bound(where, text, value * per, upwards=False)
        else:
            self.expect(where, text, value * per)
        if by_tube and row["spread"] not in ("–", ""):
            self.expect(where + ", spread", row["spread"], (max(by_tube) - min(by_tube)) * per)

    def expect_bound(self, where, text, value, upwards):
        printed = text[1:].strip()
        step = 10.0 ** -len(printed.partition(".")[2])
        off = float(printed) - value if upwards else value - float(printed)
        if not -1e-9 * value <= off < step:
            self.failures.append("%s: printed %s, by hand %.8g" % (where, text, value))
        self.count("numbers")

    def check_budget(self, where, row, printed, terms, unit):
        terms = [term for term in terms if term[1] > 1e-9 * combined(terms)]
        if not printed:
            if row["± U"] != "–":
                self.failures.append(where + ": an uncertainty without a budget")
            return
        if sorted(packed(name) for name, _ in printed) != sorted(packed(name) for name, _, _ in terms):
            self.failures.append(
                "%s: the budget has %s, by hand %s" % (where, [n for n, _ in printed], [n for n, _, _ in terms])
            )
            return
        for name, u in printed:
            self.expect("%s, %s" % (where, name), u, next(t[1] for t in terms if packed(t[0]) == packed(name)))
        if number(row["± U"]) is not None:
            per = PER_EVALUATED[(row["unit"], unit)]
            self.expect(where + ", k", row["k"], coverage(terms))
            self.expect(where + ", U", row["± U"], coverage(terms) * combined(terms) * per)

    def missing(self):
        """What the sample notebook has to show, so that nothing is left untried."""
        wanted = [
            "by the molar absorptivity", "by the run's own standard", "by a line through the run's standards", "solid",
            "derived", "several dilution steps", "sample blank", "coupled indicator", "series", "several sample volumes",
            "less than", "greater than",
        ]
        return [what for what in wanted if what not in self.seen]


def main():
    test = Test(sys.argv[1])
    with tempfile.TemporaryDirectory() as folder:
        test.run(Path(folder))
    for failure in test.failures:
        print(failure)
    missing = test.missing()
    if missing:
        print("no result of the sample notebook shows: " + ", ".join(missing))
    print("%(records)d records, %(results)d results, %(numbers)d numbers followed" % test.seen)
    return 1 if test.failures or missing else 0


if __name__ == "__main__":
    sys.exit(main())
