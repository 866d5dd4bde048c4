// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/instrument/patternform.h"

#include "ui/instrument/choices.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QFormLayout>
#include <QLineEdit>
#include <QSpinBox>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using exchange::LinePattern;

PatternForm::PatternForm(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_form(new QFormLayout(this))
    , m_which(new QComboBox(this))
    , m_nth(new QSpinBox(this))
    , m_after(new QLineEdit(this))
    , m_decimal(decimalChoice(this))
    , m_mustContain(new QLineEdit(this))
    , m_leaveOut(new QLineEdit(this))
    , m_encoding(encodingChoice(this))
{
    m_form->setContentsMargins({});
    addChoice(m_which, tr("the only number of the line"), LinePattern::Which::Only);
    addChoice(m_which, tr("a number counted from the left"), LinePattern::Which::Nth);
    addChoice(m_which, tr("the number after a text"), LinePattern::Which::After);
    m_nth->setRange(1, exchange::mostNumbers);
    m_after->setPlaceholderText(tr("such as ABS"));
    m_mustContain->setPlaceholderText(tr("every line"));
    m_leaveOut->setPlaceholderText(tr("none"));
    for (QWidget *field : std::initializer_list<QWidget *>{m_which, m_nth, m_after, m_decimal, m_mustContain,
                                                           m_leaveOut, m_encoding})
        field->setMinimumHeight(theme.target());
    addFormRow(m_form, tr("&Absorbance is"), m_which, u"patternWhich"_s);
    addFormRow(m_form, tr("&Number"), m_nth, u"patternNth"_s);
    addFormRow(m_form, tr("Beh&ind"), m_after, u"patternAfter"_s);
    addFormRow(m_form, tr("&Decimal mark"), m_decimal, u"patternDecimal"_s);
    addFormRow(m_form, tr("Only lines &with"), m_mustContain, u"patternMustContain"_s);
    addFormRow(m_form, tr("S&kip lines with"), m_leaveOut, u"patternLeaveOut"_s);
    addFormRow(m_form, tr("&Encoding"), m_encoding, u"patternEncoding"_s);
    for (const QComboBox *box : {m_which, m_decimal, m_encoding})
        connect(box, &QComboBox::currentIndexChanged, this, &PatternForm::changed);
    for (const QLineEdit *edit : {m_after, m_mustContain, m_leaveOut})
        connect(edit, &QLineEdit::textChanged, this, &PatternForm::changed);
    connect(m_nth, &QSpinBox::valueChanged, this, &PatternForm::changed);
    connect(m_which, &QComboBox::currentIndexChanged, this, &PatternForm::showWanted);
    showWanted();
}

void PatternForm::showWanted()
{
    showRow(*m_form, m_nth, chosen<LinePattern::Which>(m_which) == LinePattern::Which::Nth);
    showRow(*m_form, m_after, chosen<LinePattern::Which>(m_which) == LinePattern::Which::After);
}

LinePattern PatternForm::pattern() const
{
    LinePattern pattern;
    pattern.encoding = chosen<exchange::TextEncoding>(m_encoding);
    pattern.decimal = chosen<exchange::DecimalSign>(m_decimal);
    pattern.which = chosen<LinePattern::Which>(m_which);
    pattern.nth = m_nth->value();
    pattern.after = m_after->text().trimmed();
    pattern.mustContain = m_mustContain->text().trimmed();
    pattern.leaveOut = m_leaveOut->text().trimmed();
    return pattern;
}

void PatternForm::setPattern(const LinePattern &pattern)
{
    {
        const QSignalBlocker once(this);
        choose(m_encoding, pattern.encoding);
        choose(m_decimal, pattern.decimal);
        choose(m_which, pattern.which);
        m_nth->setValue(pattern.nth);
        m_after->setText(pattern.after);
        m_mustContain->setText(pattern.mustContain);
        m_leaveOut->setText(pattern.leaveOut);
    }
    Q_EMIT changed();
}

} // namespace plateau::ui
