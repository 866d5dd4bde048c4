// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/showncells.h"

#include <QAbstractItemModel>

#include <algorithm>
#include <vector>

namespace plateau::ui {

/// The signals of a list of rows that becomes another one, without a reset: selection and scroll position
/// stay while a reading is being keyed. Call from inside the model, whose protected functions come as an
/// object: insert(first, last, change), remove(first, last, change), changed(first, last).
template <class Row, class Signals>
void syncRows(std::vector<Row> &rows, std::vector<Row> fresh, Signals signals_)
{
    const auto count = [](const std::vector<Row> &list) { return static_cast<int>(list.size()); };
    const int common = std::min(count(rows), count(fresh));
    if (count(rows) > common)
        signals_.remove(common, count(rows) - 1, [&] { rows.resize(static_cast<std::size_t>(common)); });
    int first = -1;
    int last = -1;
    for (int row = 0; row < common; ++row) {
        const auto at = static_cast<std::size_t>(row);
        if (rows[at] == fresh[at])
            continue;
        rows[at] = fresh[at];
        first = first < 0 ? row : first;
        last = row;
    }
    if (first >= 0)
        signals_.changed(first, last);
    if (count(fresh) > common)
        signals_.insert(common, count(fresh) - 1, [&] { rows = std::move(fresh); });
}

/// A model over a vector of equality-comparable rows. Base is QAbstractListModel or QAbstractTableModel.
template <class Base, class Row> class RowsModel : public ShownCells<Base>
{
public:
    using ShownCells<Base>::ShownCells;

    int rowCount(const QModelIndex &parent = {}) const override
    {
        return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
    }
    const std::vector<Row> &rows() const { return m_rows; }
    const Row &row(int index) const { return m_rows[static_cast<std::size_t>(index)]; }

protected:
    void setRows(std::vector<Row> fresh) { syncRows(m_rows, std::move(fresh), Signals{*this}); }
    void touchAll()
    {
        if (!m_rows.empty())
            Signals{*this}.changed(0, static_cast<int>(m_rows.size()) - 1);
    }

private:
    struct Signals {
        RowsModel &model;
        template <class Change> void insert(int first, int last, Change change)
        {
            model.beginInsertRows({}, first, last);
            change();
            model.endInsertRows();
        }
        template <class Change> void remove(int first, int last, Change change)
        {
            model.beginRemoveRows({}, first, last);
            change();
            model.endRemoveRows();
        }
        void changed(int first, int last)
        {
            // A list model hides its own columnCount.
            const int lastColumn = static_cast<const QAbstractItemModel &>(model).columnCount() - 1;
            Q_EMIT model.dataChanged(model.index(first, 0, {}), model.index(last, lastColumn, {}));
        }
    };

    std::vector<Row> m_rows;
};

} // namespace plateau::ui
