// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/benchwork.h"

#include <QStringList>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

bool isBenchWork(const QString &action)
{
    static const QStringList noWork{u"runAccepted"_s,       u"runRejected"_s,        u"runReopened"_s,
                                    u"repeatWaived"_s,      u"reportChosen"_s,       u"clockJumped"_s,
                                    u"chartValueLeftOut"_s, u"chartValueTakenBack"_s};
    return !noWork.contains(action);
}

} // namespace plateau::notebook
