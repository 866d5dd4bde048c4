// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/instrument/mappingform.h"

#include "ui/instrument/choices.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QSpinBox>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using exchange::ColumnMapping;
using exchange::Delimiter;

MappingForm::MappingForm(const Theme &theme, bool withEncoding, QWidget *parent)
    : QWidget(parent)
    , m_delimiter(new QComboBox(this))
    , m_decimal(decimalChoice(this))
    , m_absorbance(new QSpinBox(this))
    , m_tube(new QSpinBox(this))
    , m_header(new QSpinBox(this))
    , m_order(new QComboBox(this))
    , m_blankLines(new QCheckBox(tr("Leave out empty &lines"), this))
    , m_encoding(encodingChoice(this))
{
    addChoice(m_delimiter, tr("tabs"), Delimiter::Tab);
    addChoice(m_delimiter, tr("semicolons"), Delimiter::Semicolon);
    addChoice(m_delimiter, tr("commas"), Delimiter::Comma);
    addChoice(m_delimiter, tr("blanks"), Delimiter::Blanks);
    m_order->addItem(tr("as it stands"), false);
    m_order->addItem(tr("last line first"), true);
    m_absorbance->setRange(1, exchange::mostColumns);
    m_tube->setRange(0, exchange::mostColumns);
    m_tube->setSpecialValueText(tr("none, the order tells"));
    m_header->setRange(0, exchange::mostHeaderLines);
    m_blankLines->setObjectName(u"mappingBlankLines"_s);
    auto *form = new QFormLayout(this);
    form->setContentsMargins({});
    addFormRow(form, tr("&Columns separated by"), m_delimiter, u"mappingDelimiter"_s);
    addFormRow(form, tr("&Decimal mark"), m_decimal, u"mappingDecimal"_s);
    addFormRow(form, tr("&Absorbance in column"), m_absorbance, u"mappingAbsorbance"_s);
    addFormRow(form, tr("T&ube in column"), m_tube, u"mappingTube"_s);
    addFormRow(form, tr("Lines of &heading"), m_header, u"mappingHeader"_s);
    addFormRow(form, tr("&Order"), m_order, u"mappingOrder"_s);
    form->addRow(m_blankLines);
    addFormRow(form, tr("&Encoding"), m_encoding, u"mappingEncoding"_s);
    showRow(*form, m_encoding, withEncoding);
    for (QWidget *field : std::initializer_list<QWidget *>{m_delimiter, m_decimal, m_absorbance, m_tube,
                                                           m_header, m_order, m_blankLines, m_encoding})
        field->setMinimumHeight(theme.target());
    for (const QComboBox *box : {m_delimiter, m_decimal, m_order, m_encoding})
        connect(box, &QComboBox::currentIndexChanged, this, &MappingForm::changed);
    for (const QSpinBox *box : {m_absorbance, m_tube, m_header})
        connect(box, &QSpinBox::valueChanged, this, &MappingForm::changed);
    connect(m_blankLines, &QCheckBox::toggled, this, &MappingForm::changed);
}

ColumnMapping MappingForm::mapping() const
{
    ColumnMapping mapping;
    mapping.encoding = chosen<exchange::TextEncoding>(m_encoding);
    mapping.delimiter = chosen<Delimiter>(m_delimiter);
    mapping.decimal = chosen<exchange::DecimalSign>(m_decimal);
    mapping.absorbanceColumn = m_absorbance->value();
    mapping.tubeColumn = m_tube->value();
    mapping.headerLines = m_header->value();
    mapping.isReversed = m_order->currentData().toBool();
    mapping.leavesOutBlankLines = m_blankLines->isChecked();
    return mapping;
}

void MappingForm::setMapping(const ColumnMapping &mapping)
{
    {
        const QSignalBlocker once(this);
        choose(m_encoding, mapping.encoding);
        choose(m_delimiter, mapping.delimiter);
        choose(m_decimal, mapping.decimal);
        m_absorbance->setValue(mapping.absorbanceColumn);
        m_tube->setValue(mapping.tubeColumn);
        m_header->setValue(mapping.headerLines);
        m_order->setCurrentIndex(mapping.isReversed ? 1 : 0);
        m_blankLines->setChecked(mapping.leavesOutBlankLines);
    }
    Q_EMIT changed();
}

} // namespace plateau::ui
