// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/shownnumbers.h"

#include <QAbstractItemModel>

namespace plateau::ui {

/// A model whose cells are read out as they are painted (ShownNumbersDelegate), with the decimal sign of the locale: Qt's
/// accessible cell asks the model for Qt::AccessibleTextRole, and takes what it holds, in C format, only where that is empty.
template <class Base> class ShownCells : public Base
{
public:
    using Base::Base;

    QVariant data(const QModelIndex &index, int role = Qt::DisplayRole) const final
    {
        QVariant own = cellData(index, role);
        if (role != Qt::AccessibleTextRole)
            return own;
        if (own.isValid())
            return shownNumbers(own.toString());
        const QString text = cellData(index, Qt::DisplayRole).toString();
        if (text.isEmpty())
            return {};
        return shownCell(text, alignmentOf(cellData(index, Qt::TextAlignmentRole)),
                         cellData(index, FigureRole).toBool());
    }

protected:
    /// As QAbstractItemModel::data. Qt::AccessibleTextRole only where it is more than the text that is painted.
    virtual QVariant cellData(const QModelIndex &index, int role) const = 0;
};

} // namespace plateau::ui
