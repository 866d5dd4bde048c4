// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/celldelegate.h"

#include "ui/books/cellsmodel.h"

#include <QComboBox>

#include <algorithm>

namespace plateau::ui {

CellDelegate::CellDelegate(const Theme &theme, CellsModel *model, QObject *parent)
    : NumberDelegate(theme, parent)
    , m_cells(model)
{
}

QWidget *CellDelegate::createEditor(QWidget *parent, const QStyleOptionViewItem &option,
                                    const QModelIndex &index) const
{
    const CellColumn &column = m_cells->column(index.column());
    QWidget *editor = nullptr;
    if (column.kind == CellColumn::Kind::Number) {
        editor = NumberDelegate::createEditor(parent, option, index);
    } else if (column.kind == CellColumn::Kind::Choice) {
        auto *box = new QComboBox(parent);
        const bool open = m_cells->isOpenRow(index.row());
        const CellRow row =
            open ? m_cells->blankRow() : m_cells->rows()[static_cast<std::size_t>(index.row())];
        for (const CellChoice &choice : column.choices(row))
            box->addItem(choice.words, choice.value);
        editor = box;
    } else {
        editor = QStyledItemDelegate::createEditor(parent, option, index);
    }
    editor->setAccessibleName(
        m_cells->headerData(index.column(), Qt::Horizontal, Qt::AccessibleTextRole).toString());
    return editor;
}

void CellDelegate::setEditorData(QWidget *editor, const QModelIndex &index) const
{
    auto *box = qobject_cast<QComboBox *>(editor);
    if (!box)
        NumberDelegate::setEditorData(editor, index);
    else
        box->setCurrentIndex(box->findData(index.data(Qt::EditRole)));
}

void CellDelegate::setModelData(QWidget *editor, QAbstractItemModel *model, const QModelIndex &index) const
{
    const auto *box = qobject_cast<QComboBox *>(editor);
    if (!box)
        NumberDelegate::setModelData(editor, model, index);
    else if (box->currentIndex() >= 0)
        model->setData(index, box->currentData(), Qt::EditRole);
}

QSize CellDelegate::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    QSize size = NumberDelegate::sizeHint(option, index);
    if (m_cells->isOpenRow(index.row()))
        size.setWidth(std::max(size.width(), option.fontMetrics.averageCharWidth() *
                                                 m_cells->column(index.column()).keyedCharacters));
    return size;
}

void CellDelegate::initStyleOption(QStyleOptionViewItem *option, const QModelIndex &index) const
{
    NumberDelegate::initStyleOption(option, index);
    if (!m_cells->isOpenRow(index.row()) || index.column() != 0)
        return;
    option->text = tr("new row");
    option->features |= QStyleOptionViewItem::HasDisplay;
    option->font.setItalic(true);
}

} // namespace plateau::ui
