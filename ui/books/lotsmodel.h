// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/reagents.h"
#include "ui/books/lotwords.h"
#include "ui/shared/syncrows.h"

#include <QAbstractTableModel>

#include <functional>

namespace plateau::ui {

/// A container as the list shows it.
struct LotRow {
    planning::Lot lot;
    LotStanding standing;
    bool operator==(const LotRow &) const = default;
};

/// Containers by reagent, those to be used first on top; what is used up comes last.
class LotsModel : public RowsModel<QAbstractTableModel, LotRow>
{
    Q_OBJECT

public:
    enum Column { Reagent, Lot, Standing, Left, UseBy, Place, ColumnCount };
    static constexpr int SortRole = Qt::UserRole + 1;

    explicit LotsModel(const Theme &theme, QObject *parent = nullptr);
    void setLots(std::vector<planning::Lot> lots, const QDateTime &now,
                 const std::function<LotUse(const QString &reagent)> &use);
    /// -1 if there is none of that id.
    int rowOf(qint64 id) const;

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant cellData(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    const Theme &m_theme;
};

} // namespace plateau::ui
