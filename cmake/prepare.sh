# SPDX-FileCopyrightText: The Plateau developers
# SPDX-License-Identifier: GPL-3.0-only
# Shared by app/start, tests/run: sourced, with $root the top of the project. Nothing here writes to standard
# output, which belongs to the command that is started.

# quietly LOG COMMAND...: the command's output goes to the log, and its end to standard error if it fails.
quietly() {
    log=$1
    shift
    if ! "$@" >"$log" 2>&1 </dev/null; then
        tail -n 60 "$log" >&2
        echo "plateau: this failed: $*" >&2
        echo "plateau: the whole of its output is in $log" >&2
        return 1
    fi
}

# installMissing KIND...: the packages of these kinds in packages.txt that are not installed yet.
installMissing() {
    if ! command -v dpkg-query >/dev/null || ! command -v apt-get >/dev/null; then
        echo "plateau: not a Debian system; see cmake/packages.txt for what has to be installed" >&2
        return 0
    fi
    missing=
    for kind in "$@"; do
        for package in $(sed -n "s/^$kind  *//p" "$root/cmake/packages.txt"); do
            dpkg-query -W -f '${db:Status-Status}\n' "$package" 2>/dev/null | grep -qx installed ||
                missing="$missing $package"
        done
    done
    [ -n "$missing" ] || return 0
    asRoot=
    if [ "$(id -u)" -ne 0 ]; then
        if ! command -v sudo >/dev/null; then
            echo "plateau: as root, please run: apt-get install --no-install-recommends$missing" >&2
            return 1
        fi
        asRoot=sudo
    fi
    echo "plateau: installing$missing" >&2
    mkdir -p "$root/build"
    # An index that can't be refreshed is no reason to stop: the packages may still be there.
    # A fresh machine may be updating itself just now: wait for it.
    quietly "$root/build/apt-update.log" $asRoot apt-get -o DPkg::Lock::Timeout=300 update || true
    quietly "$root/build/apt-install.log" $asRoot env DEBIAN_FRONTEND=noninteractive \
        apt-get -o DPkg::Lock::Timeout=300 install --yes --no-install-recommends $missing
}

# forgetForeignBuild FOLDER: a build folder that came along when the project was copied or moved builds the sources
# of the old place.
forgetForeignBuild() {
    if [ -f "$1/CMakeCache.txt" ] &&
        ! grep -Fqx "CMAKE_HOME_DIRECTORY:INTERNAL=$root" "$1/CMakeCache.txt"; then
        rm -rf "$1"
    fi
}

# build FOLDER TARGET CMAKE-OPTION...: configures where needed and builds, one caller at a time. With the target
# "plateau" an existing configuration is left as it is, so that the tests' one is not thrown over at each start.
build() {
    folder=$1
    target=$2
    shift 2
    mkdir -p "$folder"
    (
        flock 9
        forgetForeignBuild "$folder"
        mkdir -p "$folder"
        if [ "$target" != plateau ] || [ ! -f "$folder/build.ninja" ]; then
            quietly "$folder/configure.log" cmake -S "$root" -B "$folder" -G Ninja "$@" || exit 1
        fi
        quietly "$folder/build.log" cmake --build "$folder" --target "$target" --parallel "$(nproc)" || exit 1
    ) 9>"$root/build/lock"
}
