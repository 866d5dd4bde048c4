// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/helproute.h"

#include "ui/books/bookpage.h"
#include "ui/help/helpdesk.h"
#include "ui/windowactions.h"

#include <QAction>
#include <QStackedWidget>

using namespace Qt::StringLiterals;

namespace plateau::ui {

HelpRoute::HelpRoute(const Theme &theme, const QStackedWidget &pages, QWidget &window)
    : QObject(&window)
    , m_pages(pages)
    , m_desk(new HelpDesk(theme, window))
{
    // The keys are in the side list, in the strip or nowhere: what is in front counts.
    m_desk->setUsualPlace([this] { return helpOf(m_pages.currentWidget()); });
}

HelpPlace HelpRoute::placeOf(Book book)
{
    switch (book) {
    case Book::Today:
        return {u"today"_s, {}};
    case Book::Notebook:
        return {u"notebook"_s, {}};
    case Book::Charts:
        return {u"charts"_s, {}};
    case Book::Methods:
        return {u"methods"_s, {}};
    case Book::Samples:
        return {u"samples"_s, {}};
    case Book::Lots:
        return {u"lots"_s, {}};
    case Book::Standards:
        return {u"standards"_s, {}};
    case Book::Equipment:
        return {u"equipment"_s, {}};
    case Book::Laboratory:
        return {u"laboratory"_s, {}};
    case Book::Persons:
        return {u"persons"_s, {}};
    case Book::Limits:
        return {u"limits"_s, {}};
    case Book::Records:
        return {u"records"_s, {}};
    }
    return {};
}

void HelpRoute::addBook(Book book, BookPage &page)
{
    setHelp(page, placeOf(book));
}

void HelpRoute::connectActions(const WindowActions &actions)
{
    connect(actions.help, &QAction::triggered, m_desk, &HelpDesk::openForFocus);
    connect(actions.firstRack, &QAction::triggered, m_desk, [this] { m_desk->open({u"first-rack"_s, {}}); });
    connect(actions.aboutChecks, &QAction::triggered, m_desk, [this] { m_desk->open({u"checks"_s, {}}); });
}

} // namespace plateau::ui
