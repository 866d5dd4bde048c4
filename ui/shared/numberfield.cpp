// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/numberfield.h"

#include "core/evaluation/format.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QBoxLayout>
#include <QLabel>

using namespace Qt::StringLiterals;

namespace plateau::ui {

NumberField::NumberField(const Theme &theme, Reply reply, const QString &unit, QWidget *parent)
    : QWidget(parent)
    , m_entry(new NumberEntry(theme, this))
    , m_reply(plainLabel({}, this))
    , m_unit(unit)
{
    const bool below = reply == Reply::Below;
    auto *layout = new QBoxLayout(below ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight, this);
    layout->setContentsMargins({});
    layout->setSpacing(theme.gap());
    layout->addWidget(m_entry);
    layout->addWidget(m_reply, below ? 0 : 1);
    m_entry->setMinimumHeight(theme.target());
    m_reply->setObjectName(u"reply"_s);
    m_reply->setWordWrap(true);
    if (!below)
        m_entry->setMaximumWidth(m_entry->fontMetrics().averageCharWidth() * 14);
    setFocusProxy(m_entry);
    connect(m_entry, &NumberEntry::judged, this, &NumberField::answer);
    answer();
}

void NumberField::answer()
{
    if (!m_entry->fault().isEmpty())
        m_reply->setText(m_entry->fault());
    else if (const auto value = m_entry->value())
        m_reply->setText(u"= %1 %2"_s.arg(evaluation::plainText(*value), m_unit).trimmed());
    else
        m_reply->setText(m_unit);
}

} // namespace plateau::ui
