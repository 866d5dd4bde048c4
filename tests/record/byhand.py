# SPDX-FileCopyrightText: The Plateau developers
# SPDX-License-Identifier: GPL-3.0-only
"""The arithmetic of an end-point assay worked out from a printed record, with the formulas as DEVELOPERS.md states them and
none of the program's code. Uncertainties by numerical differences, one input at a time (JCGM 100, 5.1)."""

import math
import re
from datetime import datetime

from printedrecord import packed


class Model:
    """One quantity of one sample in one run. Every input has a name; off changes some of them: absorbances by what is added,
    all others by a factor."""

    def __init__(self, run, sample, measured):
        self.run = run
        self.sample = packed(sample)
        self.measured = measured
        signal = run.measured[packed(measured)]["signal"]
        difference = re.fullmatch(r"(\w+) - (\w+)", signal)
        if difference:
            later, earlier = difference.groups() if run.rising else reversed(difference.groups())
            self.names = [earlier, later]
        else:
            self.names = re.fullmatch(r"coupled indicator of (\w+), (\w+), (\w+)", signal).groups()
        self.molar_mass = float(run.measured[packed(measured)]["M, g/mol"])
        self.per_molecule = float(run.measured[packed(measured)]["n"])
        counts = [n for n, tube in run.tubes.items() if "does not count" not in tube["note"]]
        self.blanks = [n for n in counts if run.tubes[n]["role"] == "blank" and self.is_read(n)]
        self.own_blanks = [n for n in counts if self.is_of_sample(n, "sample blank") and self.is_read(n)]
        self.tubes = [n for n in counts if self.is_of_sample(n, "sample") and self.is_read(n)]
        self.calibrating = [n for n in counts if run.tubes[n]["role"] == "standard" and self.is_read(n)]
        self.by_absorptivity = run.calibration == "by the molar absorptivity"
        self.by_line = run.calibration.startswith("by a line")
        self.steps = run.samples[self.sample]["steps"]

    def is_of_sample(self, n, role):
        return self.run.tubes[n]["role"] == role and self.run.tubes[n]["name"] == self.sample

    def is_read(self, n):
        return all(self.run.tubes[n]["readings"][name] for name in self.names)

    def named(self, name):
        """The volume of a component; in the middle of a sentence its name may begin small."""
        return {key.casefold(): volume for key, volume in self.run.components.items()}[packed(name).casefold()]

    def volume_at(self, reading):
        """Everything that was added before that reading; the diluent makes up for the sample."""
        volume = 0.0
        for step in self.run.steps:
            if step.startswith("add "):
                volume += self.named(step[len("add ") :])
            elif step == "read " + reading:
                return volume
        raise ValueError("the steps have no reading " + reading)

    def inputs(self, tubes):
        """Names of the absorbances that these tubes' signals take."""
        names = []
        for n in tubes:
            for name in self.names:
                points = self.run.tubes[n]["readings"][name]
                if len(points) > 1 and self.run.last_of_series and name == self.run.series_reading:
                    names += [(n, name, i) for i in range(len(points))][-self.run.last_of_series :]
                else:
                    names.append((n, name, len(points) - 1))
        return names

    def absorbance(self, n, name, off):
        points = [(m, a + off.get((n, name, i), 0.0)) for i, (m, a) in enumerate(self.run.tubes[n]["readings"][name])]
        if len(points) > 1 and self.run.last_of_series and name == self.run.series_reading:
            points = points[-self.run.last_of_series :]
            mean_t = sum(m for m, _ in points) / len(points)
            mean_a = sum(a for _, a in points) / len(points)
            slope = sum((m - mean_t) * (a - mean_a) for m, a in points) / sum((m - mean_t) ** 2 for m, _ in points)
            value = mean_a - slope * mean_t
        else:
            value = points[-1][1]
        if self.run.corrects_volume:
            value *= self.volume_at(name) / self.volume_at(self.names[-1])
        return value

    def signal(self, n, off):
        read = [self.absorbance(n, name, off) for name in self.names]
        sign = 1 if self.run.rising else -1
        whole = sign * (read[-1] - read[0])
        if len(read) == 2:
            return whole
        before = sign * (read[1] - read[0])
        return whole - before * before / whole

    def mean_signal(self, tubes, off):
        return sum(self.signal(n, off) for n in tubes) / len(tubes) if tubes else 0.0

    def net(self, n, off):
        own = []
        if self.run.tubes[n]["role"] == "sample":
            own = [b for b in self.own_blanks if self.run.tubes[b]["v"] == self.run.tubes[n]["v"]] or self.own_blanks
        return self.signal(n, off) - self.mean_signal(self.blanks, off) - self.mean_signal(own, off)

    def strength(self, standard):
        """Of a standard at its use, in g/L."""
        row = self.run.standards[standard]
        made = float(row["made, g/L"])
        if row["prepared"] == "–" or row["used"] == "–":
            return made
        moments = [datetime.strptime(row[k].replace(" +", "+"), "%Y-%m-%d %H:%M:%S%z") for k in ("prepared", "used")]
        hours = (moments[1] - moments[0]).total_seconds() / 3600
        return made * (1 - float(row["lost in an hour, %"]) / 100) ** hours

    def points(self, off):
        """(mg in the tube, net signal) of every calibrating tube."""
        return [
            (
                self.strength(self.run.tubes[n]["name"]) * self.run.tubes[n]["v"]
                * off.get(("standard", self.run.tubes[n]["name"]), 1.0) * off.get("sample volume", 1.0),
                self.net(n, off) + off.get(("scatter", n), 0.0),
            )
            for n in self.calibrating
        ]

    def scale(self, off):
        """Intercept, and net signal for one mg."""
        if self.by_absorptivity:
            return 0.0, (
                self.run.absorptivity * off.get("absorptivity", 1.0) * self.run.path_cm * off.get("path length", 1.0)
                * self.per_molecule / (self.molar_mass * self.volume_at(self.names[-1]) * off.get("total volume", 1.0))
            )
        points = self.points(off)
        if not self.by_line:
            return 0.0, sum(net / mg for mg, net in points) / len(points)
        mean_x = sum(x for x, _ in points) / len(points)
        mean_y = sum(y for _, y in points) / len(points)
        slope = sum((x - mean_x) * (y - mean_y) for x, y in points) / sum((x - mean_x) ** 2 for x, _ in points)
        return mean_y - slope * mean_x, slope

    def received(self, pipetted, off):
        """From what was pipetted to the sample as it came, in the unit of its result."""
        value = pipetted
        for i, (taken, made_up, _) in enumerate(self.steps):
            value *= made_up / taken * off.get(("dilution", i), 1.0)
        data = self.run.samples[self.sample]
        if data["mass_g"]:
            value *= data["extract_mL"] / 1000 * off.get("extract", 1.0) / data["mass_g"] * 100
        return value

    def of_tube(self, n, off):
        intercept, slope = self.scale(off)
        pipetted = (self.net(n, off) - intercept) / slope / (self.run.tubes[n]["v"] * off.get("sample volume", 1.0))
        return self.received(pipetted, off)

    def value(self, off=None):
        return sum(self.of_tube(n, off or {}) for n in self.tubes) / len(self.tubes)

    def smallest(self):
        """What the smallest net signal stands for, with the most sample that a tube of it has."""
        intercept, slope = self.scale({})
        largest = max(self.run.tubes[n]["v"] for n in self.tubes)
        return self.received((self.run.smallest_signal - intercept) / slope / largest, {})


