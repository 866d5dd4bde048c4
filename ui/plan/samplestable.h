// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/sidewaystable.h"

namespace plateau::ui {

class SamplesModel;

/// The samples of a plan, filled in down a column: Enter goes to the sample below, and what is pasted fills
/// the cells from the chosen one on, as it stood in a spreadsheet.
class SamplesTable : public SidewaysTable
{
    Q_OBJECT

public:
    SamplesTable(const Theme &theme, SamplesModel *model, QWidget *parent = nullptr);

protected:
    void currentChanged(const QModelIndex &current, const QModelIndex &previous) override;
    void keyPressEvent(QKeyEvent *event) override;
    void closeEditor(QWidget *editor, QAbstractItemDelegate::EndEditHint hint) override;

    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;
    void focusInEvent(QFocusEvent *event) override;

private:
    bool isKeyed(int column) const;
    void paste();
    void goDown();
    void showCurrent();
    /// As high as its rows, up to a dozen: two scroll bars one in the other lead astray.
    void fitHeight();

    QTimer m_heightLater;
};

} // namespace plateau::ui
