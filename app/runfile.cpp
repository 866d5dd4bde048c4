// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/runfile.h"

#include "app/console.h"

#include <QLocale>

#include <map>

namespace plateau::app {

using namespace Qt::StringLiterals;

const exchange::MethodLibrary &installedMethods()
{
    // The language is the same for as long as the program runs, except in tests of several.
    static std::map<QString, exchange::MethodLibrary> libraries;
    const auto [kept, isNew] = libraries.try_emplace(QLocale().name());
    if (isNew)
        kept->second = exchange::MethodLibrary::shipped();
    return kept->second;
}

void reportProblems(const QString &path, const assay::Problems &problems)
{
    for (const assay::Problem &problem : problems)
        writeError(exchange::problemLine(path, problem));
}

std::optional<QByteArray> readInput(const QString &path)
{
    exchange::Read<QByteArray> bytes = exchange::readFile(path);
    reportProblems(path, bytes.problems);
    return std::move(bytes.value);
}

std::optional<exchange::RunDocument> readRunFile(const QString &path, const exchange::MethodLookup &methods)
{
    const std::optional<QByteArray> bytes = readInput(path);
    if (!bytes)
        return std::nullopt;
    exchange::Read<exchange::RunDocument> document = exchange::readRun(*bytes, methods);
    reportProblems(path, document.problems);
    return std::move(document.value);
}

} // namespace plateau::app
