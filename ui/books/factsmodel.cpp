// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/factsmodel.h"

namespace plateau::ui {

void FactsModel::show(const QStringList &titles, std::vector<QStringList> rows)
{
    if (titles != m_titles) {
        setRows({});
        beginResetModel();
        m_titles = titles;
        endResetModel();
    }
    setRows(std::move(rows));
}

int FactsModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_titles.size());
}

QVariant FactsModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    if (role == Qt::DisplayRole)
        return row(index.row()).value(index.column());
    if (role == Qt::TextAlignmentRole && index.column() > 0)
        return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
    return {};
}

QVariant FactsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation == Qt::Horizontal && role == Qt::TextAlignmentRole && section > 0)
        return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter); // above what it heads
    const bool title = orientation == Qt::Horizontal && role == Qt::DisplayRole;
    return title ? QVariant(m_titles.value(section)) : QVariant();
}

} // namespace plateau::ui
