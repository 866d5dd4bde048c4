// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/evaluation/evaluation.h"
#include "core/run/run.h"

#include <QString>

#include <optional>
#include <span>
#include <vector>

namespace plateau::evaluation {

/// What a laboratory reports in. The evaluation itself knows g/L (liquids) and g/100 g (solids) only.
enum class ReportUnit {
    GramPerLitre,
    MilligramPerLitre,
    MillimolPerLitre,
    MilligramPer100mL,
    GramPer100g,
    GramPerKilogram,
    MilligramPerKilogram,
};

/// All of them, in the order in which a list offers them.
const std::vector<ReportUnit> &reportUnits();
/// "g/L", "mg/L", "mmol/L", "mg/100 mL", "g/100 g", "g/kg", "mg/kg": on screen and in files.
QString reportUnitWord(ReportUnit unit);
/// The word as it stands, blanks around it and the kind of space inside apart.
std::optional<ReportUnit> reportUnitFromWord(const QString &word);
/// What of: per volume of a liquid, per mass of a solid.
run::Form formOf(ReportUnit unit);
/// The same of the word that a result has.
run::Form formOf(const QString &unitWord);
/// The unit of the evaluation: "g/L" of a liquid, "g/100 g" of a solid.
ReportUnit evaluationUnit(run::Form form);
/// The units a result of this form can be reported in, the evaluation's first.
std::vector<ReportUnit> unitsFor(run::Form form, bool molarMassKnown);

/// A result in the unit it is reported in, at full precision (valueText and uncertaintyText round for
/// display). Every number but the factor and the degrees of freedom is in that unit.
struct Reported {
    /// Absent where the result has none, and where it is only known to be less or greater than something and
    /// nothing more.
    std::optional<double> value;
    std::optional<double> expandedUncertainty{};
    std::optional<double> coverageFactor{};
    std::optional<double> degreesOfFreedom{};
    std::optional<double> lessThan{};
    std::optional<double> greaterThan{};
    ReportUnit unit = ReportUnit::GramPerLitre;
    bool operator==(const Reported &) const = default;
};

/// Expanded uncertainty / coverage factor; absent unless both are there.
std::optional<double> standardUncertainty(const Reported &reported);
/// "152.3 ± 9.1 mg/L", "< 10 mg/L", "> 300 mg/L", "no value": a bound stands before a value.
QString reportedText(const Reported &reported);

/// What came of it, or why not and what to do: one sentence without its capital and its full stop, to stand
/// by itself (capitalised) or after a colon.
template <class T> struct Converted {
    std::optional<T> value;
    QString obstacle;
};

/// From one unit to the other: multiply by this. Refused: from a volume to a mass or back, which needs a
/// density that nobody gave; to and from mmol/L without a molar mass.
Converted<double> conversionFactor(ReportUnit from, ReportUnit to,
                                   std::optional<double> molarMass_g_per_mol = std::nullopt);

/// Of a measurand, the method's (sulphite given as SO2 has that of SO2). Of a derived quantity, the one all
/// its terms have in common, where each counts as it is (factor 1 or -1); others: the other methods its terms
/// come from. Nothing else has one.
std::optional<double> molarMassOf(const QString &measurand, const assay::Method &method,
                                  std::span<const assay::Method> others = {});

/// The result in another unit. Refused where conversionFactor is, and where the result has neither value nor
/// bound.
Converted<Reported> reportedAs(const Result &result, const assay::Method &method, ReportUnit unit,
                               std::span<const assay::Method> others = {});
/// The same of what is reported already.
Converted<Reported> reportedAs(const Reported &reported, ReportUnit unit,
                               std::optional<double> molarMass_g_per_mol = std::nullopt);

} // namespace plateau::evaluation
