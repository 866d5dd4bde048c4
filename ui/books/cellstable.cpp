// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/cellstable.h"

#include "ui/books/celldelegate.h"
#include "ui/books/cellsmodel.h"
#include "ui/shared/theme.h"

#include <QAbstractButton>
#include <QDropEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QShortcut>

#include <algorithm>

namespace plateau::ui {

CellsTable::CellsTable(const Theme &theme, CellsModel *model, const QString &accessibleName,
                       const QString &objectName, QWidget *parent)
    : Table(theme, model, accessibleName, objectName, parent)
    , m_cells(model)
{
    setItemDelegate(new CellDelegate(theme, model, this));
    setEditTriggers(AnyKeyPressed | EditKeyPressed | DoubleClicked);
    setDragDropMode(InternalMove);
    setDragDropOverwriteMode(false);
    setDropIndicatorShown(true);
    setVerticalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    // From within an editor too: leaving it keeps what was typed.
    const auto onKey = [this](const QKeySequence &keys, auto act) {
        auto *shortcut = new QShortcut(keys, this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, [this, act] {
            if (m_rowsFixed)
                return;
            setFocus();
            act();
        });
    };
    onKey(QKeySequence(Qt::Key_Insert), [this] { insertRow(); });
    onKey(QKeySequence(Qt::CTRL | Qt::Key_Delete), [this] { removeRow(); });
    onKey(QKeySequence::Undo, [this] { undo(); });
    onKey(QKeySequence(Qt::ALT | Qt::Key_Up), [this] { moveRow(-1); });
    onKey(QKeySequence(Qt::ALT | Qt::Key_Down), [this] { moveRow(1); });
    connect(model, &QAbstractItemModel::dataChanged, this, &Table::fit);
    connect(model, &QAbstractItemModel::modelReset, this, &Table::fit);
}

QString CellsTable::keysHint()
{
    return tr("Type to fill a cell, Enter goes on, F2 changes what is there. Insert adds a row, Ctrl+Delete "
              "removes it, Alt+Up and Alt+Down move it, Ctrl+Z undoes.");
}

void CellsTable::setLetter(QAbstractButton *button)
{
    const QKeySequence mnemonic = QKeySequence::mnemonic(button->text());
    if (!mnemonic.isEmpty())
        m_letters[mnemonic[0].key()] = button;
}

void CellsTable::setRowsShown(int rows)
{
    setFixedHeight(horizontalHeader()->sizeHint().height() + rows * verticalHeader()->defaultSectionSize() +
                   2 * frameWidth());
}

void CellsTable::goTo(int row, int column)
{
    const int last = model()->rowCount() - 1;
    if (last < 0)
        return;
    setCurrentIndex(model()->index(std::clamp(row, 0, last), std::max(0, column)));
    scrollTo(currentIndex());
}

bool CellsTable::canFill(const QModelIndex &index) const
{
    return !isColumnHidden(index.column()) &&
           (index.flags() & (Qt::ItemIsEditable | Qt::ItemIsUserCheckable));
}

void CellsTable::goOn()
{
    const QModelIndex from = currentIndex();
    if (!from.isValid())
        return;
    int column = from.column() + 1;
    for (int row = from.row(); row < model()->rowCount(); ++row, column = 0) {
        for (; column < model()->columnCount(); ++column) {
            if (const QModelIndex next = model()->index(row, column); canFill(next)) {
                goTo(row, column);
                return;
            }
        }
        if (m_cells->isOpenRow(from.row()))
            return; // nothing was keyed there
    }
}

void CellsTable::insertRow()
{
    const QModelIndex from = currentIndex();
    const int row = from.isValid() ? from.row() : 0;
    m_cells->insertRowAt(row, m_cells->newRow());
    goTo(row, 0);
    if (!canFill(currentIndex()))
        goOn();
}

void CellsTable::removeRow()
{
    const QModelIndex at = currentIndex();
    if (!at.isValid())
        return;
    m_cells->removeRowAt(at.row());
    goTo(at.row(), at.column());
}

void CellsTable::moveRow(int by)
{
    const QModelIndex at = currentIndex();
    if (at.isValid() && m_cells->moveRowTo(at.row(), at.row() + by))
        goTo(at.row() + by, at.column());
}

void CellsTable::undo()
{
    const QPoint at(std::max(0, currentIndex().column()), std::max(0, currentIndex().row()));
    if (m_cells->undo())
        goTo(at.y(), at.x());
}

void CellsTable::closeEditor(QWidget *editor, QAbstractItemDelegate::EndEditHint hint)
{
    const bool on =
        hint == QAbstractItemDelegate::SubmitModelCache || hint == QAbstractItemDelegate::EditNextItem;
    Table::closeEditor(editor, on ? QAbstractItemDelegate::NoHint : hint);
    if (on)
        goOn();
}

bool CellsTable::pressLetter(QKeyEvent *event) const
{
    const auto letter = m_letters.find(event->key());
    if (letter == m_letters.end() || event->modifiers() != Qt::NoModifier)
        return false;
    letter->second->click();
    return true;
}

void CellsTable::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        if (state() != EditingState) // else the editor has taken it and goes on by itself
            goOn();
    } else if (event->key() == Qt::Key_Delete && event->modifiers() == Qt::NoModifier) {
        if (currentIndex().isValid() && !m_cells->isOpenRow(currentIndex().row()))
            m_cells->setData(currentIndex(), QString(), Qt::EditRole);
    } else if (!pressLetter(event)) {
        Table::keyPressEvent(event);
    }
}

void CellsTable::focusInEvent(QFocusEvent *event)
{
    const bool fresh = !currentIndex().isValid();
    Table::focusInEvent(event);
    if (!fresh || model()->rowCount() == 0)
        return;
    goTo(0, 0);
    if (!canFill(currentIndex()))
        goOn();
}

void CellsTable::dropCurrentAt(const QPoint &place)
{
    const QModelIndex from = currentIndex();
    if (!from.isValid())
        return;
    const int last = static_cast<int>(m_cells->rows().size()) - 1;
    const QModelIndex over = indexAt(place);
    int to = over.isValid() ? over.row() : last + 1;
    if (over.isValid() && place.y() > visualRect(over).center().y())
        ++to;
    if (to > from.row())
        --to; // the row itself leaves its place
    to = std::min(to, last);
    if (m_cells->moveRowTo(from.row(), to))
        goTo(to, from.column());
}

void CellsTable::dropEvent(QDropEvent *event)
{
    if (event->source() != this)
        return;
    dropCurrentAt(event->position().toPoint());
    // A copy, as far as the view knows: after a move it would take the row away.
    event->setDropAction(Qt::CopyAction);
    event->accept();
    viewport()->update();
}

} // namespace plateau::ui
