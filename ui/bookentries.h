// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QKeySequence>
#include <QString>

#include <vector>

namespace plateau::ui {

enum class Book {
    Today,
    Notebook,
    Charts,
    Methods,
    Samples,
    Lots,
    Standards,
    Equipment,
    Laboratory,
    Persons,
    Limits,
    Records
};

/// How the window leads to a book.
struct BookEntry {
    Book book = Book::Notebook;
    /// In the side list.
    QString title;
    /// Of the theme.
    QString drawing;
    /// With its mnemonic.
    QString menuText;
    QString actionName;
    QKeySequence keys;
};

/// In the order of the side list and of the View menu.
std::vector<BookEntry> bookEntries();

} // namespace plateau::ui
