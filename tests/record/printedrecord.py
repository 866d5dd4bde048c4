# SPDX-FileCopyrightText: The Plateau developers
# SPDX-License-Identifier: GPL-3.0-only
"""A run record as somebody reads it who has nothing but its pages: the text of the PDF, its tables and its captions.

Shares no code with the program. What is read is what is printed, never a file of the program's."""

import re
import subprocess


class Unreadable(Exception):
    pass


def chunks(line):
    """Parts of a line that two blanks or more keep apart, each with the place where it begins and ends."""
    return [(m.start(), m.end(), m.group()) for m in re.finditer(r"\S+(?: \S+)*", line)]


def packed(text):
    """Without blanks, which the reader of a PDF has to guess from gaps."""
    return re.sub(r"\s", "", text)


class Pages:
    """The lines of a document without what stands at the head and the foot of every page."""

    def __init__(self, pdf):
        text = subprocess.run(["pdftotext", "-layout", "-enc", "UTF-8", pdf, "-"], check=True, capture_output=True).stdout
        self.lines = []
        for page in text.decode("utf-8").translate(self.PLAIN).split("\f"):
            self.lines += [line for line in page.split("\n") if not self.is_frame(line)]

    # The signs of paper, each as what is written in a file.
    PLAIN = {0x00A0: " ", 0x2212: "-", 0x00D7: "x"}

    @staticmethod
    def is_frame(line):
        bare = line.strip()
        return (
            bare in ("COPY", "DRAFT", "REJECTED", "REPLACED")
            or re.search(r"page \d+ of \d+$", bare) is not None
            or re.search(r"run record [\d ]+, revision \d+$", bare) is not None
        )

    def find(self, start, begin=0, end=None):
        """The number of the first line that begins so; None for none."""
        for i in range(begin, len(self.lines) if end is None else end):
            if self.lines[i].strip().startswith(start):
                return i
        return None

    def paragraph(self, start, begin=0, end=None):
        """The text from a line that begins so up to the next blank line; empty for none."""
        at = self.find(start, begin, end)
        if at is None:
            return ""
        parts = []
        while at < len(self.lines) and self.lines[at].strip():
            parts.append(self.lines[at].strip())
            at += 1
        return " ".join(parts)

    def field(self, caption, begin=0, end=None):
        """What stands below a caption of a row of fields."""
        for i in range(begin, (len(self.lines) if end is None else end) - 1):
            for start, _, text in chunks(self.lines[i]):
                if text != caption:
                    continue
                below = [c for c in chunks(self.lines[i + 1]) if abs(c[0] - start) <= 3]
                if below:
                    return below[0][2]
        raise Unreadable("no field " + caption)

    def table(self, columns, begin=0, end=None, key=0):
        """The rows of the first table with exactly these columns, as dictionaries; a line whose key column is blank goes on
        with the row before it. Nothing where there is no such table."""
        last = len(self.lines) if end is None else end
        wanted = packed("".join(columns))

        def is_head(line):
            return packed(line) == wanted and len(chunks(line)) == len(columns)

        at = next((i for i in range(begin, last) if is_head(self.lines[i])), None)
        if at is None:
            return []
        rows = []
        heads = chunks(self.lines[at])
        i = at + 1
        while i < last:
            line = self.lines[i]
            if is_head(line):  # once more, on another page
                heads = chunks(line)
                i += 1
                continue
            if not line.strip():
                following = next((j for j in range(i, last) if self.lines[j].strip()), last)
                if following == last:
                    break
                # Rows of several lines stand a blank line apart; what follows a table is one piece of text.
                goes_on = is_head(self.lines[following]) or (following == i + 1 and len(chunks(self.lines[following])) > 1)
                if rows and not goes_on:
                    break
                i = following
                continue
            if not self.add_line(rows, heads, columns, key, line):
                break
            i += 1
        return rows

    @staticmethod
    def add_line(rows, heads, columns, key, line):
        cells = {}
        parts = chunks(line)
        for at, (start, end, text) in enumerate(parts):
            # A whole row tells its columns by their order; of a part of one the nearest head has to do.
            place = at if len(parts) == len(heads) else min(
                range(len(heads)), key=lambda c: min(abs(start - heads[c][0]), abs(end - heads[c][1]))
            )
            name = columns[place]
            cells[name] = cells[name] + " " + text if name in cells else text
        if columns[key] in cells and len(cells) > 1:
            rows.append({name: cells.get(name, "") for name in columns})
            return True
        if not rows:
            return False
        for name, text in cells.items():
            rows[-1][name] = (rows[-1][name] + " " + text).strip()
        return True


