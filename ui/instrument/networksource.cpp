// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/instrument/networksource.h"

#ifdef Q_OS_LINUX
#include <netinet/in.h>
#include <netinet/tcp.h>
#include <sys/socket.h>
#endif

namespace plateau::ui {

namespace {

constexpr int patience_ms = 5000;
constexpr qint64 networkBuffer_bytes = 65536;

/// A cable that is pulled is noticed after about half a minute, not after the two hours that are usual.
void probeOften(QTcpSocket &socket)
{
    socket.setSocketOption(QAbstractSocket::KeepAliveOption, 1);
#ifdef Q_OS_LINUX
    const auto set = [&](int option, int value) {
        ::setsockopt(static_cast<int>(socket.socketDescriptor()), IPPROTO_TCP, option, &value, sizeof value);
    };
    set(TCP_KEEPIDLE, 10);
    set(TCP_KEEPINTVL, 5);
    set(TCP_KEEPCNT, 4);
#endif
}

} // namespace

NetworkSource::NetworkSource(const NetworkLink &link, QObject *parent)
    : LineSource(parent)
    , m_link(link)
{
    m_socket.setReadBufferSize(networkBuffer_bytes);
    m_patience.setSingleShot(true);
    connect(&m_socket, &QTcpSocket::connected, this, &NetworkSource::onConnected);
    connect(&m_socket, &QTcpSocket::readyRead, this, [this] { take(m_socket.readAll()); });
    connect(&m_socket, &QTcpSocket::errorOccurred, this, &NetworkSource::onEnd);
    connect(&m_socket, &QTcpSocket::disconnected, this, &NetworkSource::onEnd);
    connect(&m_patience, &QTimer::timeout, this,
            [this] { lost(tr("there is no answer; check name, port number and network")); });
}

NetworkSource::~NetworkSource()
{
    m_socket.disconnect(this);
}

QString NetworkSource::subject() const
{
    return nameOf(m_link);
}

void NetworkSource::open()
{
    m_patience.start(patience_ms);
    m_socket.connectToHost(m_link.host, static_cast<quint16>(m_link.port), QIODevice::ReadOnly);
}

void NetworkSource::close()
{
    m_patience.stop();
    m_socket.abort();
}

void NetworkSource::onConnected()
{
    m_patience.stop();
    probeOften(m_socket);
    opened();
}

void NetworkSource::onEnd()
{
    const QString why = reason();
    if (m_socket.bytesAvailable() > 0)
        take(m_socket.readAll()); // whole lines that came before
    lost(why);
}

QString NetworkSource::reason() const
{
    switch (m_socket.error()) {
    case QAbstractSocket::HostNotFoundError:
        return tr("there is no such host; check the name");
    case QAbstractSocket::ConnectionRefusedError:
        return tr("nothing answers on this port number");
    case QAbstractSocket::RemoteHostClosedError:
        return tr("the other side closed it");
    default:
        return m_socket.errorString();
    }
}

} // namespace plateau::ui
