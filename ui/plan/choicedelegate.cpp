// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/plan/choicedelegate.h"

#include <QComboBox>

namespace plateau::ui {

ChoiceDelegate::ChoiceDelegate(int offersRole, QObject *parent)
    : ShownNumbersDelegate(parent)
    , m_offersRole(offersRole)
{
}

QWidget *ChoiceDelegate::createEditor(QWidget *parent, const QStyleOptionViewItem &,
                                      const QModelIndex &index) const
{
    auto *box = new QComboBox(parent);
    const QVariantList offers = index.data(m_offersRole).toList();
    for (const QVariant &offer : offers)
        box->addItem(offer.toList().at(1).toString(), offer.toList().at(0));
    box->setAccessibleName(index.model()->headerData(index.column(), Qt::Horizontal).toString());
    return box;
}

void ChoiceDelegate::setEditorData(QWidget *editor, const QModelIndex &index) const
{
    auto *box = qobject_cast<QComboBox *>(editor);
    box->setCurrentIndex(box->findData(index.data(Qt::EditRole)));
}

void ChoiceDelegate::setModelData(QWidget *editor, QAbstractItemModel *model, const QModelIndex &index) const
{
    model->setData(index, qobject_cast<QComboBox *>(editor)->currentData(), Qt::EditRole);
}

} // namespace plateau::ui
