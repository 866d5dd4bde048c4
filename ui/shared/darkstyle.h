// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/roomystyle.h"

namespace plateau::ui {

/// Qt's Fusion for a dark palette. Its outlines are darker than the window, which on a dark one cannot be seen: fields of one line
/// and of several, boxes to tick and buttons that stay pressed get one that reads at 3:1 at least on what it stands on.
class DarkStyle : public RoomyStyle
{
    Q_OBJECT

public:
    DarkStyle();

    static QColor outline(const QPalette &palette);

    void drawPrimitive(PrimitiveElement element, const QStyleOption *option, QPainter *painter,
                       const QWidget *widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex *option, QPainter *painter,
                            const QWidget *widget) const override;
};

} // namespace plateau::ui
