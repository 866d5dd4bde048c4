// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

namespace plateau::notebook {

/// Of the SQLite library that is loaded, which need not be the one the program was built beside; empty where
/// there is none.
QString sqliteVersion();
/// Of the library that makes the hashes of passphrases.
QString sodiumVersion();

} // namespace plateau::notebook
