// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QtGlobal>

#include <algorithm>

namespace plateau::ui {

/// How many pages of a notebook are copied between two events of the window: as many as take less time than
/// anybody notices at a key, whatever disk they go to.
class CopyPace
{
public:
    int pages() const { return m_pages; }
    /// The last ones took so long.
    void took(qint64 spent_us)
    {
        if (spent_us > longest_us)
            m_pages = std::max(fewest, m_pages / 2);
        else if (spent_us < longest_us / 4)
            m_pages = std::min(most, m_pages * 2);
    }

    static constexpr qint64 longest_us = 8'000;
    static constexpr int fewest = 4;
    static constexpr int most = 2'048;

private:
    int m_pages = 64;
};

} // namespace plateau::ui
