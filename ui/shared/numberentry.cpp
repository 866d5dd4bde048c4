// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/numberentry.h"

#include "core/exchange/decimal.h"
#include "ui/shared/keyednumber.h"
#include "ui/shared/theme.h"

#include <QAction>

#include <algorithm>

namespace plateau::ui {

namespace {

/// With a sign before them, if need be.
bool isDigitsAlone(const QString &text)
{
    return std::ranges::none_of(text, [](QChar sign) { return sign == u'.' || sign == u','; });
}

} // namespace

NumberEntry::NumberEntry(const Theme &theme, QWidget *parent)
    : QLineEdit(parent)
    , m_theme(theme)
    , m_mark(addAction(theme.icon(State::Bad), TrailingPosition))
{
    m_mark->setVisible(false);
    m_mark->setText(tr("Not a number"));
    setInputMethodHints(Qt::ImhFormattedNumbersOnly);
    // textChanged, not textEdited: a screen reader's input comes without the latter.
    connect(this, &QLineEdit::textChanged, this, &NumberEntry::judge);
    connect(&theme, &Theme::changed, this, &NumberEntry::mark);
}

void NumberEntry::setValue(double value)
{
    setText(keyedText(value));
}

void NumberEntry::setThousandths(bool thousandths)
{
    if (thousandths == m_thousandths)
        return;
    m_thousandths = thousandths;
    judge();
}

bool NumberEntry::isBlank() const
{
    return text().trimmed().isEmpty();
}

void NumberEntry::judge()
{
    m_value.reset();
    m_fault.clear();
    if (!isBlank()) {
        const auto parsed = exchange::parseDecimal(text());
        if (const double *number = std::get_if<double>(&parsed))
            m_value = m_thousandths && isDigitsAlone(text()) ? *number / 1000 : *number;
        else
            m_fault = exchange::faultSentence(std::get<exchange::DecimalFault>(parsed));
    }
    mark();
    Q_EMIT judged();
}

void NumberEntry::mark()
{
    const bool faulty = !m_fault.isEmpty();
    m_mark->setIcon(m_theme.icon(State::Bad));
    m_mark->setVisible(faulty);
    setAccessibleDescription(m_fault);
    QPalette own;
    if (faulty) {
        own.setColor(QPalette::Base, m_theme.tint(State::Bad));
        own.setColor(QPalette::Text, m_theme.text());
    }
    setPalette(own);
}

} // namespace plateau::ui
