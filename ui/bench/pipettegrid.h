// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QTableView>
#include <QTimer>

namespace plateau::ui {

class PipetteCell;
class PipetteModel;
class Theme;

/// The rack to work through with one hand: large cells, arrow keys, and one key of the space bar or the
/// number pad for every act. Shows what it is told; does nothing by itself.
class PipetteGrid : public QTableView
{
    Q_OBJECT

public:
    PipetteGrid(const Theme &theme, PipetteModel *model, QWidget *parent = nullptr);

    void goTo(int tube);
    /// -1 where the cursor is on no tube.
    int currentTube() const;
    /// No tube is next: none is marked until the cursor moves.
    void setCalm(bool calm);
    /// The tube at the cursor is marked.
    bool isMarked() const;

Q_SIGNALS:
    /// Space or Enter.
    void tickWanted();
    /// "+" and "*".
    void rowWanted();
    void roundWanted();
    /// "-" or Backspace.
    void undoWanted();
    /// A digit, point or comma: the volume that really went in begins.
    void volumeBegun(const QString &text);
    /// "/".
    void spoiltWanted();
    void cursorMoved();

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;
    void currentChanged(const QModelIndex &current, const QModelIndex &previous) override;

private:
    bool act(const QString &text);
    void fitRows();
    void fitRowsAnew();
    int neededRowHeight() const;

    const Theme &m_theme;
    PipetteModel *m_tubes;
    PipetteCell *m_cells;
    QTimer m_refit;
    bool m_calm = false;
};

} // namespace plateau::ui
