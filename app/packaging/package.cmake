# SPDX-FileCopyrightText: The Plateau developers
# SPDX-License-Identifier: GPL-3.0-only
# The Debian package: cpack --config BUILD/CPackConfig.cmake (or the target "package") after the build.
set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME plateau)
set(CPACK_PACKAGE_VENDOR "The Plateau developers")
set(CPACK_PACKAGE_CONTACT "The Plateau developers <developers@plateau.invalid>"
    CACHE STRING "Who answers for the package, with an address")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "bench program for enzymatic end-point assays")
set(CPACK_PACKAGE_DESCRIPTION
"Plateau leads the analyst of a small food or drink laboratory through a rack
of enzymatic end-point assays read in a photometer: it plans the rack, leads
through the pipetting, times every tube, takes the readings, works out the
concentrations with their uncertainty, and keeps what was done in a notebook
that only ever adds.")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_PACKAGE_CHECKSUM SHA256)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ
    WORLD_EXECUTE)
set(CPACK_VERBATIM_VARIABLES ON)

set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)
# Libraries are found out by what the program links; what is only loaded stands here.
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_PACKAGE_DEPENDS "libqt6sql6-sqlite")
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "fonts-dejavu-core, qt6-wayland, qt6-translations-l10n")
include(CPack)
