// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bookpages.h"

#include "ui/books/bookpage.h"

#include <algorithm>

namespace plateau::ui {

BookPage *BookPages::page(Book book)
{
    const auto known = m_pages.find(book);
    if (known != m_pages.end())
        return known->second;
    BookPage *page = m_pages[book] = m_makers.at(book)();
    Q_EMIT made(book, page);
    return page;
}

std::optional<Book> BookPages::bookOf(const QWidget *page) const
{
    const auto found = std::ranges::find_if(m_pages, [page](const auto &entry) { return entry.second == page; });
    return found == m_pages.end() ? std::nullopt : std::optional(found->first);
}

std::vector<BookPage *> BookPages::pages() const
{
    std::vector<BookPage *> all;
    for (const auto &[book, page] : m_pages)
        all.push_back(page);
    return all;
}

} // namespace plateau::ui
