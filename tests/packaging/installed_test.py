# SPDX-FileCopyrightText: The Plateau developers
# SPDX-License-Identifier: GPL-3.0-only
"""Installs the build into an empty folder and holds what lies there against the validators of the desktop.

installed_test.py BUILD APPLICATION-ID CMAKE VERSION
"""

import configparser
import json
import os
import pathlib
import subprocess
import sys
import tempfile

from installedtree import Checks, need, quietly

SIZES = (16, 22, 24, 32, 48, 64, 128, 256)
DOCUMENTS = ("notebook", "run", "method")


def png_side(path: pathlib.Path):
    head = path.read_bytes()[:24]
    return int.from_bytes(head[16:20], "big"), int.from_bytes(head[20:24], "big")


def main():
    build, application, cmake, version = sys.argv[1:5]
    need("desktop-file-validate", "appstreamcli", "update-mime-database", "man")
    checks = Checks()
    with tempfile.TemporaryDirectory() as folder:
        root = pathlib.Path(folder) / "usr"
        quietly(cmake, "--install", build, "--prefix", root)
        share = root / "share"
        icons = share / "icons" / "hicolor"
        names = [f"share/applications/{application}.desktop", f"share/metainfo/{application}.metainfo.xml"]
        names += ["share/mime/packages/plateau.xml", "share/man/man1/plateau.1.gz", "bin/plateau"]
        names += ["share/doc/plateau/copyright", "share/doc/plateau/changelog.gz"]
        names += [f"share/icons/hicolor/scalable/apps/{application}.svg"]
        names += [f"share/icons/hicolor/scalable/mimetypes/application-x-plateau-{kind}.svg" for kind in DOCUMENTS]
        names += ["share/plateau/runs/clean-run.plateau-run.json", "share/plateau/methods/total-sulphite.plateau-method.json"]
        names += ["share/plateau/schemas/plateau-run-1.schema.json"]
        checks.expect_files(root, names)
        for size in SIZES:
            for name in [f"apps/{application}"] + [f"mimetypes/application-x-plateau-{kind}" for kind in DOCUMENTS]:
                picture = icons / f"{size}x{size}" / f"{name}.png"
                checks.expect(picture.is_file() and png_side(picture) == (size, size), f"{picture} is no picture of {size} pixels")

        desktop = share / "applications" / f"{application}.desktop"
        said = quietly("desktop-file-validate", desktop)
        checks.expect(said == "", said)
        quietly("appstreamcli", "validate", "--no-net", share / "metainfo" / f"{application}.metainfo.xml")
        said = quietly("update-mime-database", share / "mime", env={**os.environ, "XDG_DATA_DIRS": str(share)})
        checks.expect("rror" not in said, said)
        said = quietly("man", "--warnings", "-l", share / "man/man1/plateau.1.gz", env={**os.environ, "MANWIDTH": "100"})
        checks.expect("warning" not in said, said)

        entry = configparser.RawConfigParser()
        entry.optionxform = str
        entry.read(desktop, encoding="utf-8")
        offered = set(filter(None, entry["Desktop Entry"]["MimeType"].split(";")))
        known = {f"application/{line.split('type=')[1].split(chr(34))[1].split('/')[1]}"
                 for line in (share / "mime/packages/plateau.xml").read_text(encoding="utf-8").splitlines()
                 if "<mime-type " in line}
        checks.expect(offered == known, f"the desktop entry offers {offered}, the types are {known}")

        program = root / "bin" / "plateau"
        checks.expect(quietly(program, "--version") == f"plateau {version}\n", "the installed program says another version")
        run = share / "plateau/runs/clean-run.plateau-run.json"
        evaluation = json.loads(quietly(program, "evaluate", run))
        checks.expect(evaluation["acceptable"] is True, "the installed sample run is not evaluated as acceptable")
        source = str(pathlib.Path(__file__).resolve().parents[2])
        text = subprocess.run(["strings", "-d", str(program)], stdout=subprocess.PIPE, text=True, check=False).stdout
        paths = [line for line in text.splitlines() if line.startswith(source) and not line.endswith((".cpp", ".h"))]
        checks.expect(not paths, f"the program knows places of the build: {paths[:5]}")
    checks.end()


main()
