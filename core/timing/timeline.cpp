// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/timing/timeline.h"

namespace plateau::timing {

namespace {

constexpr double msPerMinute = 60'000;

} // namespace

double Timeline::minutesOf(const Stamp &stamp) const
{
    if (!m_last)
        return 0;
    return m_last_min + static_cast<double>(elapsed_ms(*m_last, stamp)) / msPerMinute;
}

double Timeline::add(const Stamp &stamp)
{
    const double at_min = minutesOf(stamp);
    m_last = stamp;
    m_last_min = at_min;
    return at_min;
}

} // namespace plateau::timing
