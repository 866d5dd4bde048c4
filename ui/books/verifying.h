// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/notebook.h"

#include <QObject>
#include <QTemporaryDir>

#include <atomic>
#include <memory>

class QThread;

namespace plateau::ui {

/// Verifies the notebook as it is now while the work goes on: a copy of this moment is verified in a thread
/// of its own, since the notebook belongs to one thread and to nobody else. One at a time.
class Verifying : public QObject
{
    Q_OBJECT

public:
    explicit Verifying(const notebook::Notebook &notebook, QObject *parent = nullptr);
    ~Verifying() override;

    bool isRunning() const { return m_thread != nullptr; }
    /// Throws notebook::Failure where the copy cannot be made.
    void start();
    void stop() { m_stop = true; }

Q_SIGNALS:
    /// Of a thousand.
    void progressed(int part);
    void finished(const plateau::notebook::Verification &verification);
    void stopped();
    void failed(const QString &sentence);

private:
    void work(const QString &copy);
    void end();

    const notebook::Notebook &m_notebook;
    std::unique_ptr<QTemporaryDir> m_folder;
    QThread *m_thread = nullptr;
    std::atomic<bool> m_stop = false;
};

} // namespace plateau::ui
