// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/standardform.h"

#include "core/evaluation/format.h"
#include "ui/shared/momentfield.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>

using namespace Qt::StringLiterals;

namespace plateau::ui {

StandardForm::StandardForm(const Theme &theme, const Clock &clock, QWidget *parent)
    : QGroupBox(tr("Run a stan&dard"), parent)
    , m_id(new QLineEdit(this))
    , m_concentration(new NumberField(theme, tr("g/L"), this))
    , m_loss(new NumberField(theme, tr("% per hour"), this))
    , m_preparedAt(new MomentField(theme, clock, this))
    , m_usedWhenRead(new QCheckBox(tr("when its first tube is read"), this))
    , m_usedAt(new MomentField(theme, clock, this))
    , m_tubes(new QSpinBox(this))
{
    setObjectName(u"standard"_s);
    setCheckable(true);
    m_id->setMinimumHeight(theme.target());
    m_tubes->setMinimumHeight(theme.target());
    m_tubes->setRange(1, 12);
    m_usedWhenRead->setMinimumHeight(theme.target());
    auto *form = new QFormLayout(this);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    addFormRow(form, tr("Name of the standard"), m_id, u"standardId"_s);
    addFormRow(form, tr("Concentration when made"), m_concentration, u"standardConcentration"_s);
    addFormRow(form, tr("Loss of strength"), m_loss, u"standardLoss"_s);
    addFormRow(form, tr("Prepared at"), m_preparedAt, u"standardPreparedAt"_s);
    addFormRow(form, tr("Used"), m_usedWhenRead, u"standardUsedWhenRead"_s);
    m_usedWhenRead->setAccessibleName(tr("Used when its first tube is read"));
    addFormRow(form, tr("Used at"), m_usedAt, u"standardUsedAt"_s);
    m_usedAtCaption = qobject_cast<QLabel *>(form->labelForField(m_usedAt));
    addFormRow(form, tr("Tubes with the standard"), m_tubes, u"standardTubes"_s);

    connect(this, &QGroupBox::toggled, this, &StandardForm::changed);
    connect(m_id, &QLineEdit::textChanged, this, &StandardForm::changed);
    for (NumberField *field : {m_concentration, m_loss})
        connect(field->entry(), &NumberEntry::judged, this, &StandardForm::changed);
    for (MomentField *field : {m_preparedAt, m_usedAt})
        connect(field, &MomentField::changed, this, &StandardForm::changed);
    connect(m_usedWhenRead, &QCheckBox::toggled, this, &StandardForm::onUsedLater);
    connect(m_tubes, &QSpinBox::valueChanged, this, &StandardForm::changed);
}

void StandardForm::startAnew()
{
    setChecked(false);
    m_id->setText(u"STD"_s);
    for (NumberField *field : {m_concentration, m_loss})
        field->entry()->clear();
    m_presetConcentration.clear();
    m_presetLoss.clear();
    m_preparedAt->clear();
    m_usedAt->clear();
    m_usedWhenRead->setChecked(true);
    m_tubes->setValue(2);
    onUsedLater();
}

void StandardForm::showMethod(const assay::Method &method)
{
    const assay::UsualStandard usual = method.standard.value_or(assay::UsualStandard{});
    const auto loss_percent =
        usual.lossPerHour ? std::optional(*usual.lossPerHour * 100) : std::optional<double>();
    preset(m_concentration, m_presetConcentration, usual.concentration_g_per_L);
    preset(m_loss, m_presetLoss, loss_percent);
}

void StandardForm::preset(NumberField *field, QString &before, const std::optional<double> &usual)
{
    if (field->entry()->text() != before)
        return;
    before = usual ? evaluation::plainText(*usual) : QString();
    field->entry()->setText(before);
}

void StandardForm::onUsedLater()
{
    m_usedAt->setVisible(!m_usedWhenRead->isChecked());
    m_usedAtCaption->setVisible(!m_usedWhenRead->isChecked());
    Q_EMIT changed();
}

std::optional<StandardDraft> StandardForm::draft() const
{
    if (!isChecked())
        return std::nullopt;
    return StandardDraft{m_id->text(),         m_concentration->entry()->text(), m_loss->entry()->text(),
                         m_preparedAt->text(), m_usedWhenRead->isChecked(),      m_usedAt->text(),
                         m_tubes->value()};
}

} // namespace plateau::ui
