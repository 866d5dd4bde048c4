#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Plateau developers
# SPDX-License-Identifier: GPL-3.0-only
"""Names that nobody would give, through the whole program: run file, evaluation, notebook, PDF, CSV, export and import.

Usage: hostilenames_test.py PLATEAU
"""
import csv
import json
import os
import pathlib
import subprocess
import sys
import tempfile
import unittest

ROOT = pathlib.Path(__file__).resolve().parents[2]
PLATEAU = sys.argv.pop(1)
KEPT = {
    "long": "Keeved cider " * 7,
    "right to left": "סיידר אגסים 7",
    "zero width": "tank\u200b\u200d4\ufeff",
    "formula": "=HYPERLINK(\"x\";\"tank\")",
    "formula in disguise": "+1-2@SUM(A1)",
    "quotes": "the \"old\" tank; 'left', 4,5\\",
    "emoji": "🍏🍐 cider 🧪👩‍🔬",
    "markup": "<b>bold</b> & <img src='x'> ]]>",
    "accents on accents": "e" + "\u0301" * 40,
    "looks like an option": "--help",
    "looks like a path": "../../etc/passwd",
    "looks like SQL": "x'); DROP TABLE run; --",
    "place holders": "%1 %2 %s %n {0} ${HOME}",
}
REFUSED = {
    "four kilobytes": "W" * 4096,
    "newlines": "two\nlines",
    "carriage return": "two\rlines",
    "tab": "a\tb",
    "reordering signs": "tank \u202e7 kcab\u202c 9",
    "nothing": "",
    "blanks": "   ",
    "NUL": "tank\u0000 4",
    "half a sign": "\ud83c",
}


def plateau(*words):
    environment = dict(os.environ, QT_QPA_PLATFORM="offscreen")
    return subprocess.run([PLATEAU, *map(str, words)], capture_output=True, text=True, timeout=120, env=environment, check=False)


class HostileNames(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory()
        self.addCleanup(self.folder.cleanup)
        self.place = pathlib.Path(self.folder.name)

    def file_with(self, name):
        run = json.loads((ROOT / "sampledata" / "clean-run.json").read_text())
        old = run["samples"][0]["id"]
        run["samples"][0]["id"] = name
        run["title"] = name
        for tube in run["tubes"]:
            if tube.get("sample") == old:
                tube["sample"] = name
        path = self.place / "run.json"
        path.write_text(json.dumps(run))
        return path

    def names_in(self, table):
        with open(table, encoding="utf-8-sig", newline="") as lines:
            rows = list(csv.reader(lines))
        return [row[rows[0].index("sample")] for row in rows[1:]]

    def test_that_can_be_kept_come_back_as_they_were(self):
        for what, name in KEPT.items():
            with self.subTest(what):
                run = self.file_with(name)
                book = self.place / f"{what}.plateau"
                self.assertEqual(plateau("import", book, run).returncode, 0)
                table = self.place / "results.csv"
                done = plateau("report", run, "--pdf", self.place / "report.pdf", "--csv", table)
                self.assertEqual(done.returncode, 0, done.stderr)
                names = self.names_in(table)
                # A sheet would work out what begins with one of these.
                safe = "'" + name if name.strip()[:1] in "=+-@" else name
                self.assertEqual(names[0], safe)
                self.assertEqual(len(names), 4)
                export = self.place / f"{what} exported"
                self.assertEqual(plateau("export", book, export).returncode, 0)
                again = self.place / f"{what} again.plateau"
                self.assertEqual(plateau("import", again, export).returncode, 0)
                self.assertEqual(plateau("verify", again).returncode, 0)
                runs = [json.loads(path.read_text())["samples"][0]["id"] for path in export.rglob("*.json")
                        if path.read_text().lstrip().startswith("{") and "plateau-run/1" in path.read_text()[:200]]
                self.assertEqual(runs, [name])

    def test_that_cannot_are_refused_and_the_place_is_named(self):
        for what, name in REFUSED.items():
            with self.subTest(what):
                run = self.file_with(name)
                book = self.place / f"{what}.plateau"
                done = plateau("import", book, run)
                self.assertEqual(done.returncode, 2, what)
                self.assertRegex(done.stderr, r"/samples/0/id: |/title: |line \d")
                self.assertFalse(book.exists())

    def test_of_an_export_folder_lead_nowhere_else(self):
        book = self.place / "book.plateau"
        self.assertEqual(plateau("import", book, ROOT / "sampledata" / "clean-run.json").returncode, 0)
        export = self.place / "export"
        self.assertEqual(plateau("export", book, export).returncode, 0)
        manifest = json.loads((export / "manifest.json").read_text())
        first = manifest["tables"][0]["table"]
        for number, name in enumerate(("../../outside", "/etc/passwd", "run; DROP TABLE run", "sqlite_schema", "", "run\u0000")):
            with self.subTest(name):
                changed = json.loads(json.dumps(manifest))
                changed["tables"][0]["table"] = name
                (export / "manifest.json").write_text(json.dumps(changed))
                again = self.place / f"again{number}.plateau"
                done = plateau("import", again, export)
                self.assertEqual(done.returncode, 2, done.stdout)
                self.assertEqual(len(done.stderr.strip().splitlines()), 1, done.stderr)
                self.assertFalse(again.exists())
        for number, content in enumerate((b"", b"[]", b"{", b"[" * 100_000, b"\xff\xfe", b'{"rows": 1e999}')):
            with self.subTest(content[:10]):
                (export / "manifest.json").write_text(json.dumps(manifest))
                (export / "tables" / f"{first}.json").write_bytes(content)
                again = self.place / f"torn{number}.plateau"
                done = plateau("import", again, export)
                self.assertEqual(done.returncode, 2, done.stdout)
                self.assertFalse(again.exists())


if __name__ == "__main__":
    unittest.main()
