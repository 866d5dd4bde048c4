// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/checkfacts.h"
#include "core/run/controls.h"

#include <algorithm>

namespace plateau::evaluation {

QString checkTitle(CheckId id)
{
    switch (id) {
    case CheckId::ReadingMissing:
        return CheckText::tr("Readings missing");
    case CheckId::ReadingImplausible:
        return CheckText::tr("Readings no photometer can show");
    case CheckId::WrongDirection:
        return CheckText::tr("Signals in the wrong direction");
    case CheckId::SignalLow:
        return CheckText::tr("Smallest net signal");
    case CheckId::SignalHigh:
        return CheckText::tr("Largest net signal");
    case CheckId::AbsorbanceHigh:
        return CheckText::tr("Largest absorbance");
    case CheckId::ReserveLow:
        return CheckText::tr("Reagent left");
    case CheckId::BlankMissing:
        return CheckText::tr("Blanks read");
    case CheckId::BlankHigh:
        return CheckText::tr("Blank signal");
    case CheckId::BlankSpread:
        return CheckText::tr("Difference between blanks");
    case CheckId::DuplicateSpread:
        return CheckText::tr("Difference between replicates");
    case CheckId::StandardRecovery:
        return CheckText::tr("Recovery of the standard");
    case CheckId::StandardTooOld:
        return CheckText::tr("Age of the standard");
    case CheckId::SpikeRecovery:
        return CheckText::tr("Recovery of the spike");
    case CheckId::VolumeProportionality:
        return CheckText::tr("Difference between sample volumes");
    case CheckId::ReactionUnfinished:
        return CheckText::tr("Reactions not ended");
    case CheckId::ReadingEarly:
        return CheckText::tr("Readings too early");
    case CheckId::ReadingLate:
        return CheckText::tr("Readings too late");
    case CheckId::LotExpired:
        return CheckText::tr("Lot in date");
    case CheckId::SampleVolumeOutsideRange:
        return CheckText::tr("Volumes outside their range");
    }
    return {};
}

std::optional<size_t> measurandOf(const CheckContext &context, const Check &check)
{
    const std::vector<assay::Measurand> &measurands = context.layout.method().measurands;
    if (check.scope.measurand.isEmpty())
        return measurands.empty() ? std::nullopt : std::optional<size_t>(0);
    const auto found = std::ranges::find(measurands, check.scope.measurand, &assay::Measurand::id);
    return found == measurands.end() ? std::nullopt
                                     : std::optional(static_cast<size_t>(found - measurands.begin()));
}

std::vector<int> tubesOf(const CheckContext &context, const Check &check)
{
    if (!check.tubes.empty())
        return check.tubes;
    std::vector<int> tubes;
    for (int i = 0; i < static_cast<int>(context.layout.run().tubes.size()); ++i) {
        const run::Tube &tube = context.tube(i);
        const bool isStandard = tube.role == run::Role::Standard || tube.role == run::Role::Control;
        const bool isOf = check.scope.kind == Scope::Kind::Run ? tube.role == run::Role::Blank
                          : check.scope.kind == Scope::Kind::Standard
                              ? isStandard && tube.standard == check.scope.id
                              : tube.role != run::Role::Spiked && tube.sample == check.scope.id;
        if (isOf)
            tubes.push_back(i);
    }
    return tubes;
}

QString scopeText(const Scope &scope, const run::Run &run)
{
    const auto named = [&] {
        switch (scope.kind) {
        case Scope::Kind::Sample:
            return CheckText::tr("sample %1").arg(scope.id);
        case Scope::Kind::Standard:
            return (run::isControl(run, scope.id) ? CheckText::tr("control %1") : CheckText::tr("standard %1"))
                .arg(scope.id);
        case Scope::Kind::Run:
            break;
        }
        return CheckText::tr("run");
    };
    return scope.measurand.isEmpty() ? named() : CheckText::tr("%1, %2").arg(named(), scope.measurand);
}

QString verdictText(Verdict verdict)
{
    switch (verdict) {
    case Verdict::Reportable:
        return CheckText::tr("reportable");
    case Verdict::Repeat:
        return CheckText::tr("repeat");
    case Verdict::Investigate:
        break;
    }
    return CheckText::tr("investigate");
}

} // namespace plateau::evaluation
