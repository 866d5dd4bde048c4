// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/equipment/item.h"
#include "sampledata/maker/chance.h"
#include "sampledata/maker/story.h"

namespace plateau::sampledata {

/// A check of that item on that day as somebody would key it: the numbers of the protocol, as the instrument
/// is on that day by the story. Without problems.
equipment::Check checkOf(const equipment::Item &item, equipment::Aspect aspect, const QDate &day,
                         const Story &story, Chance &chance);

/// The smallest piston pipette of the house, which wears out.
QString nameOfWornPipette();

} // namespace plateau::sampledata
