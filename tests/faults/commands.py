# SPDX-FileCopyrightText: The Plateau developers
# SPDX-License-Identifier: GPL-3.0-only
"""Every call of the program's commands that touches the disk fails once, one call after the other.

shim.cpp makes the n-th call fail: no room, a broken disk, half a write on a disk that is full then, no right, a folder that
vanishes (a stick that is pulled), or kills the program. After each: the command ends with 0 and has done all of it, or with 2 and a sentence on
standard error, if it lives; it never crashes and never hangs. What is under the name it was given is whole or not there at all; a file that
stood there before is the old or the new one. The notebook is as it was, or as it was to become, and verifies. The
same command then works on the disk that works again.

Usage: commands.py --plateau PLATEAU --shim SHIM --source PROJECT [--most 0] [--only NAME]
"""

import argparse
import collections
import contextlib
import datetime
import errno
import hashlib
import json
import os
import random
import shutil
import signal
import sqlite3
import subprocess
import sys
import tempfile
import zlib
from pathlib import Path

# What fails, how.
FAULTS = [("write", str(errno.ENOSPC)), ("write", f"{errno.EIO}+"), ("write", "short"), ("sync", str(errno.EIO)),
          ("open", str(errno.EACCES)), ("remove", str(errno.EIO)), ("rename", str(errno.EIO)), ("link", str(errno.EIO)),
          ("truncate", str(errno.EIO)), ("any", "gone"), ("any", "kill")]
# Notebooks as the programs of their times wrote them, which an import upgrades first.
OLD_SCHEMAS = (1, 2, 3, 4, 5, 6, 7, 8)
NEWEST = 9
SESSIONS = {
    "import": ["import", "{notebook}", "{runs}/trace.json", "{runs}/solid.json"],
    "import-new": ["import", "{out}/new.plateau", "{runs}/trace.json"],
    "export": ["export", "{notebook}", "{out}/exported"],
    "import-export": ["import", "{out}/again.plateau", "{export}"],
    "backup": ["backup", "{notebook}", "{out}/backups"],
    "restore": ["restore", "{notebook}", "{out}/restored.plateau"],
    "archive": ["archive", "{notebook}", "{year}", "{out}/archive.plateau"],
    "report": ["report", "{runs}/clean-run.json", "--pdf", "{out}/report.pdf", "--csv", "{out}/results.csv"],
    "record": ["report", "--notebook", "{notebook}", "--run", "1", "--record", "--pdf", "{out}/record.pdf"],
    "worksheet": ["worksheet", "{runs}/on-the-bench.json", "--pdf", "{out}/worksheet.pdf"],
    "labels": ["labels", "{runs}/on-the-bench.json", "--pdf", "{out}/labels.pdf"],
    "verify": ["verify", "{notebook}"],
    **{f"upgrade-{schema}": ["import", "{out}/old.plateau", "{runs}/trace.json"] for schema in OLD_SCHEMAS},
}
# These replace a file that is there.
REPLACED = {"report": ["report.pdf", "results.csv"], "record": ["record.pdf"], "worksheet": ["worksheet.pdf"],
            "labels": ["labels.pdf"]}
OLD = b"%PDF-1.4 what stood here before %%EOF\n"


class Finding(Exception):
    pass


