// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/lots.h"
#include "core/notebook/records.h"
#include "ui/shared/syncrows.h"

#include <QAbstractTableModel>

namespace plateau::ui {

/// A line of a container's ledger in words.
struct LedgerRow {
    QString at;
    QString what;
    QString change;
    QString note;
    QString person;
    bool operator==(const LedgerRow &) const = default;
};

/// What people noted of a container, oldest first.
class LedgerModel : public RowsModel<QAbstractTableModel, LedgerRow>
{
    Q_OBJECT

public:
    enum Column { At, What, Change, Note, Person, ColumnCount };

    using RowsModel::RowsModel;
    void setMovements(const std::vector<notebook::LotMovement> &movements);

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant cellData(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
};

struct TakingRow {
    notebook::RunId run;
    QString begun;
    QString title;
    QString volume;
    int tubes = 0;
    /// The container that it took from, where that is an aliquot or was dissolved in this one.
    QString through;
    bool operator==(const TakingRow &) const = default;
};

/// The runs that took from a container, by the doses that were ticked.
class TakingsModel : public RowsModel<QAbstractTableModel, TakingRow>
{
    Q_OBJECT

public:
    enum Column { Begun, Title, Volume, Tubes, Through, ColumnCount };

    using RowsModel::RowsModel;
    void setTakings(const std::vector<notebook::LotTaking> &takings);

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant cellData(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
};

} // namespace plateau::ui
