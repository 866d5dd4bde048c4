// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/timing/stamp.h"

#include <optional>

namespace plateau::timing {

/// The clock of one run: minutes since its first stamp, one after the other, whatever happens to the clock on
/// the wall. Where the machine was started anew in between, that stretch is by the clock on the wall.
class Timeline
{
public:
    /// In the order they were made. Minutes of that stamp.
    double add(const Stamp &stamp);
    /// Of a stamp at or after the last one; 0 where there is none yet.
    double minutesOf(const Stamp &stamp) const;
    bool isEmpty() const { return !m_last; }

private:
    std::optional<Stamp> m_last;
    double m_last_min = 0;
};

} // namespace plateau::timing
