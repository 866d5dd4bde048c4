// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "core/planning/laboratory.h"
#include "ui/bench/pipettesheet.h"

namespace plateau::ui {

/// The worksheet of a stored run as it was planned, with what its marks say. fromPaper: somebody said that
/// the additions are not ticked here.
PipetteSheet sheetOf(const notebook::StoredRun &stored, const planning::Glassware &glassware, bool fromPaper);

/// The dose as the notebook names it.
notebook::Dose doseOf(const PipetteSheet &sheet, const Dosing &dosing);

/// Of the rack that was planned for it, else the laboratory's.
int rackColumns(const notebook::StoredRun &stored, const planning::Laboratory &laboratory);

/// What one act did to the worksheet: ticks of one key, or one tube marked as spoilt or restored; or ticks of dilutions.
struct WorksheetAct {
    struct Change {
        /// Of a spoilt or restored tube without a component.
        notebook::Dose dose;
        /// The tick, or the spoilt mark, that counted before and that counts since; nothing: none did.
        std::optional<notebook::StoredMark> before;
        std::optional<notebook::StoredMark> now;
    };
    /// All of one kind; empty only where it is of dilutions.
    std::vector<Change> changes;
    std::vector<notebook::DilutionPlace> dilutions{};
    /// Of dilutions: ticked, not taken back.
    bool isTick = false;
    bool isOfDilutions() const { return !dilutions.empty(); }
    /// Not to be asked of dilutions.
    bool isOfTube() const { return changes.front().dose.component.isEmpty(); }
};

/// The last act that was not taken back. An act that leaves things as they were before the one ahead of it
/// takes that one back.
std::optional<WorksheetAct> lastAct(const notebook::StoredRun &stored);

/// Where that dose stands on the worksheet.
std::optional<Dosing> dosingOf(const PipetteSheet &sheet, const notebook::Dose &dose);

} // namespace plateau::ui
