// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/database.h"

#include <memory>

struct sqlite3_backup;

namespace plateau::notebook {

/// The pages of a notebook copied into another file, a few at a time, by the connection that the notebook is
/// worked with (https://www.sqlite.org/c3ref/backup_finish.html). What that connection stores between two
/// steps goes into the copy as well, so that the copy is of the moment of the last step. In the connection's
/// thread; the connection outlives it.
class PageCopy
{
public:
    /// target: an empty file. Nothing waits for the disk.
    PageCopy(const Database &source, const QString &target);
    ~PageCopy();
    PageCopy(const PageCopy &) = delete;
    PageCopy &operator=(const PageCopy &) = delete;

    /// True when all pages are there; then it is not called any more. Throws Failure.
    bool step(int pages);
    qint64 donePages() const { return m_allPages - m_leftPages; }
    /// 0 before the first step; may grow from step to step.
    qint64 allPages() const { return m_allPages; }

private:
    Failure failed(int code) const;

    const Database &m_source;
    Database m_target;
    sqlite3_backup *m_backup;
    qint64 m_allPages = 0;
    qint64 m_leftPages = 0;
};

} // namespace plateau::notebook
