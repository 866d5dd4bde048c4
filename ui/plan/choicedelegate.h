// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/shownnumbers.h"

#include <QStyledItemDelegate>

namespace plateau::ui {

/// Chooses a cell's value from a list that the model gives under a role, as pairs of value and words.
class ChoiceDelegate : public ShownNumbersDelegate
{
    Q_OBJECT

public:
    ChoiceDelegate(int offersRole, QObject *parent);
    QWidget *createEditor(QWidget *parent, const QStyleOptionViewItem &option,
                          const QModelIndex &index) const override;
    void setEditorData(QWidget *editor, const QModelIndex &index) const override;
    void setModelData(QWidget *editor, QAbstractItemModel *model, const QModelIndex &index) const override;

private:
    int m_offersRole;
};

} // namespace plateau::ui
