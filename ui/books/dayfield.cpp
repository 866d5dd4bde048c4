// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/dayfield.h"

#include "core/assay/localday.h"
#include "ui/shared/dayexample.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>

using namespace Qt::StringLiterals;

namespace plateau::ui {

DayField::DayField(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_entry(new QLineEdit(this))
    , m_reply(plainLabel({}, this))
{
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(theme.gap());
    layout->addWidget(m_entry, 1);
    layout->addWidget(m_reply);
    m_reply->setObjectName(u"reply"_s);
    m_reply->hide();
    m_entry->setMinimumHeight(theme.target());
    showDayExample(*m_entry);
    setFocusProxy(m_entry);
    connect(m_entry, &QLineEdit::textChanged, this, &DayField::answer);
}

void DayField::answer()
{
    const auto day = assay::readDay(m_entry->text());
    const QString understood = day ? assay::shownDay(*day) : QString();
    m_reply->setText(u"= %1"_s.arg(understood));
    m_reply->setVisible(day && understood != m_entry->text().trimmed());
    // Heard with the field.
    m_entry->setAccessibleDescription(m_reply->isHidden() ? QString() : m_reply->text());
}

} // namespace plateau::ui
