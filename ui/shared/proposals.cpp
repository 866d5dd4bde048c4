// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/proposals.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QCompleter>
#include <QLineEdit>

namespace plateau::ui {

void connectEnter(QComboBox *box, QObject *owner, const std::function<void()> &entered, const std::function<void()> &chosen)
{
    QCompleter *proposals = box->completer();
    QObject::connect(box->lineEdit(), &QLineEdit::returnPressed, owner, [proposals, owner, entered, chosen] {
        // The list hands Enter to the line first, and chooses and closes afterwards.
        const QAbstractItemView *list = proposals->popup();
        if (!list->isVisible())
            entered();
        else if (!list->currentIndex().isValid())
            QMetaObject::invokeMethod(owner, chosen, Qt::QueuedConnection);
    });
    // Queued as well, for the box takes the text over first.
    QObject::connect(
        proposals, qOverload<const QString &>(&QCompleter::activated), owner, [chosen] { chosen(); }, Qt::QueuedConnection);
}

} // namespace plateau::ui
