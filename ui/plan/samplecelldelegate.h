// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/numberdelegate.h"

namespace plateau::ui {

/// Edits the cells of SamplesModel: numbers with the program's number entry, the matrix from a list, the rest
/// as text.
class SampleCellDelegate : public NumberDelegate
{
    Q_OBJECT

public:
    using NumberDelegate::NumberDelegate;
    QWidget *createEditor(QWidget *parent, const QStyleOptionViewItem &option,
                          const QModelIndex &index) const override;
    void setEditorData(QWidget *editor, const QModelIndex &index) const override;
    void setModelData(QWidget *editor, QAbstractItemModel *model, const QModelIndex &index) const override;
};

} // namespace plateau::ui
