// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/timechartdata.h"

class QPainter;
class QRectF;

namespace plateau::ui {

class Theme;

/// A drop hanging from the upper edge, solid: something is added.
void paintDrop(QPainter &painter, const Theme &theme, const QRectF &area);
/// Open above, filled to three quarters: something is read.
void paintCuvette(QPainter &painter, const Theme &theme, const QRectF &area);
/// Drop or cuvette; nothing for a wait or a window.
void paintMark(QPainter &painter, const Theme &theme, const QRectF &area, TimeBar::Kind kind);
/// A wait.
void paintThread(QPainter &painter, const Theme &theme, double left, double right, double y);

/// How a window looks: nothing in it is awaited (any more), something is, it is due now.
enum class WindowLook { Past, Awaited, Due };
/// Between brackets; without a latest moment an arrow goes on to the area's end instead of the second one.
void paintWindow(QPainter &painter, const Theme &theme, const QRectF &area, WindowLook look, bool openEnded);
/// A thick bar from the end of a window that was missed to now.
void paintLateness(QPainter &painter, const Theme &theme, double left, double right, double y);

} // namespace plateau::ui
