// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/shelf.h"
#include "ui/bench/rundraft.h"
#include "ui/shared/showncells.h"

#include <QAbstractTableModel>

#include <vector>

namespace plateau::ui {

/// The samples that wait, each with why; those to take into the plan are ticked.
class WaitingModel : public ShownCells<QAbstractTableModel>
{
    Q_OBJECT

public:
    enum Column { Sample, Why, Product, Received, ColumnCount };

    using ShownCells::ShownCells;

    /// Ticks stay with what is still there.
    void setWaiting(std::vector<notebook::WaitingSample> waiting);
    /// The ticked ones as rows of a plan of this method; advice of another method is left out. Their ticks
    /// go.
    std::vector<SampleDraft> take(const assay::Method &method);
    int ticked() const;

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant cellData(const QModelIndex &index, int role) const override;
    bool setData(const QModelIndex &index, const QVariant &value, int role) override;
    Qt::ItemFlags flags(const QModelIndex &index) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    struct Row {
        notebook::WaitingSample waiting;
        bool ticked = false;
    };
    std::vector<Row> m_rows;
};

} // namespace plateau::ui
