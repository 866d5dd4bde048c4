// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/exchange/methodcomparison.h"
#include "ui/shared/syncrows.h"

#include <QAbstractTableModel>

namespace plateau::ui {

/// What differs between two methods: field, before, after.
class ComparisonModel : public RowsModel<QAbstractTableModel, exchange::Difference>
{
    Q_OBJECT

public:
    enum Column { Field, Before, After, ColumnCount };

    explicit ComparisonModel(QObject *parent = nullptr);
    /// before, after: how the two are called.
    void show(std::vector<exchange::Difference> differences, const QString &before, const QString &after);

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant cellData(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    QString m_before;
    QString m_after;
};

} // namespace plateau::ui
