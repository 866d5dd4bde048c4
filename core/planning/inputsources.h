// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/planning/laboratory.h"
#include "core/run/run.h"

#include <QString>

#include <optional>
#include <set>

namespace plateau::planning {

/// What is found out of one input of a budget.
struct FoundInput {
    double value = 0;
    QString owner;
    QString source;
    bool isDefault = false;
};

/// Looks for the seven inputs of a run's budget, in the order that uncertaintysources.h states. Holds
/// references.
class InputSources
{
public:
    InputSources(const assay::Method &method, const Laboratory &laboratory, const run::Run &run);

    FoundInput absorbance() const;
    FoundInput absorptivity() const;
    FoundInput pathLength() const;
    FoundInput totalVolume() const;
    FoundInput sampleVolume() const;
    FoundInput dilution() const;
    FoundInput extract() const;

private:
    std::optional<FoundInput> ownOf(std::optional<double> MethodUncertainty::*member) const;
    QString photometerName() const;
    QString photometerSource() const;
    std::set<double> sampleVolumes_mL() const;

    const assay::Method &m_method;
    const Laboratory &m_laboratory;
    const run::Run &m_run;
    const MethodUncertainty *m_own = nullptr;
    const run::UncertaintyInputs m_usual;
};

} // namespace plateau::planning
