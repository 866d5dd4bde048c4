// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/run/run.h"
#include "ui/print/paper.h"

#include <QByteArray>
#include <QRectF>
#include <QString>

#include <vector>

namespace plateau::ui {

/// What stands on a tube or flask. Empty times and names become a line to write on.
struct Label {
    QString what;
    /// "0.2 g/L", "1 in 100: 5 → 50 mL, 2 → 20 mL", with the locale's decimal sign.
    QString strength;
    QString madeAt;
    QString useBy;
    QString by;
    bool operator==(const Label &) const = default;
};

/// A label for each standard of the run, with the time until which the checks take it; then one for every
/// step of each sample's preparation, since each stands in a flask of its own.
std::vector<Label> labelsOf(const run::Run &run, const QString &person);

/// A sheet of labels as it is bought.
struct LabelSheet {
    Paper paper = Paper::A4;
    int columns = 0;
    int rows = 0;
    double width_mm = 0;
    double height_mm = 0;
    /// From the sheet's edges to the first label, and between neighbours.
    double left_mm = 0;
    double top_mm = 0;
    double columnGap_mm = 0;
    double rowGap_mm = 0;
    bool operator==(const LabelSheet &) const = default;
};

/// A4: 5 x 13 of 38.1 x 21.2 mm; Letter: 3 x 10 of 66.7 x 25.4 mm, which are sold everywhere (common
/// practice, no source).
LabelSheet usualLabels(Paper paper);

/// Why nothing can be printed on it, in one sentence: no labels, labels too small to read, or off the paper.
/// Empty: it is sound.
QString faultOf(const LabelSheet &sheet);

/// Where the label of that position lies on the paper, in mm, counted from 0 along the rows.
QRectF placeOf(const LabelSheet &sheet, int position);

/// firstFree: the first label of the first sheet that is still there, counted from 1 along the rows. Empty
/// where the sheet is not sound, firstFree is not on it, or nothing could be drawn.
QByteArray labelsPdf(const std::vector<Label> &labels, const LabelSheet &sheet, int firstFree = 1);

} // namespace plateau::ui
