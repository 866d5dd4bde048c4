// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/userfolders.h"

#include <QDir>
#include <QFile>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QString absoluteVariable(const char *variable)
{
    const QString value = qEnvironmentVariable(variable);
    return QDir::isAbsolutePath(value) ? QDir::cleanPath(value) : QString();
}

QString folderOf(const char *variable, const QString &belowHome)
{
    const QString chosen = absoluteVariable(variable);
    return chosen.isEmpty() ? QDir::homePath() + u'/' + belowHome : chosen;
}

} // namespace

QString dataFolder()
{
    return folderOf("XDG_DATA_HOME", u".local/share"_s) + u"/plateau"_s;
}

QString configRoot()
{
    return folderOf("XDG_CONFIG_HOME", u".config"_s);
}

QString stateFolder()
{
    return folderOf("XDG_STATE_HOME", u".local/state"_s) + u"/plateau"_s;
}

QString runtimeFolder()
{
    const QString runtime = absoluteVariable("XDG_RUNTIME_DIR");
    return runtime.isEmpty() ? stateFolder() + u"/run"_s : runtime + u"/plateau"_s;
}

QString usualNotebook()
{
    return dataFolder() + u"/notebook.plateau"_s;
}

QString usualBackupRoot()
{
    return dataFolder() + u"/backups"_s;
}

bool makePrivateFolder(const QString &path)
{
    return QDir().mkpath(path) &&
           QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
}

} // namespace plateau::ui
