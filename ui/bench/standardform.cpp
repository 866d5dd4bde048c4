// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/standardform.h"

#include "ui/shared/clock.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QDateTimeEdit>
#include <QFormLayout>
#include <QLineEdit>
#include <QSpinBox>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QDateTimeEdit *momentEdit(const Theme &theme, QWidget *parent)
{
    auto *edit = new QDateTimeEdit(parent);
    edit->setDisplayFormat(u"yyyy-MM-dd HH:mm"_s);
    edit->setMinimumHeight(theme.target());
    return edit;
}

/// What the field shows, with the offset that holds then.
QDateTime momentOf(const QDateTimeEdit *edit)
{
    const QDateTime local = edit->dateTime();
    return local.toOffsetFromUtc(local.offsetFromUtc());
}

} // namespace

StandardForm::StandardForm(const Theme &theme, const Clock &clock, QWidget *parent)
    : QGroupBox(tr("Run a stan&dard"), parent)
    , m_clock(clock)
    , m_id(new QLineEdit(this))
    , m_concentration(new NumberField(theme, tr("g/L"), this))
    , m_preparedAt(momentEdit(theme, this))
    , m_usedAt(momentEdit(theme, this))
    , m_loss(new NumberField(theme, tr("% per hour"), this))
    , m_tubes(new QSpinBox(this))
{
    setObjectName(u"standard"_s);
    setCheckable(true);
    m_id->setMinimumHeight(theme.target());
    m_tubes->setMinimumHeight(theme.target());
    m_tubes->setRange(1, 12);
    auto *form = new QFormLayout(this);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    addFormRow(form, tr("Name of the standard"), m_id, u"standardId"_s);
    addFormRow(form, tr("Concentration"), m_concentration, u"standardConcentration"_s);
    addFormRow(form, tr("Prepared at"), m_preparedAt, u"standardPreparedAt"_s);
    addFormRow(form, tr("Used at"), m_usedAt, u"standardUsedAt"_s);
    addFormRow(form, tr("Loss per hour"), m_loss, u"standardLoss"_s);
    addFormRow(form, tr("Tubes with the standard"), m_tubes, u"standardTubes"_s);

    connect(this, &QGroupBox::toggled, this, &StandardForm::changed);
    connect(m_id, &QLineEdit::textChanged, this, &StandardForm::changed);
    for (NumberField *field : {m_concentration, m_loss})
        connect(field->entry(), &NumberEntry::judged, this, &StandardForm::changed);
    for (QDateTimeEdit *edit : {m_preparedAt, m_usedAt})
        connect(edit, &QDateTimeEdit::dateTimeChanged, this, &StandardForm::changed);
    connect(m_tubes, &QSpinBox::valueChanged, this, &StandardForm::changed);
}

void StandardForm::startAnew()
{
    setChecked(false);
    m_id->setText(u"STD"_s);
    m_concentration->entry()->clear();
    m_loss->entry()->setValue(0);
    const QDateTime now = m_clock.now().toLocalTime();
    m_preparedAt->setDateTime(now);
    m_usedAt->setDateTime(now);
    m_tubes->setValue(1);
}

std::optional<StandardDraft> StandardForm::draft() const
{
    if (!isChecked())
        return std::nullopt;
    return StandardDraft{m_id->text(),
                         m_concentration->entry()->text(),
                         m_loss->entry()->text(),
                         momentOf(m_preparedAt),
                         momentOf(m_usedAt),
                         m_tubes->value()};
}

} // namespace plateau::ui
