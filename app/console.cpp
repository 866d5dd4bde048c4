// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/console.h"

#include <cstdio>

namespace plateau::app {

bool writeOut(const QByteArray &bytes)
{
    const size_t size = static_cast<size_t>(bytes.size());
    const bool written = std::fwrite(bytes.constData(), 1, size, stdout) == size;
    return std::fflush(stdout) == 0 && written;
}

void writeError(const QString &line)
{
    QString shown = line;
    for (QChar &character : shown) {
        if (character.category() == QChar::Other_Control)
            character = u' ';
    }
    const QByteArray bytes = (shown + u'\n').toUtf8();
    std::fwrite(bytes.constData(), 1, static_cast<size_t>(bytes.size()), stderr);
}

} // namespace plateau::app
