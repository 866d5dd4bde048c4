// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/exchange/readingcolumn.h"
#include "ui/shared/syncrows.h"

#include <QAbstractTableModel>

namespace plateau::ui {

class Theme;

/// The lines of a pasted or filed column, each with what is understood or why it is not.
class ColumnModel : public RowsModel<QAbstractTableModel, exchange::ColumnRow>
{
    Q_OBJECT

public:
    enum Column { Line, Raw, Tube, Result, ColumnCount };

    explicit ColumnModel(const Theme &theme, QObject *parent = nullptr);
    void setLines(std::vector<exchange::ColumnRow> rows) { setRows(std::move(rows)); }

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant cellData(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    QString text(const exchange::ColumnRow &row, int column) const;

    const Theme &m_theme;
};

} // namespace plateau::ui
