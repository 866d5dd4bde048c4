// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/samplesmodel.h"

#include "core/evaluation/format.h"
#include "ui/bench/samplesignals.h"
#include "ui/shared/keyednumber.h"
#include "ui/shared/matrixtext.h"
#include "ui/shared/theme.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

SamplesModel::SamplesModel(const Theme &theme, QObject *parent)
    : RowsModel(parent)
    , m_theme(theme)
    , m_columns(columnsNow())
{
    connect(&theme, &Theme::changed, this, [this] { touchAll(); });
}

int SamplesModel::lastTakeColumn() const
{
    const auto found = std::find_if(m_columns.begin(), m_columns.end(), [this](const Column &column) {
        return column.kind == Kind::Take && column.number == m_steps - 1;
    });
    return static_cast<int>(found - m_columns.begin());
}

std::vector<SamplesModel::Column> SamplesModel::columnsNow() const
{
    const int measurands = m_method ? static_cast<int>(m_method->measurands.size()) : 0;
    // What it is stands beside its name: unit and limits of its results hang on it.
    std::vector<Column> columns{{Kind::Name, 0}, {Kind::Product, 0}};
    for (int measurand = 0; measurand < measurands; ++measurand)
        columns.push_back({Kind::Expected, measurand});
    if (m_form == run::Form::Solid)
        columns.insert(columns.end(), {{Kind::Mass, 0}, {Kind::Extract, 0}});
    for (int step = 0; step < m_steps; ++step)
        columns.insert(columns.end(), {{Kind::Take, step}, {Kind::MakeUp, step}});
    columns.insert(columns.end(), {{Kind::Factor, 0}, {Kind::Volume, 0}});
    for (int measurand = 0; measurand < measurands; ++measurand)
        columns.push_back({Kind::Signal, measurand});
    for (const Kind kind :
         {Kind::Tubes, Kind::OwnBlank, Kind::Spike, Kind::Matrix, Kind::Received, Kind::From})
        columns.push_back({kind, 0});
    return columns;
}

void SamplesModel::layOut()
{
    beginResetModel();
    m_columns = columnsNow();
    endResetModel();
}

void SamplesModel::setNames(const QStringList &names)
{
    std::vector<SampleDraft> fresh;
    for (const QString &name : names) {
        const auto known =
            std::find_if(rows().begin(), rows().end(), [&](const auto &row) { return row.id == name; });
        SampleDraft sample = known == rows().end() ? SampleDraft{} : *known;
        sample.id = name;
        sample.dilution.resize(static_cast<std::size_t>(m_steps));
        fresh.push_back(std::move(sample));
    }
    setRows(std::move(fresh));
}

void SamplesModel::addRows(const std::vector<SampleDraft> &fresh)
{
    std::size_t steps = static_cast<std::size_t>(m_steps);
    for (const SampleDraft &sample : fresh)
        steps = std::max(steps, sample.dilution.size());
    setDilutionSteps(static_cast<int>(steps));
    std::vector<SampleDraft> all = rows();
    for (SampleDraft sample : fresh) {
        const bool known =
            std::any_of(all.begin(), all.end(), [&](const SampleDraft &row) { return row.id == sample.id; });
        if (known)
            continue;
        sample.dilution.resize(steps);
        all.push_back(std::move(sample));
    }
    setRows(std::move(all));
}

void SamplesModel::replaceRow(int row, SampleDraft sample)
{
    setDilutionSteps(std::max(m_steps, static_cast<int>(sample.dilution.size())));
    sample.dilution.resize(static_cast<std::size_t>(m_steps));
    std::vector<SampleDraft> all = rows();
    all[static_cast<std::size_t>(row)] = std::move(sample);
    setRows(std::move(all));
}

void SamplesModel::setForm(run::Form form)
{
    if (form == m_form)
        return;
    m_form = form;
    layOut();
}

