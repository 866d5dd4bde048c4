// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

#include <variant>

namespace plateau::ui {

/// A serial port and how it is set, as the photometer's manual says.
struct SerialLink {
    enum class Parity { None, Even, Odd };
    enum class Flow { None, Hardware, Software };

    /// A port's name, as "ttyUSB0", or the path of one.
    QString port;
    int speed_baud = 9600;
    /// 7 or 8.
    int dataBits = 8;
    Parity parity = Parity::None;
    /// 1 or 2.
    int stopBits = 1;
    Flow flow = Flow::None;
    bool operator==(const SerialLink &) const = default;
};

/// A photometer, or a box with a serial socket, that serves its text on a TCP port.
struct NetworkLink {
    QString host;
    /// 1 to 65535.
    int port = 0;
    bool operator==(const NetworkLink &) const = default;
};

using Link = std::variant<SerialLink, NetworkLink>;

inline constexpr int slowest_baud = 110;
inline constexpr int fastest_baud = 4000000;

/// What keeps it from being used, in one sentence; empty if nothing does.
QString faultOf(const Link &link);
/// "ttyUSB0" or "photometer.lan:4001".
QString nameOf(const Link &link);

} // namespace plateau::ui
