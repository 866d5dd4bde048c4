// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/files.h"

#include "core/notebook/notebook.h"
#include "core/notebook/sentence.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <filesystem>

#include <cerrno>
#include <fcntl.h>
#include <unistd.h>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

const QString sideEndings[] = {u"-journal"_s, u"-wal"_s, u"-shm"_s};

QString shownPath(const QString &path)
{
    return QDir::toNativeSeparators(path);
}

Failure notWritten(const QString &path)
{
    return Failure(
        Failure::Kind::Storage,
        Sentence::tr("The file %1 could not be written; nothing was stored: see that its folder is there, "
                     "may be written to and has room.")
            .arg(shownPath(path)),
        qt_error_string(errno));
}

} // namespace

bool isMissing(const QString &path)
{
    std::error_code fault;
    return std::filesystem::status(QFile::encodeName(path).toStdString(), fault).type() ==
           std::filesystem::file_type::not_found;
}

void createPrivateFile(const QString &path)
{
    QFile file(path);
    if (!file.open(QIODevice::NewOnly | QIODevice::WriteOnly,
                   QFileDevice::ReadOwner | QFileDevice::WriteOwner))
        throw Failure(
            Failure::Kind::Storage,
            Sentence::tr("The file %1 could not be made; nothing was stored: see that its folder is there, "
                         "may be written to and has room.")
                .arg(shownPath(path)),
            file.errorString());
}

void syncToDisk(const QString &path)
{
    const int descriptor = ::open(QFile::encodeName(path).constData(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0)
        throw notWritten(path);
    const int failed = ::fsync(descriptor);
    const int reason = errno;
    ::close(descriptor);
    errno = reason;
    if (failed)
        throw notWritten(path);
}

void publishFile(const QString &from, const QString &to)
{
    syncToDisk(from);
    const QByteArray source = QFile::encodeName(from);
    const QByteArray target = QFile::encodeName(to);
    // A hard link never replaces a file, and no other program can slip in between.
    if (::link(source.constData(), target.constData()) == 0) {
        ::unlink(source.constData());
    } else if (errno == EEXIST || QFileInfo::exists(to)) {
        throw Failure(Failure::Kind::Refused,
                      Sentence::tr("There is a file %1 already and it was left as it is: "
                                   "choose another name.")
                          .arg(shownPath(to)));
    } else if (::rename(source.constData(), target.constData()) != 0) { // a file system without hard links
        throw notWritten(to);
    }
    syncToDisk(QFileInfo(to).absolutePath());
}

void requireFreeName(const QString &path)
{
    if (QFileInfo::exists(path) || QFileInfo(path).isSymLink())
        throw Failure(
            Failure::Kind::Refused,
            Sentence::tr("There is a file %1 already and it was left as it is: choose another name.")
                .arg(shownPath(path)));
    if (!QFileInfo(QFileInfo(path).absolutePath()).isDir())
        throw Failure(Failure::Kind::Storage,
                      Sentence::tr("The notebook %1 cannot be made, since its folder is not there: "
                                   "make the folder or choose another.")
                          .arg(shownPath(path)));
    // SQLite would take it for the new file's own and roll it back into it.
    const QString orphan = orphanedSideFile(path);
    if (!orphan.isEmpty())
        throw Failure(Failure::Kind::Refused,
                      Sentence::tr("The file %1 is left over from another notebook of that name; "
                                   "move it away or choose another name.")
                          .arg(shownPath(orphan)));
}

void removeWithSideFiles(const QString &path)
{
    QFile::remove(path);
    for (const QString &ending : sideEndings)
        QFile::remove(path + ending);
}

QString orphanedSideFile(const QString &path)
{
    if (!QFileInfo::exists(path)) {
        for (const QString &ending : sideEndings) {
            if (QFileInfo::exists(path + ending))
                return path + ending;
        }
    }
    return {};
}

} // namespace plateau::notebook
