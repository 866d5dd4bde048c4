// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"
#include "core/planning/laboratory.h"
#include "ui/books/cellsmodel.h"

#include <QStringList>

#include <optional>
#include <vector>

namespace plateau::ui {

namespace pipette {
enum Column { Name, Smallest_mL, Largest_mL, Step_mL, Uncertainty_percent, ColumnCount };
}
namespace flask {
enum Column { Name, Volume_mL, Uncertainty_percent, ColumnCount };
}
namespace methodUncertainty {
/// The numbers stand in the order of planning::statedInputs.
enum Column {
    Method,
    Absorbance,
    Absorptivity_percent,
    PathLength_percent,
    TotalVolume_percent,
    SampleVolume_percent,
    Dilution_percent,
    Extract_percent,
    Source,
    ColumnCount
};
} // namespace methodUncertainty
namespace reportUnit {
enum Column { Product, Measurand, Unit, ColumnCount };
}

/// No photometer while all of it is blank.
struct PhotometerDraft {
    QString name;
    QString absorbance;
    QString pathLength_percent;
    QString source;
    QString checkedOn;
    bool operator==(const PhotometerDraft &) const = default;
};

/// The laboratory as it is being filled in: the texts that were typed.
struct LaboratoryDraft {
    QString name;
    /// One line of the address a line.
    QString address{};
    QString contact{};
    std::optional<planning::Logo> logo{};
    QString rackRows;
    QString rackColumns;
    QString addition_s;
    QString mix_s;
    QString reading_s;
    QString overage_percent;
    /// A pipette of one volume has no step.
    std::vector<CellRow> pipettes{};
    std::vector<CellRow> flasks{};
    PhotometerDraft photometer{};
    std::vector<CellRow> methodUncertainties{};
    /// A blank measurand: every one.
    std::vector<CellRow> reportUnits{};
    bool reviewerDecides = false;
    bool secondPersonReviews = false;
    std::vector<CellRow> rejectionReasons{};
    bool operator==(const LaboratoryDraft &) const = default;
};

LaboratoryDraft draftOf(const planning::Laboratory &laboratory);

struct LaboratoryOutcome {
    planning::Laboratory laboratory;
    /// Texts that are no number, and what planning::problemsOf finds, by JSON pointer.
    assay::Problems problems;
};
/// kept: what the draft was made of. An uncertainty that is still shown as it was is that to its last digit,
/// and what the draft does not show stays.
LaboratoryOutcome laboratoryOf(const LaboratoryDraft &draft, const planning::Laboratory &kept);

/// The parts in which the two differ, in the words of the page: "rack and times", "photometer".
QStringList changedParts(const planning::Laboratory &before, const planning::Laboratory &after);

} // namespace plateau::ui
