// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/tubepicture.h"

#include <QWidget>

namespace plateau::ui {

class Theme;

/// The tube as stacked volumes: each part of the tube has a colour and a pattern of its own, each layer its
/// words beside it, each reading a mark where the tube was filled that far.
class TubeDrawing : public QWidget
{
    Q_OBJECT

public:
    explicit TubeDrawing(const Theme &theme, QWidget *parent = nullptr);
    void setPicture(TubePicture picture);
    const TubePicture &picture() const { return m_picture; }
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent *event) override;
    void changeEvent(QEvent *event) override;

private:
    QRectF tubeArea() const;
    double labelsLeft() const;
    /// Of each layer's words, where the drawing is so wide.
    std::vector<double> labelHeights(int width) const;
    /// Height of a filling within the tube.
    double heightOf(double volume_mL) const;
    void paintLayers(QPainter &painter) const;
    void paintLabels(QPainter &painter) const;
    void paintMarks(QPainter &painter) const;

    const Theme &m_theme;
    TubePicture m_picture;
};

} // namespace plateau::ui
