# SPDX-FileCopyrightText: The Plateau developers
# SPDX-License-Identifier: GPL-3.0-only
"""The program is killed at random moments, again and again, while somebody keys readings into its window.

After every kill the notebook as it lies on the disk is held against what the window had confirmed, by a reader that
shares no code with the program (python3's sqlite3): every confirmed reading, mark and rack is there, of the act
that was under way there is all or nothing, and nothing else is there. SQLite's integrity and foreign keys hold, and so does
`plateau verify`. The next start shows the same, and its timers wait for the same moments.

Usage: killed.py --driver BENCHDRIVER --plateau PLATEAU [--kills 500] [--seed 1]
"""

import argparse
import collections
import os
import random
import shutil
import sqlite3
import subprocess
import sys
import tempfile
import time
from pathlib import Path

# A notebook is begun anew after so many kills, so that those of young ones count as well.
KILLS_A_NOTEBOOK = 40
AT_MOST_S = 240.0
# Of one start of the machine, moments are exact but for rounding and for what lies between the readings of its two clocks, on a
# busy one some milliseconds. Nobody at a bench sees a twentieth of a second.
TIMER_TOLERANCE_MS = 50


class Finding(Exception):
    pass


def facts_in(notebook):
    """What is stored, in the driver's words, and the counts of what speaks against the file."""
    with sqlite3.connect(notebook) as book:
        if book.execute("PRAGMA integrity_check").fetchall() != [("ok",)]:
            raise Finding("integrity_check: " + str(book.execute("PRAGMA integrity_check").fetchall()[:3]))
        if book.execute("PRAGMA foreign_key_check").fetchall():
            raise Finding("foreign_key_check finds rows")
        facts = {f"run {run}": "1" for (run,) in book.execute("SELECT id FROM run")}
        for run, tube, name, value in book.execute(
                "SELECT t.run, t.position, r.name, r.absorbance FROM reading r JOIN tube t ON t.id = r.tube ORDER BY r.id"):
            facts[f"reading {run} {tube} {name}"] = value
        for run, tube, kind, component in book.execute(
                "SELECT t.run, t.position, m.kind, m.component FROM pipetting_mark m JOIN tube t ON t.id = m.tube"
                " ORDER BY m.id"):
            key = f"done {run} {tube} {component}" if component else f"spoilt {run} {tube}"
            if kind in ("done", "spoilt"):
                facts[key] = "1"
            else:
                facts.pop(key, None)
    return facts


def same(one, other):
    return float(one) == float(other)


