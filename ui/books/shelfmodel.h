// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/shelf.h"
#include "ui/books/measurandnames.h"
#include "ui/shared/syncrows.h"
#include "ui/shared/theme.h"

#include <QAbstractTableModel>

namespace plateau::ui {

/// A waiting sample as the list shows it.
struct ShelfRow {
    QString sample;
    QString product;
    State shape = State::Info;
    QString why;
    QString expected;
    QString matrix;
    QString received;
    QString from;
    bool operator==(const ShelfRow &) const = default;
};

/// The samples that wait, in the order the notebook has them: repeats first.
class ShelfModel : public RowsModel<QAbstractTableModel, ShelfRow>
{
    Q_OBJECT

public:
    enum Column { Sample, Product, Why, Expected, Received, From, Matrix, ColumnCount };

    explicit ShelfModel(const Theme &theme, QObject *parent = nullptr);
    void setWaiting(std::vector<notebook::WaitingSample> waiting, const MeasurandNames &measurands);
    const notebook::WaitingSample &waiting(int row) const { return m_waiting[static_cast<std::size_t>(row)]; }

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant cellData(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    const Theme &m_theme;
    std::vector<notebook::WaitingSample> m_waiting;
};

} // namespace plateau::ui
