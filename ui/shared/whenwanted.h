// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <functional>
#include <utility>

namespace plateau::ui {

/// A page that is made when it is wanted for the first time: the window opens sooner without those that nobody has
/// asked for yet. The page belongs to its parent.
template <class Page> class WhenWanted
{
public:
    explicit WhenWanted(std::function<Page *()> make)
        : m_make(std::move(make))
    {
    }

    Page &page()
    {
        if (!m_page)
            m_page = m_make();
        return *m_page;
    }
    /// nullptr until it was wanted.
    Page *made() const { return m_page; }

private:
    std::function<Page *()> m_make;
    Page *m_page = nullptr;
};

} // namespace plateau::ui
