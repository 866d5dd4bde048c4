// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/library.h"

#include "core/assay/label.h"
#include "core/exchange/shippedtexts.h"

#include <QCoreApplication>
#include <QDir>

#include <algorithm>

namespace plateau::exchange {

using namespace Qt::StringLiterals;

namespace {

struct LibraryWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::MethodLibrary)
};

} // namespace

MethodLibrary MethodLibrary::load(const QString &folder)
{
    MethodLibrary library;
    library.add(folder);
    return library;
}

MethodLibrary MethodLibrary::shipped()
{
    MethodLibrary library = load(u":/methods"_s);
    for (assay::Method &method : library.m_methods)
        putInWindowLanguage(method);
    return library;
}

void MethodLibrary::add(const QString &folder)
{
    const QDir directory(folder);
    const QStringList names = directory.entryList({u"*.json"_s}, QDir::Files | QDir::Readable, QDir::Name);
    for (const QString &name : names)
        addFile(directory.filePath(name), name);
}

void MethodLibrary::addFile(const QString &path, const QString &name)
{
    const Read<QByteArray> file = readFile(path);
    for (const assay::Problem &problem : file.problems)
        m_problems.push_back({name, problem});
    if (!file.value)
        return;
    Read<assay::Method> read = readMethod(*file.value);
    for (const assay::Problem &problem : read.problems)
        m_problems.push_back({name, problem});
    if (!read.value)
        return;
    const auto same = [&](const assay::Method &known) {
        return known.id == read.value->id && known.version == read.value->version;
    };
    if (std::ranges::any_of(m_methods, same))
        m_problems.push_back(
            {name, assay::error(u"/version"_s,
                                LibraryWording::tr("version %1 of %2 is installed already; give a changed "
                                                   "method a new version")
                                    .arg(read.value->version)
                                    .arg(assay::quoted(read.value->id)))});
    else
        m_methods.push_back(std::move(*read.value));
}

std::optional<assay::Method> MethodLibrary::find(const QString &id) const
{
    const assay::Method *newest = nullptr;
    for (const assay::Method &method : m_methods) {
        if (method.id == id && (!newest || method.version > newest->version))
            newest = &method;
    }
    return newest ? std::optional(*newest) : std::nullopt;
}

MethodLookup MethodLibrary::lookup() const
{
    return [library = *this](const QString &id) { return NamedMethod(library.find(id)); };
}

} // namespace plateau::exchange
