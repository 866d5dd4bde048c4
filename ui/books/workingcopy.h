// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QLockFile>
#include <QString>
#include <QTemporaryDir>

#include <memory>

namespace plateau::ui {

/// The place of a copy that is worked on and thrown away: a folder among the temporary files that nobody else
/// looks into and that goes with this object.
class WorkingCopy
{
public:
    /// Throws notebook::Failure where there is no room for it.
    explicit WorkingCopy(const QString &fileName);

    /// Nothing is there yet.
    QString path() const { return m_folder.filePath(m_fileName); }

    /// Takes away what programs left that were killed; what one that runs works on stays.
    static void removeRemains();

private:
    QString m_fileName;
    QTemporaryDir m_folder;
    std::unique_ptr<QLockFile> m_lock;
};

} // namespace plateau::ui
