// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/uncertaintyform.h"

#include "ui/bench/drafteduncertainty.h"
#include "ui/shared/keyednumber.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/widgets.h"

#include <QFormLayout>
#include <QLabel>
#include <QScopedValueRollback>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

UncertaintyForm::UncertaintyForm(const Theme &theme, QWidget *parent)
    : QGroupBox(tr("Standard uncertainties (k = 1)"), parent)
    , m_summary(plainLabel({}, this))
{
    setObjectName(u"uncertainty"_s);
    struct Text {
        QString label;
        QString unit;
        QString name;
    };
    const std::array<Text, 7> texts{{{tr("Absorbance, each reading"), {}, u"uncertaintyAbsorbance"_s},
                                     {tr("Absorptivity"), tr("%"), u"uncertaintyAbsorptivity"_s},
                                     {tr("Path length"), tr("%"), u"uncertaintyPathLength"_s},
                                     {tr("Total volume"), tr("%"), u"uncertaintyTotalVolume"_s},
                                     {tr("Sample volume"), tr("%"), u"uncertaintySampleVolume"_s},
                                     {tr("Each dilution step"), tr("%"), u"uncertaintyDilution"_s},
                                     {tr("Extract of a solid"), tr("%"), u"uncertaintyExtract"_s}}};
    // The words above are no row of the form, which reckons one over both columns too low in large letters.
    auto *column = new QVBoxLayout(this);
    auto *form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    m_summary->setObjectName(u"uncertaintySummary"_s);
    m_summary->setWordWrap(true);
    column->addWidget(m_summary);
    column->addLayout(form);
    for (std::size_t index = 0; index < texts.size(); ++index) {
        Row &row = m_rows[index];
        row.field = new NumberField(theme, texts[index].unit, this);
        addFormRow(form, texts[index].label, row.field, texts[index].name);
        row.owner = plainLabel({}, this);
        row.owner->setObjectName(texts[index].name + u"Owner"_s);
        row.owner->setWordWrap(true);
        row.owner->setAlignment(Qt::AlignTop | Qt::AlignLeft);
        QSizePolicy wide(QSizePolicy::Expanding, QSizePolicy::Minimum);
        wide.setHeightForWidth(true);
        row.owner->setSizePolicy(wide);
        form->addRow(QString(), row.owner);
        connect(row.field->entry(), &NumberEntry::judged, this, &UncertaintyForm::onJudged);
        connect(row.field->entry(), &QLineEdit::editingFinished, this, &UncertaintyForm::onLeft);
    }
}

void UncertaintyForm::startAnew()
{
    const QScopedValueRollback<bool> filling(m_isFilling, true);
    for (Row &row : m_rows) {
        row.own.clear();
        row.field->entry()->clear();
        row.owner->clear();
    }
    m_summary->clear();
}

bool UncertaintyForm::isTyped(const Row &row) const
{
    return !row.field->entry()->isBlank() && row.field->entry()->text() != row.own;
}

void UncertaintyForm::show(const std::vector<planning::OwnedInput> &owned)
{
    const std::size_t known = std::min(owned.size(), m_rows.size());
    std::size_t usual = 0;
    std::size_t typed = 0;
    for (std::size_t index = 0; index < known; ++index) {
        showRow(m_rows[index], owned[index]);
        usual += owned[index].isDefault ? 1 : 0;
        typed += isTyped(m_rows[index]) ? 1 : 0;
    }
    QString summary =
        tr("The source is given below each number. Type over a number to change it for this run only; clear "
           "it to restore it.");
    if (usual > 0)
        summary +=
            u' ' + tr("Still common practice: %1 of %2; set your own under Books, Laboratory.")
                       .arg(usual)
                       .arg(known);
    if (typed > 0)
        summary += u' ' + tr("Typed for this run: %1.").arg(typed);
    m_summary->setText(summary);
}

void UncertaintyForm::showRow(Row &row, const planning::OwnedInput &owned)
{
    NumberEntry *entry = row.field->entry();
    const bool typed = isTyped(row);
    planning::OwnedInput shown = owned;
    shown.source = withDaysShown(owned.source);
    const QString owner = withDecimalSigns(ownerText(shown));
    row.owner->setText(owner);
    entry->setAccessibleDescription(owner);
    if (typed)
        return;
    row.own = keyedText(uncertaintyText(owned.value.value_or(0)));
    entry->setPlaceholderText(row.own);
    // Somebody who empties it is about to type.
    if (entry->text() == row.own || (entry->isBlank() && entry->hasFocus()))
        return;
    const QScopedValueRollback<bool> filling(m_isFilling, true);
    entry->setText(row.own);
}

void UncertaintyForm::onJudged()
{
    if (!m_isFilling)
        Q_EMIT changed();
}

void UncertaintyForm::onLeft()
{
    const QScopedValueRollback<bool> filling(m_isFilling, true);
    for (Row &row : m_rows) {
        if (row.field->entry()->isBlank())
            row.field->entry()->setText(row.own);
    }
}

UncertaintyDraft UncertaintyForm::draft() const
{
    UncertaintyDraft draft;
    for (std::size_t index = 0; index < m_rows.size(); ++index) {
        if (isTyped(m_rows[index]))
            draft.texts[index] = m_rows[index].field->entry()->text();
    }
    return draft;
}

} // namespace plateau::ui
