// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/rackform.h"

#include "ui/books/cellstable.h"
#include "ui/shared/numberentry.h"

#include <QFormLayout>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

using Kind = CellColumn::Kind;

CellsModel *newPipettes(const Theme &theme, QObject *parent)
{
    return new CellsModel(
        theme,
        {{GlassForm::tr("Pipette"), Kind::Text},
         {GlassForm::tr("from mL"), Kind::Number, {}, {}, GlassForm::tr("Smallest volume (mL)")},
         {GlassForm::tr("to mL"), Kind::Number, {}, {}, GlassForm::tr("Largest volume (mL)")},
         {GlassForm::tr("in steps of mL"),
          Kind::Number,
          {},
          {},
          GlassForm::tr("Setting increment (mL); empty for a fixed-volume pipette")},
         {GlassForm::tr("u %"),
          Kind::Number,
          {},
          {},
          GlassForm::tr("Relative standard uncertainty of a volume (k = 1), in %")}},
        true, parent);
}

CellsModel *newFlasks(const Theme &theme, QObject *parent)
{
    return new CellsModel(theme,
                          {{GlassForm::tr("Volumetric flask"), Kind::Text},
                           {GlassForm::tr("mL"), Kind::Number, {}, {}, GlassForm::tr("Volume (mL)")},
                           {GlassForm::tr("u %"),
                            Kind::Number,
                            {},
                            {},
                            GlassForm::tr("Relative standard uncertainty of the volume (k = 1), in %")}},
                          true, parent);
}

} // namespace

RackForm::RackForm(const Theme &theme, QWidget *parent)
    : LaboratorySection(
          theme, tr("Rack and times"),
          tr("Plans go by these: how many tubes a rack holds, how long one person's hands need, and "
             "how much reagent is set out."),
          parent)
{
    QFormLayout *form = addForm();
    m_rackRows = addNumber(form, tr("&Rows of a rack"), {}, u"rackRows"_s);
    m_rackColumns = addNumber(form, tr("&Columns of a rack"), {}, u"rackColumns"_s);
    m_addition_s = addNumber(form, tr("Time for an add&ition, each tube"), u"s"_s, u"additionTime"_s);
    m_mix_s = addNumber(form, tr("Time to &mix, each tube"), u"s"_s, u"mixTime"_s);
    m_reading_s = addNumber(form, tr("Time for a r&eading, each tube"), u"s"_s, u"readingTime"_s);
    m_overage_percent = addNumber(form, tr("Reagent be&yond the need"), u"%"_s, u"overage"_s);
    body()->addStretch(1);
}

void RackForm::load(const LaboratoryDraft &draft)
{
    m_rackRows->setText(draft.rackRows);
    m_rackColumns->setText(draft.rackColumns);
    m_addition_s->setText(draft.addition_s);
    m_mix_s->setText(draft.mix_s);
    m_reading_s->setText(draft.reading_s);
    m_overage_percent->setText(draft.overage_percent);
}

void RackForm::store(LaboratoryDraft &draft) const
{
    draft.rackRows = m_rackRows->text();
    draft.rackColumns = m_rackColumns->text();
    draft.addition_s = m_addition_s->text();
    draft.mix_s = m_mix_s->text();
    draft.reading_s = m_reading_s->text();
    draft.overage_percent = m_overage_percent->text();
}

GlassForm::GlassForm(const Theme &theme, QWidget *parent)
    : LaboratorySection(
          theme, tr("Pipettes and flasks"),
          tr("Dilutions are planned with these, and their uncertainties go into the budgets. u: "
             "relative standard uncertainty (k = 1) of a volume. %1")
              .arg(CellsTable::keysHint()),
          parent)
    , m_pipettes(newPipettes(theme, this))
    , m_flasks(newFlasks(theme, this))
{
    addTable(m_pipettes, tr("Pipettes"), u"pipettes"_s, 5);
    addTable(m_flasks, tr("Volumetric flasks"), u"flasks"_s, 4);
}

void GlassForm::load(const LaboratoryDraft &draft)
{
    m_pipettes->setRows(draft.pipettes);
    m_flasks->setRows(draft.flasks);
}

void GlassForm::store(LaboratoryDraft &draft) const
{
    draft.pipettes = m_pipettes->rows();
    draft.flasks = m_flasks->rows();
}

} // namespace plateau::ui
