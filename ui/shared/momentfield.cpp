// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/momentfield.h"

#include "core/exchange/keyedmoment.h"
#include "ui/shared/clock.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QString agoText(const QDateTime &moment, const QDateTime &now)
{
    const qint64 minutes = moment.secsTo(now) / 60;
    if (minutes < 60)
        return MomentField::tr("%1 min ago").arg(minutes);
    if (minutes < 48 * 60)
        return MomentField::tr("%1 h %2 min ago").arg(minutes / 60).arg(minutes % 60);
    return MomentField::tr("%1 days ago").arg(minutes / (24 * 60));
}

} // namespace

MomentField::MomentField(const Theme &theme, const Clock &clock, QWidget *parent)
    : QWidget(parent)
    , m_clock(clock)
    , m_entry(new QLineEdit(this))
    , m_reply(plainLabel({}, this))
{
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(theme.gap());
    layout->addWidget(m_entry);
    layout->addWidget(m_reply, 1);
    m_reply->setObjectName(u"reply"_s);
    m_reply->setWordWrap(true);
    m_entry->setMinimumHeight(theme.target());
    m_entry->setFixedWidth(m_entry->fontMetrics().averageCharWidth() * 20);
    setFocusProxy(m_entry);
    connect(m_entry, &QLineEdit::textChanged, this, [this] {
        answer();
        Q_EMIT changed();
    });
    answer();
}

QString MomentField::text() const
{
    return m_entry->text();
}

void MomentField::setText(const QString &text)
{
    m_entry->setText(text);
}

void MomentField::clear()
{
    m_entry->clear();
}

void MomentField::answer()
{
    if (m_entry->text().trimmed().isEmpty()) {
        m_reply->setText(tr("e.g. 8:10, or with the date"));
        return;
    }
    const QDateTime now = m_clock.now();
    const auto parsed = exchange::parseKeyedMoment(m_entry->text(), now);
    if (const auto *moment = std::get_if<QDateTime>(&parsed)) {
        // What stands there in full is not said again.
        const QString understood = momentText(*moment);
        const QString ago = agoText(*moment, now);
        m_reply->setText(understood == m_entry->text().trimmed() ? ago : u"= %1, %2"_s.arg(understood, ago));
    } else {
        m_reply->setText(exchange::faultSentence(std::get<exchange::MomentFault>(parsed)));
    }
}

} // namespace plateau::ui
