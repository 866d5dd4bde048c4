// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/notebook.h"

#include <QObject>
#include <QSettings>
#include <QTimer>

#include <memory>

namespace plateau::ui {

/// Has the notebook backed up by itself, and knows where backups go: a setting of this computer, or the
/// user's data folder. The notebook is only read.
class Keeper : public QObject
{
    Q_OBJECT

public:
    /// settings: nullptr for the program's own.
    explicit Keeper(const notebook::Notebook &notebook, std::unique_ptr<QSettings> settings = {},
                    QObject *parent = nullptr);

    const notebook::Notebook &notebook() const { return m_notebook; }
    QString root() const;
    /// Empty: the usual one again.
    void setRoot(const QString &folder);
    /// Newest first.
    std::vector<notebook::Backup> backups() const;

    /// From now on a backup is made where the notebook has changed since the newest one: now, every hour, and
    /// by backUpIfChanged.
    void start();
    /// Only after start. What went wrong is told by failed.
    void backUpIfChanged();
    /// In any case. Throws notebook::Failure.
    notebook::BackupMade backUp();

Q_SIGNALS:
    void backupsChanged();
    /// In one sentence.
    void failed(const QString &sentence);

private:
    const notebook::Notebook &m_notebook;
    std::unique_ptr<QSettings> m_settings;
    QTimer m_hour;
    bool m_started = false;
};

} // namespace plateau::ui
