// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/evaluation/appraisal.h"

#include <QStringList>

#include <vector>

namespace plateau::ui {

/// A table in words: titles, and rows of as many texts.
struct FactsTable {
    QStringList titles;
    std::vector<QStringList> rows;
};
/// By wavelength, in g/L for one unit of net signal.
FactsTable factorFacts(const assay::Method &method, const evaluation::Appraisal &appraisal);
/// By sample volume, what the window means in g/L.
FactsTable rangeFacts(const assay::Method &method, const evaluation::Appraisal &appraisal);
/// Detection and quantification limit of each measurand.
FactsTable limitFacts(const assay::Method &method, const evaluation::Appraisal &appraisal);
/// The rule that the limits follow, in a sentence.
QString limitRule(const evaluation::Appraisal &appraisal, double smallestAbsorbance);
/// In the tube after each step.
std::vector<QString> filledTexts(const evaluation::Appraisal &appraisal);

} // namespace plateau::ui