class Campaign:
    def __init__(self, arguments, folder):
        self.arguments = arguments
        self.folder = folder
        self.base = folder / "base"
        self.work = folder / "work"
        self.away = Path(str(self.work) + "-gone")
        self.outside = folder / "outside"
        self.outside.mkdir()
        self.tally = collections.Counter()
        self.said = {}
        self.base.mkdir()
        (self.base / "out").mkdir()
        self.runs = Path(arguments.source) / "sampledata"
        made = self.program(["import", str(self.base / "book.plateau"), str(self.runs / "clean-run.json")])
        self.need(made, "the notebook to start from")
        # That in which its only act was done.
        self.year = datetime.datetime.now(datetime.timezone.utc).year
        self.need(self.program(["export", str(self.base / "book.plateau"), str(self.outside / "export")]), "the export")

    @staticmethod
    def need(done, what):
        if done.returncode != 0:
            raise Finding(f"{what}: {done.returncode} {done.stderr}")

    def program(self, words, **variables):
        environment = dict(os.environ, HOME=str(self.outside), XDG_DATA_HOME=str(self.outside),
                           XDG_CONFIG_HOME=str(self.outside), **variables)
        try:
            return subprocess.run([self.arguments.plateau, *words], capture_output=True, text=True, timeout=120,
                                  stdin=subprocess.DEVNULL, env=environment, check=False)
        except subprocess.TimeoutExpired as late:
            raise Finding("it hangs") from late

    def words(self, session):
        places = {"notebook": self.work / "book.plateau", "out": self.work / "out", "runs": self.runs,
                  "export": self.outside / "export", "year": self.year}
        return [word.format(**places) for word in SESSIONS[session]]

    def begin(self, session):
        for folder in (self.work, self.away):
            shutil.rmtree(folder, ignore_errors=True)
        shutil.copytree(self.base, self.work)
        for name in REPLACED.get(session, []):
            (self.work / "out" / name).write_bytes(OLD)
        if session.startswith("upgrade-"):
            (self.work / "out" / "old.plateau").write_bytes(self.old_notebook(session))

    def old_notebook(self, session):
        packed = Path(self.arguments.source) / "tests/core/notebook/data" / (session.replace("upgrade-", "schema") + ".plateau.z")
        return zlib.decompress(packed.read_bytes()[4:])  # behind the length that Qt puts in front

    def run(self):
        for session in SESSIONS:
            if self.arguments.only and session != self.arguments.only:
                continue
            self.begin(session)
            log = self.outside / "log"
            log.unlink(missing_ok=True)
            done = self.program(self.words(session), LD_PRELOAD=self.arguments.shim, PLATEAU_FAULTS_FOLDER=str(self.work),
                                PLATEAU_FAULTS_LOG=str(log))
            self.need(done, session)
            self.expect_whole(session)
            calls = collections.Counter(line.split("\t")[0] for line in log.read_text().splitlines())
            calls["any"] = sum(calls.values())
            faults = [f"{call}:{number}:{kind}" for call, kind in FAULTS for number in range(1, calls[call] + 1)]
            if 0 < self.arguments.most < len(faults):
                faults = random.Random(session).sample(faults, self.arguments.most)
            for fault in faults:
                try:
                    self.fail(session, fault)
                except Finding as finding:
                    raise Finding(f"{session} with {fault}: {finding}") from finding

    def fail(self, session, fault):
        self.begin(session)
        words = self.words(session)
        done = self.program(words, LD_PRELOAD=self.arguments.shim, PLATEAU_FAULTS_FOLDER=str(self.work),
                            PLATEAU_FAULTS=fault)
        self.tally[f"{session}: calls that failed"] += 1
        if self.away.exists():
            # The stick is put in again.
            shutil.rmtree(self.work, ignore_errors=True)
            self.away.rename(self.work)
        if done.returncode == 0:
            self.tally[f"{session}: of these done all the same"] += 1
            if not fault.endswith("gone"):
                self.expect_whole(session)
            return
        lines = done.stderr.strip().splitlines()
        if done.returncode != (-signal.SIGKILL if fault.endswith("kill") else 2):
            raise Finding(f"ends with {done.returncode}: {done.stderr}")
        if not fault.endswith("kill") and (not 1 <= len(lines) <= 3 or not all(len(line) > 20 for line in lines)):
            raise Finding(f"says {lines}")
        self.expect_nothing_half(session)
        # The cause is gone: what was tried is done, where nothing of it is left that stands in its way.
        again = self.program(words)
        if again.returncode != 0 and not self.is_left_over(again):
            raise Finding(f"does not work afterwards: {again.stderr}; at the fault it said {lines}")
        if session.startswith("upgrade-"):
            self.expect_nothing_lost(session)
        if again.returncode == 0:
            self.expect_whole(session)

    @staticmethod
    def is_left_over(done):
        # The last step had been done, and only its sync failed: the name is taken by the whole thing.
        return done.returncode == 1 or "already" in done.stderr

    def verify(self, notebook):
        done = self.program(["verify", str(notebook)])
        if done.returncode != 0:
            raise Finding(f"{notebook.name} does not verify: {done.stdout} {done.stderr}")
        return done.stdout

    def verify_all(self, session, is_over=True):
        for path in (self.work / "out").rglob("*.plateau"):
            if not session.startswith("upgrade-"):
                self.verify(path)
            elif self.schema_of(path) == NEWEST:
                # What the program of that time decided may come out otherwise today; nothing else may be wrong, then or now.
                said = [line for line in self.program(["verify", str(path)]).stdout.splitlines() if ": " in line]
                if not is_over: # the search is made anew by whoever opens it next
                    said = [line for line in said if not line.startswith("search_")]
                if not all("evaluated again" in line for line in said) or said != self.said.setdefault(session, said):
                    raise Finding(f"{path.name} does not verify: {said}")
            # else the copy that an upgrade makes first, or what it stopped in

    @staticmethod
    def schema_of(path):
        try:
            with contextlib.closing(sqlite3.connect(f"file:{path}?mode=ro", uri=True)) as book:
                return book.execute("PRAGMA user_version").fetchone()[0]
        except sqlite3.OperationalError: # a half step waits to be taken back by whoever opens it for writing
            return 0

    def expect_nothing_half(self, session):
        book = self.work / "book.plateau"
        journal = Path(str(book) + "-journal")
        if session == "import" and journal.exists():
            # A rollback that the disk did not take either: the next who writes takes the half step back.
            self.need(self.program(["import", str(book), str(self.runs / "clean-run.json"), "--again"]), "opening it anew")
        self.verify(book)
        if session != "import" and book.read_bytes() != (self.base / "book.plateau").read_bytes():
            raise Finding("the notebook was changed")
        for name in REPLACED.get(session, []):
            path = self.work / "out" / name
            if path.read_bytes() != OLD:
                self.expect_file(path)
        self.verify_all(session, is_over=False)
        exported = self.work / "out" / "exported"
        if exported.exists() and any(exported.iterdir()):
            self.expect_export(exported)

    def expect_nothing_lost(self, session):
        """Every run and reading of the old notebook, in the upgraded one and in the copy that was made before."""
        old = self.outside / "before.plateau"
        old.write_bytes(self.old_notebook(session))
        before = self.counted(old)
        after = self.counted(self.work / "out" / "old.plateau")
        if after[0] != before[0] + 1 or after[1] < before[1]:
            raise Finding(f"runs and readings were {before} and are {after}")
        copies = [path for path in (self.work / "out").rglob("*") if path.is_file() and "-schema" in path.name and not path.name.endswith(".part")]
        for copy in copies:
            if self.counted(copy) != before:
                raise Finding(f"{copy.name} is not the notebook before the upgrade")

    @staticmethod
    def counted(path):
        with contextlib.closing(sqlite3.connect(f"file:{path}?mode=ro", uri=True)) as book:
            return [book.execute(f"SELECT count(*) FROM {table}").fetchone()[0] for table in ("run", "reading")]

    def expect_whole(self, session):
        out = self.work / "out"
        self.verify(self.work / "book.plateau")
        self.verify_all(session)
        for name in REPLACED.get(session, []):
            if (out / name).read_bytes() == OLD:
                raise Finding(f"{name} is still the old one")
            self.expect_file(out / name)
        if session == "export":
            self.expect_export(out / "exported")
        if session in ("import-new", "import-export", "restore", "archive", "backup") and not list(out.rglob("*.plateau")):
            raise Finding("nothing was made")

    @staticmethod
    def expect_file(path):
        content = path.read_bytes()
        if path.suffix == ".pdf" and not (content.startswith(b"%PDF") and content.rstrip().endswith(b"%%EOF")):
            raise Finding(f"{path.name} is half a file of {len(content)} bytes")
        if path.suffix == ".csv" and (len(content) < 200 or not content.endswith(b"\n")):
            raise Finding(f"{path.name} is half a file of {len(content)} bytes")

    @staticmethod
    def expect_export(folder):
        manifest = json.loads((folder / "manifest.json").read_text())
        for table in manifest["tables"]:
            content = (folder / "tables" / (table["table"] + ".json")).read_bytes()
            if hashlib.sha256(content).hexdigest() != table["json_sha256"]:
                raise Finding(f"{table['table']} is not what the manifest says")


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--plateau", required=True)
    parser.add_argument("--shim", required=True)
    parser.add_argument("--source", required=True)
    parser.add_argument("--most", type=int, default=0, help="so many faults of each command, chosen at random; 0: all")
    parser.add_argument("--only")
    arguments = parser.parse_args()
    memory = Path("/dev/shm")
    folder = Path(tempfile.mkdtemp(prefix="plateau-faults-", dir=memory if os.access(memory, os.W_OK) else None))
    try:
        campaign = Campaign(arguments, folder)
        campaign.run()
    except Finding as finding:
        print(finding, file=sys.stderr)
        print(f"kept: {folder}", file=sys.stderr)
        return 1
    shutil.rmtree(folder)
    for what, times in sorted(campaign.tally.items()):
        print(f"{times:7} {what}")
    return 0 if campaign.tally else 1


if __name__ == "__main__":
    sys.exit(main())
