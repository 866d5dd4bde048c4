// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QDateTime>

namespace plateau::ui {

/// The one source of the time of day in the window, so that tests can turn it.
class Clock
{
public:
    virtual ~Clock() = default;
    /// Local time with its offset from UTC, so that its text says which hour of a clock change it is.
    virtual QDateTime now() const;
};

} // namespace plateau::ui
