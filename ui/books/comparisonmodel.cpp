// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/comparisonmodel.h"

using namespace Qt::StringLiterals;

namespace plateau::ui {

ComparisonModel::ComparisonModel(QObject *parent)
    : RowsModel(parent)
{
}

void ComparisonModel::show(std::vector<exchange::Difference> differences, const QString &before,
                           const QString &after)
{
    if (before != m_before || after != m_after) {
        m_before = before;
        m_after = after;
        Q_EMIT headerDataChanged(Qt::Horizontal, Before, After);
    }
    setRows(std::move(differences));
}

int ComparisonModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant ComparisonModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const exchange::Difference &difference = row(index.row());
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(Qt::AlignLeft | Qt::AlignTop);
    if (role != Qt::DisplayRole)
        return {};
    switch (index.column()) {
    case Field:
        return difference.words;
    case Before:
        return difference.before.value_or(u"–"_s);
    case After:
        return difference.after.value_or(u"–"_s);
    default:
        return {};
    }
}

QVariant ComparisonModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case Field:
        return tr("Field");
    case Before:
        return m_before;
    case After:
        return m_after;
    default:
        return {};
    }
}

} // namespace plateau::ui
