// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/instrument/linesource.h"

#include <QPointer>

#include <utility>

namespace plateau::ui {

namespace {

constexpr int retryInterval_ms_preset = 2000;

} // namespace

LineSource::LineSource(QObject *parent)
    : QObject(parent)
    , m_sentence(tr("Not connected."))
{
    m_retry.setSingleShot(true);
    m_retry.setInterval(retryInterval_ms_preset);
    connect(&m_retry, &QTimer::timeout, this, &LineSource::attempt);
}

void LineSource::setRetryInterval(int interval_ms)
{
    m_retry.setInterval(interval_ms);
}

void LineSource::start()
{
    if (m_state != LinkState::Stopped)
        return;
    become(LinkState::Waiting, tr("Connecting to %1.").arg(subject()));
    attempt();
}

void LineSource::stop()
{
    m_retry.stop();
    m_isAlive = false;
    m_assembler.takeRest();
    close();
    become(LinkState::Stopped, tr("Not connected."));
}

void LineSource::attempt()
{
    m_isAlive = true;
    open();
}

void LineSource::opened()
{
    if (m_isAlive)
        become(LinkState::Connected, tr("Connected to %1.").arg(subject()));
}

void LineSource::lost(const QString &why)
{
    // Closing tells of its own end again.
    if (!std::exchange(m_isAlive, false))
        return;
    const bool wasConnected = m_state == LinkState::Connected;
    const QByteArray rest = m_assembler.takeRest();
    close();
    m_retry.start();
    become(LinkState::Waiting,
           (wasConnected ? tr("The connection to %1 has ended: %2. Trying again until it is back.")
                         : tr("No connection to %1: %2. Trying again until it is there."))
               .arg(subject(), why));
    if (!rest.isEmpty())
        Q_EMIT lineBroken(rest);
}

void LineSource::take(const QByteArray &bytes)
{
    const QPointer<LineSource> self = this;
    for (const exchange::LineAssembler::Line &line : m_assembler.take(bytes)) {
        // Whoever hears of a line may stop or delete this.
        if (!self || m_state != LinkState::Connected)
            return;
        Q_EMIT lineReceived(line);
    }
}

void LineSource::become(LinkState state, const QString &sentence)
{
    if (m_state == state && m_sentence == sentence)
        return;
    m_state = state;
    m_sentence = sentence;
    Q_EMIT stateChanged();
}

} // namespace plateau::ui
