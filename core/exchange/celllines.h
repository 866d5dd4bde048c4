// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/exchange/readingcolumn.h"

#include <QStringList>

namespace plateau::exchange {

/// The cells of one line.
struct CellLine {
    QStringList cells;
    /// What is wrong with the cell behind the last one, in one sentence: a quotation mark without a partner,
    /// a cell that is too long, too many cells.
    QString fault;
};

/// Cuts at the delimiter; a run of blanks and tabs is one delimiter where blanks part the cells. A cell may
/// stand in quotation marks, two of which stand for one within.
CellLine cellsOf(const QString &line, Delimiter delimiter);

} // namespace plateau::exchange
