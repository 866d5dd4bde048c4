// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/numberdelegate.h"

namespace plateau::ui {

class CellsModel;

/// The editor that a cell's kind asks for: a text, the program's number entry, or a list to choose from.
class CellDelegate : public NumberDelegate
{
    Q_OBJECT

public:
    CellDelegate(const Theme &theme, CellsModel *model, QObject *parent);
    QWidget *createEditor(QWidget *parent, const QStyleOptionViewItem &option,
                          const QModelIndex &index) const override;
    void setEditorData(QWidget *editor, const QModelIndex &index) const override;
    void setModelData(QWidget *editor, QAbstractItemModel *model, const QModelIndex &index) const override;
    QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override;

protected:
    void initStyleOption(QStyleOptionViewItem *option, const QModelIndex &index) const override;

private:
    CellsModel *m_cells;
};

} // namespace plateau::ui
