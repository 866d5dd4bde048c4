// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/methodfiles.h"

#include "core/exchange/readers.h"
#include "core/exchange/writers.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QSaveFile>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct MethodFilesWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::MethodFiles)
};

QString faultOf(const QString &path, const assay::Problems &problems)
{
    constexpr std::size_t most = 6;
    const QString name = QFileInfo(path).fileName();
    QStringList lines{MethodFilesWords::tr("Nothing was imported, since the file cannot be used:")};
    for (std::size_t i = 0; i < std::min(most, problems.size()); ++i)
        lines << exchange::problemLine(name, problems[i]);
    if (problems.size() > most)
        lines << MethodFilesWords::tr("and %1 more").arg(problems.size() - most);
    return lines.join(u'\n');
}

} // namespace

MethodFile readMethodFile(const QString &path)
{
    const exchange::Read<QByteArray> bytes = exchange::readFile(path);
    if (!bytes.value)
        return {std::nullopt, faultOf(path, bytes.problems)};
    exchange::Read<assay::Method> read = exchange::readMethod(*bytes.value);
    if (!read.value)
        return {std::nullopt, faultOf(path, read.problems)};
    return {std::move(read.value), {}};
}

QString writeMethodFile(const QString &path, const assay::Method &method)
{
    QSaveFile file(path);
    const QByteArray bytes = exchange::writeMethod(method);
    const bool written =
        file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit();
    return written ? QString()
                   : MethodFilesWords::tr(
                         "The method could not be written to %1: %2. Choose another place; nothing else "
                         "changed.")
                         .arg(path, file.errorString());
}

QString methodFileName(const assay::Method &method)
{
    return u"%1-%2.json"_s.arg(method.id).arg(method.version).replace(u'/', u'-');
}

} // namespace plateau::ui
