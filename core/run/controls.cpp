// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/run/controls.h"

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

} // namespace plateau::run
