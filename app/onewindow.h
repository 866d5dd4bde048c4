// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QLocalServer>
#include <QObject>
#include <QString>

namespace plateau::app {

/// One window for each user and notebook: who starts the program on a notebook that is open in a window
/// brings that window to the front, with the file to open, if any. The two meet at a socket in a folder that
/// nobody else can look into.
class OneWindow : public QObject
{
    Q_OBJECT

public:
    /// Where the window on that notebook listens. The same for every way to write the file's name.
    static QString socketOf(const QString &notebook);
    /// True if a window that is open on the notebook has taken over. file: absolute, or empty.
    static bool handOver(const QString &notebook, const QString &file);

    explicit OneWindow(QObject *parent = nullptr);
    /// To be called by whoever has the notebook open for writing: nobody else can have it then, so that what
    /// stands at the socket's place is left over from a program that was killed. False where nobody can be
    /// heard; the window works as well.
    bool listen(const QString &notebook);

Q_SIGNALS:
    /// Empty: only to come to the front.
    void called(const QString &file);

private:
    void hear();

    QLocalServer m_server;
};

} // namespace plateau::app
