# SPDX-FileCopyrightText: The Plateau developers
# SPDX-License-Identifier: GPL-3.0-only
"""What the tests of the installed program share."""

import pathlib
import shutil
import subprocess
import sys

SKIPPED = 77


def quietly(*command, **options):
    """Runs it; what it said comes back. Ends the test with it if the command fails."""
    done = subprocess.run(
        [str(word) for word in command], stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, check=False, **options
    )
    if done.returncode != 0:
        sys.exit(f"failed: {' '.join(str(word) for word in command)}\n{done.stdout}")
    return done.stdout


def need(*programs):
    """Skips the test, naming what is missing."""
    missing = [program for program in programs if shutil.which(program) is None]
    if missing:
        print(f"skipped: {', '.join(missing)} not installed (see cmake/packages.txt)")
        sys.exit(SKIPPED)


class Checks:
    """Collects everything that is wrong instead of ending at the first."""

    def __init__(self):
        self.faults = []

    def expect(self, holds, sentence):
        if not holds:
            self.faults.append(sentence)

    def expect_files(self, root: pathlib.Path, names):
        for name in names:
            path = root / name
            self.expect(path.is_file() and path.stat().st_size > 0, f"{name} is not installed")

    def end(self):
        if self.faults:
            sys.exit("\n".join(self.faults))
