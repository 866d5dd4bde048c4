// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QtGlobal>

#include <functional>

namespace plateau::notebook {

/// Told now and then how far a long task has come: so many of so many. False stops it. May be empty.
using Watch = std::function<bool(qint64 done, qint64 of)>;

/// Thrown where a watch said stop; the task has left nothing behind then.
class Stopped
{
};

/// Counts, and asks the watch every now and then.
class Progress
{
public:
    Progress(const Watch &watch, qint64 of)
        : m_watch(watch)
        , m_of(of)
    {
    }
    /// Without having come further.
    bool goesOn() const { return !m_watch || m_watch(m_done, m_of); }
    /// Throws Stopped.
    void advance()
    {
        ++m_done;
        if (m_watch && (m_done % betweenLooks == 0 || m_done == m_of) && !m_watch(m_done, m_of))
            throw Stopped();
    }

private:
    static constexpr qint64 betweenLooks = 64;

    Watch m_watch;
    qint64 m_of;
    qint64 m_done = 0;
};

/// The watch for a part of a longer task, from and to in thousandths of the whole.
inline Watch partOf(const Watch &watch, int from, int to)
{
    if (!watch)
        return {};
    return [watch, from, to](qint64 done, qint64 of) {
        return watch(from + (of > 0 ? (to - from) * done / of : 0), 1000);
    };
}

} // namespace plateau::notebook