def sensitivity(function, name, start):
    step = 1e-5
    return (function({name: start + step}) - function({name: start - step})) / (2 * step)


def of_readings(model, tubes):
    u = model.run.u["eachabsorbance"]
    return u * math.sqrt(sum(sensitivity(model.value, name, 0.0) ** 2 for name in model.inputs(tubes)))


def deviation(values):
    mean = sum(values) / len(values)
    return math.sqrt(sum((v - mean) ** 2 for v in values) / (len(values) - 1))


def repeatability(model):
    values = [model.of_tube(n, {}) for n in model.tubes]
    observed = deviation(values) / math.sqrt(len(values)) if len(values) > 1 else 0.0
    propagated = of_readings(model, model.tubes)
    return ("repeatability", observed, len(values) - 1) if observed > propagated else ("repeatability", propagated, math.inf)


def calibration(model):
    """What the tubes of the standards leave open: their readings, or their scatter where that is more."""
    name = "calibration line" if model.by_line else "standard"
    propagated = of_readings(model, model.calibrating)
    points = model.points({})
    fitted = 2 if model.by_line else 1
    if len(points) <= fitted:
        return name, propagated, math.inf
    intercept, slope = model.scale({})
    scatter = math.sqrt(sum((y - intercept - slope * x) ** 2 for x, y in points) / (len(points) - fitted))
    observed = scatter * math.sqrt(sum(sensitivity(model.value, ("scatter", n), 0.0) ** 2 for n in model.calibrating))
    return (name, observed, len(points) - fitted) if observed > propagated else (name, propagated, math.inf)


