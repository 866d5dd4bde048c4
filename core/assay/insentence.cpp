// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/insentence.h"

namespace plateau::assay {

QString inSentence(const QString &name, const QLocale &locale)
{
    if (locale.language() == QLocale::German || name.size() < 2 || !name[1].isLetter())
        return name;
    for (qsizetype at = 1; at < name.size() && name[at].isLetterOrNumber(); ++at) {
        if (name[at].isUpper() || name[at].isDigit())
            return name;
    }
    return name[0].toLower() + name.mid(1);
}

} // namespace plateau::assay
