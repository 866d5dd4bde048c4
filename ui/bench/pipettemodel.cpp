// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/pipettemodel.h"

#include "ui/bench/pipettewords.h"
#include "ui/bench/places.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

PipetteModel::PipetteModel(QObject *parent)
    : QAbstractTableModel(parent)
{
}

void PipetteModel::show(const PipetteSheet &sheet, int round, int rackColumns, const QString &reading)
{
    const int columns = std::max(1, rackColumns);
    const bool same = columns == m_columns && sheet.tubes() == m_sheet.tubes() && !m_sheet.rounds().empty() &&
                      !sheet.rounds().empty();
    if (!same)
        beginResetModel();
    m_sheet = sheet;
    m_round = round;
    m_reading = reading;
    m_columns = columns;
    if (!same)
        endResetModel();
    else if (rowCount() > 0)
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

std::optional<int> PipetteModel::tubeAt(const QModelIndex &index) const
{
    if (!index.isValid())
        return std::nullopt;
    const int tube = index.row() * m_columns + index.column();
    return tube < m_sheet.tubes() ? std::optional(tube) : std::nullopt;
}

QModelIndex PipetteModel::indexOf(int tube) const
{
    return tube >= 0 && tube < m_sheet.tubes() ? index(tube / m_columns, tube % m_columns) : QModelIndex();
}

std::pair<int, int> PipetteModel::rowOf(int tube) const
{
    const int first = tube / m_columns * m_columns;
    return {first, std::min(first + m_columns, m_sheet.tubes()) - 1};
}

int PipetteModel::rowCount(const QModelIndex &parent) const
{
    if (parent.isValid() || m_sheet.rounds().empty())
        return 0;
    return (m_sheet.tubes() + m_columns - 1) / m_columns;
}

int PipetteModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() || m_sheet.rounds().empty() ? 0 : m_columns;
}

QString PipetteModel::spoken(const Dosing &dosing) const
{
    QStringList words{tr("Tube %1").arg(dosing.tube + 1), contentsText(m_sheet.run(), dosing.tube),
                      stateWords(m_sheet, dosing)};
    switch (m_sheet.stateOf(dosing)) {
    case PipetteSheet::State::Due:
        words << tr("to do");
        break;
    case PipetteSheet::State::Ticked:
        words << tr("done");
        break;
    case PipetteSheet::State::Passed:
        words << tr("not ticked, but read since");
        break;
    case PipetteSheet::State::Nothing:
    case PipetteSheet::State::Spoilt:
        break;
    }
    if (const QString odd = oddWords(m_sheet, dosing); !odd.isEmpty())
        words << odd;
    return words.join(u", "_s);
}

QString PipetteModel::spokenReading(int tube) const
{
    return QStringList{tr("Tube %1").arg(tube + 1), contentsText(m_sheet.run(), tube),
                       tr("%1 %2").arg(m_reading, readingWords(m_sheet, tube, m_reading))}
        .join(u", "_s);
}

QVariant PipetteModel::readingData(int tube, int role) const
{
    using State = PipetteSheet::State;
    switch (role) {
    case Qt::AccessibleTextRole:
    case Qt::ToolTipRole:
        return spokenReading(tube);
    case StateRole:
        if (!m_sheet.spoilt(tube).isEmpty())
            return static_cast<int>(State::Spoilt);
        return static_cast<int>(readingAt(m_sheet.run(), {tube, m_reading}) ? State::Ticked : State::Due);
    case StateWordsRole:
        return readingWords(m_sheet, tube, m_reading);
    case OddRole:
    case DifferentRole:
        return false;
    default:
        return {};
    }
}

QVariant PipetteModel::data(const QModelIndex &index, int role) const
{
    const auto tube = tubeAt(index);
    if (!tube)
        return {};
    if (!m_reading.isEmpty() && role != Qt::DisplayRole && role != ContentsRole && role != WhichRole)
        return readingData(*tube, role);
    const Dosing dosing{m_round, *tube};
    switch (role) {
    case Qt::DisplayRole:
        return QString::number(*tube + 1);
    case Qt::AccessibleTextRole:
    case Qt::ToolTipRole:
        return spoken(dosing);
    case StateRole:
        return static_cast<int>(m_sheet.stateOf(dosing));
    case ContentsRole:
        return briefContentsText(m_sheet.run(), *tube);
    case WhichRole:
        return whichOfAlikeText(m_sheet.run(), *tube);
    case StateWordsRole:
        return cellWords(m_sheet, dosing).volume;
    case DetailRole:
        return cellWords(m_sheet, dosing).detail;
    case OddRole:
        return !oddWords(m_sheet, dosing).isEmpty();
    case DifferentRole:
        return m_sheet.isDifferent(dosing);
    default:
        return {};
    }
}

Qt::ItemFlags PipetteModel::flags(const QModelIndex &index) const
{
    return tubeAt(index) ? Qt::ItemIsEnabled | Qt::ItemIsSelectable : Qt::NoItemFlags;
}

} // namespace plateau::ui
