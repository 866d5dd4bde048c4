// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/laboratorydraft.h"
#include "ui/books/laboratoryreader.h"

namespace plateau::ui {

/// The parts of a draft: each fills its own members, and reads them into the laboratory. kept is what the
/// draft was made of.
void draftGlass(const planning::Laboratory &laboratory, LaboratoryDraft &draft);
void readGlass(const LaboratoryDraft &draft, const planning::Laboratory &kept, const LaboratoryReader &reader,
               planning::Laboratory &laboratory);

/// Photometer, and what is known for single methods.
void draftMeasuring(const planning::Laboratory &laboratory, LaboratoryDraft &draft);
void readMeasuring(const LaboratoryDraft &draft, const planning::Laboratory &kept,
                   const LaboratoryReader &reader, planning::Laboratory &laboratory);

/// Head of the reports, units, rules of the review.
void draftReporting(const planning::Laboratory &laboratory, LaboratoryDraft &draft);
void readReporting(const LaboratoryDraft &draft, const LaboratoryReader &reader,
                   planning::Laboratory &laboratory);

} // namespace plateau::ui