void SamplesModel::setAssay(const assay::Method *method, int wavelength_nm, double pathLength_mm)
{
    const auto measurands = [](const assay::Method *of) {
        QStringList names;
        for (const assay::Measurand &measurand : of ? of->measurands : std::vector<assay::Measurand>())
            names << measurand.id;
        return names;
    };
    const bool others = measurands(method) != measurands(m_method ? &*m_method : nullptr);
    m_method = method ? std::optional(*method) : std::nullopt;
    m_wavelength_nm = wavelength_nm;
    m_pathLength_mm = pathLength_mm;
    if (!others) {
        touchAll();
        return;
    }
    // What was expected of one quantity is not expected of another.
    std::vector<SampleDraft> all = rows();
    for (SampleDraft &sample : all)
        sample.expected.clear();
    setRows(std::move(all));
    layOut();
}

void SamplesModel::setDilutionSteps(int steps)
{
    if (steps == m_steps || steps < 1)
        return;
    m_steps = steps;
    std::vector<SampleDraft> wider = rows();
    for (SampleDraft &sample : wider)
        sample.dilution.resize(static_cast<std::size_t>(m_steps));
    setRows(std::move(wider));
    layOut();
}

int SamplesModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_columns.size());
}

QString *SamplesModel::text(SampleDraft &sample, const Column &column)
{
    const auto number = static_cast<std::size_t>(column.number);
    switch (column.kind) {
    case Kind::Name:
        return &sample.id;
    case Kind::Expected:
        if (sample.expected.size() <= number)
            sample.expected.resize(number + 1);
        return &sample.expected[number];
    case Kind::Mass:
        return &sample.mass_g;
    case Kind::Extract:
        return &sample.extract_mL;
    case Kind::Volume:
        return &sample.sampleVolume_mL;
    case Kind::Take:
        return &sample.dilution[number].take_mL;
    case Kind::MakeUp:
        return &sample.dilution[number].makeUpTo_mL;
    case Kind::Tubes:
        return &sample.replicates;
    case Kind::Spike:
        return &sample.spike_mL;
    case Kind::Product:
        return &sample.product;
    case Kind::Received:
        return &sample.received;
    case Kind::From:
        return &sample.receivedFrom;
    case Kind::OwnBlank:
    case Kind::Factor:
    case Kind::Signal:
    case Kind::Matrix:
        break;
    }
    return nullptr;
}

SamplesModel::Editor SamplesModel::editorOf(Kind kind)
{
    switch (kind) {
    case Kind::Product:
        return Editor::Product;
    case Kind::Received:
    case Kind::From:
        return Editor::Text;
    case Kind::Matrix:
        return Editor::Matrix;
    case Kind::Name:
    case Kind::Factor:
    case Kind::Signal:
    case Kind::OwnBlank:
        return Editor::None;
    default:
        return Editor::Number;
    }
}

QVariant SamplesModel::shown(const SampleDraft &sample, const Column &column) const
{
    SampleDraft copy = sample;
    const QString *typed = text(copy, column);
    switch (column.kind) {
    case Kind::Factor:
        return factorText(sample);
    case Kind::Matrix:
        return matrixText(sample.matrix);
    case Kind::Signal:
        return m_method
                   ? signalOf(sample, m_form, *m_method, column.number, m_wavelength_nm, m_pathLength_mm).text
                   : QString();
    case Kind::Volume:
        if (m_method && typed->trimmed().isEmpty())
            if (const assay::Component *component = assay::findComponent(*m_method, m_method->sample))
                return tr("%1 (method)").arg(keyedText(component->volume_mL));
        break;
    default:
        break;
    }
    return typed ? QVariant(*typed) : QVariant();
}

bool SamplesModel::isFigures(const Column &column)
{
    return editorOf(column.kind) == Editor::Number || column.kind == Kind::Factor || column.kind == Kind::Signal;
}