def number(text):
    """A printed number; None for a dash."""
    return None if text in ("–", "") else float(text)


class Run:
    """One run of a record: what it prints of method, conditions, samples, standards, tubes."""

    def __init__(self, pages, begin, end):
        self.pages = pages
        self.begin = begin
        self.end = end
        self.read_method()
        self.read_conditions()
        self.read_uncertainties()
        self.read_samples()
        self.read_tubes()

    def rows(self, columns, key=0):
        return self.pages.table(columns, self.begin, self.end, key)

    def field(self, caption):
        return self.pages.field(caption, self.begin, self.end)

    def read_method(self):
        at = self.pages.find("Method", self.begin, self.end)
        self.method = re.search(r"\(([a-z0-9-]+)\), version", " ".join(self.pages.lines[at : at + 3])).group(1)
        self.components = {}
        self.sample = self.diluent = self.starter = None
        for row in self.rows(["component", "volume, mL", "may be, mL", "part"]):
            self.components[packed(row["component"])] = float(row["volume, mL"])
            parts = row["part"].split("; ")
            for part in parts:
                if part == "sample":
                    self.sample = packed(row["component"])
                elif part.startswith("diluent"):
                    self.diluent = packed(row["component"])
                elif part == "starter":
                    self.starter = packed(row["component"])
        steps = self.pages.paragraph("Steps: ", self.begin, self.end)
        self.steps = steps[len("Steps: ") :].rstrip(".").split("; ")
        self.last_of_series = 0
        line = re.search(r"A series of (\w+) counts as the straight line through its last (\d+) readings", steps)
        if not line:
            sentence = self.pages.paragraph("A series of", self.begin, self.end)
            line = re.search(r"A series of (\w+) counts as the straight line through its last (\d+) readings", sentence)
        if line:
            self.series_reading, self.last_of_series = line.group(1), int(line.group(2))
        self.steps[-1] = self.steps[-1].split(". ")[0].rstrip(".")
        self.measured = {}
        for row in self.rows(["measured", "signal", "M, g/mol", "n", "factor, g/L for one unit of signal"]):
            self.measured[packed(row["measured"])] = row

    def read_conditions(self):
        self.wavelength = self.field("wavelength")
        self.path_cm = float(self.field("path length d").split(" ")[0])
        absorptivity = self.field("molar absorptivity e").split(" ")[0]
        self.absorptivity = number(absorptivity)
        self.rising = self.field("direction") == "rising"
        self.corrects_volume = self.field("readings").startswith("brought to the final")
        self.calibration = self.field("calibration")
        self.smallest_signal = float(self.field("net signal to be reported").split(" ")[0])

    def read_uncertainties(self):
        self.u = {}
        self.owners = {}
        head = ["standard uncertainty (k = 1) of", "value", "unit", "who answers for it", "where it comes from"]
        for row in self.rows(head):
            self.u[packed(row[head[0]])] = float(row["value"])
            self.owners[packed(row[head[0]])] = (row[head[3]], row[head[4]])

    def read_samples(self):
        self.samples = {}
        for row in self.rows(["sample", "weighed, g", "extract, mL", "dilution", "factor F"]):
            steps = re.findall(r"([\d.]+) → ([\d.]+) mL(?: \(u = ([\d.]+) %\))?", row["dilution"])
            self.samples[packed(row["sample"])] = {
                "mass_g": number(row["weighed, g"]),
                "extract_mL": number(row["extract, mL"]),
                "steps": [(float(a), float(b), float(u) if u else None) for a, b, u in steps],
                "factor": float(row["factor F"]),
            }
        self.standards = {}
        head = ["standard", "holds", "made, g/L", "prepared", "used", "lost in an hour, %", "at use, g/L"]
        for row in self.rows(head):
            self.standards[packed(row["standard"])] = row

    def read_tubes(self):
        self.tubes = {}
        at = self.pages.find("Tubes and readings", self.begin, self.end)
        head = next(
            [c[2] for c in chunks(line)]
            for line in self.pages.lines[at + 1 : self.end]
            if [c[2] for c in chunks(line)][:2] == ["tube", "contents"]
        )
        fixed = ("tube", "contents", "v, mL", "V, mL", "note")
        self.readings = [name for name in head if name not in fixed]
        for row in self.pages.table(head, at, self.end):
            role, _, name = row["contents"].partition(": ")
            self.tubes[int(row["tube"])] = {
                "role": role,
                "name": packed(name),
                "v": float(row["v, mL"]),
                "note": row.get("note", ""),
                "readings": {r: self.reading(row[r]) for r in self.readings},
            }

    @staticmethod
    def reading(text):
        """A list of (minutes, absorbance); a single reading has no minutes."""
        text = re.sub(r" [a-z]+\)", "", text)  # the mark of a correction
        if text in ("–", ""):
            return []
        if "min:" not in text:
            return [(None, float(text))]
        return [(float(m), float(a)) for m, a in re.findall(r"([\d.]+) min: ([\d.]+)", text)]


