// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/instrument/linesource.h"
#include "ui/instrument/link.h"

#include <QSerialPort>

namespace plateau::ui {

/// Lines from a serial port, or from an adapter that makes one. Opened for reading only.
class SerialSource : public LineSource
{
    Q_OBJECT

public:
    /// The link is sound.
    explicit SerialSource(const SerialLink &link, QObject *parent = nullptr);
    ~SerialSource() override;

protected:
    QString subject() const override;
    void open() override;
    void close() override;

private:
    void readAll();
    void onError();
    /// An adapter can go without its port saying so.
    void watch();

    SerialLink m_link;
    QSerialPort m_port;
    QTimer m_watch;
};

} // namespace plateau::ui
