// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

namespace plateau::ui {

/// Of two texts side by side the first one's width: both get what they want where there is room, else one that
/// wants less than its part of it does, and the other has the rest. part: the first one's, where both want more.
inline double sharedWidth(double room, double first, double second, double part = 0.5)
{
    if (first + second <= room || first <= room * part)
        return first;
    return second <= room * (1 - part) ? room - second : room * part;
}

} // namespace plateau::ui
