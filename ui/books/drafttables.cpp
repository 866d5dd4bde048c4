// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/drafttables.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

using Kind = CellColumn::Kind;

auto always(std::vector<CellChoice> choices)
{
    return [choices = std::move(choices)](const CellRow &) { return choices; };
}

auto onlyIn(const QString &kind)
{
    return [kind](const CellRow &row) { return row.cells[step::Kind] == kind; };
}

/// Sample, diluent and starter are one component each: who takes the part takes it from another.
void keepPartsSingle(std::vector<CellRow> &rows, int row, int column)
{
    if (column != component::Part)
        return;
    const QString taken = rows[static_cast<std::size_t>(row)].cells[component::Part];
    for (std::size_t i = 0; i < rows.size(); ++i) {
        QString &other = rows[i].cells[component::Part];
        if (static_cast<int>(i) != row && !taken.isEmpty() && other == taken)
            other = part::reagent;
    }
}

bool mayVary(const CellRow &row)
{
    return row.cells[component::Part] == part::sample || !row.cells[component::From_mL].isEmpty() ||
           !row.cells[component::To_mL].isEmpty();
}

} // namespace

DraftTables::DraftTables(const Theme &theme, QObject *parent)
    : QObject(parent)
    , m_theme(theme)
    , m_components(newComponents())
    , m_steps(newSteps())
    , m_measurands(newMeasurands())
    , m_absorptivities(new CellsModel(
          theme, {{tr("Wavelength (nm)"), Kind::Number}, {tr("Absorptivity (L/(mol cm))"), Kind::Number}},
          true, this))
    , m_derived(newDerived())
{
    for (const CellsModel *model : {m_components, m_steps, m_measurands, m_absorptivities, m_derived})
        connect(model, &CellsModel::edited, this, &DraftTables::edited);
    connect(m_components, &CellsModel::edited, m_steps, &CellsModel::touch);
}

CellsModel *DraftTables::newComponents()
{
    auto *model = new CellsModel(m_theme,
                                 {{tr("Component"), Kind::Text},
                                  {tr("mL"), Kind::Number, {}, {}, tr("Volume (mL)")},
                                  {tr("Part"), Kind::Choice,
                                   always({{part::reagent, tr("Reagent")},
                                           {part::sample, tr("Sample")},
                                           {part::diluent, tr("Diluent")},
                                           {part::starter, tr("Starter")}})},
                                  {tr("from"), Kind::Number, {}, mayVary, tr("Smallest volume allowed (mL)")},
                                  {tr("to"), Kind::Number, {}, mayVary, tr("Largest volume allowed (mL)")},
                                  {tr("Suspension"), Kind::Tick}},
                                 true, this);
    model->setConsequence(keepPartsSingle);
    return model;
}

CellsModel *DraftTables::newSteps()
{
    auto *model =
        new CellsModel(m_theme,
                       {{tr("Step"), Kind::Choice,
                         always({{step::add, tr("Add")},
                                 {step::mix, tr("Mix")},
                                 {step::wait, tr("Wait")},
                                 {step::read, tr("Read")}})},
                        {tr("Component"), Kind::Choice,
                         [this](const CellRow &) { return componentChoices(); }, onlyIn(step::add)},
                        {tr("min"), Kind::Number, {}, onlyIn(step::wait), tr("Shortest wait (min)")},
                        {tr("to"), Kind::Number, {}, onlyIn(step::wait), tr("Longest wait (min)")},
                        {tr("°C"), Kind::Number, {}, onlyIn(step::wait), tr("Lowest temperature (°C)")},
                        {tr("to"), Kind::Number, {}, onlyIn(step::wait), tr("Highest temperature (°C)")},
                        {tr("Reading"), Kind::Text, {}, onlyIn(step::read)},
                        {tr("mL"), Kind::Fact, {}, {}, tr("In the tube afterwards (mL)")}},
                       false, this);
    model->setTemplate([model] {
        CellRow row = model->blankRow();
        row.cells[step::Kind] = step::mix;
        return row;
    });
    return model;
}

