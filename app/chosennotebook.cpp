// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/chosennotebook.h"

#include "ui/shared/userfolders.h"

#include <QDir>
#include <QSettings>

namespace plateau::app {

using namespace Qt::StringLiterals;

namespace {

const QString chosenNotebookKey = QStringLiteral("notebook/file");

} // namespace

QSettings programSettings()
{
    return QSettings(QSettings::IniFormat, QSettings::UserScope, u"plateau"_s, u"plateau"_s);
}

QString chosenNotebook(const QSettings &settings)
{
    const QString path = settings.value(chosenNotebookKey).toString();
    return QDir::isAbsolutePath(path) ? path : ui::usualNotebook();
}

bool chooseNotebook(QSettings &settings, const QString &path)
{
    if (path == ui::usualNotebook())
        settings.remove(chosenNotebookKey);
    else
        settings.setValue(chosenNotebookKey, path);
    settings.sync();
    return settings.status() == QSettings::NoError;
}

} // namespace plateau::app
