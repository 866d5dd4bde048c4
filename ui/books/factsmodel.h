// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/syncrows.h"
#include "ui/shared/theme.h"

#include <QStringList>

#include <map>
#include <set>

namespace plateau::ui {

/// A table of texts to read, the first column naming the row. The others hold numbers, which stand to the right, but for
/// those that are said to hold texts.
class FactsModel : public RowsModel<QAbstractTableModel, QStringList>
{
    Q_OBJECT

public:
    explicit FactsModel(QObject *parent = nullptr, std::set<int> texts = {});

    /// Rows as long as the titles. Other titles are another table.
    void show(const QStringList &titles, std::vector<QStringList> rows);
    /// Words of that column, each with the shape that stands beside it.
    void setMarks(const Theme &theme, int column, std::map<QString, State> marks);
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant cellData(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    QVariant alignment(int column) const;
    QVariant mark(const QModelIndex &index) const;

    std::set<int> m_texts;
    QStringList m_titles;
    const Theme *m_theme = nullptr;
    int m_markedColumn = -1;
    std::map<QString, State> m_marks;
};

} // namespace plateau::ui
