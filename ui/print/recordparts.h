// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/pageflow.h"
#include "ui/print/reportcontent.h"

namespace plateau::ui {

/// One run of a record: the one that is reported, or one that it takes results from.
struct RecordPart {
    const ReportContent &content;
    const assay::Method &method;
    const run::Run &run;
    const evaluation::Evaluation &evaluation;
    const std::vector<planning::OwnedInput> &inputs;
    /// nullptr: only the run itself is known.
    const ReportRecord *record = nullptr;

    QString local(const QString &text) const { return ui::local(content, text); }
};

/// The recipe: source, constants, components, steps, what is measured, limits.
void writeMethod(PageFlow &flow, const RecordPart &part);
/// What the run states of itself: cuvette, calibration, uncertainties of its inputs, the rules it is judged
/// by.
void writeConditions(PageFlow &flow, const RecordPart &part);
/// The uncertainties that the run states of its inputs, and who answers for each.
void writeUncertainties(PageFlow &flow, const RecordPart &part);
/// Samples with their preparation, standards with their strength, lots.
void writeMaterials(PageFlow &flow, const RecordPart &part);

/// What went into which tube, and what was read there; a corrected reading has a mark, and its old value and
/// reason below.
void writeTubes(PageFlow &flow, const RecordPart &part);
/// Every reading that was keyed and every dose that was ticked, by whom and when. Nothing without a record.
void writeBenchLog(PageFlow &flow, const RecordPart &part);

/// Blanks, signals and concentrations of every tube; recoveries, series and lines.
void writeSignals(PageFlow &flow, const RecordPart &part);
/// Of every result of wanted, from the readings to the value, with its budget.
void writeCalculations(PageFlow &flow, const RecordPart &part, const std::vector<evaluation::Result> &wanted);

} // namespace plateau::ui
