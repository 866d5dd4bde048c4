// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/labels.h"

class QSettings;

namespace plateau::ui {

/// What is asked before labels are printed.
struct LabelChoice {
    LabelSheet sheet;
    /// The first label that is still on the first sheet, counted from 1 along the rows.
    int firstFree = 1;
    /// Who made what is labelled; empty leaves a line to write on.
    QString by;
    bool operator==(const LabelChoice &) const = default;
};

/// As of the sheet; then, that the first free label is on it.
QString faultOf(const LabelChoice &choice);

/// The first free label of the last sheet after that many were printed; 1 where a new sheet is begun.
int firstFreeAfter(const LabelChoice &choice, int labels);

/// The sheet and the first free label as they were kept, nobody's name. Whatever else stands in the settings,
/// the usual sheet of usual and its first label.
LabelChoice keptLabels(const QSettings &settings, Paper usual);
/// False where the settings can't be written.
bool keepLabels(QSettings &settings, const LabelChoice &choice);

} // namespace plateau::ui
