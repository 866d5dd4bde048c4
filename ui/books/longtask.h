// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/progress.h"

#include <QObject>

#include <atomic>
#include <functional>

class QThread;

namespace plateau::ui {

/// Work on files that takes its time, done in a thread of its own while the bench goes on. One at a time. A
/// notebook belongs to one thread: what is to be read of the open one is copied for the work first.
class LongTask : public QObject
{
    Q_OBJECT

public:
    /// Done in the thread. What it returns is done in the window's own when all went well. May throw
    /// notebook::Failure, and notebook::Stopped where the watch says so.
    using Work = std::function<std::function<void()>(const notebook::Watch &)>;

    explicit LongTask(QObject *parent = nullptr);
    /// Stops the work and waits for it.
    ~LongTask() override;

    bool isRunning() const { return m_thread != nullptr; }
    /// Nothing while another runs.
    void start(Work work);
    void stop() { m_stop = true; }

Q_SIGNALS:
    /// Of a thousand.
    void progressed(int part);
    void stopped();
    void failed(const QString &sentence);
    /// However it ended, before what it has to say.
    void ended();

private:
    void run(const Work &work);

    QThread *m_thread = nullptr;
    std::atomic<bool> m_stop = false;
};

} // namespace plateau::ui
