// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/substanceform.h"

#include "core/assay/localday.h"
#include "ui/books/lotwords.h"
#include "ui/books/standardwords.h"
#include "ui/shared/dayexample.h"
#include "ui/shared/notice.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/numberreader.h"
#include "ui/shared/widgets.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

using namespace Qt::StringLiterals;

namespace plateau::ui {

SubstanceForm::SubstanceForm(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_heading(plainLabel({}, this))
    , m_notice(new Notice(theme, this))
{
    m_heading->setFont(theme.large());
    auto *back = button(theme, tr("Back  Esc"), u"backFromSubstance"_s, this);
    auto *head = new QHBoxLayout;
    head->addWidget(m_heading, 1);
    head->addWidget(back);
    auto *host = new QWidget(this);
    m_form = new QFormLayout(host);
    m_form->setContentsMargins({});
    m_name = addLine(tr("N&ame"), u"substanceName"_s);
    m_supplier = addLine(tr("S&upplier"), u"substanceSupplier"_s);
    m_lot = addLine(tr("&Lot"), u"substanceLot"_s);
    m_certificate = addLine(tr("&Certificate"), u"substanceCertificate"_s);
    m_purity = addNumber(tr("Pur&ity (%)"), u"%"_s, u"substancePurity"_s);
    m_purityWidth = addNumber(tr("Purity, half-width ± (%)"), u"%"_s, u"substancePurityWidth"_s);
    m_water = addNumber(tr("Mois&ture, not in the formula (%)"), u"%"_s, u"substanceWater"_s);
    m_waterWidth = addNumber(tr("Moisture, half-width ± (%)"), u"%"_s, u"substanceWaterWidth"_s);
    m_molarMass =
        addNumber(tr("&Molar mass, incl. water of crystallisation (g/mol)"), u"g/mol"_s, u"substanceMolarMass"_s);
    m_density = addNumber(tr("Densit&y of a liquid (g/mL)"), u"g/mL"_s, u"substanceDensity"_s);
    m_expires = addLine(tr("Use-by &date"), u"substanceExpires"_s);
    showDayExample(*m_expires);
    m_reason = addLine(tr("&Reason for the change"), u"substanceReason"_s);
    m_purity->entry()->setToolTip(tr("Of the substance without the moisture below."));
    for (NumberField *width : {m_purityWidth, m_waterWidth})
        width->entry()->setToolTip(tr("Half of the width in which the value lies for certain, as a certificate states it; "
                                      "taken as a rectangular distribution."));
    m_expires->setToolTip(tr("As %1, or a month as %2. Empty where none is stated.")
                              .arg(assay::shownDay({2026, 12, 31}), assay::shownMonth({2026, 12, 31})));
    auto *keep = button(theme, tr("&Store it in the book"), u"storeSubstance"_s, this);
    auto *row = new QHBoxLayout;
    row->addWidget(keep);
    row->addStretch(1);
    host->setMaximumWidth(fontMetrics().averageCharWidth() * 100);
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addLayout(head);
    layout->addWidget(m_notice);
    layout->addWidget(host);
    layout->addLayout(row);
    layout->addStretch(1);
    connect(back, &QPushButton::clicked, this, &SubstanceForm::closed);
    connect(keep, &QPushButton::clicked, this, &SubstanceForm::store);
    startNew();
}

QLineEdit *SubstanceForm::addLine(const QString &caption, const QString &name)
{
    auto *line = new QLineEdit(m_form->parentWidget());
    line->setMinimumHeight(m_theme.target());
    addFormRow(m_form, caption, line, name);
    connect(line, &QLineEdit::returnPressed, this, &SubstanceForm::store);
    return line;
}

NumberField *SubstanceForm::addNumber(const QString &caption, const QString &unit, const QString &name)
{
    auto *field = new NumberField(m_theme, unit, m_form->parentWidget());
    addFormRow(m_form, caption, field, name);
    connect(field->entry(), &QLineEdit::returnPressed, this, &SubstanceForm::store);
    return field;
}

void SubstanceForm::fill(const planning::Substance &substance)
{
    m_name->setText(substance.name);
    m_supplier->setText(substance.supplier);
    m_lot->setText(substance.lot);
    m_certificate->setText(substance.certificate);
    m_purity->entry()->clear();
    m_purityWidth->entry()->clear();
    if (!substance.name.isEmpty()) { // nobody's purity is taken for granted
        m_purity->entry()->setValue(100 * substance.purity);
        m_purityWidth->entry()->setValue(100 * substance.purityHalfWidth);
    }
    m_water->entry()->setValue(100 * substance.water);
    m_waterWidth->entry()->setValue(100 * substance.waterHalfWidth);
    m_molarMass->entry()->clear();
    if (substance.molarMass_g_per_mol > 0)
        m_molarMass->entry()->setValue(substance.molarMass_g_per_mol);
    m_density->entry()->clear();
    if (substance.density_g_per_mL)
        m_density->entry()->setValue(*substance.density_g_per_mL);
    m_expires->setText(dayText(substance.expires));
    m_reason->clear();
    showRow(*m_form, m_reason, m_changed.has_value());
    m_notice->clear();
    assay::Problems problems;
    m_before = keyed(problems);
}

void SubstanceForm::startNew()
{
    m_changed.reset();
    m_heading->setText(tr("Add a substance"));
    fill({});
}

void SubstanceForm::startChange(const planning::HeldSubstance &held)
{
    m_changed = held.id;
    m_heading->setText(tr("Change %1").arg(held.substance.name));
    fill(held.substance);
}

planning::Substance SubstanceForm::keyed(assay::Problems &problems) const
{
    const NumberReader reader(problems);
    const auto percent = [&reader](const NumberField *field, const QString &pointer) {
        return reader.optionalNumber(field->entry()->text(), pointer).value_or(0) / 100;
    };
    planning::Substance substance;
    substance.name = m_name->text().simplified();
    substance.supplier = m_supplier->text().simplified();
    substance.lot = m_lot->text().simplified();
    substance.certificate = m_certificate->text().simplified();
    substance.purity = percent(m_purity, u"/purity"_s);
    substance.purityHalfWidth = percent(m_purityWidth, u"/purityHalfWidth"_s);
    substance.water = percent(m_water, u"/water"_s);
    substance.waterHalfWidth = percent(m_waterWidth, u"/waterHalfWidth"_s);
    substance.molarMass_g_per_mol =
        reader.optionalNumber(m_molarMass->entry()->text(), u"/molarMass_g_per_mol"_s).value_or(0);
    substance.density_g_per_mL = reader.optionalNumber(m_density->entry()->text(), u"/density_g_per_mL"_s);
    if (!m_expires->text().trimmed().isEmpty()) {
        const auto day = parseDay(m_expires->text());
        if (const QDate *read = std::get_if<QDate>(&day))
            substance.expires = *read;
        else
            substance.expires = QDate(); // which is told as no day
    }
    return substance;
}

bool SubstanceForm::hasUnsavedChanges() const
{
    assay::Problems problems;
    return keyed(problems) != m_before || !problems.empty();
}

void SubstanceForm::takeFocus()
{
    m_name->setFocus();
}

void SubstanceForm::store()
{
    assay::Problems problems;
    const planning::Substance substance = keyed(problems);
    const assay::Problems more = planning::problemsOf(substance);
    if (problems.empty())
        problems = more;
    if (!problems.empty()) {
        m_notice->say(State::Attention, standardSentence(problems.front()));
        return;
    }
    if (m_changed && m_reason->text().trimmed().isEmpty()) {
        m_notice->say(State::Attention, tr("Say why it is changed; the book keeps it."));
        m_reason->setFocus();
        return;
    }
    m_notice->clear();
    Q_EMIT wanted(substance, m_reason->text().simplified());
}

void SubstanceForm::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT closed();
    else
        QWidget::keyPressEvent(event);
}

} // namespace plateau::ui
