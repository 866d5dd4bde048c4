// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/workingcopy.h"

#include "core/notebook/notebook.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct WorkingcopyWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::WorkingCopy)
};

const QString workingFolders = QStringLiteral("plateau-copy-");

std::unique_ptr<QLockFile> lockIn(const QString &folder)
{
    auto lock = std::make_unique<QLockFile>(folder + u"/in-use"_s);
    lock->setStaleLockTime(0); // it is somebody's as long as the program lives
    return lock;
}

} // namespace

WorkingCopy::WorkingCopy(const QString &fileName)
    : m_fileName(fileName)
    , m_folder(u"%1/%2XXXXXX"_s.arg(QDir::tempPath(), workingFolders))
{
    if (m_folder.isValid())
        m_lock = lockIn(m_folder.path());
    if (!m_lock || !m_lock->tryLock(0))
        throw notebook::Failure(
            notebook::Failure::Kind::Storage,
            WorkingcopyWords::tr("There is no place for a copy to work on in %1; nothing was made: see that "
                                 "the folder is there and has room.")
                .arg(QDir::toNativeSeparators(QDir::tempPath())),
            m_folder.errorString());
}

void WorkingCopy::removeRemains()
{
    for (const QFileInfo &folder :
         QDir::temp().entryInfoList({workingFolders + u'*'}, QDir::Dirs | QDir::NoSymLinks)) {
        // Without the mark it has only just been made.
        const bool isMarked = QFileInfo::exists(folder.absoluteFilePath() + u"/in-use"_s);
        if (isMarked && lockIn(folder.absoluteFilePath())->tryLock(0))
            QDir(folder.absoluteFilePath()).removeRecursively();
    }
}

} // namespace plateau::ui
