// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/offerfield.h"

#include <QCompleter>
#include <QKeyEvent>
#include <QStringListModel>

namespace plateau::ui {

OfferField::OfferField(QWidget *parent)
    : QLineEdit(parent)
    , m_offers(new QStringListModel(this))
{
    auto *completer = new QCompleter(m_offers, this);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->setFilterMode(Qt::MatchContains);
    setCompleter(completer);
}

void OfferField::setOffers(const QStringList &offers)
{
    if (offers == m_offers->stringList())
        return;
    m_offers->setStringList(offers);
    setPlaceholderText(offers.isEmpty() ? QString() : tr("Down offers the usual ones"));
}

void OfferField::keyPressEvent(QKeyEvent *event)
{
    if (event->key() != Qt::Key_Down || m_offers->rowCount() == 0) {
        QLineEdit::keyPressEvent(event);
        return;
    }
    completer()->setCompletionPrefix({});
    completer()->complete();
}

} // namespace plateau::ui
