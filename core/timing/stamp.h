// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QDateTime>
#include <QString>

#include <optional>

namespace plateau::timing {

/// A reading of the clock that goes on while the machine sleeps and that nobody can set (CLOCK_BOOTTIME). It
/// begins anew with every start of the machine; id tells the starts apart.
struct BootTime {
    /// Empty where it is not known: a stamp of an older notebook, or a system that gives none.
    QString id{};
    qint64 ms = 0;
    bool operator==(const BootTime &) const = default;
};

/// Of this machine, now.
BootTime bootTime();

/// When something happened, by both clocks.
struct Stamp {
    QDateTime wall;
    BootTime boot{};
    bool operator==(const Stamp &) const = default;
};

/// From one stamp to a later one, in ms: by the boot clock within one start of the machine, else by the clock
/// on the wall, and never negative.
qint64 elapsed_ms(const Stamp &from, const Stamp &to);
/// Whether that had to trust the clock on the wall.
bool isByWall(const Stamp &from, const Stamp &to);

/// By how much the clock on the wall was set between two stamps, in ms, positive for forward; nothing where
/// it was not, or where the two are of different starts of the machine.
std::optional<qint64> jump_ms(const Stamp &from, const Stamp &to);
/// Less is the clock being kept on time by the system (common practice, no source).
inline constexpr qint64 smallestJump_ms = 2000;

} // namespace plateau::timing
