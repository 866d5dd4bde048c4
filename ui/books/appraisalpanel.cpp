// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/appraisalpanel.h"

#include "core/evaluation/format.h"
#include "core/exchange/decimal.h"
#include "ui/books/cellstable.h"
#include "ui/books/factsmodel.h"
#include "ui/books/methoddraft.h"
#include "ui/books/tubedrawing.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QScrollBar>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

namespace bottle {
enum Column { Component, PerTube_mL, Bottle_mL, Tubes };
} // namespace bottle

} // namespace

AppraisalPanel::AppraisalPanel(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_tube(new TubeDrawing(theme, this))
    , m_bottles(new CellsModel(
          theme,
          {{tr("Component"), CellColumn::Kind::Fact},
           {tr("mL"), CellColumn::Kind::Fact, {}, {}, tr("In each tube (mL)")},
           {tr("Bottle, mL"), CellColumn::Kind::Number, {}, {}, tr("Contents of the bottle (mL)")},
           {tr("Tubes"), CellColumn::Kind::Fact}},
          false, this))
{
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->setContentsMargins(0, 0, theme.gap(), 0); // the page around it has its own
    layout->addWidget(m_tube);
    m_ranges = addFacts(layout, tr("Window, undiluted, in g/L"), u"rangeFacts"_s);
    m_factors = addFacts(layout, tr("Factor: g/L for a net signal of 1"), u"factorFacts"_s);
    buildLimits(layout);
    buildBottles(layout);
    layout->addStretch(1);
    appraise();
}

AppraisalPanel::Facts AppraisalPanel::addFacts(QVBoxLayout *layout, const QString &title,
                                               const QString &objectName)
{
    auto *caption = plainLabel(title, this);
    caption->setFont(m_theme.bold());
    caption->setWordWrap(true);
    auto *model = new FactsModel(this);
    auto *table = new Table(m_theme, model, title, objectName, this);
    table->verticalHeader()->setDefaultSectionSize(table->fontMetrics().height() * 3 / 2);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    layout->addWidget(caption);
    layout->addWidget(table);
    // At another width its rows may have another height, or its columns room enough.
    connect(table->verticalHeader(), &QHeaderView::sectionResized, this, [this, table] { fitHeight(*table); });
    connect(table->horizontalHeader(), &QHeaderView::sectionResized, this, [this, table] { fitHeight(*table); });
    connect(table->horizontalScrollBar(), &QScrollBar::rangeChanged, this, [this, table] { fitHeight(*table); });
    return {model, table};
}

void AppraisalPanel::fitHeight(Table &table) const
{
    const QHeaderView *rows = table.verticalHeader();
    const QScrollBar *scrollBar = table.horizontalScrollBar();
    const int bar = scrollBar->maximum() > scrollBar->minimum() ? scrollBar->sizeHint().height() : 0;
    table.setFixedHeight(table.horizontalHeader()->sizeHint().height() +
                         std::max(rows->length(), rows->defaultSectionSize()) + 2 * table.frameWidth() + bar +
                         m_theme.gap());
}

void AppraisalPanel::showFacts(const Facts &facts, FactsTable content) const
{
    const int last = static_cast<int>(content.titles.size()) - 1;
    facts.model->show(content.titles, std::move(content.rows));
    // A number is never cut short: rather the table scrolls.
    const QAbstractItemView *view = facts.table;
    facts.table->setFlexibleColumn(last);
    facts.table->setFlexibleMinimum(view->sizeHintForColumn(last) / view->fontMetrics().averageCharWidth() +
                                    1);
    facts.table->fit();
    fitHeight(*facts.table);
}

void AppraisalPanel::buildLimits(QVBoxLayout *layout)
{
    m_limits = addFacts(layout, tr("Smallest that can be determined, in g/L"), u"limitFacts"_s);
    m_limits.table->setWrap(Table::Wrap::AsNeeded); // two numbers beside a name are wide
    m_smallest = new NumberEntry(m_theme, this);
    m_smallest->setObjectName(u"smallestAbsorbance"_s);
    m_smallest->setMinimumHeight(m_theme.target());
    m_smallest->setFixedWidth(m_smallest->fontMetrics().averageCharWidth() * 12);
    m_smallest->setValue(evaluation::AppraisalInputs{}.smallestAbsorbance);
    auto *caption = new QLabel(tr("Smallest difference in absorbance that can be resolved"), this);
    caption->setWordWrap(true);
    caption->setBuddy(m_smallest);
    auto *row = new QHBoxLayout;
    row->addWidget(caption, 1);
    row->addWidget(m_smallest);
    layout->addLayout(row);
    m_rule = plainLabel({}, this);
    m_rule->setObjectName(u"limitRule"_s);
    m_rule->setWordWrap(true);
    layout->addWidget(m_rule);
    connect(m_smallest, &NumberEntry::judged, this, &AppraisalPanel::appraise);
}

void AppraisalPanel::buildBottles(QVBoxLayout *layout)
{
    auto *caption = plainLabel(tr("Tubes that a bottle serves"), this);
    caption->setFont(m_theme.bold());
    m_bottlesTable = new CellsTable(m_theme, m_bottles, tr("Tubes that a bottle serves"), u"bottles"_s, this);
    m_bottlesTable->setDragDropMode(QAbstractItemView::NoDragDrop);
    m_bottlesTable->setRowsFixed();
    m_bottlesTable->setFlexibleMinimum(12);
    auto *how = plainLabel(tr("Type what a bottle holds, in mL; how many tubes it serves then stands beside it."), this);
    how->setWordWrap(true);
    layout->addWidget(caption);
    layout->addWidget(how);
    layout->addWidget(m_bottlesTable);
    connect(m_bottles, &CellsModel::edited, this, &AppraisalPanel::appraise);
}

void AppraisalPanel::show(const assay::Method &method, const std::vector<CellRow> &components)
{
    m_method = method;
    m_components = components;
    std::vector<CellRow> rows;
    for (const CellRow &component : components) {
        if (component.cells[component::Part] == part::sample)
            continue;
        const auto known = std::ranges::find(m_bottles->rows(), component.key, &CellRow::key);
        rows.push_back(known != m_bottles->rows().end() ? *known
                                                        : CellRow{component.key, std::vector<QString>(4)});
    }
    if (rows != m_bottles->rows()) {
        m_bottles->setRows(std::move(rows));
        m_bottlesTable->setRowsShown(std::max(1, m_bottles->rowCount()));
    }
    appraise();
}

evaluation::AppraisalInputs AppraisalPanel::inputs() const
{
    evaluation::AppraisalInputs inputs;
    inputs.smallestAbsorbance = m_smallest->value().value_or(0);
    for (std::size_t i = 0; i < m_components.size() && i < m_method.components.size(); ++i) {
        const auto row = std::ranges::find(m_bottles->rows(), m_components[i].key, &CellRow::key);
        if (row == m_bottles->rows().end())
            continue;
        const auto parsed = exchange::parseDecimal(row->cells[bottle::Bottle_mL]);
        if (const double *volume_mL = std::get_if<double>(&parsed))
            inputs.bottle_mL[m_method.components[i].id] = *volume_mL;
    }
    return inputs;
}

void AppraisalPanel::showBottles()
{
    std::vector<QString> names;
    std::vector<QString> volumes;
    std::vector<QString> tubes;
    for (const evaluation::ComponentNeed &need : m_appraisal.needs) {
        const assay::Component *component = assay::findComponent(m_method, need.component);
        names.push_back(component ? component->name : need.component);
        volumes.push_back(need.perTube_mL > 0 ? evaluation::plainText(need.perTube_mL) : u"–"_s);
        tubes.push_back(need.tubes ? QString::number(*need.tubes) : u"–"_s);
    }
    m_bottles->setFacts(bottle::Component, std::move(names));
    m_bottles->setFacts(bottle::PerTube_mL, std::move(volumes));
    m_bottles->setFacts(bottle::Tubes, std::move(tubes));
    m_bottlesTable->fit();
}

void AppraisalPanel::appraise()
{
    const evaluation::AppraisalInputs given = inputs();
    m_appraisal = evaluation::appraise(m_method, given);
    m_tube->setPicture(tubePicture(m_method));
    showFacts(m_factors, factorFacts(m_method, m_appraisal));
    showFacts(m_ranges, rangeFacts(m_method, m_appraisal));
    showFacts(m_limits, limitFacts(m_method, m_appraisal));
    m_rule->setText(shownNumbers(limitRule(m_appraisal, given.smallestAbsorbance)));
    showBottles();
    Q_EMIT appraised();
}

} // namespace plateau::ui
