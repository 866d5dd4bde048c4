// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>
#include <QStringList>

#include <optional>

namespace plateau::app {

struct WindowOptions {
    /// Empty: the one in the user's data directory.
    QString notebook;
    bool demo = false;
};

/// Nothing, and a line on standard error, if the words are not options of the window. What follows the
/// toolkit's own options (-platform, -style and the like, with their value) is left to it.
std::optional<WindowOptions> windowOptions(const QStringList &words);

/// Opens the notebook and shows the window until it is closed. Needs a QApplication.
int runWindow(const WindowOptions &options);

} // namespace plateau::app