class Campaign:
    def __init__(self, arguments, folder):
        self.driver = arguments.driver
        self.plateau = arguments.plateau
        self.folder = folder
        self.random = random.Random(arguments.seed)
        self.tally = collections.Counter()
        # How long a start took on this machine.
        self.start_s = None
        self.begin()

    def begin(self):
        self.number = getattr(self, "number", 0) + 1
        self.notebook = self.folder / f"bench-{self.number}.plateau"
        self.confirmed = {}
        self.waits = {}
        self.under_way = None
        # An act was stored whose confirmation did not get through any more.
        self.changed = False

    def kill_once(self):
        """One start of the program, ended at a moment that nobody chose."""
        # Some while the notebook is opened and a step that was left in the middle is taken back, most at work.
        is_early = self.start_s is not None and self.random.random() < 0.25
        acts = self.random.randrange(12)
        begun = time.monotonic()
        program = subprocess.Popen(
            [self.driver, str(self.notebook), str(self.random.randrange(1 << 30)), "100000"],
            stdin=subprocess.DEVNULL, stdout=subprocess.PIPE, stderr=subprocess.PIPE, env=self.environment())
        os.set_blocking(program.stdout.fileno(), False)
        output = b""
        end = begun + (self.random.uniform(0.0, self.start_s) if is_early else AT_MOST_S)
        is_aimed = is_early
        while time.monotonic() < end and program.poll() is None:
            # The pipe holds 64 KiB, which must not fill.
            output += program.stdout.read() or b""
            if not is_aimed and b"\nready\n" in output:
                self.start_s = self.start_s or time.monotonic() - begun
                if output.count(b"\ndid\n") >= acts:
                    # Anywhere in the next two acts or so, however slow the machine is.
                    is_aimed = True
                    end = time.monotonic() + self.random.uniform(0.0, self.start_s / 5)
            time.sleep(min(0.01, max(0.0, end - time.monotonic())))
        ended = program.poll()
        program.kill()
        os.set_blocking(program.stdout.fileno(), True)
        rest, errors = program.communicate()
        if ended is not None or not is_aimed:
            raise Finding(f"the program ended by itself or never started ({ended}): "
                          + errors.decode(errors="replace")[-500:])
        self.tally["kills"] += 1
        self.take(output + rest)

    def environment(self):
        return dict(os.environ, QT_QPA_PLATFORM="offscreen", HOME=str(self.folder), XDG_RUNTIME_DIR=str(self.folder),
                    XDG_CONFIG_HOME=str(self.folder), XDG_DATA_HOME=str(self.folder))

    def take(self, output):
        """What was said before the end; a line without its end was not said."""
        self.under_way = None
        lines = output.decode().split("\n")[:-1]
        if "ready" not in lines:
            self.tally["killed before the window was up"] += 1
            return
        start = lines.index("ready")
        self.compare_start(*(dict(line.partition(" ")[2].split("\t") for line in lines[:start] if line.startswith(word))
                             for word in ("shows ", "waits ")))
        for line in lines[start + 1:]:
            self.take_line(line)
        self.tally["killed within an act" if self.under_way else "killed between two acts"] += 1

    def take_line(self, line):
        word, _, rest = line.partition(" ")
        key, _, value = rest.partition("\t")
        if word == "try":
            self.under_way = (key, int(value))
        elif word == "fact":
            self.confirmed[key] = value
            self.tally["facts confirmed"] += 1
        elif word == "gone":
            self.confirmed.pop(key, None)
        elif word == "did":
            self.under_way = None
            self.waits = {}
            self.tally["acts"] += 1
        elif word == "waits":
            self.waits[key] = value
        elif word != "says":
            raise Finding("nobody expected: " + line)

    def compare_start(self, shows, waits):
        expected = {key: value for key, value in self.confirmed.items() if not key.startswith("run ")}
        if not (set(shows) == set(expected) and all(same(shows[key], expected[key]) for key in shows)):
            differing = sorted(set(shows.items()) ^ set(expected.items()))
            raise Finding(f"the window shows something else than it had confirmed: {differing[:6]}")
        self.tally["starts compared"] += 1
        for key, moment in self.waits.items():
            # What was under way may have been the act that the tube waited for.
            if key in waits:
                if abs(int(waits[key]) - int(moment)) > TIMER_TOLERANCE_MS:
                    raise Finding(f"{key} waits for {waits[key]} ms, and before the kill for {moment}")
                self.tally["timers compared"] += 1
            elif not self.changed:
                raise Finding(f"{key} does not wait any more")
        self.waits = waits
        self.changed = False

    def check(self):
        """The file as the dead program left it, from outside, on a copy: the program has to cope with it as it is."""
        if not self.notebook.exists():
            # Killed before there was one: then nothing was confirmed either, and nothing keeps the next from it.
            if self.confirmed:
                raise Finding("the notebook is not there")
            self.tally["killed before there was a notebook"] += 1
            return
        copy = self.folder / "copy.plateau"
        shutil.copy(self.notebook, copy)
        journal = Path(str(self.notebook) + "-journal")
        if journal.exists():
            shutil.copy(journal, str(copy) + "-journal")
            if journal.stat().st_size > 512 and journal.read_bytes()[:8] != bytes(8):
                self.tally["killed with a journal to be rolled back"] += 1
        stored = facts_in(copy)
        for key, value in self.confirmed.items():
            if key not in stored:
                raise Finding(f"{key} was confirmed and is not stored")
        new = {key: value for key, value in stored.items()
               if key not in self.confirmed or not same(value, self.confirmed[key])}
        if new:
            prefix, facts = self.under_way or ("nothing", 0)
            if len(new) != facts or not all(key.startswith(prefix) for key in new):
                raise Finding(f"stored and never confirmed: {sorted(new)[:6]}, while {prefix} ({facts}) was under way")
            self.tally["killed between the commit and its confirmation"] += 1
            self.changed = True
            self.confirmed.update({key: str(value) for key, value in new.items()})
        verified = subprocess.run([self.plateau, "verify", str(copy)], capture_output=True, text=True,
                                  stdin=subprocess.DEVNULL, env=self.environment(), check=False)
        if verified.returncode != 0:
            raise Finding(f"plateau verify ends with {verified.returncode}: {verified.stdout} {verified.stderr}")
        for leftover in (copy, Path(str(copy) + "-journal")):
            leftover.unlink(missing_ok=True)

    def run(self, kills):
        while self.tally["kills"] < kills:
            if self.tally["kills"] % KILLS_A_NOTEBOOK == 0 and self.tally["kills"]:
                self.begin()
            self.kill_once()
            self.check()


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--driver", required=True)
    parser.add_argument("--plateau", required=True)
    parser.add_argument("--kills", type=int, default=500)
    parser.add_argument("--seed", type=int, default=1)
    arguments = parser.parse_args()
    # What a killed process wrote is with the system, on whatever it lies: memory is as good as a disk, and quicker.
    memory = Path("/dev/shm")
    folder = Path(tempfile.mkdtemp(prefix="plateau-killed-", dir=memory if os.access(memory, os.W_OK) else None))
    campaign = Campaign(arguments, folder)
    try:
        campaign.run(arguments.kills)
    except KeyboardInterrupt:
        print("stopped", file=sys.stderr)
    except Finding as finding:
        print(f"kill {campaign.tally['kills']} of seed {arguments.seed}: {finding}", file=sys.stderr)
        print(f"kept: {folder}", file=sys.stderr)
        return 1
    shutil.rmtree(folder)
    for what, times in sorted(campaign.tally.items()):
        print(f"{times:7} {what}")
    # A campaign that never met what it is about proves nothing; in a short one no tube need be waiting at a kill.
    met = ["facts confirmed", "starts compared"] + (["timers compared"] if arguments.kills >= 100 else [])
    missing = [what for what in met if not campaign.tally[what]]
    if missing and arguments.kills >= 10:
        print("never met: " + ", ".join(missing), file=sys.stderr)
        return 1
    return 0


if __name__ == "__main__":
    sys.exit(main())
