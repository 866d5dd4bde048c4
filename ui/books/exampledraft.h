// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/working.h"
#include "ui/books/methoddraft.h"
#include "ui/shared/sentencelist.h"

#include <vector>

namespace plateau::ui {

namespace example {
/// One row a reading, its key being the reading's name.
enum Column { Reading, Blank, Sample, Count };
} // namespace example

/// One blank and one sample with the analyst's own numbers, as typed.
struct ExampleDraft {
    std::vector<CellRow> readings;
    /// Empty: the method's.
    QString sampleVolume_mL;
    /// Both empty: undiluted.
    QString take_mL;
    QString makeUpTo_mL;
    bool withUncertainty = false;
};

struct ExampleOutcome {
    /// Results first, then what the checks say, or what is still missing.
    std::vector<Sentence> sentences;
    /// The calculation of each result.
    std::vector<evaluation::WorkingSection> working;
};

/// What the method makes of the numbers, by evaluation::evaluate. A method with errors is not tried, but for
/// those of names and texts.
ExampleOutcome workExample(const ExampleDraft &example, const MethodOutcome &method);

/// The rows for these readings; what was typed for a reading stays with it.
std::vector<CellRow> exampleRows(const std::vector<QString> &readings, const std::vector<CellRow> &before);

} // namespace plateau::ui
