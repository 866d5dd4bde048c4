// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audittrail.h"
#include "ui/shared/syncrows.h"

#include <QAbstractTableModel>

namespace plateau::ui {

/// An act with what it changed.
struct TrailRow {
    notebook::AuditItem item;
    std::vector<notebook::AuditChange> changes;
    bool operator==(const TrailRow &) const = default;
};

/// Who did what when, the newest first.
class TrailModel : public RowsModel<QAbstractTableModel, TrailRow>
{
    Q_OBJECT

public:
    enum Column { When, Who, What, Run, Of, Before, After, Reason, ColumnCount };
    using RowsModel::RowsModel;

    void show(std::vector<TrailRow> rows) { setRows(std::move(rows)); }

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant cellData(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
};

} // namespace plateau::ui
