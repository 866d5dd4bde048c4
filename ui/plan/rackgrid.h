// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QTableView>

namespace plateau::ui {

class RackModel;
class Theme;

/// The rack from above. Tubes are put elsewhere by dragging, or with Ctrl and an arrow key.
class RackGrid : public QTableView
{
    Q_OBJECT

public:
    RackGrid(const Theme &theme, RackModel *model, QWidget *parent = nullptr);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

Q_SIGNALS:
    void moveWanted(int from, int to);

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    void layOutPlaces();

    const Theme &m_theme;
    RackModel *m_model;
};

} // namespace plateau::ui
