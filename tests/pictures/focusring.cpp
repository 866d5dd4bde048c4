// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/pictures/focusring.h"

#include "ui/shared/theme.h"

#include <QApplication>
#include <QImage>
#include <QPixmap>
#include <QScrollBar>
#include <QWidget>

using namespace Qt::StringLiterals;

namespace plateau::test {

namespace {

/// The sides of a mark of four pixels across are seen from a chair.
constexpr int fewestPixels = 16;
constexpr double leastContrast = 3;

bool takesFocus(const QWidget &widget)
{
    return widget.isVisible() && widget.isEnabled() && (widget.focusPolicy() & Qt::TabFocus) &&
           !widget.focusProxy() && !widget.objectName().startsWith(u"qt_"_s) &&
           !qobject_cast<const QScrollBar *>(&widget);
}

QImage picture(QWidget &widget)
{
    QApplication::processEvents();
    return widget.grab().toImage();
}

int changedPixels(const QImage &without, const QImage &with)
{
    int changed = 0;
    for (int y = 0; y < with.height() && y < without.height(); ++y) {
        for (int x = 0; x < with.width() && x < without.width(); ++x) {
            if (with.pixel(x, y) != without.pixel(x, y) &&
                ui::contrast(with.pixelColor(x, y), without.pixelColor(x, y)) >= leastContrast)
                ++changed;
        }
    }
    return changed;
}

} // namespace

QStringList withoutFocusRing(QWidget &window)
{
    QStringList found;
    window.setAttribute(Qt::WA_KeyboardFocusChange); // as after the first Tab
    for (QWidget *widget : window.findChildren<QWidget *>()) {
        if (widget->window() != &window || !takesFocus(*widget))
            continue;
        if (QWidget *holder = QApplication::focusWidget())
            holder->clearFocus();
        const QImage without = picture(*widget);
        widget->setFocus(Qt::TabFocusReason);
        if (QApplication::focusWidget() != widget)
            continue; // it hands the focus on
        const int changed = changedPixels(without, picture(*widget));
        if (changed < fewestPixels)
            found << u"%1 %2: %3 pixels tell that it has the focus"_s.arg(
                QString::fromLatin1(widget->metaObject()->className()), widget->objectName(),
                QString::number(changed));
    }
    return found;
}

} // namespace plateau::test
