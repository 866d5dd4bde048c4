// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/boxsearch.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QKeyEvent>

namespace plateau::ui {

BoxSearch::BoxSearch(QObject *parent)
    : QObject(parent)
{
    qApp->installEventFilter(this);
}

bool BoxSearch::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() != QEvent::KeyPress)
        return false;
    auto *box = qobject_cast<QComboBox *>(watched);
    return box && !box->isEditable() && goesOn(*box, static_cast<const QKeyEvent &>(*event));
}

/// True where the key was a space within the name and has had its effect.
bool BoxSearch::goesOn(QComboBox &box, const QKeyEvent &key)
{
    constexpr auto commands = Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier;
    if ((key.modifiers() & commands) || key.text().isEmpty() || !key.text().front().isPrint())
        return false;
    const bool isBegun =
        m_box == &box && m_sinceLetter.isValid() && !m_sinceLetter.hasExpired(QApplication::keyboardInputInterval());
    const bool isSpace = key.key() == Qt::Key_Space;
    if (isSpace && !isBegun)
        return false;
    m_box = &box;
    m_sinceLetter.start();
    if (!isSpace)
        return false;
    // As the box searches for a letter: in its list, from what is chosen.
    QAbstractItemView *list = box.view();
    list->setCurrentIndex(box.model()->index(box.currentIndex(), box.modelColumn(), box.rootModelIndex()));
    list->keyboardSearch(key.text());
    box.setCurrentIndex(list->currentIndex().row());
    return true;
}

} // namespace plateau::ui
