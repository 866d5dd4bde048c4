// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/uncertaintyform.h"

#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/widgets.h"

#include <QFormLayout>
#include <QLabel>

using namespace Qt::StringLiterals;

namespace plateau::ui {

UncertaintyForm::UncertaintyForm(const Theme &theme, QWidget *parent)
    : QGroupBox(tr("Standard uncertainties (k = 1)"), parent)
{
    setObjectName(u"uncertainty"_s);
    struct Row {
        QString label;
        QString unit;
        QString name;
    };
    const std::array<Row, 7> rows{{{tr("Absorbance, each reading"), {}, u"uncertaintyAbsorbance"_s},
                                   {tr("Absorptivity"), tr("%"), u"uncertaintyAbsorptivity"_s},
                                   {tr("Path length"), tr("%"), u"uncertaintyPathLength"_s},
                                   {tr("Total volume"), tr("%"), u"uncertaintyTotalVolume"_s},
                                   {tr("Sample volume"), tr("%"), u"uncertaintySampleVolume"_s},
                                   {tr("Each dilution step"), tr("%"), u"uncertaintyDilution"_s},
                                   {tr("Extract of a solid"), tr("%"), u"uncertaintyExtract"_s}}};
    auto *form = new QFormLayout(this);
    for (std::size_t index = 0; index < rows.size(); ++index) {
        m_fields[index] = new NumberField(theme, rows[index].unit, this);
        addFormRow(form, rows[index].label, m_fields[index], rows[index].name);
        connect(m_fields[index]->entry(), &NumberEntry::judged, this, &UncertaintyForm::changed);
    }
    auto *origin =
        plainLabel(tr("Filled in with what is common practice (no source); put your laboratory's own in "
                      "their place."),
                   this);
    origin->setWordWrap(true);
    form->addRow(origin);
}

void UncertaintyForm::startAnew()
{
    const run::UncertaintyInputs usual = usualUncertainty();
    const std::array<double, 7> values{usual.absorbance,           usual.absorptivity_percent,
                                       usual.pathLength_percent,   usual.totalVolume_percent,
                                       usual.sampleVolume_percent, usual.dilution_percent,
                                       usual.extract_percent};
    for (std::size_t index = 0; index < values.size(); ++index)
        m_fields[index]->entry()->setValue(values[index]);
}

UncertaintyDraft UncertaintyForm::draft() const
{
    UncertaintyDraft draft;
    for (std::size_t index = 0; index < m_fields.size(); ++index)
        draft.texts[index] = m_fields[index]->entry()->text();
    return draft;
}

} // namespace plateau::ui
