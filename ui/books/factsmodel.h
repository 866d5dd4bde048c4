// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/syncrows.h"

#include <QStringList>

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
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant cellData(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    QVariant alignment(int column) const;

    std::set<int> m_texts;
    QStringList m_titles;
};

} // namespace plateau::ui
