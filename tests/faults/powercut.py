# SPDX-FileCopyrightText: The Plateau developers
# SPDX-License-Identifier: GPL-3.0-only
"""The power fails at every write, and the disk keeps of what was not yet synced whatever it likes.

Somebody keys readings into the window while shim.cpp writes down every write, sync, truncation and removal below the
notebook's folder, and what the window confirmed in between. The disk is then rebuilt as it could stand after a cut behind
each of these calls: what was synced is there; of the rest each piece of 512 bytes is kept, dropped or left half written, as
a seed has it, and files that came or went since their folder was synced may be there or not. Every such disk has to hold
a notebook that passes integrity_check and foreign_key_check, all that had been confirmed, and all or nothing of the act
that was under way; `plateau verify` has to say the same of a sample of them.

Where every place is tried, the same is done once more with no sync of a file counted: that has to find damage, or the replay
proves nothing.

Usage: powercut.py --driver BENCHDRIVER --plateau PLATEAU --shim SHIM [--acts 40] [--cuts 0] [--seeds 3]
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
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent.parent / "crash"))
from killed import Finding, facts_in, same  # noqa: E402

SECTOR = 512


def read_log(path):
    """(call, path, more, bytes) of every call."""
    content = path.read_bytes()
    calls, at = [], 0
    while at < len(content):
        end = content.index(b"\n", at)
        call, name, more, size = content[at:end].decode().split("\t")
        at = end + 1 + int(size)
        calls.append((call, name, more, content[end + 1:at]))
    return calls


class File:
    """What is safely on the disk, and the writes and truncations since the last sync, in their order."""

    def __init__(self, synced=b""):
        self.synced = bytearray(synced)
        self.pending = []

    def sync(self):
        for change in self.pending:
            self.apply(self.synced, change)
        self.pending = []

    @staticmethod
    def apply(content, change):
        offset, piece = change
        if piece is None:
            del content[offset:]
            content.extend(bytes(max(0, offset - len(content))))
            return
        content.extend(bytes(max(0, offset + len(piece) - len(content))))
        content[offset:offset + len(piece)] = piece

    def after_a_cut(self, chance):
        content = bytearray(self.synced)
        for offset, piece in self.pending:
            if piece is None:
                if chance.random() < 0.5:
                    self.apply(content, (offset, None))
                continue
            for start in range(0, len(piece), SECTOR):
                part = piece[start:start + SECTOR]
                fate = chance.random()
                if fate < 0.45:
                    self.apply(content, (offset + start, part))
                elif fate < 0.55:
                    self.apply(content, (offset + start, part[:chance.randrange(len(part) + 1)]))
        return bytes(content)


class Disk:
    """Files by name, and the names that came and went since their folder was synced."""

    def __init__(self, honours_syncs=True):
        self.honours_syncs = honours_syncs
        self.files = {}
        # What is under a name for good; None: nothing.
        self.settled = {}

    def take(self, call, name, more, content):
        if call == "open":
            if more == "new":
                self.files[name] = File()
            elif more == "emptied" and name in self.files:
                self.files[name].pending.append((0, None))
        elif call == "write":
            self.files.setdefault(name, File()).pending.append((int(more), content))
        elif call == "truncate":
            self.files.setdefault(name, File()).pending.append((int(more), None))
        elif call == "remove":
            self.files.pop(name, None)
        elif call in ("rename", "link"):
            self.files[more] = self.files[name]
            if call == "rename":
                del self.files[name]
        elif call == "sync" and name not in self.files:
            self.settle(name)
        elif call == "sync" and self.honours_syncs:
            self.files[name].sync()

    def settle(self, folder):
        for name in [*self.settled, *self.files]:
            if os.path.dirname(name) == folder:
                self.settled[name] = self.files.get(name)

    def after_a_cut(self, chance):
        """Name to content."""
        found = {}
        for name in sorted({*self.files, *self.settled}):
            now, before = self.files.get(name), self.settled.get(name)
            file = now if now is before or chance.random() < 0.5 else before
            if file is not None:
                found[name] = file.after_a_cut(chance)
        return found


class Replay:
    def __init__(self, arguments, folder, calls, notebook):
        self.arguments = arguments
        self.folder = folder
        self.calls = calls
        self.notebook = str(notebook)
        self.tally = collections.Counter()

    def run(self, honours_syncs):
        disk = Disk(honours_syncs)
        confirmed, under_way = {}, None
        places = [i for i, call in enumerate(self.calls) if call[0] != "said"]
        chosen = set(places)
        if 0 < self.arguments.cuts < len(places):
            chosen = set(random.Random(1).sample(places, self.arguments.cuts))
        rest = b""
        is_begun = False
        for number, (call, name, more, content) in enumerate(self.calls):
            if call == "said":
                rest += content
                *lines, rest = rest.split(b"\n")
                for line in lines:
                    word, _, tail = line.decode().partition(" ")
                    key, _, value = tail.partition("\t")
                    if word == "ready":
                        is_begun = True
                    elif word == "try":
                        under_way = (key, int(value))
                    elif word == "fact":
                        confirmed[key] = value
                    elif word == "did":
                        under_way = None
                continue
            disk.take(call, name, more, content)
            if number not in chosen:
                continue
            for seed in range(self.arguments.seeds):
                self.cut(disk, confirmed, under_way, is_begun, number, seed)

    def cut(self, disk, confirmed, under_way, is_begun, number, seed):
        self.tally["cuts"] += 1
        content = disk.after_a_cut(random.Random(f"{number} {seed}"))
        for path in self.folder.iterdir():
            path.unlink()
        for name, kept in content.items():
            if name.startswith(self.notebook):
                (self.folder / os.path.basename(name)).write_bytes(kept)
        path = self.folder / os.path.basename(self.notebook)
        if not path.exists():
            if is_begun:
                raise Finding(f"cut {number}, seed {seed}: there is no notebook")
            return
        try:
            self.check(path, confirmed, under_way)
        except (Finding, sqlite3.Error) as error:
            raise Finding(f"cut {number} ({self.calls[number][:3]}), seed {seed}: {error}") from error

    def check(self, path, confirmed, under_way):
        stored = facts_in(path)
        for key, value in confirmed.items():
            if key not in stored:
                raise Finding(f"{key} was confirmed and is lost")
            if not same(stored[key], value) and not (under_way and key.startswith(under_way[0])):
                raise Finding(f"{key} was confirmed as {value} and is {stored[key]}")
        new = [key for key, value in stored.items() if key not in confirmed or not same(value, confirmed[key])]
        if new and (under_way is None or len(new) != under_way[1] or not all(key.startswith(under_way[0]) for key in new)):
            raise Finding(f"stored by nobody: {new[:5]}, while {under_way} was under way")
        if self.tally["cuts"] % 25 == 1:
            self.tally["verified by the program"] += 1
            done = subprocess.run([self.arguments.plateau, "verify", str(path)], capture_output=True, text=True, check=False,
                                  stdin=subprocess.DEVNULL)
            if done.returncode != 0:
                raise Finding(f"plateau verify: {done.stdout} {done.stderr}")


def record(arguments, folder):
    """A session at the bench, written down."""
    notebook = folder / "disk" / "bench.plateau"
    notebook.parent.mkdir()
    log = folder / "log"
    environment = dict(os.environ, QT_QPA_PLATFORM="offscreen", HOME=str(folder), XDG_CONFIG_HOME=str(folder),
                       XDG_DATA_HOME=str(folder), LD_PRELOAD=arguments.shim, PLATEAU_FAULTS_FOLDER=str(notebook.parent),
                       PLATEAU_FAULTS_LOG=str(log), PLATEAU_FAULTS_BYTES="1")
    done = subprocess.run([arguments.driver, str(notebook), "1", str(arguments.acts)], stdin=subprocess.DEVNULL,
                          stdout=subprocess.DEVNULL, stderr=subprocess.PIPE, env=environment, check=False)
    if done.returncode != 0:
        raise Finding(f"the session ended with {done.returncode}: {done.stderr.decode()[-500:]}")
    return notebook, read_log(log)


def prove(blind, tally):
    try:
        blind.run(honours_syncs=False)
    except Finding as damage:
        tally["cuts until damage was found where no sync counts"] = blind.tally["cuts"]
        print(f"where no sync counts: {damage}")
    else:
        raise Finding("no damage where no sync counts: the replay proves nothing")


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--driver", required=True)
    parser.add_argument("--plateau", required=True)
    parser.add_argument("--shim", required=True)
    parser.add_argument("--acts", type=int, default=40)
    parser.add_argument("--cuts", type=int, default=0, help="so many places, chosen at random; 0: all")
    parser.add_argument("--seeds", type=int, default=3, help="so many disks for each place")
    arguments = parser.parse_args()
    memory = Path("/dev/shm")
    folder = Path(tempfile.mkdtemp(prefix="plateau-powercut-", dir=memory if os.access(memory, os.W_OK) else None))
    try:
        notebook, calls = record(arguments, folder)
        (folder / "after").mkdir()
        replay = Replay(arguments, folder / "after", calls, notebook)
        replay.run(honours_syncs=True)
        if arguments.cuts == 0:
            prove(Replay(arguments, folder / "after", calls, notebook), replay.tally)
    except Finding as finding:
        print(finding, file=sys.stderr)
        print(f"kept: {folder}", file=sys.stderr)
        return 1
    shutil.rmtree(folder)
    print(f"{len(calls):7} calls written down")
    for what, times in sorted(replay.tally.items()):
        print(f"{times:7} {what}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
