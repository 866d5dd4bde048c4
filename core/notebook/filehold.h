// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

namespace plateau::notebook {

/// A second lock on a file that SQLite has locked for writing. SQLite's is lost without a word as soon as
/// anything in this process opens the file and closes it, as a file dialog's preview or a reader of run files
/// might (https://www.sqlite.org/howtocorrupt.html, 2.2); this one (flock) stays until the object goes.
class FileHold
{
public:
    FileHold() = default;
    ~FileHold() { release(); }
    FileHold(const FileHold &) = delete;
    FileHold &operator=(const FileHold &) = delete;

    /// False where another program holds the file. True, without a hold, where the file system has no such
    /// locks or would take ours for SQLite's, as those of other computers do. Only once SQLite's lock is
    /// taken: to fail costs this process the locks it has on the file.
    bool take(const QString &path);
    /// Only once SQLite has closed the file.
    void release();

private:
    int m_descriptor = -1;
};

} // namespace plateau::notebook
