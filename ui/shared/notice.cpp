// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/notice.h"

#include "ui/shared/shownnumbers.h"
#include "ui/shared/widgets.h"

#include <QAccessible>
#include <QApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// A key that does something here, or a click. Alt alone may lead to another window, to look at what was written.
bool isActHere(const QEvent &event)
{
    if (event.type() != QEvent::KeyPress)
        return event.type() == QEvent::MouseButtonRelease;
    switch (static_cast<const QKeyEvent &>(event).key()) {
    case Qt::Key_Alt:
    case Qt::Key_AltGr:
    case Qt::Key_Control:
    case Qt::Key_Meta:
    case Qt::Key_Shift:
        return false;
    default:
        return true;
    }
}

} // namespace

Notice::Notice(const Theme &theme, QWidget *parent)
    : QFrame(parent)
    , m_theme(theme)
    , m_shape(new QLabel(this))
    , m_text(plainLabel({}, this))
{
    setObjectName(u"notice"_s);
    setAutoFillBackground(true);
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins(theme.gap(), theme.gap(), theme.gap(), theme.gap());
    layout->setSpacing(theme.gap());
    layout->addWidget(m_shape, 0, Qt::AlignTop);
    layout->addWidget(m_text, 1);
    m_text->setObjectName(u"noticeText"_s);
    m_text->setWordWrap(true);
    m_text->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_text->setFocusPolicy(Qt::NoFocus);
    connect(&theme, &Theme::changed, this, &Notice::dress);
    hide();
}

void Notice::say(State state, const QString &sentence)
{
    stay();
    giveSpaceBack();
    m_state = state;
    m_text->setText(shownNumbers(sentence));
    dress();
    show();
    QAccessibleEvent event(m_text, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
}

void Notice::sayDone(const QString &sentence, int least_ms)
{
    say(State::Good, sentence);
    m_isLeaving = true;
    m_readBy.setRemainingTime(least_ms);
    qApp->installEventFilter(this);
}

void Notice::stay()
{
    if (m_isLeaving)
        qApp->removeEventFilter(this);
    m_isLeaving = false;
}

/// What is below would move under a hand that is about to click it: the space is kept until the page is left or there is
/// something else to say.
void Notice::leave()
{
    const int kept = height();
    clear();
    keepSpace(kept);
    parentWidget()->installEventFilter(this);
}

void Notice::keepSpace(int height)
{
    QSizePolicy policy = sizePolicy();
    policy.setRetainSizeWhenHidden(height > 0);
    setSizePolicy(policy);
    setMinimumHeight(height);
}

void Notice::giveSpaceBack()
{
    if (!sizePolicy().retainSizeWhenHidden())
        return;
    parentWidget()->removeEventFilter(this);
    keepSpace(0);
}

bool Notice::eventFilter(QObject *watched, QEvent *event)
{
    if (watched == parentWidget() && event->type() == QEvent::Hide) {
        giveSpaceBack();
        return false;
    }
    if (!m_isLeaving || !isActHere(*event) || !watched->isWidgetType() || !m_readBy.hasExpired())
        return false;
    if (const auto *widget = static_cast<const QWidget *>(watched); widget == this || isAncestorOf(widget))
        return false; // its words are being copied
    // After what the act itself does: what is clicked on must not move away, and what it says stays.
    QMetaObject::invokeMethod(
        this,
        [this] {
            if (m_isLeaving && m_readBy.hasExpired())
                leave();
        },
        Qt::QueuedConnection);
    return false;
}

void Notice::moveOn()
{
    if (!m_isLeaving)
        clear();
    else if (m_readBy.hasExpired())
        leave();
}

void Notice::clear()
{
    stay();
    giveSpaceBack();
    m_text->clear();
    hide();
}

QString Notice::sentence() const
{
    return m_text->text();
}

void Notice::dress()
{
    const int side = fontMetrics().height() * 5 / 4;
    m_shape->setPixmap(m_theme.icon(m_state).pixmap(side, side));
    m_shape->setAccessibleName(m_text->text());
    QPalette own;
    own.setColor(QPalette::Window, m_theme.tint(m_state));
    setPalette(own);
}

} // namespace plateau::ui
