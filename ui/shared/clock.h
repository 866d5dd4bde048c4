// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/timing/stamp.h"

#include <QDateTime>

namespace plateau::ui {

/// The one source of time in the window, so that tests can turn it.
class Clock
{
public:
    virtual ~Clock() = default;
    /// Local time with its offset from UTC, so that its text says which hour of a clock change it is.
    virtual QDateTime now() const;
    /// What timers rest on: it goes on while the machine sleeps and nobody can set it.
    virtual timing::BootTime boot() const;
    timing::Stamp stamp() const { return {now(), boot()}; }

    /// That of the system.
    static const Clock &ofSystem();
};

} // namespace plateau::ui
