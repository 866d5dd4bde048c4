// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

class QSettings;
class QWidget;

namespace plateau::ui {

/// Size and place of the window as it was left, where that was kept and is still on a screen; else it stays as it is.
/// To be called before the window is shown.
void restorePlace(QWidget &window, const QSettings &settings);
/// From exactly upon another window of the program a title bar's height aside, where the screen has room.
void stepAside(QWidget &window);
/// False where it could not be kept.
bool keepPlace(const QWidget &window, QSettings &settings);

} // namespace plateau::ui
