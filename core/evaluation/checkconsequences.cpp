// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/checkfacts.h"

namespace plateau::evaluation {

QString checkConsequence(CheckId id)
{
    switch (id) {
    case CheckId::BlankHigh:
        return CheckText::tr("What the reagents show by themselves is taken off the result, and is more than usual.");
    case CheckId::BlankSpread:
        return CheckText::tr("Their mean is taken off the result, which is less well known by that.");
    case CheckId::DuplicateSpread:
        return CheckText::tr("The result is their mean, which is less well known than usual.");
    case CheckId::StandardRecovery:
        return CheckText::tr("The results of the run may be off in the same proportion.");
    case CheckId::StandardTooOld:
        return CheckText::tr("What it held at its use is less well known, and so is what rests on it.");
    case CheckId::SpikeRecovery:
        return CheckText::tr("Whether something in the sample disturbs the measurement is open.");
    case CheckId::VolumeProportionality:
        return CheckText::tr("Something in the sample may disturb the measurement.");
    case CheckId::ReactionUnfinished:
    case CheckId::ReadingEarly:
        return CheckText::tr("The result may be that of an incomplete reaction.");
    case CheckId::LotExpired:
        return CheckText::tr("It may have worked less well than one in date.");
    case CheckId::SampleVolumeOutsideRange:
        return CheckText::tr("The method does not say how well it works with such a volume.");
    case CheckId::WrongDirection:
        return CheckText::tr("No result rests on such a signal.");
    case CheckId::ReadingImplausible:
        return CheckText::tr("No result rests on such a reading.");
    case CheckId::ReadingMissing:
    case CheckId::SignalLow:
    case CheckId::SignalHigh:
    case CheckId::AbsorbanceHigh:
    case CheckId::ReserveLow:
    case CheckId::BlankMissing:
    case CheckId::ReadingLate:
        break;
    }
    return {};
}

} // namespace plateau::evaluation
