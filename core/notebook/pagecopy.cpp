// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/pagecopy.h"

#include "core/notebook/enginefailure.h"

#include <sqlite3.h>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

/// Small, so that the last step has not much left to write.
constexpr int targetCache_KiB = 1024;

} // namespace

PageCopy::PageCopy(const Database &source, const QString &target)
    : m_source(source)
    , m_target(target, Access::ReadWrite)
{
    m_target.leaveDiskToTheEnd(targetCache_KiB);
    m_backup = sqlite3_backup_init(m_target.native(), "main", source.native(), "main");
    if (!m_backup)
        throw failed(sqlite3_extended_errcode(m_target.native()));
}

PageCopy::~PageCopy()
{
    sqlite3_backup_finish(m_backup); // of what is not complete nothing is committed
}

bool PageCopy::step(int pages)
{
    const int code = sqlite3_backup_step(m_backup, pages);
    // In the middle of an act nothing can be copied: its pages are not stored yet.
    const bool amidAnAct = (code == SQLITE_BUSY || code == SQLITE_LOCKED) &&
                           sqlite3_txn_state(m_source.native(), "main") == SQLITE_TXN_WRITE;
    if (code != SQLITE_OK && code != SQLITE_DONE && !amidAnAct)
        throw failed(code);
    m_allPages = sqlite3_backup_pagecount(m_backup);
    m_leftPages = sqlite3_backup_remaining(m_backup);
    return code == SQLITE_DONE;
}

Failure PageCopy::failed(int code) const
{
    const QSqlError error({}, QString::fromUtf8(sqlite3_errstr(code)), QSqlError::StatementError,
                          QString::number(code));
    return engineFailure(error, m_target.path(), u"backup"_s);
}

} // namespace plateau::notebook
