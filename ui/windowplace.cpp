// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/windowplace.h"

#include <QSettings>
#include <QWidget>

namespace plateau::ui {

namespace {

const QString placeKey = QStringLiteral("window/place");

} // namespace

void restorePlace(QWidget &window, const QSettings &settings)
{
    window.restoreGeometry(settings.value(placeKey).toByteArray()); // refuses what it does not know
}

bool keepPlace(const QWidget &window, QSettings &settings)
{
    settings.setValue(placeKey, window.saveGeometry());
    settings.sync();
    return settings.status() == QSettings::NoError;
}

} // namespace plateau::ui
