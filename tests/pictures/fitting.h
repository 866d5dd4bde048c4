// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QList>
#include <QSize>
#include <QStringList>

class QWidget;

namespace plateau::test {

/// Cells of those columns (of all where none is named) of the table that end in an ellipsis, a line each, and whether
/// it has to be scrolled sideways; a line too where no such table can be seen.
QStringList cutCells(const QWidget &window, const QString &table, const QList<int> &columns);

/// What of the window cannot be read or reached, a line each with the widget and its text: words that are cut
/// off, widgets outside of what shows them, and widgets over one another. Words that are cut on purpose, and
/// told whole by a tool tip (ElidingLabel, cells of a table, what WholeWords watches), are not among them;
/// nor is what a scroll area brings into sight. A table whose words wrap (Table::setWrap) is not to scroll
/// sideways. room: what the window was given; one that is larger has not obeyed.
QStringList misfits(const QWidget &window, QSize room);

} // namespace plateau::test
