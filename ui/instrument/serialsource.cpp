// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/instrument/serialsource.h"

#include <QFileInfo>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// More than a burst of readings; a port gone mad fills no memory.
constexpr qint64 readBuffer_bytes = 65536;

QSerialPort::Parity parityOf(SerialLink::Parity parity)
{
    return parity == SerialLink::Parity::Even  ? QSerialPort::EvenParity
           : parity == SerialLink::Parity::Odd ? QSerialPort::OddParity
                                               : QSerialPort::NoParity;
}

QSerialPort::FlowControl flowOf(SerialLink::Flow flow)
{
    return flow == SerialLink::Flow::Hardware   ? QSerialPort::HardwareControl
           : flow == SerialLink::Flow::Software ? QSerialPort::SoftwareControl
                                                : QSerialPort::NoFlowControl;
}

QString pathOf(const QString &port)
{
    return port.startsWith(u'/') ? port : u"/dev/"_s + port;
}

} // namespace

SerialSource::SerialSource(const SerialLink &link, QObject *parent)
    : LineSource(parent)
    , m_link(link)
{
    m_port.setPortName(link.port);
    m_port.setBaudRate(link.speed_baud);
    m_port.setDataBits(link.dataBits == 7 ? QSerialPort::Data7 : QSerialPort::Data8);
    m_port.setParity(parityOf(link.parity));
    m_port.setStopBits(link.stopBits == 2 ? QSerialPort::TwoStop : QSerialPort::OneStop);
    m_port.setFlowControl(flowOf(link.flow));
    m_port.setReadBufferSize(readBuffer_bytes);
    connect(&m_port, &QSerialPort::readyRead, this, &SerialSource::readAll);
    // Later, since the port can't be closed from within its own reading.
    connect(&m_port, &QSerialPort::errorOccurred, this, &SerialSource::onError, Qt::QueuedConnection);
    connect(&m_watch, &QTimer::timeout, this, &SerialSource::watch);
}

SerialSource::~SerialSource()
{
    m_port.disconnect(this);
}

QString SerialSource::subject() const
{
    return tr("serial port %1").arg(m_link.port);
}

void SerialSource::open()
{
    if (m_port.open(QIODevice::ReadOnly)) {
        m_port.clear(QSerialPort::Input); // what was sent before anybody listened
        m_watch.start(retryInterval_ms());
        opened();
        return;
    }
    switch (m_port.error()) {
    case QSerialPort::DeviceNotFoundError:
        lost(tr("there is no such port; check cable and name"));
        break;
    case QSerialPort::PermissionError:
        lost(tr("another program has it, or your account may not use serial ports (on Debian the group "
                "dialout may)"));
        break;
    case QSerialPort::UnsupportedOperationError:
        lost(tr("it can't be set to this speed and format"));
        break;
    default:
        lost(m_port.errorString());
    }
}

void SerialSource::close()
{
    m_watch.stop();
    if (m_port.isOpen())
        m_port.close();
}

void SerialSource::readAll()
{
    take(m_port.readAll());
}

void SerialSource::onError()
{
    if (!m_port.isOpen() || m_port.error() == QSerialPort::NoError)
        return;
    readAll(); // whole lines that came before
    lost(tr("the cable or the adapter was unplugged, or the photometer is off"));
}

void SerialSource::watch()
{
    if (!QFileInfo::exists(pathOf(m_link.port)))
        lost(tr("the adapter was unplugged"));
}

} // namespace plateau::ui
