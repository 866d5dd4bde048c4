// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/exchange/lineassembler.h"

#include <QObject>
#include <QTimer>

namespace plateau::ui {

/// How a connection stands.
enum class LinkState { Stopped, Waiting, Connected };

/// Whole lines from a photometer. Once started it goes on until it is stopped: what cannot be opened, is
/// unplugged or closed is said in one sentence and tried again every two seconds. Nothing blocks. Nothing is
/// ever sent.
class LineSource : public QObject
{
    Q_OBJECT

public:
    explicit LineSource(QObject *parent = nullptr);

    void start();
    void stop();
    LinkState state() const { return m_state; }
    QString sentence() const { return m_sentence; }
    /// For tests, which do not wait two seconds.
    void setRetryInterval(int interval_ms);

Q_SIGNALS:
    void lineReceived(const plateau::exchange::LineAssembler::Line &line);
    /// The connection ended in the middle of a line.
    void lineBroken(const QByteArray &rest);
    /// State or sentence is another.
    void stateChanged();

protected:
    /// What it is connected to, in a sentence: "port ttyUSB0".
    virtual QString subject() const = 0;
    /// Begins to connect; ends in opened() or lost(), at once or later.
    virtual void open() = 0;
    /// Ends the connection or the attempt, if there is one.
    virtual void close() = 0;

    void opened();
    /// why: a sentence part after a colon, as "there is no such port".
    void lost(const QString &why);
    void take(const QByteArray &bytes);
    int retryInterval_ms() const { return m_retry.interval(); }

private:
    void attempt();
    void become(LinkState state, const QString &sentence);

    QTimer m_retry;
    exchange::LineAssembler m_assembler;
    LinkState m_state = LinkState::Stopped;
    QString m_sentence;
    /// An attempt or a connection is going on.
    bool m_isAlive = false;
};

} // namespace plateau::ui
