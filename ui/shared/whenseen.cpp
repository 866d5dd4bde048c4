// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/whenseen.h"

#include <QEvent>
#include <QWidget>

#include <utility>

namespace plateau::ui {

WhenSeen::WhenSeen(QWidget *widget, std::function<void()> update)
    : QObject(widget)
    , m_widget(*widget)
    , m_update(std::move(update))
{
    widget->installEventFilter(this);
}

void WhenSeen::request()
{
    m_wanted = true;
    if (m_widget.isVisible())
        catchUp();
}

void WhenSeen::catchUp()
{
    if (std::exchange(m_wanted, false))
        m_update();
}

bool WhenSeen::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::Show)
        catchUp();
    return QObject::eventFilter(watched, event);
}

} // namespace plateau::ui
