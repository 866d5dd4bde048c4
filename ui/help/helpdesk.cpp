// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/help/helpdesk.h"

#include "ui/help/helpwindow.h"

#include <QApplication>
#include <QKeyEvent>
#include <QWidget>
#include <QWindow>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct HelpdeskWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::HelpDesk)
};

/// Text and pages come from one choice: the language that the texts of the window were translated into.
HelpPages installedHelp()
{
    return HelpPages(
        u":/help"_s,
        HelpdeskWords::tr("en", "the folder of the help in this language; en where there is none"));
}

} // namespace

HelpDesk::HelpDesk(const Theme &theme, QWidget &window)
    : QObject(&window)
    , m_theme(theme)
    , m_window(window)
{
    // A dialog has no menu with F1 in it, and there are many.
    QCoreApplication::instance()->installEventFilter(this);
}

HelpDesk::~HelpDesk() = default;

bool HelpDesk::isOwn(const QWidget *widget) const
{
    for (; widget; widget = widget->parentWidget()) {
        if (widget == &m_window || widget == m_help.get())
            return true;
    }
    return false;
}

bool HelpDesk::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::WindowBlocked && m_help && watched == m_help.get())
        QMetaObject::invokeMethod(this, &HelpDesk::followDialog, Qt::QueuedConnection);
    const bool isKey = event->type() == QEvent::KeyPress;
    if ((!isKey && event->type() != HelpCall::type()) || !watched->isWidgetType())
        return false;
    auto *widget = static_cast<QWidget *>(watched);
    if (isKey) {
        const auto *key = static_cast<QKeyEvent *>(event);
        if (key->key() != Qt::Key_F1 || key->modifiers() != Qt::NoModifier ||
            QApplication::activePopupWidget())
            return false;
    }
    if (!isOwn(widget))
        return false;
    openFor(widget);
    return true;
}

void HelpDesk::openForFocus()
{
    const QWidget *dialog = QApplication::activeModalWidget();
    const QWidget *focus = dialog ? dialog->focusWidget() : QApplication::focusWidget();
    if (!focus)
        focus = dialog;
    openFor(focus && isOwn(focus) ? focus : &m_window);
}

void HelpDesk::openFor(const QWidget *widget)
{
    const HelpPlace place = helpOf(widget);
    open(place.page.isEmpty() && m_usual ? m_usual() : place);
}

void HelpDesk::open(HelpPlace place)
{
    if (place.page.isEmpty())
        place.page = HelpPages::indexPage();
    if (!m_help)
        m_help = std::make_unique<HelpWindow>(m_theme, installedHelp());
    belongTo(QApplication::activeModalWidget());
    m_help->setWindowState(m_help->windowState() & ~Qt::WindowMinimized);
    m_help->show();
    m_help->go(place);
    m_help->takeFocus();
    m_help->raise();
    m_help->activateWindow();
}

void HelpDesk::belongTo(const QWidget *dialog)
{
    // A dialog that waits for an answer blocks every window but those that belong to it.
    QWindow *over = dialog && dialog->window() != m_help.get() ? dialog->window()->windowHandle() : nullptr;
    m_help->winId(); // else there is nothing yet that could belong
    if (m_help->windowHandle()->transientParent() != over) {
        m_help->hide();
        m_help->windowHandle()->setTransientParent(over);
    }
}

void HelpDesk::followDialog()
{
    QWidget *dialog = QApplication::activeModalWidget();
    if (!dialog || !m_help || !m_help->isVisible() || !isOwn(dialog))
        return;
    belongTo(dialog);
    m_help->setAttribute(Qt::WA_ShowWithoutActivating);
    m_help->show();
    m_help->setAttribute(Qt::WA_ShowWithoutActivating, false);
    dialog->activateWindow();
}

HelpPlace HelpDesk::placeOnShow() const
{
    return m_help && m_help->isVisible() ? m_help->place() : HelpPlace();
}

} // namespace plateau::ui