class Record:
    """A whole record: the results as they are reported, the run, and the runs that derived results take from."""

    def __init__(self, pdf):
        self.pages = Pages(pdf)
        at = [i for i, line in enumerate(self.pages.lines) if line.startswith("Run that results are taken from:")]
        end = self.pages.find("What plateau verify confirms")
        borders = at + [end]
        self.run = Run(self.pages, self.pages.find("Method"), borders[0])
        self.others = [Run(self.pages, borders[i], borders[i + 1]) for i in range(len(at))]
        self.results = self.pages.table(
            ["sample", "quantity", "result", "± U", "unit", "k", "tubes", "spread", "verdict"], 0, self.pages.find("Checks")
        )

    def budget(self, sample, quantity):
        """Source and standard uncertainty of a result as printed, with the unit; empty for none."""
        at = self.heading("Calculation: %s, %s" % (sample, quantity))
        if at is None:
            return [], ""
        following = next(
            (
                i
                for i in range(at + 1, len(self.pages.lines))
                if self.pages.lines[i].startswith(("Calculation: ", "At the bench", "Run that results", "What plateau", "When it was"))
            ),
            len(self.pages.lines),
        )
        for unit in ("g/L", "g/100 g"):
            rows = self.pages.table(
                ["source of uncertainty", "standard uncertainty, " + unit, "share of the variance, %"], at, following
            )
            if rows:
                # The lines below the table (coverage factor, expanded uncertainty) stand a blank line apart, as its rows do.
                return [
                    (row["source of uncertainty"], row["standard uncertainty, " + unit])
                    for row in rows
                    if row["share of the variance, %"] and not row["source of uncertainty"].startswith(("coverage factor", "expanded"))
                ], unit
        return [], ""

    def heading(self, text):
        """The line where this heading begins; it may go on over several."""
        wanted = packed(text)
        for i in range(len(self.pages.lines)):
            if not self.pages.lines[i].strip():
                continue
            joined = ""
            for line in self.pages.lines[i : i + 4]:
                joined += packed(line)
                if joined == wanted:
                    return i
                if not wanted.startswith(joined):
                    break
        return None

    def sum_of(self, sample, quantity):
        """The terms of a derived result as its calculation writes them: (factor, measurand, method), in order."""
        at = self.heading("Calculation: %s, %s" % (sample, quantity))
        terms = []
        formula = None
        for line in self.pages.lines[at : at + 14]:
            term = re.match(r"(c\d+): (\S+)\s+method ([^,\s]+),", line)
            if term:
                terms.append((term.group(1), term.group(2), term.group(3)))
            elif terms and formula is None and re.search(r"\bc1\b", line):
                formula = chunks(line)[1][2]
        if formula is None:
            raise Unreadable("no sum for " + quantity)
        factors = {}
        for sign, factor, name in re.findall(r"(^-?|[+-]) ?(?:([\d.]+) x )?(c\d+)", formula):
            factors[name] = (-1 if "-" in sign else 1) * (float(factor) if factor else 1.0)
        return [(factors[name], measurand, method) for name, measurand, method in terms]
