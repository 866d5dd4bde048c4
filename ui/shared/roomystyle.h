// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QProxyStyle>

QT_BEGIN_NAMESPACE
class QStyleOptionComboBox;
QT_END_NAMESPACE

namespace plateau::ui {

/// Any style, with more room at both sides of the cells of our tables: a number that stands to the right would else touch the
/// words that begin beside it. Headings have as much, and so stand in line with what they head. What a box cannot show
/// whole ends in dots, and a caption has room for its last letter. What the keys go to within a list or a table has an outline
/// and not a veil over its words, which a dark ground swallows and which makes a chosen cell fainter than the rest of its row.
class RoomyStyle : public QProxyStyle
{
    Q_OBJECT

public:
    /// By the name of the style.
    explicit RoomyStyle(const QString &style);

    int pixelMetric(PixelMetric metric, const QStyleOption *option, const QWidget *widget) const override;
    void drawPrimitive(PrimitiveElement element, const QStyleOption *option, QPainter *painter,
                       const QWidget *widget) const override;
    /// A caption has room for its last letter: with the one that is underlined a text is drawn without its kerning, which the
    /// size that it asks for counts in.
    void polish(QWidget *widget) override;
    using QProxyStyle::polish;
    /// Into that room: a text is cut at the edge of its area.
    void drawItemText(QPainter *painter, const QRect &area, int flags, const QPalette &palette, bool enabled,
                      const QString &text, QPalette::ColorRole role = QPalette::NoRole) const override;
    void drawControl(ControlElement element, const QStyleOption *option, QPainter *painter,
                     const QWidget *widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex *option, QPainter *painter,
                            const QWidget *widget) const override;
    QSize sizeFromContents(ContentsType type, const QStyleOption *option, const QSize &contents,
                           const QWidget *widget) const override;

    /// Of the cell or the line that the keys go to: reads at 3:1 at least on what it stands on.
    static QColor currentOutline(const QPalette &palette, QStyle::State state);

    /// What the box shows of its choice.
    QString elidedIn(const QStyleOptionComboBox &box, const QWidget *widget) const;
    /// What the words of a heading of a table have less room by, at each side, than the style that is built on leaves them.
    int missingBeside(const QStyleOption &option, const QWidget &heading) const;
};

} // namespace plateau::ui
