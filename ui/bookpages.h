// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/bookentries.h"

#include <QObject>

#include <functional>
#include <map>
#include <optional>
#include <vector>

class QWidget;

namespace plateau::ui {

class BookPage;

/// The pages of the books, each made when it is wanted for the first time: most days most of them are not, and the window
/// would stand still while they are made.
class BookPages : public QObject
{
    Q_OBJECT

public:
    using Make = std::function<BookPage *()>;
    using QObject::QObject;

    void add(Book book, Make make) { m_makers[book] = std::move(make); }
    /// Makes it where it is not there yet.
    BookPage *page(Book book);
    /// Nothing for a page that is none of them.
    std::optional<Book> bookOf(const QWidget *page) const;
    /// Those that are there.
    std::vector<BookPage *> pages() const;

Q_SIGNALS:
    void made(plateau::ui::Book book, plateau::ui::BookPage *page);

private:
    std::map<Book, Make> m_makers;
    std::map<Book, BookPage *> m_pages;
};

} // namespace plateau::ui
