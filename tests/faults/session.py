# SPDX-FileCopyrightText: The Plateau developers
# SPDX-License-Identifier: GPL-3.0-only
"""Somebody works at the window while one call that touches the disk fails, one call after the other.

benchdriver keys a session into the real window; shim.cpp makes the n-th call below the folder of its notebook and its settings
fail: no room, a broken disk once or from then on, half a write, a sync that fails, no right, or the folder vanishes. The
window never ends by itself and never hangs: it goes on, or says in a sentence why it cannot begin. What it had confirmed is
in the file, nothing else is but what was being stored when the disk failed, the file is whole, and the next start on the
disk that works again shows just that, stores more and verifies.

Usage: session.py --driver BENCHDRIVER --plateau PLATEAU --shim SHIM [--acts 10] [--most 0]
"""

import argparse
import collections
import errno
import os
import random
import shutil
import sqlite3
import subprocess
import sys
import tempfile
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent.parent / "crash"))
from killed import Finding, facts_in, same  # noqa: E402

FAULTS = [("write", str(errno.ENOSPC)), ("write", f"{errno.EIO}+"), ("write", "short"), ("sync", str(errno.EIO)),
          ("sync", f"{errno.EIO}+"), ("open", str(errno.EACCES)), ("remove", str(errno.EIO)), ("rename", str(errno.EIO)),
          ("truncate", str(errno.EIO)), ("any", "gone")]


class Told:
    """What the driver said on its standard output."""

    def __init__(self, text):
        self.shown, self.confirmed, self.unconfirmed, self.sentences = {}, {}, [], []
        self.is_over = False
        for line in text.splitlines():
            word, _, rest = line.partition(" ")
            key, _, value = rest.partition("\t")
            if word == "shows":
                self.shown[key] = self.confirmed[key] = value
            elif word == "try":
                self.unconfirmed.append(key)
            elif word == "fact":
                self.confirmed[key] = value
            elif word == "gone":
                self.confirmed.pop(key, None)
            elif word == "says" or line.startswith("refused\t"):
                self.sentences.append(line)
            elif line == "end":
                self.is_over = True


