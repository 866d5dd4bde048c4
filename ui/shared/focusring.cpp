// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/focusring.h"

#include "ui/shared/theme.h"

#include <QAbstractSpinBox>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QEvent>
#include <QLineEdit>
#include <QPainter>
#include <QRadioButton>
#include <QScopedValueRollback>
#include <QStyleOptionButton>

namespace plateau::ui {

namespace {

constexpr int ringWidth = 2;

} // namespace

FocusRing::FocusRing(const Theme &theme, QObject *parent)
    : QObject(parent)
    , m_theme(theme)
{
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget *, QWidget *now) { follow(now); });
}

QRect FocusRing::ringOf(const QWidget &widget)
{
    const bool isBox = qobject_cast<const QCheckBox *>(&widget) || qobject_cast<const QRadioButton *>(&widget);
    if (isBox) {
        QStyleOptionButton option;
        option.initFrom(&widget);
        const auto element = qobject_cast<const QCheckBox *>(&widget) ? QStyle::SE_CheckBoxIndicator
                                                                      : QStyle::SE_RadioButtonIndicator;
        return widget.style()->subElementRect(element, &option, &widget).intersected(widget.rect());
    }
    const bool isField = qobject_cast<const QLineEdit *>(&widget) || qobject_cast<const QComboBox *>(&widget) ||
                         qobject_cast<const QAbstractSpinBox *>(&widget);
    return isField ? widget.rect() : QRect();
}

void FocusRing::follow(QWidget *now)
{
    if (m_at == now)
        return;
    if (m_at) {
        m_at->removeEventFilter(this);
        m_at->update();
    }
    m_at = now && !ringOf(*now).isEmpty() ? now : nullptr;
    if (m_at) {
        m_at->installEventFilter(this);
        m_at->update();
    }
}

bool FocusRing::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() != QEvent::Paint || watched != m_at || m_isPainting)
        return QObject::eventFilter(watched, event);
    const QScopedValueRollback<bool> painting(m_isPainting, true);
    watched->event(event);
    QPainter painter(m_at);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(m_theme.focus(), ringWidth));
    const double half = ringWidth / 2.0;
    painter.drawRoundedRect(QRectF(ringOf(*m_at)).adjusted(half, half, -half, -half), ringWidth, ringWidth);
    return true;
}

} // namespace plateau::ui
