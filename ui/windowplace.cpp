// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/windowplace.h"

#include <QScreen>
#include <QSettings>
#include <QStyle>
#include <QWidget>

namespace plateau::ui {

namespace {

const QString placeKey = QStringLiteral("window/place");

/// Onwards where there is room, else back, else not at all.
int sidestep(int end, int begin, int roomEnd, int roomBegin, int step)
{
    if (end + step <= roomEnd)
        return step;
    return begin - step >= roomBegin ? -step : 0;
}

} // namespace

void restorePlace(QWidget &window, const QSettings &settings)
{
    window.restoreGeometry(settings.value(placeKey).toByteArray()); // refuses what it does not know
}

void stepAside(QWidget &window)
{
    if (window.windowState() & (Qt::WindowMaximized | Qt::WindowFullScreen))
        return;
    const int step = window.style()->pixelMetric(QStyle::PM_TitleBarHeight, nullptr, &window);
    const QRect room = window.screen()->availableGeometry();
    const QRect place = window.geometry();
    window.move(window.pos() + QPoint(sidestep(place.right(), place.left(), room.right(), room.left(), step),
                                      sidestep(place.bottom(), place.top(), room.bottom(), room.top(), step)));
}

bool keepPlace(const QWidget &window, QSettings &settings)
{
    settings.setValue(placeKey, window.saveGeometry());
    settings.sync();
    return settings.status() == QSettings::NoError;
}

} // namespace plateau::ui
