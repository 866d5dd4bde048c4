// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/contenthash.h"

#include "core/exchange/writers.h"

#include <QCryptographicHash>

namespace plateau::exchange {

QString runContentHash(const run::Run &run, const assay::Method &method)
{
    return QString::fromLatin1(
        QCryptographicHash::hash(writeRun(run, &method), QCryptographicHash::Sha256).toHex());
}

} // namespace plateau::exchange
