// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>
#include <QStringList>

#include <optional>

namespace plateau::app {

struct WindowOptions {
    /// Empty: the one that was chosen at the first start.
    QString notebook;
    bool demo = false;
    /// Who is at the bench, as if the name had been typed; or empty.
    QString person;
    /// To be opened in the window, absolute; or empty. A notebook stands in place of the one above.
    QString file;
    /// The program itself says so: another window is open, and this one must not lie exactly on it.
    bool isBeside = false;
};

/// Nothing, and a line on standard error, if the words are neither options of the window nor a file. What
/// follows the toolkit's own options (-platform, -style and the like, with their value) is left to it.
std::optional<WindowOptions> windowOptions(const QStringList &words);

/// Opens the notebook and shows the window until it is closed; where a window has it open already, that one
/// is called to the front with the file. Needs a QApplication.
int runWindow(const WindowOptions &options);

} // namespace plateau::app