def budget(model):
    """(name, standard uncertainty, degrees of freedom) of every source; the absorptivity with its sign."""
    u = model.run.u

    def relative(name, percent):
        return sensitivity(model.value, name, 1.0) * percent / 100

    terms = [repeatability(model)]
    terms.append(("blank", of_readings(model, model.blanks), math.inf))
    terms.append(("sample blank", of_readings(model, model.own_blanks), math.inf))
    if not model.by_absorptivity:
        terms.append(calibration(model))
        together = sum(
            relative(("standard", name), u.get(packed("concentration of the standard " + name), 0.0)) for name in model.run.standards
        )
        terms.append(("concentration of the standard", abs(together), math.inf))
    terms.append(("absorptivity", relative("absorptivity", u["absorptivity"]), math.inf))
    for name in ("path length", "total volume", "sample volume", "extract"):
        terms.append((name, abs(relative(name, u[packed(name)])), math.inf))
    for i, (taken, made_up, own) in enumerate(model.steps):
        percent = u[packed("each dilution step, unless it has its own")] if own is None else own
        name = "dilution step %d (%g mL to %g mL)" % (i + 1, taken, made_up)
        terms.append((name, abs(relative(("dilution", i), percent)), math.inf))
    return terms


def combined(terms):
    return math.sqrt(sum(u * u for _, u, _ in terms))


def effective(terms):
    """Welch and Satterthwaite."""
    below = sum(u**4 / nu for _, u, nu in terms if math.isfinite(nu))
    return combined(terms) ** 4 / below if below else math.inf


def student(level, nu):
    """Two-sided, for any degrees of freedom: the density summed up by Simpson's rule, the quantile by bisection."""

    def inside(t):
        if nu == math.inf:
            return math.erf(t / math.sqrt(2))
        log_c = math.lgamma((nu + 1) / 2) - math.lgamma(nu / 2) - math.log(nu * math.pi) / 2
        parts = 2000
        h = t / parts
        total = 0.0
        for i in range(parts + 1):
            x = i * h
            weight = 1 if i in (0, parts) else 4 if i % 2 else 2
            total += weight * math.exp(log_c - (nu + 1) / 2 * math.log1p(x * x / nu))
        return 2 * total * h / 3

    low, high = 0.0, 100.0
    for _ in range(60):
        middle = (low + high) / 2
        if inside(middle) < level:
            low = middle
        else:
            high = middle
    return (low + high) / 2


def coverage(terms):
    nu = effective(terms)
    return 2.0 if nu >= 30 else student(0.9545, nu)
