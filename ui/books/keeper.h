// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/notebook.h"

#include <QObject>
#include <QSettings>
#include <QTimer>

#include <memory>

namespace plateau::ui {

class LongTask;

/// Has the notebook backed up by itself, and knows where backups go: a setting of this computer, or the
/// user's data folder. A backup is made beside the work, one at a time; the notebook is only read.
class Keeper : public QObject
{
    Q_OBJECT

public:
    /// settings: nullptr for the program's own.
    explicit Keeper(const notebook::Notebook &notebook, std::unique_ptr<QSettings> settings = {},
                    QObject *parent = nullptr);
    /// A backup that is being made is stopped; there is no half one.
    ~Keeper() override;

    const notebook::Notebook &notebook() const { return m_notebook; }
    QString root() const;
    /// Empty: the usual one again.
    void setRoot(const QString &folder);
    /// Newest first.
    std::vector<notebook::Backup> backups() const;

    /// From now on a backup is made where the notebook has changed since the newest one: now, every hour, and
    /// by backUpIfChanged. What earlier programs left half made is taken away.
    void start();
    /// Only after start.
    void backUpIfChanged();
    /// In any case; where one is being made already, that one.
    void backUp();
    void stop();
    bool isBackingUp() const;
    /// The one that is being made, or was made last, is one that somebody asked for.
    bool wasAskedFor() const { return m_asked; }

Q_SIGNALS:
    void backupsChanged();
    void began();
    /// Of a thousand.
    void progressed(int part);
    /// However it ended, before one of the next three.
    void ended();
    void made(const QString &path);
    void stopped();
    /// In one sentence; also where none could begin.
    void failed(const QString &sentence);

private:
    void begin();

    const notebook::Notebook &m_notebook;
    std::unique_ptr<QSettings> m_settings;
    LongTask *m_task;
    QTimer m_hour;
    bool m_started = false;
    bool m_asked = false;
};

} // namespace plateau::ui
