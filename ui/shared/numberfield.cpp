// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/numberfield.h"

#include "ui/shared/keyednumber.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QLabel>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

NumberField::NumberField(const Theme &theme, const QString &unit, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_entry(new NumberEntry(theme, this))
    , m_reply(plainLabel({}, this))
    , m_unit(unit)
{
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(theme.gap());
    layout->addWidget(m_entry);
    layout->addWidget(m_reply, 1);
    m_reply->setObjectName(u"reply"_s);
    m_reply->setWordWrap(true);
    m_reply->setMinimumWidth(m_reply->fontMetrics().averageCharWidth() * 9); // a number stays on its line
    setFocusProxy(m_entry);
    connect(m_entry, &NumberEntry::judged, this, &NumberField::answer);
    setEntrySize();
    answer();
}

void NumberField::setOneLine()
{
    m_reply->setWordWrap(false);
    m_reply->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    m_reply->setMinimumWidth(m_reply->fontMetrics().averageCharWidth() * 4); // the unit at least
}

void NumberField::setFonts(const QFont &entry, const QFont &reply)
{
    m_entry->setFont(entry);
    m_reply->setFont(reply);
    setEntrySize();
}

void NumberField::setEntrySize()
{
    m_entry->setMinimumHeight(std::max(m_theme.target(), m_entry->sizeHint().height()));
    m_entry->setFixedWidth(m_entry->fontMetrics().averageCharWidth() * 12);
}

void NumberField::answer()
{
    if (!m_entry->fault().isEmpty())
        m_reply->setText(m_entry->fault());
    else if (const auto value = m_entry->value(); value && keyedText(*value) != keyedText(m_entry->text().trimmed()))
        m_reply->setText(u"= %1 %2"_s.arg(keyedText(*value), m_unit).trimmed());
    else
        m_reply->setText(m_unit);
    m_reply->setToolTip(m_reply->wordWrap() ? QString() : tipText(m_reply->text()));
}

} // namespace plateau::ui
