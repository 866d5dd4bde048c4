// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/instrument/listener.h"

#include "ui/instrument/networksource.h"
#include "ui/instrument/serialsource.h"

namespace plateau::ui {

namespace {

std::unique_ptr<LineSource> sourceFor(const Link &link)
{
    if (const auto *serial = std::get_if<SerialLink>(&link))
        return std::make_unique<SerialSource>(*serial);
    return std::make_unique<NetworkSource>(std::get<NetworkLink>(link));
}

} // namespace

ReceivedLine received(const exchange::LineAssembler::Line &line, const exchange::LinePattern &pattern)
{
    ReceivedLine made{exchange::onOneLine(line.bytes), line.bytes, {}, {}};
    const auto result = exchange::readLine(line, pattern);
    if (const double *absorbance = std::get_if<double>(&result))
        made.absorbance = *absorbance;
    else
        made.refusal = std::get<exchange::LineRefusal>(result);
    return made;
}

Listener::Listener(QObject *parent)
    : QObject(parent)
{
}

Listener::~Listener()
{
    if (m_source)
        m_source->disconnect(this);
}

void Listener::connectTo(const Photometer &photometer)
{
    disconnectFrom();
    m_photometer = photometer;
    m_source = sourceFor(photometer.link);
    if (m_retryInterval_ms)
        m_source->setRetryInterval(*m_retryInterval_ms);
    connect(m_source.get(), &LineSource::lineReceived, this, &Listener::onLine);
    connect(m_source.get(), &LineSource::lineBroken, this, &Listener::onBroken);
    connect(m_source.get(), &LineSource::stateChanged, this, &Listener::stateChanged);
    m_source->start();
}

void Listener::disconnectFrom()
{
    if (!m_source)
        return;
    m_source->disconnect(this);
    m_source->stop();
    m_source.release()->deleteLater(); // it may be the one that speaks
    m_photometer.reset();
    Q_EMIT stateChanged();
}

void Listener::setPattern(const exchange::LinePattern &pattern)
{
    if (m_photometer)
        m_photometer->pattern = pattern;
}

void Listener::setName(const QString &name)
{
    if (m_photometer)
        m_photometer->name = name;
}

void Listener::setTaking(bool isTaking)
{
    if (m_isTaking == isTaking)
        return;
    m_isTaking = isTaking;
    Q_EMIT stateChanged();
}

LinkState Listener::state() const
{
    return m_source ? m_source->state() : LinkState::Stopped;
}

QString Listener::sentence() const
{
    return m_source ? m_source->sentence() : tr("Not connected.");
}

void Listener::onLine(const exchange::LineAssembler::Line &line)
{
    if (m_photometer)
        tell(received(line, m_photometer->pattern));
}

void Listener::onBroken(const QByteArray &rest)
{
    tell({exchange::onOneLine(rest),
          rest,
          {},
          {false, tr("The connection ended in the middle of this line, so it is not a reading.")}});
}

void Listener::tell(const ReceivedLine &line)
{
    // A slot may disconnect or connect to another one.
    const bool isTaken = isTaking();
    const auto photometer = m_photometer;
    Q_EMIT lineReceived(line);
    if (!isTaken || !photometer)
        return;
    if (line.absorbance) {
        const bool isSerial = std::holds_alternative<SerialLink>(photometer->link);
        Q_EMIT taken({*line.absorbance,
                      line.raw,
                      {},
                      isSerial ? TakenReading::Origin::Serial : TakenReading::Origin::Network,
                      photometer->name});
    } else if (!line.refusal.isPassedOver) {
        Q_EMIT refused(line.raw, line.refusal.sentence);
    }
}

} // namespace plateau::ui
