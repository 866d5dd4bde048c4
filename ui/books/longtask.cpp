// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/longtask.h"

#include "core/notebook/notebook.h"

#include <QElapsedTimer>
#include <QThread>

#include <utility>

using namespace Qt::StringLiterals;

namespace plateau::ui {

LongTask::LongTask(QObject *parent)
    : QObject(parent)
{
    constexpr int pause_ms = 2; // so that half a core is left to the window, which paints between two events
    m_pause.setObjectName(u"copyPause"_s);
    m_pause.setParent(this);
    m_pause.setSingleShot(true);
    m_pause.setInterval(pause_ms);
    connect(&m_pause, &QTimer::timeout, this, &LongTask::copySome);
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
    if (!isRunning())
        startThread(std::move(work));
}

void LongTask::start(std::unique_ptr<notebook::CopyUnderWay> copy, CopyWork work)
{
    if (isRunning())
        return;
    m_copy = std::move(copy);
    m_afterCopy = std::move(work);
    m_pause.start();
}

void LongTask::stop()
{
    m_stop = true;
    if (!m_copy)
        return;
    m_pause.stop();
    m_copy.reset();
    Q_EMIT ended();
    Q_EMIT stopped();
}

void LongTask::copySome()
{
    try {
        QElapsedTimer timer;
        timer.start();
        const bool isComplete = m_copy->advance(m_pace.pages());
        m_pace.took(timer.nsecsElapsed() / 1000);
        if (!isComplete) {
            Q_EMIT progressed(static_cast<int>(notebook::copiedPart * m_copy->donePages() /
                                               std::max<qint64>(1, m_copy->allPages())));
            m_pause.start();
            return;
        }
    } catch (const notebook::Failure &failure) {
        m_copy.reset();
        Q_EMIT ended();
        Q_EMIT failed(failure.sentence());
        return;
    }
    const std::shared_ptr<notebook::CopyToCheck> made = m_copy->take();
    m_copy.reset();
    startThread([made, work = std::exchange(m_afterCopy, {})](const notebook::Watch &watch) {
        return work(*made, notebook::partOf(watch, notebook::copiedPart, 1000));
    });
}

void LongTask::startThread(Work work)
{
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
