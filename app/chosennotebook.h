// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

class QSettings;

namespace plateau::app {

/// Of the program, for this user.
QSettings programSettings();

/// The notebook that a start without a name opens: the one that was chosen, else the usual one
/// (ui/shared/userfolders.h). It need not be there. A kept name that is no absolute path counts as none.
QString chosenNotebook(const QSettings &settings);
/// False where it could not be kept; it is asked for again at the next start then.
bool chooseNotebook(QSettings &settings, const QString &path);

} // namespace plateau::app
