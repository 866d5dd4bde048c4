// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/factsmodel.h"

namespace plateau::ui {

FactsModel::FactsModel(QObject *parent, std::set<int> texts)
    : RowsModel(parent)
    , m_texts(std::move(texts))
{
    m_texts.insert(0);
}

QVariant FactsModel::alignment(int column) const
{
    return m_texts.contains(column) ? QVariant() : QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
}

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

void FactsModel::setMarks(const Theme &theme, int column, std::map<QString, State> marks)
{
    m_theme = &theme;
    m_markedColumn = column;
    m_marks = std::move(marks);
    connect(&theme, &Theme::changed, this, [this] { touchAll(); });
}

QVariant FactsModel::mark(const QModelIndex &index) const
{
    if (index.column() != m_markedColumn)
        return {};
    const auto found = m_marks.find(row(index.row()).value(m_markedColumn));
    return found == m_marks.end() ? QVariant() : QVariant(m_theme->icon(found->second));
}

int FactsModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_titles.size());
}

QVariant FactsModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    if (role == Qt::DisplayRole)
        return row(index.row()).value(index.column());
    if (role == Qt::DecorationRole)
        return mark(index);
    return role == Qt::TextAlignmentRole ? alignment(index.column()) : QVariant();
}

QVariant FactsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation == Qt::Horizontal && role == Qt::TextAlignmentRole)
        return alignment(section); // above what it heads
    const bool title = orientation == Qt::Horizontal && role == Qt::DisplayRole;
    return title ? QVariant(m_titles.value(section)) : QVariant();
}

} // namespace plateau::ui