CellsModel *DraftTables::newMeasurands()
{
    const auto readings = [this](const CellRow &) { return readingChoices(); };
    const auto coupled = [](const CellRow &row) {
        return row.cells[measurand::Signal] == measurand::coupled;
    };
    auto *model = new CellsModel(
        m_theme,
        {{tr("Measurand"), Kind::Text},
         {tr("M (g/mol)"), Kind::Number, {}, {}, tr("Molar mass (g/mol)")},
         {tr("n"), Kind::Number, {}, {}, tr("Chromophore molecules for each molecule")},
         {tr("From (g/L)"), Kind::Number, {}, {}, tr("Samples usually hold from (g/L)")},
         {tr("To (g/L)"), Kind::Number, {}, {}, tr("Samples usually hold up to (g/L)")},
         {tr("Signal"), Kind::Choice,
          always({{measurand::difference, tr("Difference")}, {measurand::coupled, tr("Coupled indicator")}})},
         {tr("From"), Kind::Choice, readings, {}, tr("From reading")},
         {tr("Middle"), Kind::Choice, readings, coupled, tr("Middle reading")},
         {tr("To"), Kind::Choice, readings, {}, tr("To reading")}},
        true, this);
    model->setTemplate([this, model] {
        CellRow row = model->blankRow();
        const std::vector<QString> taken = readingsOf(m_steps->rows());
        row.cells[measurand::PerMolecule] = u"1"_s;
        row.cells[measurand::Signal] = measurand::difference;
        // The next measurand is read from the next addition.
        if (taken.size() >= 2) {
            row.cells[measurand::First] = taken[taken.size() - 2];
            row.cells[measurand::Last] = taken.back();
        }
        return row;
    });
    return model;
}

CellsModel *DraftTables::newDerived()
{
    return new CellsModel(
        m_theme,
        {{tr("Quantity"), Kind::Text},
         {tr("From the method"), Kind::Choice, [this](const CellRow &) { return methodChoices(); }},
         {tr("Measurand"), Kind::Choice,
          [this](const CellRow &row) { return measurandChoices(row.cells[derived::Method]); }},
         {tr("Factor"), Kind::Number}},
        true, this);
}

std::vector<CellChoice> DraftTables::componentChoices() const
{
    std::vector<CellChoice> choices;
    for (const CellRow &row : m_components->rows())
        choices.push_back({row.key, row.cells[component::Name]});
    return choices;
}

std::vector<CellChoice> DraftTables::readingChoices() const
{
    std::vector<CellChoice> choices;
    for (const QString &reading : readingsOf(m_steps->rows()))
        choices.push_back({reading, reading});
    return choices;
}

std::vector<CellChoice> DraftTables::methodChoices() const
{
    std::vector<CellChoice> choices{{QString(), tr("this method")}};
    for (const assay::Method &other : m_others)
        choices.push_back({other.id, other.name});
    return choices;
}

std::vector<CellChoice> DraftTables::measurandChoices(const QString &method) const
{
    std::vector<CellChoice> choices;
    if (method.isEmpty()) {
        for (const CellRow &row : m_measurands->rows())
            choices.push_back({row.key, row.cells[measurand::Name]});
        return choices;
    }
    const auto other = std::ranges::find(m_others, method, &assay::Method::id);
    if (other != m_others.end()) {
        for (const assay::Measurand &each : other->measurands)
            choices.push_back({each.id, each.name});
    }
    return choices;
}

void DraftTables::load(const MethodDraft &draft)
{
    m_components->setRows(draft.components);
    m_steps->setRows(draft.steps);
    m_measurands->setRows(draft.measurands);
    m_absorptivities->setRows(draft.absorptivities);
    m_derived->setRows(draft.derived);
}

void DraftTables::store(MethodDraft &draft) const
{
    draft.components = m_components->rows();
    draft.steps = m_steps->rows();
    draft.measurands = m_measurands->rows();
    draft.absorptivities = m_absorptivities->rows();
    draft.derived = m_derived->rows();
}

void DraftTables::layOutUsualSteps()
{
    m_steps->replaceRows(usualSteps(m_components->rows()));
}

} // namespace plateau::ui
