// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/keeper.h"

#include "ui/books/longtask.h"
#include "ui/books/workingcopy.h"
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
    , m_task(new LongTask(this))
{
    m_hour.setInterval(std::chrono::hours(1));
    connect(&m_hour, &QTimer::timeout, this, &Keeper::backUpIfChanged);
    connect(m_task, &LongTask::progressed, this, &Keeper::progressed);
    connect(m_task, &LongTask::ended, this, &Keeper::ended);
    connect(m_task, &LongTask::stopped, this, &Keeper::stopped);
    connect(m_task, &LongTask::failed, this, &Keeper::failed);
}

Keeper::~Keeper() = default;

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
    WorkingCopy::removeRemains();
    try {
        m_notebook.keeping().tidyBackups(root());
    } catch (const notebook::Failure &failure) {
        Q_EMIT failed(failure.sentence());
        return;
    }
    backUpIfChanged();
}

void Keeper::backUpIfChanged()
{
    if (!m_started || isBackingUp())
        return;
    m_asked = false;
    try {
        if (m_notebook.keeping().hasChangedSinceBackup(root()))
            begin();
    } catch (const notebook::Failure &failure) {
        Q_EMIT failed(failure.sentence());
    }
}

void Keeper::backUp()
{
    m_asked = true;
    if (isBackingUp())
        return;
    try {
        begin();
    } catch (const notebook::Failure &failure) {
        Q_EMIT failed(failure.sentence());
    }
}

void Keeper::begin()
{
    notebook::BackupUnderWay backup = m_notebook.keeping().beginBackup(root());
    m_task->start(std::move(backup.copy), [this, finish = std::move(backup.finish)](
                                              notebook::CopyToCheck &copy, const notebook::Watch &watch) {
        return [this, done = finish(copy, watch)] {
            Q_EMIT backupsChanged();
            Q_EMIT made(done.backup.path);
        };
    });
    Q_EMIT began();
}

void Keeper::stop()
{
    m_task->stop();
}

bool Keeper::isBackingUp() const
{
    return m_task->isRunning();
}

} // namespace plateau::ui
