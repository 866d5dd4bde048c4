// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/reportunit.h"
#include "core/notebook/records.h"

#include <map>
#include <optional>

namespace plateau::planning {
struct Laboratory;
}

namespace plateau::ui {

/// How a concentration in g/L is shown.
struct ShownUnit {
    evaluation::ReportUnit unit = evaluation::ReportUnit::GramPerLitre;
    double factor = 1;
    bool operator==(const ShownUnit &) const = default;
};

/// By measurand; one that is not in it is shown in g/L.
using UnitsOfRun = std::map<QString, ShownUnit>;

/// The units per volume in which the laboratory reports the measurands of every sample of the run, so that tubes, standards
/// and results are read in one. Where its products differ in that, or are solids, tubes and standards stay in g/L.
UnitsOfRun unitsOfRun(const notebook::StoredRun &stored, const planning::Laboratory &laboratory);
ShownUnit shownUnit(const UnitsOfRun &units, const QString &measurand);

/// The laboratory's for that result of the sample; of a sample without a product, as a control is, the one that those with a
/// product share, so that a rack is read in one. Nothing where none is kept.
std::optional<evaluation::ReportUnit> reportUnitIn(const notebook::StoredRun &stored,
                                                   const planning::Laboratory &laboratory, const QString &sample,
                                                   const QString &measurand, run::Form form);

/// As the plan names it; empty where it names none.
QString productOf(const notebook::StoredRun &stored, const QString &sample);

} // namespace plateau::ui
