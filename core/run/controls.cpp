// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/run/controls.h"

#include <algorithm>

namespace plateau::run {

bool isControl(const Run &run, const QString &standard)
{
    bool any = false;
    for (const Tube &tube : run.tubes) {
        if (tube.spike && tube.spike->standard == standard)
            return false;
        if (tube.standard != standard)
            continue;
        if (tube.role != Role::Control)
            return false;
        any = true;
    }
    return any;
}

bool isControlSample(const Run &run, const QString &sample)
{
    return std::ranges::any_of(
        run.tubes, [&](const Tube &tube) { return tube.role == Role::Control && tube.sample == sample; });
}

} // namespace plateau::run
