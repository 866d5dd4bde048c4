// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/table.h"

namespace plateau::ui {

/// A table that may be wider than its place. While it is scrolled sideways its first column, which tells the rows apart,
/// stays at the left edge, over what went below it.
class SidewaysTable : public Table
{
    Q_OBJECT

public:
    SidewaysTable(const Theme &theme, QAbstractItemModel *model, const QString &accessibleName, const QString &objectName,
                  QWidget *parent = nullptr);

    QModelIndex indexAt(const QPoint &place) const override;
    QRect visualRect(const QModelIndex &index) const override;
    void scrollTo(const QModelIndex &index, ScrollHint hint = EnsureVisible) override;

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    /// 0 as long as nothing is scrolled, and where it would leave too little room for the others.
    int keptWidth() const;
    void paintKept(QPainter &painter, int row) const;
};

} // namespace plateau::ui
