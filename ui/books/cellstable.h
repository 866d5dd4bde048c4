// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/table.h"

#include <map>

class QAbstractButton;

namespace plateau::ui {

class CellsModel;

/// Fills in a CellsModel by keys: typing fills a cell, Enter goes on to the next one that means something,
/// Insert adds a row, Ctrl+Delete takes it away, Alt+Up and Alt+Down move it; a row can be dragged as well.
class CellsTable : public Table
{
    Q_OBJECT

public:
    CellsTable(const Theme &theme, CellsModel *model, const QString &accessibleName,
               const QString &objectName, QWidget *parent = nullptr);

    /// The rows' keys said in one line below a table.
    static QString keysHint();
    /// In this table a letter does not type but presses the button of that mnemonic.
    void setLetter(QAbstractButton *button);
    void goTo(int row, int column);
    /// To the next cell that can be filled in; at the end of the last row it stays.
    void goOn();
    void insertRow();
    void removeRow();
    void moveRow(int by);
    /// Takes back the last change of the table.
    void undo();
    /// The current row goes to that place of the viewport, as by dragging it there.
    void dropCurrentAt(const QPoint &place);
    /// The rows come from elsewhere: their keys do nothing.
    void setRowsFixed(bool fixed = true) { m_rowsFixed = fixed; }
    /// As high as so many rows.
    void setRowsShown(int rows);

protected:
    void closeEditor(QWidget *editor, QAbstractItemDelegate::EndEditHint hint) override;
    void keyPressEvent(QKeyEvent *event) override;
    void dropEvent(QDropEvent *event) override;
    void focusInEvent(QFocusEvent *event) override;

private:
    bool canFill(const QModelIndex &index) const;
    bool pressLetter(QKeyEvent *event) const;

    CellsModel *m_cells;
    bool m_rowsFixed = false;
    std::map<int, QAbstractButton *> m_letters;
};

} // namespace plateau::ui
