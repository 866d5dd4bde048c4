// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/offerfield.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QKeyEvent>
#include <QPainter>
#include <QStringListModel>

using namespace Qt::StringLiterals;

namespace plateau::ui {

OfferField::OfferField(QWidget *parent)
    : QLineEdit(parent)
    , m_offers(new QStringListModel(this))
    , m_list(new QCompleter(m_offers, this))
{
    // Not the line's own completer: a list that opens while somebody types takes Enter, the letters of the
    // buttons and the focus.
    m_list->setWidget(this);
    connect(m_list, qOverload<const QString &>(&QCompleter::activated), this, &OfferField::take);
    connect(this, &QLineEdit::textChanged, this, &OfferField::describe);
    connect(this, &QLineEdit::cursorPositionChanged, this, &OfferField::describe);
    connect(this, &QLineEdit::selectionChanged, this, &OfferField::describe);
}

void OfferField::setOffers(const QStringList &offers)
{
    if (offers == m_offers->stringList())
        return;
    m_offers->setStringList(offers);
    setPlaceholderText(offers.isEmpty() ? QString() : tr("↓ for a list"));
    describe();
}

QString OfferField::completion() const
{
    const QString typed = text();
    if (!m_completes || isReadOnly() || typed.trimmed().isEmpty() || cursorPosition() != typed.size() || hasSelectedText())
        return {};
    QString only;
    for (const QString &offer : m_offers->stringList()) {
        if (!offer.startsWith(typed, Qt::CaseInsensitive))
            continue;
        if (!only.isEmpty())
            return {};
        only = offer;
    }
    return only.size() == typed.size() ? QString() : only;
}

void OfferField::take(const QString &offer)
{
    selectAll();
    insert(offer);
}

void OfferField::takeOnlyOne()
{
    if (m_valid.contains(text().simplified(), Qt::CaseInsensitive))
        return; // whole, though another name goes on from it
    if (const QString whole = completion(); !m_valid.isEmpty() && !whole.isEmpty())
        take(whole);
}

void OfferField::openList()
{
    m_list->popup()->setAccessibleName(tr("What is offered"));
    m_list->setCompletionPrefix({});
    m_list->complete();
}

void OfferField::keyPressEvent(QKeyEvent *event)
{
    QAbstractItemView *list = m_list->popup();
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isEnter && list->isVisible()) {
        if (list->currentIndex().isValid()) {
            event->ignore(); // the list, which hands its keys on, chooses
            return;
        }
        list->hide();
    }
    if (isEnter)
        takeOnlyOne();
    if (event->key() == Qt::Key_Down && !isReadOnly() && m_offers->rowCount() > 0) {
        if (const QString whole = completion(); !whole.isEmpty())
            take(whole);
        else
            openList();
        return;
    }
    const QString before = text();
    QLineEdit::keyPressEvent(event);
    // What was marked before is not what Enter is to take now.
    if (text() != before)
        list->hide();
}

void OfferField::paintEvent(QPaintEvent *event)
{
    QLineEdit::paintEvent(event);
    const QString whole = hasFocus() ? completion() : QString();
    if (whole.isEmpty())
        return;
    constexpr int behindCursor = 2;
    QRect room = rect().adjusted(0, 0, -behindCursor, 0);
    room.setLeft(cursorRect().center().x() + behindCursor);
    if (room.width() <= 0)
        return; // what was typed fills the field
    const QString rest = whole.mid(text().size()) + u"  ↓"_s;
    QPainter painter(this);
    painter.setPen(palette().color(QPalette::PlaceholderText));
    painter.drawText(room, Qt::AlignLeft | Qt::AlignVCenter, fontMetrics().elidedText(rest, Qt::ElideRight, room.width()));
}

void OfferField::focusInEvent(QFocusEvent *event)
{
    QLineEdit::focusInEvent(event);
    describe();
}

void OfferField::focusOutEvent(QFocusEvent *event)
{
    // Not for another window, a menu or its own list: whoever comes back from there goes on typing.
    switch (event->reason()) {
    case Qt::TabFocusReason:
    case Qt::BacktabFocusReason:
    case Qt::MouseFocusReason:
    case Qt::ShortcutFocusReason:
        takeOnlyOne();
        break;
    default:
        break;
    }
    QLineEdit::focusOutEvent(event);
    describe();
}

void OfferField::describe()
{
    if (!m_completes)
        return;
    update(); // the grey lies outside of what a line edit paints anew by itself
    const QString whole = hasFocus() ? completion() : QString();
    const QString now = whole.isEmpty() ? QString() : tr("↓ takes %1").arg(whole);
    if (now == m_said)
        return;
    // A note beside the field may have said something else there since, which stays.
    const bool isOwn = !m_said.isEmpty() && accessibleDescription() == m_said;
    if (!now.isEmpty() && !isOwn)
        m_saidBefore = accessibleDescription();
    if (!now.isEmpty() || isOwn)
        setAccessibleDescription(now.isEmpty() ? m_saidBefore : now);
    m_said = now;
}

} // namespace plateau::ui
