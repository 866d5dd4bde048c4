// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/plan/samplecelldelegate.h"

#include "ui/bench/samplesmodel.h"
#include "ui/shared/matrixtext.h"
#include "ui/shared/offerfield.h"

#include <QComboBox>

namespace plateau::ui {

QWidget *SampleCellDelegate::createEditor(QWidget *parent, const QStyleOptionViewItem &option,
                                          const QModelIndex &index) const
{
    const auto kind = static_cast<SamplesModel::Editor>(index.data(SamplesModel::EditorRole).toInt());
    QWidget *editor = nullptr;
    if (kind == SamplesModel::Editor::Number) {
        editor = NumberDelegate::createEditor(parent, option, index);
    } else if (kind == SamplesModel::Editor::Matrix) {
        auto *box = new QComboBox(parent);
        for (const assay::Matrix matrix : allMatrices())
            box->addItem(matrixText(matrix), static_cast<int>(matrix));
        editor = box;
    } else if (kind == SamplesModel::Editor::Product) {
        auto *field = new OfferField(parent);
        field->setFrame(false);
        field->setOffers(index.data(SamplesModel::OffersRole).toStringList());
        field->completeWhileTyping();
        editor = field;
    } else {
        editor = QStyledItemDelegate::createEditor(parent, option, index);
    }
    const QAbstractItemModel *model = index.model();
    editor->setAccessibleName(
        model->headerData(index.column(), Qt::Horizontal).toString().replace(u'\n', u' '));
    return editor;
}

void SampleCellDelegate::setEditorData(QWidget *editor, const QModelIndex &index) const
{
    if (auto *box = qobject_cast<QComboBox *>(editor))
        box->setCurrentIndex(box->findData(index.data(Qt::EditRole)));
    else
        NumberDelegate::setEditorData(editor, index);
}

void SampleCellDelegate::setModelData(QWidget *editor, QAbstractItemModel *model,
                                      const QModelIndex &index) const
{
    if (const auto *box = qobject_cast<QComboBox *>(editor))
        model->setData(index, box->currentData(), Qt::EditRole);
    else
        NumberDelegate::setModelData(editor, model, index);
}

} // namespace plateau::ui
