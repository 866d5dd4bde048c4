// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QByteArray>
#include <QString>

namespace plateau::app {

/// Writes to standard output; false if not everything could be written (a full disk, a closed pipe).
bool writeOut(const QByteArray &bytes);
/// One line on standard error. Control characters are shown as blanks, so that a name cannot forge a line.
void writeError(const QString &line);

} // namespace plateau::app
