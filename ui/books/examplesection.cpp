// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/examplesection.h"

#include "ui/bench/workingtext.h"
#include "ui/books/cellstable.h"
#include "ui/books/draftfields.h"
#include "ui/books/methodsections.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QGroupBox>
#include <QTextBrowser>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace plateau::ui {

ExampleSection::ExampleSection(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_readings(new CellsModel(theme,
                                {{tr("Reading"), CellColumn::Kind::Fact},
                                 {tr("Blank"), CellColumn::Kind::Number},
                                 {tr("Sample"), CellColumn::Kind::Number}},
                                false, this))
{
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addWidget(buildInputs());
    m_results = new SentenceList(theme, tr("What it gives"), u"exampleResults"_s, this);
    m_results->setFixedHeight(theme.target() * 4);
    m_working = new QTextBrowser(this);
    m_working->setObjectName(u"exampleWorking"_s);
    m_working->setAccessibleName(tr("The calculation written out"));
    m_working->setTabChangesFocus(true);
    m_working->setMinimumHeight(theme.target() * 8);
    layout->addWidget(m_results);
    layout->addWidget(m_working, 1);

    connect(m_readings, &CellsModel::edited, this, &ExampleSection::work);
    for (const NumberField *field : {m_volume, m_take, m_makeUp})
        connect(field->entry(), &NumberEntry::judged, this, &ExampleSection::work);
    connect(m_uncertainty, &QCheckBox::toggled, this, &ExampleSection::work);
    connect(&theme, &Theme::changed, this, &ExampleSection::work);
}

QWidget *ExampleSection::buildInputs()
{
    auto *group = newGroup(tr("Try the method with numbers of your own"),
                           tr("One blank and one sample. Nothing of it is kept."), this);
    m_table = new CellsTable(m_theme, m_readings, tr("Readings of the example"), u"exampleReadings"_s, group);
    m_table->setDragDropMode(QAbstractItemView::NoDragDrop);
    m_table->setRowsFixed();
    m_table->setRowsShown(3);
    group->layout()->addWidget(m_table);
    auto *host = new QWidget(group);
    m_volume = new NumberField(m_theme, tr("mL"), host);
    m_take = new NumberField(m_theme, tr("mL"), host);
    m_makeUp = new NumberField(m_theme, tr("mL"), host);
    m_uncertainty = new QCheckBox(tr("With its uncertainty, from the usual standard uncertainties"), group);
    m_uncertainty->setObjectName(u"exampleUncertainty"_s);
    m_uncertainty->setMinimumHeight(m_theme.target());
    QFormLayout *form = newForm(host);
    form->setContentsMargins({});
    addFormRow(form, tr("Sample in the tube, if not as usual"), m_volume, u"exampleVolume"_s);
    addFormRow(form, tr("Dilution, if any: take"), m_take, u"exampleTake"_s);
    addFormRow(form, tr("make up to"), m_makeUp, u"exampleMakeUp"_s);
    group->layout()->addWidget(host);
    group->layout()->addWidget(m_uncertainty);
    return group;
}

void ExampleSection::clear()
{
    m_readings->setRows({});
    for (const NumberField *field : {m_volume, m_take, m_makeUp})
        field->entry()->clear();
    m_uncertainty->setChecked(false);
}

void ExampleSection::show(const MethodOutcome &method)
{
    m_method = method;
    const std::vector<QString> readings = assay::readingsInOrder(method.method);
    std::vector<CellRow> rows = exampleRows(readings, m_readings->rows());
    if (rows != m_readings->rows()) {
        m_readings->setRows(std::move(rows));
        m_table->setRowsShown(std::max(3, static_cast<int>(readings.size())));
    }
    m_readings->setFacts(example::Reading, readings);
    work();
}

ExampleDraft ExampleSection::draft() const
{
    return {m_readings->rows(), m_volume->entry()->text(), m_take->entry()->text(), m_makeUp->entry()->text(),
            m_uncertainty->isChecked()};
}

void ExampleSection::work()
{
    ExampleOutcome outcome = workExample(draft(), m_method);
    m_results->setSentences(std::move(outcome.sentences));
    m_working->setHtml(workingHtml(m_theme, outcome.working));
}

} // namespace plateau::ui