class Campaign:
    def __init__(self, arguments, folder):
        self.arguments = arguments
        self.folder = folder
        self.disk = folder / "disk"
        self.base = folder / "base"
        self.away = Path(str(self.disk) + "-gone")
        self.notebook = self.disk / "bench.plateau"
        self.tally = collections.Counter()

    def driver(self, seed, acts, **variables):
        environment = dict(os.environ, QT_QPA_PLATFORM="offscreen", HOME=str(self.folder), XDG_CONFIG_HOME=str(self.folder),
                           XDG_DATA_HOME=str(self.folder), **variables)
        try:
            done = subprocess.run([self.arguments.driver, str(self.notebook), str(seed), str(acts)], capture_output=True, text=True,
                                  timeout=120, stdin=subprocess.DEVNULL, env=environment, check=False)
        except subprocess.TimeoutExpired as late:
            raise Finding("the window hangs") from late
        return done, Told(done.stdout)

    def make_base(self):
        """A notebook with a rack that was begun: how one comes to be is the matter of commands.py."""
        self.disk.mkdir()
        done, told = self.driver(7, 4)
        if done.returncode != 0 or not told.is_over:
            raise Finding(f"the notebook to start from: {done.returncode} {done.stderr}")
        self.disk.rename(self.base)

    def begin(self):
        for folder in (self.disk, self.away):
            shutil.rmtree(folder, ignore_errors=True)
        shutil.copytree(self.base, self.disk)

    def run(self):
        self.make_base()
        self.begin()
        log = self.folder / "log"
        done, told = self.driver(1, self.arguments.acts, LD_PRELOAD=self.arguments.shim, PLATEAU_FAULTS_FOLDER=str(self.disk),
                                 PLATEAU_FAULTS_LOG=str(log))
        if done.returncode != 0 or not told.is_over:
            raise Finding(f"the session without a fault ended with {done.returncode}: {done.stderr}")
        if {key for key in facts_in(self.notebook) if not key.startswith("run ")} != {key for key in told.confirmed if not key.startswith("run ")}:
            raise Finding("the session without a fault stored another thing than it confirmed")
        self.before = facts_in(self.base / self.notebook.name)
        calls = collections.Counter(line.split("\t")[0] for line in log.read_text().splitlines())
        calls["any"] = sum(calls[call] for call in list(calls))
        faults = [f"{call}:{number}:{kind}" for call, kind in FAULTS for number in range(1, calls[call] + 1)]
        self.tally["calls of the session"] = calls["any"]
        self.tally["ways in which they can fail"] = len(faults)
        if 0 < self.arguments.most < len(faults):
            faults = random.Random(1).sample(faults, self.arguments.most)
        for fault in faults[self.arguments.skip:]:
            try:
                self.fail(fault)
            except (Finding, sqlite3.Error) as finding:
                raise Finding(f"{fault}: {finding}") from finding

    def fail(self, fault):
        self.begin()
        done, told = self.driver(1, self.arguments.acts, LD_PRELOAD=self.arguments.shim, PLATEAU_FAULTS_FOLDER=str(self.disk),
                                 PLATEAU_FAULTS=fault)
        self.tally["calls that failed"] += 1
        if self.away.exists():
            # The stick is put in again.
            shutil.rmtree(self.disk, ignore_errors=True)
            self.away.rename(self.disk)
        if done.returncode == 2:
            # It had not begun.
            self.tally["of these the window could not open"] += 1
            if len(done.stderr.strip()) < 20:
                raise Finding(f"says nothing of why it does not open: {done.stderr!r}")
        elif done.returncode != 0 or not told.is_over:
            raise Finding(f"ended with {done.returncode}: {done.stderr[-600:]}")
        elif told.sentences:
            self.tally["of these the window said why an act was not stored, or remarked on it"] += 1
        else:
            self.tally["of these nothing was lost and nothing was said"] += 1
        stored = self.expect_stored(told)
        self.expect_work_goes_on(stored)

    def expect_stored(self, told):
        stored = facts_in(self.notebook)
        for key in self.before:
            if key not in stored:
                raise Finding(f"{key} was there before and is lost")
        for key, value in told.confirmed.items():
            if key not in stored:
                raise Finding(f"{key} was confirmed and is lost")
            # The last correction may be in the file though the disk failed at its end; the analyst's Escape takes away the
            # sentence that says so.
            if not same(stored[key], value) and "reading " in told.unconfirmed[-3:]:
                self.tally["corrections stored that the window did not confirm"] += 1
            elif not same(stored[key], value):
                raise Finding(f"{key} was confirmed as {value} and is {stored[key]}")
        for key in stored.keys() - told.confirmed.keys() - self.before.keys():
            if not any(key.startswith(prefix.strip()) for prefix in told.unconfirmed):
                raise Finding(f"{key} was stored by nobody")
            if not any("not sure that it is kept" in sentence for sentence in told.sentences):
                raise Finding(f"{key} is stored, and nothing was said of it: {told.sentences}")
            self.tally["facts stored by an act of which the window said that it is not sure"] += 1
        return stored

    def expect_work_goes_on(self, stored):
        done, told = self.driver(2, 8)
        if done.returncode != 0 or not told.is_over:
            raise Finding(f"does not open afterwards: {done.returncode} {done.stderr[-600:]}")
        # The window shows what is in the tubes; a run is a fact of the file.
        stored = {key: value for key, value in stored.items() if not key.startswith("run ")}
        if told.shown.keys() != stored.keys() or not all(same(told.shown[key], stored[key]) for key in stored):
            raise Finding(f"shows another thing than is stored: {sorted(told.shown.keys() ^ stored.keys())[:5]}")
        if len(told.confirmed) == len(told.shown):
            raise Finding(f"nothing more could be stored: {told.sentences[:2]}")
        verified = subprocess.run([self.arguments.plateau, "verify", str(self.notebook)], capture_output=True, text=True,
                                  stdin=subprocess.DEVNULL, check=False)
        if verified.returncode != 0:
            raise Finding(f"plateau verify: {verified.stdout} {verified.stderr}")


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--driver", required=True)
    parser.add_argument("--plateau", required=True)
    parser.add_argument("--shim", required=True)
    parser.add_argument("--acts", type=int, default=10)
    parser.add_argument("--most", type=int, default=0, help="so many faults, chosen at random; 0: all")
    parser.add_argument("--skip", type=int, default=0, help="so many that were tried already")
    arguments = parser.parse_args()
    memory = Path("/dev/shm")
    folder = Path(tempfile.mkdtemp(prefix="plateau-session-", dir=memory if os.access(memory, os.W_OK) else None))
    campaign = Campaign(arguments, folder)
    try:
        campaign.run()
    except Finding as finding:
        print(finding, file=sys.stderr)
        print(f"kept: {folder}", file=sys.stderr)
        return 1
    finally:
        for what, times in campaign.tally.items():
            print(f"{times:7} {what}")
    shutil.rmtree(folder)
    return 0


if __name__ == "__main__":
    sys.exit(main())
