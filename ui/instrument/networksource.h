// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/instrument/linesource.h"
#include "ui/instrument/link.h"

#include <QTcpSocket>

namespace plateau::ui {

/// Lines that a photometer, or a box with a serial socket, sends over TCP.
class NetworkSource : public LineSource
{
    Q_OBJECT

public:
    /// The link is sound.
    explicit NetworkSource(const NetworkLink &link, QObject *parent = nullptr);
    ~NetworkSource() override;

protected:
    QString subject() const override;
    void open() override;
    void close() override;

private:
    void onConnected();
    void onEnd();
    QString reason() const;

    NetworkLink m_link;
    QTcpSocket m_socket;
    QTimer m_patience;
};

} // namespace plateau::ui
