// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/readingsmodel.h"

#include "core/evaluation/format.h"
#include "ui/shared/theme.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

const evaluation::TubeValue *valueOf(const evaluation::Evaluation &evaluation, int tube,
                                     const QString &measurand)
{
    const auto found = std::find_if(evaluation.tubes.begin(), evaluation.tubes.end(), [&](const auto &value) {
        return value.index == tube && value.measurand == measurand;
    });
    return found == evaluation.tubes.end() ? nullptr : &*found;
}

/// The value a correction replaced, if the reading there is one.
std::optional<run::Reading> replacedAt(const notebook::StoredRun &stored, const Place &place)
{
    std::optional<run::Reading> former;
    std::optional<run::Reading> current;
    for (const notebook::StoredReading &reading : stored.readings) {
        if (reading.tube != place.tube || reading.reading != place.reading)
            continue;
        former = reading.again ? std::nullopt : current; // a further one of a series replaces nothing
        current = reading.value;
    }
    return former;
}

} // namespace

ReadingsModel::ReadingsModel(const Theme &theme, QObject *parent)
    : ShownCells(parent)
    , m_theme(theme)
{
    connect(&theme, &Theme::changed, this, &ReadingsModel::touch);
}

void ReadingsModel::show(const notebook::StoredRun &stored, const evaluation::Evaluation &evaluation,
                         const UnitsOfRun &units)
{
    const bool same =
        stored.summary.id == m_stored.summary.id && stored.run.tubes.size() == m_stored.run.tubes.size();
    if (!same)
        beginResetModel();
    m_stored = stored;
    m_evaluation = evaluation;
    const bool isInThem = units == m_units;
    m_units = units;
    if (same) {
        if (!isInThem) {
            layOut();
            Q_EMIT headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
        }
        touch();
        return;
    }
    m_keyed.reset();
    m_typed.reset();
    layOut();
    endResetModel();
}

void ReadingsModel::layOut()
{
    const assay::Method &method = m_stored.method;
    m_columns = {{Kind::Number, {}, tr("Tube")}, {Kind::Contents, {}, tr("Contents")}};
    for (const QString &reading : assay::readingsInOrder(method))
        m_columns.push_back({Kind::Reading, reading, reading});
    const bool several = method.measurands.size() > 1;
    for (const assay::Measurand &measurand : method.measurands) {
        m_columns.push_back(
            {Kind::Net, measurand.id, several ? tr("Net, %1").arg(measurand.name) : tr("Net signal")});
        const QString unit = evaluation::reportUnitWord(shownUnit(m_units, measurand.id).unit);
        m_columns.push_back({Kind::Concentration, measurand.id,
                             several ? tr("%1 (%2)").arg(measurand.name, unit) : tr("Concentration (%1)").arg(unit)});
    }
}

void ReadingsModel::setKeyed(const std::optional<Place> &place, std::optional<double> absorbance,
                             const evaluation::Evaluation &evaluation)
{
    m_keyed = place;
    m_typed = absorbance;
    m_evaluation = evaluation;
    touch();
}

void ReadingsModel::touch()
{
    if (rowCount() > 0)
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

std::optional<Place> ReadingsModel::placeOf(const QModelIndex &index) const
{
    if (!index.isValid())
        return std::nullopt;
    const Column &column = m_columns[static_cast<std::size_t>(index.column())];
    if (column.kind != Kind::Reading)
        return std::nullopt;
    return Place{index.row(), column.id};
}

QModelIndex ReadingsModel::indexOf(const Place &place) const
{
    for (int column = 0; column < columnCount(); ++column) {
        const Column &candidate = m_columns[static_cast<std::size_t>(column)];
        if (candidate.kind == Kind::Reading && candidate.id == place.reading)
            return index(place.tube, column);
    }
    return {};
}

int ReadingsModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_stored.run.tubes.size());
}

int ReadingsModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_columns.size());
}

bool ReadingsModel::isKeyed(int tube, const Column &column) const
{
    return column.kind == Kind::Reading && m_keyed && m_keyed->tube == tube && m_keyed->reading == column.id;
}

QString ReadingsModel::cellText(const run::Reading &reading)
{
    // In a column as wide as a number.
    if (const auto *series = std::get_if<run::ReadingSeries>(&reading); series && !series->empty())
        return tr("%1 (%2×)").arg(readingText(series->back().absorbance)).arg(series->size());
    return readingText(reading);
}

QString ReadingsModel::readingCell(const Place &place) const
{
    const run::Reading *stored = readingAt(m_stored.run, place);
    if (!stored)
        return u"–"_s;
    const auto former = replacedAt(m_stored, place);
    const QString text = cellText(*stored);
    return former ? tr("%1 (was %2)").arg(text, cellText(*former)) : text;
}

QString ReadingsModel::contentsCell(int tube) const
{
    // Most tubes hold samples: the room is for their names.
    const QString brief = briefContentsText(m_stored.run, tube);
    const QString which = whichOfAlikeText(m_stored.run, tube);
    const QString contents = which.isEmpty() ? brief : tr("%1, %2").arg(brief, which);
    const QString &spoilt = m_stored.run.tubes[static_cast<std::size_t>(tube)].spoilt;
    return spoilt.isEmpty() ? contents : tr("%1, spoilt: %2").arg(contents, spoilt);
}

QString ReadingsModel::text(int tube, const Column &column) const
{
    switch (column.kind) {
    case Kind::Number:
        return QString::number(tube + 1);
    case Kind::Contents:
        return contentsCell(tube);
    case Kind::Reading:
        if (isKeyed(tube, column) && m_typed)
            return readingText(*m_typed);
        return readingCell({tube, column.id});
    case Kind::Net:
        if (const auto *value = valueOf(m_evaluation, tube, column.id); value && value->netSignal)
            return evaluation::absorbanceText(*value->netSignal);
        return {};
    case Kind::Concentration:
        if (const auto *value = valueOf(m_evaluation, tube, column.id); value && value->concentration_g_per_L)
            return evaluation::valueText(*value->concentration_g_per_L * shownUnit(m_units, column.id).factor);
        return {};
    }
    return {};
}

QVariant ReadingsModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const Column &column = m_columns[static_cast<std::size_t>(index.column())];
    switch (role) {
    case Qt::DisplayRole:
        return text(index.row(), column);
    case Qt::TextAlignmentRole:
        return column.kind == Kind::Contents ? QVariant::fromValue(Qt::AlignLeft | Qt::AlignVCenter)
                                             : QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
    case Qt::BackgroundRole:
        return isKeyed(index.row(), column) ? QVariant(m_theme.tint(State::Info)) : QVariant();
    case Qt::FontRole:
        return isKeyed(index.row(), column) ? QVariant(m_theme.bold()) : QVariant();
    default:
        return {};
    }
}

QVariant ReadingsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount())
        return {};
    const Column &column = m_columns[static_cast<std::size_t>(section)];
    if (role == Qt::DisplayRole)
        return column.title;
    if (role == Qt::TextAlignmentRole && column.kind != Kind::Contents)
        return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
    return {};
}

} // namespace plateau::ui
