// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/filehold.h"

#include <QFile>

#include <cerrno>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/vfs.h>
#include <unistd.h>

namespace plateau::notebook {

namespace {

/// There flock is made of the locks that SQLite uses, and would meet its own.
bool isOnAnotherComputer(int descriptor)
{
    constexpr unsigned nfs = 0x6969; // as in linux/magic.h and statfs(2)
    constexpr unsigned smb = 0x517b;
    constexpr unsigned cifs = 0xff534d42;
    constexpr unsigned smb2 = 0xfe534d42;
    struct statfs system {
    };
    if (::fstatfs(descriptor, &system) != 0)
        return true;
    const auto type = static_cast<unsigned>(system.f_type);
    return type == nfs || type == smb || type == cifs || type == smb2;
}

} // namespace

bool FileHold::take(const QString &path)
{
    release();
    m_descriptor = ::open(QFile::encodeName(path).constData(), O_RDONLY | O_CLOEXEC);
    if (m_descriptor < 0 || isOnAnotherComputer(m_descriptor))
        return true;
    return ::flock(m_descriptor, LOCK_EX | LOCK_NB) == 0 || errno != EWOULDBLOCK;
}

void FileHold::release()
{
    if (m_descriptor >= 0)
        ::close(m_descriptor);
    m_descriptor = -1;
}

} // namespace plateau::notebook
