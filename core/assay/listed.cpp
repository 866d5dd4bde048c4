// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/listed.h"

#include <QCoreApplication>

namespace plateau::assay {

namespace {

struct ListedWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::assay::Listed)
};

} // namespace

QString listed(const QStringList &parts)
{
    return parts.join(ListedWording::tr("; "));
}

} // namespace plateau::assay
