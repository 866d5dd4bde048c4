// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/planning/inputowner.h"
#include "core/planning/laboratory.h"
#include "core/run/run.h"

#include <QString>

#include <optional>
#include <vector>

namespace plateau::planning {

/// A standard uncertainty (k = 1) that a budget starts from, and who answers for it.
struct OwnedInput {
    UncertaintyInput input = UncertaintyInput::Absorbance;
    /// "absorbance of a reading", "sample volume", "concentration of standard STD".
    QString name;
    /// Absent of the replicates, which the run itself shows.
    std::optional<double> value{};
    /// Empty of the absorbance, else "%".
    QString unit;
    /// "photometer P1", "piston pipette 10 to 100 µL", "standard STD".
    QString owner;
    /// Where the value comes from: a record, a list, or "common practice, no source" and why nothing better.
    QString source;
    /// Nobody of this laboratory stated it.
    bool isDefault = false;
    /// False where no record says who answers for it.
    bool isKnown = true;
    /// Id, of a standard only.
    QString standard{};
    bool operator==(const OwnedInput &) const = default;
};
/// "photometer P1: absorbance of a reading 0.0012 (check record 7, 2026-09-14)"
QString ownedText(const OwnedInput &owned);

/// What is put in where nobody knows better. Common practice, no source.
run::UncertaintyInputs usualUncertainty();

/// One of statedInputs.
double numberOf(const run::UncertaintyInputs &inputs, UncertaintyInput input);
void setNumber(run::UncertaintyInputs &inputs, UncertaintyInput input, double value);
/// What the run itself says of its standard's uncertainty.
OwnedInput sourceOfStandard(const run::Standard &standard);
/// Whether a tube of the run has it in the role that calibrates.
bool calibrates(const run::Run &run, const run::Standard &standard);
/// Where nothing else is known.
OwnedInput replicates();

/// Every input of the run's budget with its owner, in the order of UncertaintyInput; the standards only where
/// they calibrate. For each the first that is known: what the laboratory keeps for the method, what the
/// photometer's records and the list of glassware say, the usual.
///   total volume   the pipettes of all components; doses of one pipette are off together
///   sample volume  the pipette of every sample volume of the run, the worst of them
///   dilution       the glass of every step that does not state its own, the worst of them
///   extract        the flask of every solid's extract, the worst of them
/// The run does not say which pipette makes a dose: of those that can, the least exact counts. Volumes no
/// glass of the list makes leave the usual value, and say so.
std::vector<OwnedInput> uncertaintySources(const assay::Method &method, const Laboratory &laboratory,
                                           const run::Run &run);
/// Their values, for run::Run::uncertainty.
run::UncertaintyInputs inputsFor(const assay::Method &method, const Laboratory &laboratory,
                                 const run::Run &run);

} // namespace plateau::planning
