// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

namespace plateau::ui {

class BenchSession;
class Stores;
struct NextAction;

/// Ticks the addition that is next, as it is planned: its lot and its pipette are those of the tubes before
/// it, else those of the plan. Throws notebook::Failure.
/// Returns what has to be done first, one sentence, where it ticked nothing: a reading that could not be
/// taken any more afterwards, a lot that does not hold the dose unless that was confirmed on the worksheet
/// (BeyondBook), or nobody has given a name.
QString tickNext(BenchSession &session, const Stores &stores, const NextAction &next);

} // namespace plateau::ui
