// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/runfile.h"

#include "app/console.h"

namespace plateau::app {

using namespace Qt::StringLiterals;

namespace {

void report(const QString &path, const assay::Problems &problems)
{
    for (const assay::Problem &problem : problems)
        writeError(exchange::problemLine(path, problem));
}

} // namespace

const exchange::MethodLibrary &installedMethods()
{
    static const exchange::MethodLibrary library = exchange::MethodLibrary::load(u":/methods"_s);
    return library;
}

std::optional<exchange::RunDocument> readRunFile(const QString &path)
{
    const exchange::Read<QByteArray> bytes = exchange::readFile(path);
    report(path, bytes.problems);
    if (!bytes.value)
        return std::nullopt;
    exchange::Read<exchange::RunDocument> document =
        exchange::readRun(*bytes.value, installedMethods().lookup());
    report(path, document.problems);
    return std::move(document.value);
}

} // namespace plateau::app
