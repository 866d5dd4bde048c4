// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/equipment/standing.h"
#include "ui/shared/syncrows.h"
#include "ui/shared/theme.h"

#include <QAbstractTableModel>

namespace plateau::ui {

/// An item of the list in words.
struct EquipmentRow {
    qint64 id = 0;
    QString name;
    QString kind;
    QString size;
    State shape = State::Info;
    QString standing;
    QString due;
    QString number;
    bool operator==(const EquipmentRow &) const = default;
};

/// The laboratory's equipment, what needs somebody first.
class EquipmentModel : public RowsModel<QAbstractTableModel, EquipmentRow>
{
    Q_OBJECT

public:
    enum Column { Name, Kind, Standing, Due, Size, Number, ColumnCount };

    explicit EquipmentModel(const Theme &theme, QObject *parent = nullptr);
    void setItems(const std::vector<equipment::HeldItem> &items, const QDate &today);
    int rowOf(qint64 id) const;

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant cellData(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    const Theme &m_theme;
};

} // namespace plateau::ui
