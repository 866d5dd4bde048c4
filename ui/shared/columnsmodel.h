// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/syncrows.h"

#include <QAbstractTableModel>

namespace plateau::ui {

/// A table of rows to read, a text in each column under its heading; numbers stand to the right, and so do
/// their headings.
template <class Row> class ColumnsModel : public RowsModel<QAbstractTableModel, Row>
{
public:
    using RowsModel<QAbstractTableModel, Row>::RowsModel;

    int columnCount(const QModelIndex &parent = {}) const override
    {
        return parent.isValid() ? 0 : columns();
    }
    QVariant cellData(const QModelIndex &index, int role) const override
    {
        if (!index.isValid())
            return {};
        const Row &row = this->row(index.row());
        if (role == Qt::DisplayRole)
            return text(row, index.column());
        if (role == Qt::TextAlignmentRole)
            return alignment(index.column());
        return look(row, index.column(), role);
    }
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override
    {
        if (orientation != Qt::Horizontal)
            return {};
        if (role == Qt::TextAlignmentRole)
            return alignment(section);
        return role == Qt::DisplayRole ? QVariant(heading(section)) : QVariant();
    }

protected:
    virtual int columns() const = 0;
    virtual QString text(const Row &row, int column) const = 0;
    virtual QString heading(int column) const = 0;
    virtual bool isNumber(int) const { return false; }
    /// Icon, font and what else there is beside the text.
    virtual QVariant look(const Row &, int, int) const { return {}; }

private:
    QVariant alignment(int column) const
    {
        return isNumber(column) ? QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter) : QVariant();
    }
};

} // namespace plateau::ui
