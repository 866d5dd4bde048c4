// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/timing/stamp.h"

#include <QFile>

#include <algorithm>
#include <cstdlib>
#include <ctime>

namespace plateau::timing {

using namespace Qt::StringLiterals;

namespace {

QString readBootId()
{
    QFile file(u"/proc/sys/kernel/random/boot_id"_s);
    if (!file.open(QIODevice::ReadOnly))
        return {};
    return QString::fromLatin1(file.read(64)).trimmed();
}

} // namespace

BootTime bootTime()
{
    static const QString id = readBootId();
    timespec now{};
    if (id.isEmpty() || clock_gettime(CLOCK_BOOTTIME, &now) != 0)
        return {};
    return {id, qint64(now.tv_sec) * 1000 + now.tv_nsec / 1'000'000};
}

bool isByWall(const Stamp &from, const Stamp &to)
{
    return from.boot.id.isEmpty() || from.boot.id != to.boot.id;
}

qint64 elapsed_ms(const Stamp &from, const Stamp &to)
{
    const qint64 ms = isByWall(from, to) ? from.wall.msecsTo(to.wall) : to.boot.ms - from.boot.ms;
    return std::max<qint64>(0, ms);
}

std::optional<qint64> jump_ms(const Stamp &from, const Stamp &to)
{
    if (isByWall(from, to))
        return std::nullopt;
    const qint64 jump = from.wall.msecsTo(to.wall) - (to.boot.ms - from.boot.ms);
    return std::abs(jump) < smallestJump_ms ? std::nullopt : std::optional(jump);
}

} // namespace plateau::timing
