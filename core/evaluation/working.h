// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"

namespace plateau::evaluation {

/// One line of the calculation written out: what is computed, the formula with the numbers in it, the value.
/// "dA = A1 - A2" / "0.912 - 0.411" / "0.501".
struct WorkingLine {
    QString what;
    QString formula;
    QString numbers;
    QString value;
    bool operator==(const WorkingLine &) const = default;
};
struct WorkingSection {
    QString title;
    std::vector<WorkingLine> lines;
    bool operator==(const WorkingSection &) const = default;
};

/// The calculation of one result, so that it can be followed by hand from the readings to the value: blanks,
/// then each tube, then mean, content, uncertainty, and last what the symbols mean, with their units. rules:
/// those of the evaluation. Of a derived quantity: the results it comes from, their sum, the uncertainty.
/// Empty if the evaluation has no such result.
std::vector<WorkingSection> working(const assay::Method &method, const run::Run &run,
                                    const Evaluation &evaluation, const QString &sample,
                                    const QString &measurand, const Rules &rules = {});

/// Where the coverage factor of a result comes from, with its effective degrees of freedom.
QString coverageFormula(const Result &result);

} // namespace plateau::evaluation
