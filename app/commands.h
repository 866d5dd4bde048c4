// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>
#include <QStringList>

namespace plateau::app {

/// Exit status of every command.
enum ExitStatus {
    Sound = 0,          ///< everything reportable, or sound
    NeedsAttention = 1, ///< evaluated or verified, and something needs attention
    Unusable = 2        ///< the input could not be used; standard error says why, line by line
};

/// Whether the word is a command that works without a window.
bool isCommand(const QString &word);
/// Whether it draws pages: it needs a QGuiApplication then, though no display.
bool commandDraws(const QString &word);
/// Runs it; the result goes to standard output, everything else to standard error.
int runCommand(const QString &command, const QStringList &arguments);
QString usage();

} // namespace plateau::app
