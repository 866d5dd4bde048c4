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

namespace {

/// True where the text says so itself; "1,380" says 1,38. A text with the sign of another language ("1.380" where numbers
/// have a comma) may have been meant otherwise, unless it has the same digits.
bool saysItself(const QString &typed, double value)
{
    QString text = typed.trimmed();
    const QChar sign = keyedText(u"."_s).front();
    const QString understood = keyedText(value);
    if (keyedText(text) == understood)
        return true;
    if (!text.contains(sign))
        return false;
    while (text.endsWith(u'0'))
        text.chop(1);
    if (text.endsWith(sign))
        text.chop(1);
    return text == understood;
}

} // namespace

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
    else if (const auto value = m_entry->value(); value && !saysItself(m_entry->text(), *value))
        m_reply->setText(u"= %1 %2"_s.arg(keyedText(*value), m_unit).trimmed());
    else
        m_reply->setText(m_unit);
    m_reply->setToolTip(m_reply->wordWrap() ? QString() : tipText(m_reply->text()));
}

} // namespace plateau::ui
