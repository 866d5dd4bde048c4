// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/standardform.h"

#include "core/evaluation/format.h"
#include "ui/shared/keyednumber.h"
#include "ui/shared/momentfield.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/numberreader.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>

using namespace Qt::StringLiterals;

namespace plateau::ui {

StandardForm::StandardForm(const Theme &theme, const Clock &clock, const Kind &kind, QWidget *parent)
    : QGroupBox(kind.title, parent)
    , m_kind(kind)
    , m_id(new QLineEdit(this))
    , m_concentration(new NumberField(theme, tr("g/L"), this))
    , m_uncertainty(kind.isControl ? nullptr : new NumberField(theme, tr("%"), this))
    , m_loss(new NumberField(theme, tr("% per hour"), this))
    , m_preparedAt(new MomentField(theme, clock, this))
    , m_usedWhenRead(new QCheckBox(tr("when it goes into its first tube"), this))
    , m_usedAt(new MomentField(theme, clock, this))
    , m_tubes(new QSpinBox(this))
    , m_volumes(new QLineEdit(this))
    , m_worth(plainLabel({}, this))
    , m_onlyOne(plainLabel(tr("Taken from the book, where it is the only one in date; choose or key another if this is not it."),
                           this))
{
    setObjectName(kind.prefix);
    setCheckable(true);
    m_id->setMinimumHeight(theme.target());
    m_tubes->setMinimumHeight(theme.target());
    m_tubes->setRange(1, 12);
    m_usedWhenRead->setMinimumHeight(theme.target());
    QFormLayout *form = foldingForm(this);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    m_form = form;
    m_book = new QComboBox(this);
    m_book->setMinimumHeight(theme.target());
    m_book->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_book->setMinimumContentsLength(12);
    m_book->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    addFormRow(form, tr("From the book"), m_book, kind.prefix + u"Book"_s);
    m_onlyOne->setObjectName(kind.prefix + u"OnlyOne"_s);
    m_onlyOne->setWordWrap(true);
    form->addRow(m_onlyOne);
    m_onlyOne->hide();
    setBook({});
    setTabOrder(this, m_book);
    connect(m_book, &QComboBox::activated, this, &StandardForm::takeFromBook);
    connect(this, &QGroupBox::clicked, this, [this](bool on) {
        if (on)
            takeOnlyOne();
    });
    addFormRow(form, tr("Name"), m_id, kind.prefix + u"Id"_s);
    addFormRow(form, kind.isControl ? tr("Known value") : tr("Concentration when made"), m_concentration, kind.prefix + u"Concentration"_s);
    if (m_uncertainty) {
        addFormRow(form, tr("u of the strength"), m_uncertainty, kind.prefix + u"Uncertainty"_s);
        m_uncertainty->entry()->setPlaceholderText(tr("not known"));
        m_uncertainty->setToolTip(
            tipText(tr("Relative standard uncertainty (k = 1), from its recipe or its certificate. "
                       "It counts where the run is calibrated by its standard.")));
        connect(m_uncertainty->entry(), &NumberEntry::judged, this, &StandardForm::changed);
    }
    addFormRow(form, tr("Loss of strength"), m_loss, kind.prefix + u"Loss"_s);
    addFormRow(form, tr("Prepared at"), m_preparedAt, kind.prefix + u"PreparedAt"_s);
    addFormRow(form, tr("Used"), m_usedWhenRead, kind.prefix + u"UsedWhenRead"_s);
    m_usedWhenRead->setAccessibleName(tr("Used when it goes into its first tube"));
    addFormRow(form, tr("Used at"), m_usedAt, kind.prefix + u"UsedAt"_s);
    addFormRow(form, tr("Tubes with it"), m_tubes, kind.prefix + u"Tubes"_s);
    m_volumes->setMinimumHeight(theme.target());
    m_volumes->setPlaceholderText(tr("the method's; several make a line: 0.05; 0.1; 0.2"));
    addFormRow(form, tr("Volumes in the tube (mL)"), m_volumes, kind.prefix + u"Volumes"_s);
    m_worth->setObjectName(kind.prefix + u"Worth"_s);
    m_worth->setWordWrap(true);
    form->addRow(m_worth);
    m_worth->hide();

    connect(this, &QGroupBox::toggled, this, &StandardForm::changed);
    for (QLineEdit *edit : {m_id, m_volumes})
        connect(edit, &QLineEdit::textChanged, this, &StandardForm::changed);
    for (NumberField *field : {m_concentration, m_loss})
        connect(field->entry(), &NumberEntry::judged, this, &StandardForm::changed);
    for (MomentField *field : {m_preparedAt, m_usedAt})
        connect(field, &MomentField::changed, this, &StandardForm::changed);
    connect(m_usedWhenRead, &QCheckBox::toggled, this, &StandardForm::showRows);
    connect(m_loss->entry(), &NumberEntry::judged, this, &StandardForm::showRows);
    connect(m_tubes, &QSpinBox::valueChanged, this, &StandardForm::changed);
}

void StandardForm::startAnew()
{
    setChecked(false);
    m_book->setCurrentIndex(0);
    m_onlyOne->hide();
    m_id->setText(m_kind.usualName);
    m_volumes->clear();
    for (NumberField *field : {m_concentration, m_loss})
        field->entry()->clear();
    m_presetConcentration.clear();
    m_presetLoss.clear();
    m_presetPreparedAt.clear();
    if (m_uncertainty)
        m_uncertainty->entry()->clear();
    m_takenSource.clear();
    m_preparedAt->clear();
    m_usedAt->clear();
    m_usedWhenRead->setChecked(true);
    m_tubes->setValue(m_kind.usualTubes);
    if (m_kind.isControl)
        m_loss->entry()->setText(u"0"_s);
    showRows();
}

void StandardForm::showMethod(const assay::Method &method)
{
    if (m_kind.isControl)
        return;
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
    before = usual ? keyedText(*usual) : QString();
    field->entry()->setText(before);
}

void StandardForm::setWorth(const QString &sentence)
{
    m_worth->setText(withDecimalSigns(sentence));
    m_worth->setVisible(!sentence.isEmpty());
}

void StandardForm::take(const MadeStandard &made)
{
    setChecked(true);
    m_onlyOne->hide();
    if (const int index = m_book->currentIndex(); index > 0) {
        // It is another one than that of the book.
        if (m_id->text() == m_alive[static_cast<std::size_t>(index - 1)].id)
            m_id->setText(m_kind.usualName);
        m_book->setCurrentIndex(0);
    }
    m_concentration->entry()->setText(keyedText(evaluation::roundedText(made.concentration_g_per_L, 6)));
    // A time that somebody typed is when it was made; now is only when its mass was keyed.
    if (m_preparedAt->text() == m_presetPreparedAt)
        presetPreparedAt(made.madeAt);
    takeUncertainty(made.uncertainty_percent, made.source);
}

void StandardForm::presetPreparedAt(const QString &moment)
{
    m_presetPreparedAt = moment;
    m_preparedAt->setText(moment);
}

void StandardForm::takeUncertainty(const std::optional<double> &percent, const QString &source)
{
    if (!m_uncertainty)
        return;
    m_uncertainty->entry()->setText(percent ? keyedText(threeFigures(*percent)) : QString());
    m_takenConcentration = m_concentration->entry()->text();
    m_takenUncertainty = m_uncertainty->entry()->text();
    m_takenSource = percent ? source : QString();
}

QString StandardForm::uncertaintySource() const
{
    const bool isAsTaken = m_uncertainty && m_concentration->entry()->text() == m_takenConcentration &&
                           m_uncertainty->entry()->text() == m_takenUncertainty;
    return isAsTaken ? m_takenSource : QString();
}

void StandardForm::setBook(std::vector<run::Standard> alive)
{
    showRow(*m_form, m_book, !alive.empty());
    if (alive == m_alive && m_book->count() > 0)
        return;
    m_alive = std::move(alive);
    m_onlyOne->hide();
    m_book->clear();
    m_book->addItem(tr("another one, keyed below"));
    for (const run::Standard &standard : m_alive)
        m_book->addItem(
            tr("%1, %2, made %3")
                .arg(standard.id,
                     shownNumber(evaluation::withUnit(
                         evaluation::significantText(standard.concentration_g_per_L, 4), u"g/L"_s)),
                     momentText(standard.preparedAt.value_or(QDateTime()))));
}

/// Nothing was keyed yet, and there is no choice. Which control a run is held against is a choice all the same.
void StandardForm::takeOnlyOne()
{
    const bool isKeyed = m_book->currentIndex() > 0 || m_id->text() != m_kind.usualName || !m_preparedAt->text().isEmpty() ||
                         m_concentration->entry()->text() != m_presetConcentration ||
                         m_loss->entry()->text() != m_presetLoss;
    if (m_kind.isControl || m_alive.size() != 1 || isKeyed)
        return;
    m_book->setCurrentIndex(1);
    takeFromBook(1);
    m_onlyOne->show();
}

void StandardForm::takeFromBook(int index)
{
    m_onlyOne->hide();
    if (index < 1)
        return;
    const run::Standard &standard = m_alive[static_cast<std::size_t>(index - 1)];
    setChecked(true);
    m_id->setText(standard.id);
    m_concentration->entry()->setText(keyedText(evaluation::roundedText(standard.concentration_g_per_L, 6)));
    m_loss->entry()->setValue(100 * standard.lossPerHour);
    takeUncertainty(
        standard.uncertainty_percent,
        tr("the book of standards, made %1").arg(keptMomentText(standard.preparedAt.value_or(QDateTime()))));
    presetPreparedAt(momentText(standard.preparedAt.value_or(QDateTime())));
    Q_EMIT taken();
}

void StandardForm::setUsualTubes(int tubes)
{
    if (m_tubes->value() == m_kind.usualTubes)
        m_tubes->setValue(tubes);
    m_kind.usualTubes = tubes;
}

void StandardForm::showRows()
{
    // When a control was made matters only where it loses strength.
    const bool ages = !m_kind.isControl || m_loss->entry()->value() != 0.0;
    showRow(*m_form, m_preparedAt, ages);
    showRow(*m_form, m_usedWhenRead, ages);
    showRow(*m_form, m_usedAt, ages && !m_usedWhenRead->isChecked());
    Q_EMIT changed();
}

std::optional<StandardDraft> StandardForm::draft() const
{
    if (!isChecked())
        return std::nullopt;
    return StandardDraft{m_id->text(),
                         m_concentration->entry()->text(),
                         m_loss->entry()->text(),
                         m_preparedAt->text(),
                         m_usedWhenRead->isChecked(),
                         m_usedAt->text(),
                         m_tubes->value(),
                         m_volumes->text(),
                         m_uncertainty ? m_uncertainty->entry()->text() : QString(),
                         uncertaintySource()};
}

} // namespace plateau::ui
