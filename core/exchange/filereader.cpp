// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/label.h"
#include "core/exchange/readers.h"

#include <QCoreApplication>
#include <QFile>

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace plateau::exchange {

using namespace Qt::StringLiterals;

namespace {

struct FileReaderWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::FileReader)
};

Read<QByteArray> refused(const QString &message)
{
    return {std::nullopt, {assay::error({}, message)}};
}

QString systemReason(int number)
{
    switch (number) {
    case ENOENT:
    case ENOTDIR:
        return FileReaderWording::tr("there is no such file");
    case EACCES:
    case EPERM:
        return FileReaderWording::tr("the file may not be read; check its permissions");
    default:
        return FileReaderWording::tr("the file cannot be read: %1")
            .arg(QString::fromLocal8Bit(std::strerror(number)));
    }
}

/// Empty for a regular file.
QString kindFault(const struct stat &status)
{
    if (S_ISREG(status.st_mode))
        return {};
    if (S_ISDIR(status.st_mode))
        return FileReaderWording::tr("this is a directory; name a file in it");
    return FileReaderWording::tr("this is a pipe, a socket or a device; name a regular file");
}

QString tooLarge()
{
    return FileReaderWording::tr("the file is larger than %1 MiB, the most that is read")
        .arg(maxFileSize_bytes / 1024 / 1024);
}

Read<QByteArray> readAll(QFile &file)
{
    // Room is made for all that is asked for, whatever comes.
    constexpr qint64 piece_bytes = 65'536;
    QByteArray bytes;
    while (bytes.size() <= maxFileSize_bytes) {
        const QByteArray piece = file.read(piece_bytes);
        if (piece.isEmpty())
            break;
        bytes += piece;
    }
    if (file.error() != QFileDevice::NoError)
        return refused(FileReaderWording::tr("the file cannot be read: %1").arg(file.errorString()));
    if (bytes.size() > maxFileSize_bytes)
        return refused(tooLarge());
    return {std::move(bytes), {}};
}

/// Looks before it opens, since opening alone can block on a pipe or wake a device, and again at what was
/// opened.
Read<QByteArray> readFromDisk(const QString &path)
{
    const QByteArray name = QFile::encodeName(path);
    struct stat status {
    };
    if (::stat(name.constData(), &status) != 0)
        return refused(systemReason(errno));
    if (const QString fault = kindFault(status); !fault.isEmpty())
        return refused(fault);
    const int descriptor = ::open(name.constData(), O_RDONLY | O_NONBLOCK | O_CLOEXEC);
    if (descriptor < 0)
        return refused(systemReason(errno));
    QFile file;
    if (::fstat(descriptor, &status) != 0 || !kindFault(status).isEmpty() ||
        !file.open(descriptor, QIODevice::ReadOnly, QFileDevice::AutoCloseHandle)) {
        ::close(descriptor);
        return refused(FileReaderWording::tr("the file cannot be read; name a regular file"));
    }
    return status.st_size > maxFileSize_bytes ? refused(tooLarge()) : readAll(file);
}

/// Control characters and the like shown as codes, so that no name can forge a second line.
QString onOneLine(const QString &text)
{
    constexpr qsizetype longest = 300;
    QString line;
    for (const QChar sign : text.left(longest))
        line += assay::labelFault(u'x' + QString(sign)) ? assay::named(QString(sign)) : QString(sign);
    return text.size() > longest ? line + u'…' : line;
}

} // namespace

Read<QByteArray> readFile(const QString &path)
{
    if (path.isEmpty() || path.contains(QChar(0)))
        return refused(FileReaderWording::tr("this names no file"));
    if (!path.startsWith(u':'))
        return readFromDisk(path);
    QFile resource(path);
    if (!resource.open(QIODevice::ReadOnly))
        return refused(FileReaderWording::tr("there is no such file"));
    return readAll(resource);
}

QString problemLine(const QString &fileName, const assay::Problem &problem)
{
    QString line = onOneLine(fileName) + ": "_L1;
    if (!problem.pointer.isEmpty())
        line += onOneLine(problem.pointer) + ": "_L1;
    if (problem.severity == assay::Problem::Severity::Warning)
        line += FileReaderWording::tr("warning: ");
    return line + problem.message;
}

} // namespace plateau::exchange
