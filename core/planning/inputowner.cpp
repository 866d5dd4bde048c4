// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/inputowner.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace plateau::planning {

using namespace Qt::StringLiterals;
using enum UncertaintyInput;

namespace {

struct InputOwnerWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::InputOwner)
};

const std::array words{
    std::pair(Absorbance, "absorbance"_L1),     std::pair(Absorptivity, "absorptivity"_L1),
    std::pair(PathLength, "pathLength"_L1),     std::pair(TotalVolume, "totalVolume"_L1),
    std::pair(SampleVolume, "sampleVolume"_L1), std::pair(Dilution, "dilution"_L1),
    std::pair(Extract, "extract"_L1),           std::pair(Standard, "standard"_L1),
    std::pair(Replicates, "replicates"_L1),
};

} // namespace

const std::vector<UncertaintyInput> &statedInputs()
{
    static const std::vector<UncertaintyInput> inputs{Absorbance,   Absorptivity, PathLength, TotalVolume,
                                                      SampleVolume, Dilution,     Extract};
    return inputs;
}

QString inputName(UncertaintyInput input)
{
    switch (input) {
    case Absorbance:
        return InputOwnerWording::tr("absorbance of a reading");
    case Absorptivity:
        return InputOwnerWording::tr("absorptivity");
    case PathLength:
        return InputOwnerWording::tr("path length");
    case TotalVolume:
        return InputOwnerWording::tr("total volume");
    case SampleVolume:
        return InputOwnerWording::tr("sample volume");
    case Dilution:
        return InputOwnerWording::tr("dilution step");
    case Extract:
        return InputOwnerWording::tr("extract");
    case Standard:
        return InputOwnerWording::tr("concentration");
    case Replicates:
        break;
    }
    return InputOwnerWording::tr("repeatability");
}

QString inputWord(UncertaintyInput input)
{
    return std::ranges::find(words, input, [](const auto &pair) { return pair.first; })->second;
}

std::optional<UncertaintyInput> inputFromWord(const QString &word)
{
    const auto found = std::ranges::find_if(words, [&](const auto &pair) { return pair.second == word; });
    return found == words.end() ? std::nullopt : std::optional(found->first);
}

} // namespace plateau::planning
