// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"
#include "core/planning/laboratory.h"
#include "ui/books/cellsmodel.h"

#include <vector>

namespace plateau::ui {

namespace pipette {
enum Column { Name, Smallest_mL, Largest_mL, Step_mL, Uncertainty_percent, ColumnCount };
}
namespace flask {
enum Column { Name, Volume_mL, Uncertainty_percent, ColumnCount };
}

/// The laboratory as it is being filled in: the texts that were typed.
struct LaboratoryDraft {
    QString name;
    QString rackRows;
    QString rackColumns;
    QString addition_s;
    QString mix_s;
    QString reading_s;
    QString overage_percent;
    /// A pipette of one volume has no step.
    std::vector<CellRow> pipettes;
    std::vector<CellRow> flasks;
    bool operator==(const LaboratoryDraft &) const = default;
};

LaboratoryDraft draftOf(const planning::Laboratory &laboratory);

struct LaboratoryOutcome {
    planning::Laboratory laboratory;
    /// Texts that are no number, and what planning::problemsOf finds, by JSON pointer.
    assay::Problems problems;
};
/// kept: what the draft was made of. An uncertainty that is still shown as it was is that to its last digit.
LaboratoryOutcome laboratoryOf(const LaboratoryDraft &draft, const planning::Laboratory &kept);

/// Where a problem's field is, and what to call it.
struct LaboratoryField {
    QString objectName;
    /// Of a table only.
    int row = -1;
    int column = 0;
    QString words;
};
LaboratoryField laboratoryField(const QString &pointer);

} // namespace plateau::ui
