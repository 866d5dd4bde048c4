// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/longtask.h"

#include "core/notebook/notebook.h"

#include <QThread>

#include <memory>

namespace plateau::ui {

LongTask::LongTask(QObject *parent)
    : QObject(parent)
{
}

LongTask::~LongTask()
{
    m_stop = true;
    if (m_thread) {
        m_thread->wait();
        delete m_thread;
    }
}

void LongTask::start(Work work)
{
    if (m_thread)
        return;
    m_stop = false;
    m_thread = QThread::create([this, work = std::move(work)] { run(work); });
    m_thread->start();
}

// In the thread: everything that is to be said goes to the window's own, in its queue.
void LongTask::run(const Work &work)
{
    std::function<void()> say;
    try {
        int told = -1;
        say = work([&](qint64 done, qint64 of) {
            const int part = of > 0 ? static_cast<int>(1000 * done / of) : 0;
            if (part != told)
                Q_EMIT progressed(told = part);
            return !m_stop;
        });
    } catch (const notebook::Stopped &) {
        say = [this] { Q_EMIT stopped(); };
    } catch (const notebook::Failure &failure) {
        say = [this, sentence = failure.sentence()] { Q_EMIT failed(sentence); };
    }
    QMetaObject::invokeMethod(this, [this, say] {
        m_thread->wait();
        delete m_thread;
        m_thread = nullptr;
        Q_EMIT ended();
        if (say)
            say();
    });
}

} // namespace plateau::ui
