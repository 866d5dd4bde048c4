// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/offerfield.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QKeyEvent>
#include <QRegularExpression>
#include <QStringListModel>

namespace plateau::ui {

OfferField::OfferField(QWidget *parent)
    : QLineEdit(parent)
    , m_offers(new QStringListModel(this))
    , m_list(new QCompleter(m_offers, this))
{
    // Not the line's own completer: a list that opens while somebody types takes Enter, the letters of the
    // buttons and the focus.
    m_list->setWidget(this);
    connect(m_list, qOverload<const QString &>(&QCompleter::activated), this, [this](const QString &offer) {
        setText(offer);
        Q_EMIT textEdited(offer);
    });
}

void OfferField::setOffers(const QStringList &offers)
{
    if (offers == m_offers->stringList())
        return;
    m_offers->setStringList(offers);
    setPlaceholderText(offers.isEmpty() ? QString() : tr("↓ for a list"));
}

void OfferField::complete()
{
    const QString typed = text();
    if (typed.trimmed().isEmpty() || cursorPosition() != typed.size())
        return;
    const QStringList fitting = m_offers->stringList().filter(
        QRegularExpression(QStringLiteral("^") + QRegularExpression::escape(typed),
                           QRegularExpression::CaseInsensitiveOption));
    if (fitting.size() != 1 || fitting.front().size() == typed.size())
        return;
    setText(fitting.front());
    setSelection(int(text().size()), int(typed.size() - text().size())); // the cursor stays where it was typed
    Q_EMIT textEdited(text());
}

void OfferField::keyPressEvent(QKeyEvent *event)
{
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isEnter && m_list->popup()->isVisible()) {
        event->ignore(); // the list, which hands its keys on, chooses
        return;
    }
    if (event->key() != Qt::Key_Down || m_offers->rowCount() == 0) {
        const QString before = text();
        QLineEdit::keyPressEvent(event);
        const bool isTyped = !event->text().isEmpty() && event->text().front().isPrint();
        if (m_completes && isTyped && text() != before)
            complete();
        return;
    }
    m_list->setCompletionPrefix({});
    m_list->complete();
}

} // namespace plateau::ui
