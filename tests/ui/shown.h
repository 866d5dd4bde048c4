// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QAbstractItemModel>
#include <QString>

namespace plateau::test {

/// What a cell of a table shows.
inline QString shown(const QAbstractItemModel &model, int row, int column)
{
    return model.index(row, column).data(Qt::DisplayRole).toString();
}

} // namespace plateau::test
