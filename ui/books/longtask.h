// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/copying.h"
#include "core/notebook/progress.h"
#include "ui/books/copypace.h"

#include <QObject>
#include <QTimer>

#include <atomic>
#include <functional>
#include <memory>

class QThread;

namespace plateau::ui {

/// Work on files that takes its time, done in a thread of its own while the bench goes on. One at a time. A
/// notebook belongs to one thread: what is to be made of the open one is made of a copy, whose pages are
/// copied here, a few between any two events of the window.
class LongTask : public QObject
{
    Q_OBJECT

public:
    /// Done in the thread. What it returns is done in the window's own when all went well. May throw
    /// notebook::Failure, and notebook::Stopped where the watch says so.
    using Work = std::function<std::function<void()>(const notebook::Watch &)>;
    using CopyWork = std::function<std::function<void()>(notebook::CopyToCheck &, const notebook::Watch &)>;

    explicit LongTask(QObject *parent = nullptr);
    /// Stops the work and waits for it.
    ~LongTask() override;

    bool isRunning() const { return m_thread != nullptr || m_copy != nullptr; }
    /// Nothing while another runs.
    void start(Work work);
    /// The same with a copy of a notebook that is open in this thread; the notebook outlives the task.
    void start(std::unique_ptr<notebook::CopyUnderWay> copy, CopyWork work);
    void stop();

Q_SIGNALS:
    /// Of a thousand.
    void progressed(int part);
    void stopped();
    void failed(const QString &sentence);
    /// However it ended, before what it has to say.
    void ended();

private:
    void copySome();
    void startThread(Work work);
    void run(const Work &work);

    QThread *m_thread = nullptr;
    std::atomic<bool> m_stop = false;
    std::unique_ptr<notebook::CopyUnderWay> m_copy;
    CopyWork m_afterCopy;
    CopyPace m_pace;
    QTimer m_pause;
};

} // namespace plateau::ui
