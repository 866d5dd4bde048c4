// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/exportfile.h"

#include "core/notebook/files.h"
#include "core/notebook/notebook.h"
#include "core/notebook/sentence.h"

#include <QDir>

namespace plateau::notebook {

ExportFile::ExportFile(const QString &path)
    : m_file(path)
{
    if (!m_file.open(QIODevice::NewOnly | QIODevice::WriteOnly,
                     QFileDevice::ReadOwner | QFileDevice::WriteOwner))
        fail();
}

void ExportFile::write(const QByteArray &bytes)
{
    if (m_file.write(bytes) != bytes.size())
        fail();
    m_hash.addData(bytes);
}

QString ExportFile::finish()
{
    if (!m_file.flush() || m_file.error() != QFileDevice::NoError)
        fail();
    m_file.close();
    syncToDisk(m_file.fileName());
    return QString::fromLatin1(m_hash.result().toHex());
}

void ExportFile::fail() const
{
    throw Failure(
        Failure::Kind::Storage,
        Sentence::tr("The file %1 could not be written; nothing was exported: see that its folder may "
                     "be written to and has room.")
            .arg(QDir::toNativeSeparators(m_file.fileName())),
        m_file.errorString());
}

void writeWhole(const QString &path, const QByteArray &bytes)
{
    ExportFile file(path);
    file.write(bytes);
    file.finish();
}

QString hashOfFile(const QString &path)
{
    QFile file(path);
    QCryptographicHash hash(QCryptographicHash::Sha256);
    if (!file.open(QIODevice::ReadOnly) || !hash.addData(&file))
        throw Failure(Failure::Kind::NotFound,
                      Sentence::tr("The file %1 of the export cannot be read; nothing was imported: see that "
                                   "the folder is whole.")
                          .arg(QDir::toNativeSeparators(path)),
                      file.errorString());
    return QString::fromLatin1(hash.result().toHex());
}

} // namespace plateau::notebook
