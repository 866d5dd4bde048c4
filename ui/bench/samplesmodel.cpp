// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/samplesmodel.h"

#include "core/evaluation/format.h"
#include "core/exchange/decimal.h"
#include "ui/shared/theme.h"

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

std::optional<double> numberIn(const QString &text)
{
    const auto parsed = exchange::parseDecimal(text);
    const double *value = std::get_if<double>(&parsed);
    return value ? std::optional(*value) : std::nullopt;
}

} // namespace

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
        return column.kind == Kind::Take && column.step == m_steps - 1;
    });
    return static_cast<int>(found - m_columns.begin());
}

std::vector<SamplesModel::Column> SamplesModel::columnsNow() const
{
    std::vector<Column> columns{{Kind::Name, 0}};
    if (m_form == run::Form::Solid)
        columns.insert(columns.end(), {{Kind::Mass, 0}, {Kind::Extract, 0}});
    for (int step = 0; step < m_steps; ++step)
        columns.insert(columns.end(), {{Kind::Take, step}, {Kind::MakeUp, step}});
    columns.insert(columns.end(), {{Kind::Factor, 0}, {Kind::Volume, 0}, {Kind::OwnBlank, 0}});
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

void SamplesModel::setForm(run::Form form)
{
    if (form == m_form)
        return;
    m_form = form;
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
    switch (column.kind) {
    case Kind::Name:
        return &sample.id;
    case Kind::Mass:
        return &sample.mass_g;
    case Kind::Extract:
        return &sample.extract_mL;
    case Kind::Volume:
        return &sample.sampleVolume_mL;
    case Kind::Take:
        return &sample.dilution[static_cast<std::size_t>(column.step)].take_mL;
    case Kind::MakeUp:
        return &sample.dilution[static_cast<std::size_t>(column.step)].makeUpTo_mL;
    case Kind::OwnBlank:
    case Kind::Factor:
        break;
    }
    return nullptr;
}

QString SamplesModel::factorText(const SampleDraft &sample) const
{
    std::vector<run::DilutionStep> steps;
    for (const DilutionDraft &step : sample.dilution) {
        if (step.take_mL.trimmed().isEmpty() && step.makeUpTo_mL.trimmed().isEmpty())
            continue;
        const auto take = numberIn(step.take_mL);
        const auto makeUp = numberIn(step.makeUpTo_mL);
        if (!take || !makeUp || *take <= 0)
            return u"–"_s;
        steps.push_back({*take, *makeUp});
    }
    return evaluation::plainText(run::dilutionFactor(steps));
}

QVariant SamplesModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    SampleDraft sample = row(index.row());
    const Column &column = m_columns[static_cast<std::size_t>(index.column())];
    const QString *typed = text(sample, column);
    if (role == Qt::CheckStateRole && column.kind == Kind::OwnBlank)
        return sample.ownBlank ? Qt::Checked : Qt::Unchecked;
    if (role == Qt::DisplayRole && column.kind == Kind::Factor)
        return factorText(sample);
    if ((role == Qt::DisplayRole || role == Qt::EditRole) && typed)
        return *typed;
    const bool faulty =
        typed && column.kind != Kind::Name && !typed->trimmed().isEmpty() && !numberIn(*typed);
    if (role == Qt::DecorationRole && faulty)
        return m_theme.icon(State::Bad);
    if (role == Qt::TextAlignmentRole && column.kind != Kind::Name && column.kind != Kind::OwnBlank)
        return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
    return {};
}

bool SamplesModel::setData(const QModelIndex &index, const QVariant &value, int role)
{
    if (!index.isValid())
        return false;
    const Column &column = m_columns[static_cast<std::size_t>(index.column())];
    std::vector<SampleDraft> fresh = rows();
    SampleDraft &sample = fresh[static_cast<std::size_t>(index.row())];
    if (role == Qt::CheckStateRole && column.kind == Kind::OwnBlank) {
        sample.ownBlank = value.toInt() == Qt::Checked;
    } else if (QString *typed = text(sample, column);
               role == Qt::EditRole && typed && column.kind != Kind::Name) {
        *typed = value.toString();
    } else {
        return false;
    }
    setRows(std::move(fresh));
    return true;
}

Qt::ItemFlags SamplesModel::flags(const QModelIndex &index) const
{
    if (!index.isValid())
        return Qt::NoItemFlags;
    const Qt::ItemFlags usual = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    switch (m_columns[static_cast<std::size_t>(index.column())].kind) {
    case Kind::Name:
    case Kind::Factor:
        return usual;
    case Kind::OwnBlank:
        return usual | Qt::ItemIsUserCheckable;
    default:
        return usual | Qt::ItemIsEditable;
    }
}

QVariant SamplesModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole || section < 0 || section >= columnCount())
        return {};
    const Column &column = m_columns[static_cast<std::size_t>(section)];
    const bool several = m_steps > 1;
    switch (column.kind) {
    case Kind::Name:
        return tr("Sample");
    case Kind::Mass:
        return tr("Mass (g)");
    case Kind::Extract:
        return tr("Extract (mL)");
    case Kind::Volume:
        return tr("In the tube (mL)");
    case Kind::OwnBlank:
        return tr("Sample blank");
    case Kind::Take:
        return several ? tr("%1: take (mL)").arg(column.step + 1) : tr("Take (mL)");
    case Kind::MakeUp:
        return several ? tr("%1: make up to (mL)").arg(column.step + 1) : tr("Make up to (mL)");
    case Kind::Factor:
        return tr("Factor");
    }
    return {};
}

} // namespace plateau::ui