QVariant SamplesModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    SampleDraft sample = row(index.row());
    const Column &column = columnAt(index.column());
    const Editor editor = editorOf(column.kind);
    const QString *typed = text(sample, column);
    switch (role) {
    case EditorRole:
        return static_cast<int>(editor);
    case OffersRole:
        return editor == Editor::Product ? QVariant(m_products) : QVariant();
    case Qt::CheckStateRole:
        return column.kind == Kind::OwnBlank ? QVariant(sample.ownBlank ? Qt::Checked : Qt::Unchecked)
                                             : QVariant();
    case Qt::DisplayRole:
        return shown(sample, column);
    case Qt::EditRole:
        return editor == Editor::Matrix ? QVariant(static_cast<int>(sample.matrix))
               : typed                  ? QVariant(*typed)
                                        : QVariant();
    case Qt::ForegroundRole:
        return column.kind == Kind::Volume && typed->trimmed().isEmpty() ? QVariant(m_theme.mutedText())
                                                                         : QVariant();
    case Qt::DecorationRole:
        if (editor == Editor::Number && !typed->trimmed().isEmpty() && !numberIn(*typed))
            return m_theme.icon(State::Bad);
        if (column.kind == Kind::Signal && m_method) {
            const auto state =
                signalOf(sample, m_form, *m_method, column.number, m_wavelength_nm, m_pathLength_mm).state;
            return state ? QVariant(m_theme.icon(*state)) : QVariant();
        }
        return {};
    case Qt::TextAlignmentRole:
        return isFigures(column) ? QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter) : QVariant();
    default:
        return {};
    }
}

bool SamplesModel::setData(const QModelIndex &index, const QVariant &value, int role)
{
    if (!index.isValid())
        return false;
    const Column &column = columnAt(index.column());
    std::vector<SampleDraft> fresh = rows();
    SampleDraft &sample = fresh[static_cast<std::size_t>(index.row())];
    const Editor editor = editorOf(column.kind);
    if (role == Qt::CheckStateRole && column.kind == Kind::OwnBlank)
        sample.ownBlank = value.toInt() == Qt::Checked;
    else if (role == Qt::EditRole && editor == Editor::Matrix)
        sample.matrix = static_cast<assay::Matrix>(value.toInt());
    else if (role == Qt::EditRole && editor != Editor::None)
        *text(sample, column) = value.toString();
    else
        return false;
    setRows(std::move(fresh));
    return true;
}

Qt::ItemFlags SamplesModel::flags(const QModelIndex &index) const
{
    if (!index.isValid())
        return Qt::NoItemFlags;
    const Qt::ItemFlags usual = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    const Kind kind = columnAt(index.column()).kind;
    if (kind == Kind::OwnBlank)
        return usual | Qt::ItemIsUserCheckable;
    return editorOf(kind) == Editor::None ? usual : usual | Qt::ItemIsEditable;
}

QVariant SamplesModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount())
        return {};
    if (role == Qt::TextAlignmentRole && isFigures(columnAt(section)))
        return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::DisplayRole)
        return {};
    // The unit below the word: a table of numbers is as wide as its headings.
    QString text = headerText(columnAt(section));
    if (const qsizetype unit = text.lastIndexOf(u" ("_s); unit >= 0)
        text[unit] = u'\n';
    return text;
}

QString SamplesModel::headerText(const Column &column) const
{
    const bool several = m_steps > 1;
    const bool quantities = m_method && m_method->measurands.size() > 1;
    const auto quantity = [&] { return m_method->measurands[static_cast<std::size_t>(column.number)].name; };
    const QString unit = m_form == run::Form::Solid ? tr("g/100 g") : tr("g/L");
    switch (column.kind) {
    case Kind::Name:
        return tr("Sample");
    case Kind::Expected:
        return quantities ? tr("%1 expected (%2)").arg(quantity(), unit) : tr("Expected (%1)").arg(unit);
    case Kind::Mass:
        return tr("Mass (g)");
    case Kind::Extract:
        return tr("Extract (mL)");
    case Kind::Volume:
        return tr("In the tube (mL)");
    case Kind::Signal:
        return quantities ? tr("%1 signal").arg(quantity()) : tr("Signal");
    case Kind::Tubes:
        return tr("Tubes");
    case Kind::OwnBlank:
        return tr("Sample blank");
    case Kind::Spike:
        return tr("Spike (mL)");
    case Kind::Product:
        return tr("Product");
    case Kind::Matrix:
        return tr("Matrix");
    case Kind::Received:
        return tr("Received");
    case Kind::From:
        return tr("Received from");
    case Kind::Take:
        return several ? tr("%1: take (mL)").arg(column.number + 1) : tr("Take (mL)");
    case Kind::MakeUp:
        return several ? tr("%1: make up to (mL)").arg(column.number + 1) : tr("Make to (mL)");
    case Kind::Factor:
        return tr("Factor");
    }
    return {};
}

} // namespace plateau::ui
