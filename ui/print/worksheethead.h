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
/// Every addition with its number, volume, pipette and lot; on the first page.
double additionsHeight_mm(const WorksheetContent &content);
void paintAdditions(Canvas &canvas, const WorksheetContent &content, const SheetTable &table, double top_mm);
/// Code and page number.
void paintFoot(Canvas &canvas, const WorksheetContent &content, const SheetTable &table, int page, int pages);

/// White on black, for the mark of a suspension.
void paintSwirl(Canvas &canvas, const QRectF &area);
/// The number of an addition, as it stands in the list and over its column.
void paintNumber(Canvas &canvas, const QPointF &centre, int number);

} // namespace plateau::ui
