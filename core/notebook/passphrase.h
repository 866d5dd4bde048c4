// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/notebook.h"

#include <QString>

namespace plateau::notebook {

/// Argon2id (RFC 9106) by libsodium with its limits for interactive use (64 MiB) or its least ones, which are
/// written inside, as is a salt of its own: "$argon2id$...". Passphrases that look alike are one (Unicode normalization form C). Throws
/// Failure(Storage) where there is not enough memory.
QString passphraseHash(const QString &passphrase, PassphraseWork work);
bool passphraseFits(const QString &passphrase, const QString &hash);

} // namespace plateau::notebook
