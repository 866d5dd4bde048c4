// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/bookentries.h"
#include "ui/shared/helpcall.h"

#include <QObject>

#include <utility>
#include <vector>

class QStackedWidget;

namespace plateau::ui {

class BookPage;
class HelpDesk;
class Theme;
struct WindowActions;

/// The way from the window into its help: the menu's entries, and the help's page of each book. Everything
/// handed in outlives it.
class HelpRoute : public QObject
{
    Q_OBJECT

public:
    /// pages: of which one is in front of the window.
    HelpRoute(const Theme &theme, const QStackedWidget &pages, QWidget &window);

    void addBook(Book book, BookPage &page);
    void connectActions(const WindowActions &actions);
    HelpDesk &desk() { return *m_desk; }

    static HelpPlace placeOf(Book book);

private:
    const QStackedWidget &m_pages;
    HelpDesk *m_desk;
};

} // namespace plateau::ui
