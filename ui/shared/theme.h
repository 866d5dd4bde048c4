// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QColor>
#include <QFont>
#include <QIcon>
#include <QObject>
#include <QPalette>

#include <map>

class QPainter;
class QRectF;

namespace plateau::ui {

/// How something stands. Each state has a shape of its own, so that colour never carries it alone.
enum class State { Good, Attention, Bad, Pending, Info };

/// All colours, fonts and distances of the window. Follows the desktop's palette: light or dark by the
/// lightness of window and text. State colours: the colour-blind-safe set of Okabe and Ito, "Color Universal
/// Design" (2008).
class Theme : public QObject
{
    Q_OBJECT

public:
    explicit Theme(QObject *parent = nullptr);

    /// Takes palette and font of the window anew; emits changed() if anything differs.
    void refresh(const QPalette &palette, const QFont &font);

    bool isDark() const { return m_dark; }
    QColor text() const;
    /// For facts of second rank; still at least 4.5:1 on the window.
    QColor mutedText() const;
    QColor base() const;
    /// Fill of a shape or a bar; drawn with an outline in text colour.
    QColor colour(State state) const;
    /// Ground to write on in text colour.
    QColor tint(State state) const;
    /// What fills one of four parts of a drawing, counted from 0, of the same set but of no state; to be overlaid with a pattern.
    QColor part(int number) const;
    /// A ring around what the keys go to: at least 3:1 on a field and on the window.
    QColor focus() const;
    /// What the window sets over the desktop's palette, where that falls short of 4.5:1.
    QPalette adjustments() const;

    QIcon icon(State state) const;
    /// A drawing of resources/icons in the text colour.
    QIcon drawing(const QString &name) const;
    void paintShape(QPainter &painter, const QRectF &area, State state) const;

    int gap() const;
    int wideGap() const;
    /// Smallest height and width of anything to be hit.
    int target() const;
    QFont bold() const;
    /// To be read from arm's length, and from a metre away.
    QFont large() const;
    QFont huge() const;

Q_SIGNALS:
    void changed();

private:
    QPalette m_palette;
    QFont m_font;
    bool m_dark = false;
    /// Tables ask for an icon with every cell, and lists for a drawing with every paint.
    mutable std::map<State, QIcon> m_icons;
    mutable std::map<QString, QIcon> m_drawings;
};

/// Theme::focus() for who has no theme, a style.
QColor focusColour(const QPalette &palette);

/// Contrast of two opaque colours, 1 to 21. Formula: WCAG 2.2, definitions "contrast ratio" and "relative
/// luminance".
double contrast(const QColor &one, const QColor &other);

} // namespace plateau::ui
