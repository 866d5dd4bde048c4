// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/verifying.h"

#include <QThread>

using namespace Qt::StringLiterals;

namespace plateau::ui {

Verifying::Verifying(const notebook::Notebook &notebook, QObject *parent)
    : QObject(parent)
    , m_notebook(notebook)
{
}

Verifying::~Verifying()
{
    m_stop = true;
    if (m_thread) {
        m_thread->wait();
        delete m_thread;
    }
}

void Verifying::start()
{
    if (m_thread)
        return;
    m_folder = std::make_unique<QTemporaryDir>();
    const QString copy = m_folder->filePath(u"copy.plateau"_s);
    m_notebook.keeping().copyTo(copy);
    m_stop = false;
    m_thread = QThread::create([this, copy] { work(copy); });
    connect(m_thread, &QThread::finished, this, &Verifying::end);
    m_thread->start();
}

// In the thread: signals reach the window's own through its queue.
void Verifying::work(const QString &copy)
{
    try {
        const auto opened = notebook::Notebook::open(copy, notebook::Access::ReadOnly);
        int told = -1;
        const notebook::Verification verification = opened->verify([&](qint64 done, qint64 of) {
            const int part = of > 0 ? int(1000 * done / of) : 0;
            if (part != told)
                Q_EMIT progressed(told = part);
            return !m_stop;
        });
        QMetaObject::invokeMethod(this, [this, verification] { Q_EMIT finished(verification); });
    } catch (const notebook::Stopped &) {
        QMetaObject::invokeMethod(this, [this] { Q_EMIT stopped(); });
    } catch (const notebook::Failure &failure) {
        const QString sentence = failure.sentence();
        QMetaObject::invokeMethod(this, [this, sentence] { Q_EMIT failed(sentence); });
    }
}

void Verifying::end()
{
    m_thread->deleteLater();
    m_thread = nullptr;
    m_folder.reset();
}

} // namespace plateau::ui
