// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/evaluation.h"

#include <array>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

QString checkWord(CheckId id)
{
    static constexpr std::array words{
        "reading-missing"_L1,
        "reading-implausible"_L1,
        "wrong-direction"_L1,
        "signal-low"_L1,
        "signal-high"_L1,
        "absorbance-high"_L1,
        "reserve-low"_L1,
        "blank-missing"_L1,
        "blank-high"_L1,
        "blank-spread"_L1,
        "duplicate-spread"_L1,
        "standard-recovery"_L1,
        "standard-too-old"_L1,
        "spike-recovery"_L1,
        "volume-proportionality"_L1,
        "reaction-unfinished"_L1,
        "reading-early"_L1,
        "reading-late"_L1,
        "lot-expired"_L1,
        "sample-volume-outside-range"_L1,
    };
    static_assert(words.size() == static_cast<size_t>(CheckId::SampleVolumeOutsideRange) + 1);
    return words[static_cast<size_t>(id)];
}

QString scopeWord(const Scope &scope)
{
    QString word;
    switch (scope.kind) {
    case Scope::Kind::Run:
        word = u"run"_s;
        break;
    case Scope::Kind::Sample:
        word = u"sample "_s + scope.id;
        break;
    case Scope::Kind::Standard:
        word = u"standard "_s + scope.id;
        break;
    }
    return scope.measurand.isEmpty() ? word : word + u", "_s + scope.measurand;
}

QString verdictWord(Verdict verdict)
{
    switch (verdict) {
    case Verdict::Reportable:
        return u"reportable"_s;
    case Verdict::Repeat:
        return u"repeat"_s;
    case Verdict::Investigate:
        break;
    }
    return u"investigate"_s;
}

} // namespace plateau::evaluation
