# SPDX-FileCopyrightText: The Plateau developers
# SPDX-License-Identifier: GPL-3.0-only
"""Makes the Debian package and holds it against lintian; then runs the program out of the unpacked package.

package_test.py BUILD APPLICATION-ID CMAKE VERSION
"""

import os
import pathlib
import shutil
import subprocess
import sys
import tempfile

from installedtree import Checks, need, quietly


def main():
    build, application, cmake, version = sys.argv[1:5]
    need("dpkg-deb", "dpkg-shlibdeps", "strip")
    checks = Checks()
    with tempfile.TemporaryDirectory() as folder:
        packer = pathlib.Path(cmake).with_name("cpack")
        quietly(packer, "--config", pathlib.Path(build) / "CPackConfig.cmake", "-B", folder)
        package = next(pathlib.Path(folder).glob(f"plateau_{version}_*.deb"))
        depends = quietly("dpkg-deb", "--field", package, "Depends")
        # What is linked, by way of shlibdeps, and the driver that is only loaded.
        for library in ("libc6", "libqt6core6", "libqt6widgets6", "libqt6svg6", "libqt6sql6-sqlite", "libsodium23"):
            checks.expect(library in depends, f"{library} is not among what the package depends on: {depends}")
        root = pathlib.Path(folder) / "root"
        quietly("dpkg-deb", "--extract", package, root)
        checks.expect_files(root / "usr", [f"share/applications/{application}.desktop", "share/doc/plateau/copyright"])
        said = quietly(root / "usr/bin/plateau", "--version")
        checks.expect(said == f"plateau {version}\n", f"the packed program says {said}")
        runs = sorted((root / "usr/share/plateau/runs").glob("*.plateau-run.json"))
        checks.expect(len(runs) >= 15, f"only {len(runs)} sample runs are packed")
        if shutil.which("lintian"):
            # Not as root where that can be helped: lintian says so itself.
            found = subprocess.run(
                ["lintian", "--allow-root", "--no-cfg", "--fail-on", "error", str(package)],
                stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, check=False, env={**os.environ, "TMPDIR": folder},
            )
            print(found.stdout)
            checks.expect(found.returncode == 0, f"lintian finds errors:\n{found.stdout}")
        else:
            print("lintian is not installed: the package was made and unpacked, but not held against it")
    checks.end()


main()
