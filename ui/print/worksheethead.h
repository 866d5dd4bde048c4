// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/canvas.h"
#include "ui/print/worksheettable.h"

namespace plateau::ui {

/// Where the printed part of every page begins and ends, from the sheet's upper edge.
inline constexpr double sheetTop_mm = 9;
inline constexpr double sheetBottom_mm = 12;
inline constexpr double headHeight_mm = 27;

/// Title, method, what is to be filled in, and the code; on every page.
void paintHead(Canvas &canvas, const WorksheetContent &content, const SheetTable &table);
/// Code and page number.
void paintFoot(Canvas &canvas, const WorksheetContent &content, const SheetTable &table, int page, int pages);

/// A caption, then what is known, on a line to write on: smaller or on two lines where it has to be.
void paintEntry(Canvas &canvas, const QRectF &area, const QString &caption, const QString &known);
inline constexpr TextStyle entryStyle{8, true, Qt::AlignLeft | Qt::AlignBottom};
/// What an entry takes with so much to be written, and what one of that width has for it.
double entryWidth_mm(const Canvas &canvas, const QString &caption, double written_mm);
double entryRoom_mm(const Canvas &canvas, const QString &caption, double width_mm);

/// White on black, for the mark of a suspension; from bottom to top where the area is higher than wide.
void paintSwirl(Canvas &canvas, const QRectF &area);
/// The number of an addition, as it stands in the list and over its column.
void paintNumber(Canvas &canvas, const QPointF &centre, int number);

} // namespace plateau::ui
