// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QByteArray>
#include <QCryptographicHash>
#include <QFile>
#include <QString>

namespace plateau::notebook {

/// One file of an export: written from its beginning to its end, its hash taken on the way. Every failure
/// throws Failure(Storage).
class ExportFile
{
public:
    explicit ExportFile(const QString &path);
    void write(const QByteArray &bytes);
    /// On the disk; SHA-256, hexadecimal.
    QString finish();

private:
    [[noreturn]] void fail() const;

    QFile m_file;
    QCryptographicHash m_hash{QCryptographicHash::Sha256};
};

/// A file with these bytes, on the disk.
void writeWhole(const QString &path, const QByteArray &bytes);

/// SHA-256 of a file, hexadecimal; throws Failure(NotFound) where it cannot be read.
QString hashOfFile(const QString &path);

} // namespace plateau::notebook
