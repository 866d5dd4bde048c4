// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/keeper.h"

#include "ui/shared/userfolders.h"

#include <chrono>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

const QString rootKey = QStringLiteral("backups/folder");

} // namespace

Keeper::Keeper(const notebook::Notebook &notebook, std::unique_ptr<QSettings> settings, QObject *parent)
    : QObject(parent)
    , m_notebook(notebook)
    , m_settings(settings ? std::move(settings)
                          : std::make_unique<QSettings>(QSettings::IniFormat, QSettings::UserScope,
                                                        u"plateau"_s, u"plateau"_s))
{
    m_hour.setInterval(std::chrono::hours(1));
    connect(&m_hour, &QTimer::timeout, this, &Keeper::backUpIfChanged);
}

QString Keeper::root() const
{
    const QString chosen = m_settings->value(rootKey).toString();
    return chosen.isEmpty() ? usualBackupRoot() : chosen;
}

void Keeper::setRoot(const QString &folder)
{
    if (folder.isEmpty())
        m_settings->remove(rootKey);
    else
        m_settings->setValue(rootKey, folder);
    m_settings->sync();
    Q_EMIT backupsChanged();
}

std::vector<notebook::Backup> Keeper::backups() const
{
    return notebook::backupsIn(m_notebook.keeping().backupFolder(root()));
}

void Keeper::start()
{
    m_started = true;
    m_hour.start();
    backUpIfChanged();
}

void Keeper::backUpIfChanged()
{
    if (!m_started)
        return;
    try {
        if (m_notebook.keeping().hasChangedSinceBackup(root()))
            backUp();
    } catch (const notebook::Failure &failure) {
        Q_EMIT failed(failure.sentence());
    }
}

notebook::BackupMade Keeper::backUp()
{
    const notebook::BackupMade made = m_notebook.keeping().backUp(root());
    Q_EMIT backupsChanged();
    return made;
}

} // namespace plateau::ui
