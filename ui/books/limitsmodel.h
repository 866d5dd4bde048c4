// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/specification.h"
#include "ui/shared/syncrows.h"

namespace plateau::ui {

/// The limits of products, in the order of the list that was saved.
class LimitsModel : public RowsModel<QAbstractTableModel, evaluation::Specification>
{
    Q_OBJECT

public:
    enum Column { Product, Measurand, Kind, Limit, Rule, Source, Date, ColumnCount };

    using RowsModel::RowsModel;

    void setLimits(std::vector<evaluation::Specification> limits) { setRows(std::move(limits)); }
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
};

} // namespace plateau::ui
