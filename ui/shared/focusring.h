// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QObject>
#include <QPointer>
#include <QWidget>

namespace plateau::ui {

class Theme;

/// Draws a ring around what the keys go to, where the style's own is too faint: fields of one line and boxes to tick, in
/// every window of the program.
class FocusRing : public QObject
{
    Q_OBJECT

public:
    /// theme outlives it.
    explicit FocusRing(const Theme &theme, QObject *parent = nullptr);
    /// Where it is drawn; empty where the style says enough.
    static QRect ringOf(const QWidget &widget);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void follow(QWidget *now);

    const Theme &m_theme;
    QPointer<QWidget> m_at;
    bool m_isPainting = false;
};

} // namespace plateau::ui
