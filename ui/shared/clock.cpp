// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/clock.h"

namespace plateau::ui {

QDateTime Clock::now() const
{
    const QDateTime local = QDateTime::currentDateTime();
    return local.toOffsetFromUtc(local.offsetFromUtc());
}

timing::BootTime Clock::boot() const
{
    return timing::bootTime();
}

const Clock &Clock::ofSystem()
{
    static const Clock clock;
    return clock;
}

} // namespace plateau::ui
