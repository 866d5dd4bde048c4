// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QFile>
#include <QMutex>

namespace plateau::app {

/// What went wrong in the program, a line each, for whoever mends it: plateau.log in a folder of its own,
/// readable by its owner alone. Where it has grown past its size it becomes plateau.log.1, and so on; the
/// oldest of four goes. What the notebook holds is not written to it.
class ProgramLog
{
public:
    static constexpr qint64 usualSize = 256 * 1024;
    static constexpr int keptFiles = 4;

    explicit ProgramLog(const QString &folder, qint64 largestSize = usualSize);

    bool isOpen() const { return m_file.isOpen(); }
    /// Line breaks and other control characters of the text become blanks, so that none forges a line.
    void write(QtMsgType type, const char *category, const QString &text, const QDateTime &when);

private:
    void turnOver();

    QFile m_file;
    qint64 m_largestSize;
    QMutex m_mutex;
};

/// From now on whatever the toolkit and the program remark goes to the log of this user, and as before to
/// standard error. Without a place to write it stays with the latter.
void keepLog();

} // namespace plateau::app
