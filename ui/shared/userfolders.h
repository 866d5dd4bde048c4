// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

namespace plateau::ui {

/// Where the program keeps what, by the XDG Base Directory Specification 0.8. A variable that holds no
/// absolute path is ignored, as it asks for; Qt 6.4 would take it as it stands. None of these folders is made
/// here.
QString dataFolder();  ///< notebook and backups: $XDG_DATA_HOME/plateau
QString configRoot();  ///< the folder of all programs' settings: $XDG_CONFIG_HOME
QString stateFolder(); ///< log: $XDG_STATE_HOME/plateau
/// Sockets: $XDG_RUNTIME_DIR/plateau, and where there is none a folder of the state.
QString runtimeFolder();

/// The notebook that is used where none was chosen or named.
QString usualNotebook();
QString usualBackupRoot();

/// Makes the folder, for nobody else to look into. False where it cannot be made.
bool makePrivateFolder(const QString &path);

} // namespace plateau::ui
