// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/instrument/link.h"

#include "core/assay/label.h"

#include <QCoreApplication>

namespace plateau::ui {

using namespace Qt::StringLiterals;

namespace {

struct LinkWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Link)
};

QString fault(const SerialLink &link)
{
    if (link.port.trimmed().isEmpty())
        return LinkWords::tr("Choose or type the serial port, such as ttyUSB0.");
    if (const auto fault = assay::labelFault(link.port))
        return LinkWords::tr("Serial port: %1.").arg(*fault);
    if (link.speed_baud < slowest_baud || link.speed_baud > fastest_baud)
        return LinkWords::tr("The speed is a whole number from %1 to %2 baud.")
            .arg(slowest_baud)
            .arg(fastest_baud);
    if (link.dataBits < 7 || link.dataBits > 8 || link.stopBits < 1 || link.stopBits > 2)
        return LinkWords::tr("A character has 7 or 8 data bits and 1 or 2 stop bits.");
    return {};
}

QString fault(const NetworkLink &link)
{
    if (link.host.trimmed().isEmpty())
        return LinkWords::tr("Type the photometer's name or address in the network.");
    if (const auto fault = assay::labelFault(link.host))
        return LinkWords::tr("Host: %1.").arg(*fault);
    if (link.port < 1 || link.port > 65535)
        return LinkWords::tr("The port number is a whole number from 1 to 65535.");
    return {};
}

QString name(const SerialLink &link)
{
    return link.port;
}

QString name(const NetworkLink &link)
{
    const QString host = link.host.contains(u':') ? u'[' + link.host + u']' : link.host; // an IPv6 address
    return host + u':' + QString::number(link.port);
}

} // namespace

QString faultOf(const Link &link)
{
    return std::visit([](const auto &one) { return fault(one); }, link);
}

QString nameOf(const Link &link)
{
    return std::visit([](const auto &one) { return name(one); }, link);
}

} // namespace plateau::ui
