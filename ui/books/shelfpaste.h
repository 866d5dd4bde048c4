// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/shelfdraft.h"

#include <QStringList>

namespace plateau::ui {

/// More lines than this are not taken at once.
inline constexpr int mostPastedLines = 1000;

/// What a column or several columns of a spreadsheet say of samples.
struct PastedSamples {
    /// Cells by shelf::Column, one of each line; texts as they stood there.
    std::vector<std::vector<QString>> rows;
    /// How the columns were understood, in one sentence; of nothing pasted why not.
    QString understood;
    /// Columns that are not understood, so that they were left out; empty if there are none.
    QString leftOut;
};

/// Columns are known by their heads, if the first line has some (one of them must name the sample), else by
/// their order: sample, product, matrix, received at, received from, expected, form. A head that names a
/// measurand, with or without its unit, holds what is expected of that.
PastedSamples readPasted(const QString &text, const MeasurandNames &measurands);

/// That order in words, for a sentence beside the table.
QString pastedOrder();

} // namespace plateau::ui
