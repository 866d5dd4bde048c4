// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/plan/rackmodel.h"

#include "ui/bench/places.h"

#include <QMimeData>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

const QString tubeMime = u"application/x-plateau-tube"_s;

QString shortName(const run::Tube &tube)
{
    switch (tube.role) {
    case run::Role::Blank:
        return RackModel::tr("blank");
    case run::Role::SampleBlank:
        return RackModel::tr("%1 blank").arg(tube.sample);
    case run::Role::Spiked:
        return RackModel::tr("%1 spiked").arg(tube.sample);
    case run::Role::Standard:
        return tube.standard;
    case run::Role::Control:
    case run::Role::Sample:
        break;
    }
    return tube.sample.isEmpty() ? tube.standard : tube.sample;
}

} // namespace

void RackModel::setRack(const run::Run &run, int rows, int columns)
{
    const int count = static_cast<int>(run.tubes.size());
    const int wide = std::max(columns, 1);
    const int high = std::max(rows, (count + wide - 1) / wide);
    if (wide != m_columns || high != m_rows) {
        beginResetModel();
        m_run = run;
        m_rows = high;
        m_columns = wide;
        endResetModel();
        return;
    }
    m_run = run;
    Q_EMIT dataChanged(index(0, 0), index(m_rows - 1, m_columns - 1));
}

std::optional<int> RackModel::tubeAt(const QModelIndex &index) const
{
    if (!index.isValid())
        return std::nullopt;
    const int place = index.row() * m_columns + index.column();
    return place < tubes() ? std::optional(place) : std::nullopt;
}

QModelIndex RackModel::indexOf(int tube) const
{
    return m_columns == 0 ? QModelIndex() : index(tube / m_columns, tube % m_columns);
}

int RackModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : m_rows;
}

int RackModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : m_columns;
}

QVariant RackModel::data(const QModelIndex &index, int role) const
{
    const std::optional<int> tube = tubeAt(index);
    if (!tube)
        return role == Qt::AccessibleTextRole && index.isValid() ? tr("empty place") : QVariant();
    const run::Tube &content = m_run.tubes[static_cast<std::size_t>(*tube)];
    switch (role) {
    case Qt::DisplayRole:
    case Qt::AccessibleTextRole:
    case Qt::ToolTipRole: {
        const QString text = tr("Tube %1: %2").arg(*tube + 1).arg(contentsText(m_run, *tube));
        return role == Qt::ToolTipRole ? text.toHtmlEscaped() : text;
    }
    case TubeRole:
        return static_cast<int>(content.role);
    case NumberRole:
        return *tube + 1;
    case NameRole:
        return shortName(content);
    default:
        return {};
    }
}

Qt::ItemFlags RackModel::flags(const QModelIndex &index) const
{
    if (!index.isValid())
        return Qt::NoItemFlags;
    const Qt::ItemFlags usual = Qt::ItemIsEnabled | Qt::ItemNeverHasChildren;
    return tubeAt(index) ? usual | Qt::ItemIsSelectable | Qt::ItemIsDragEnabled | Qt::ItemIsDropEnabled
                         : usual;
}

QStringList RackModel::mimeTypes() const
{
    return {tubeMime};
}

QMimeData *RackModel::mimeData(const QModelIndexList &indexes) const
{
    const std::optional<int> tube = indexes.isEmpty() ? std::nullopt : tubeAt(indexes.front());
    if (!tube)
        return nullptr;
    auto *data = new QMimeData;
    data->setData(tubeMime, QByteArray::number(*tube));
    return data;
}

bool RackModel::dropMimeData(const QMimeData *data, Qt::DropAction action, int, int,
                             const QModelIndex &parent)
{
    const std::optional<int> to = tubeAt(parent);
    bool known = false;
    const int from = data ? data->data(tubeMime).toInt(&known) : 0;
    if (action != Qt::MoveAction || !to || !known || from < 0 || from >= tubes())
        return false;
    if (from != *to)
        Q_EMIT moveWanted(from, *to);
    // Said to be refused, so that the view does not take away what it thinks it moved.
    return false;
}

} // namespace plateau::ui
