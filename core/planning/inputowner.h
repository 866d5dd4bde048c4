// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

#include <optional>
#include <vector>

namespace plateau::planning {

/// The members of run::UncertaintyInputs, the standards of the run, and its replicates.
enum class UncertaintyInput {
    Absorbance,
    Absorptivity,
    PathLength,
    TotalVolume,
    SampleVolume,
    Dilution,
    Extract,
    Standard,
    Replicates,
};

/// The seven that run::UncertaintyInputs holds, in its order.
const std::vector<UncertaintyInput> &statedInputs();
/// "absorbance of a reading", "sample volume", "dilution step".
QString inputName(UncertaintyInput input);
/// "absorbance", "sampleVolume", "standard": as records keep it.
QString inputWord(UncertaintyInput input);
std::optional<UncertaintyInput> inputFromWord(const QString &word);

/// Who answered for a number of a run's budget when the run was planned. The number itself stands in the run.
struct InputOwner {
    UncertaintyInput input = UncertaintyInput::Absorbance;
    /// Id of the run's standard; of a standard only.
    QString standard;
    /// "photometer P1", "piston pipette 10 to 100 µL", a person's name. Never blank.
    QString owner;
    /// Where the number comes from: a record, a list, or "common practice, no source". Never blank.
    QString source;
    /// Nobody of this laboratory stated it.
    bool isDefault = false;
    bool operator==(const InputOwner &) const = default;
};

} // namespace plateau::planning
