// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/methodcatalogue.h"

#include "core/exchange/writers.h"
#include "core/notebook/content.h"
#include "core/notebook/sentence.h"

#include <algorithm>
#include <map>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

StoredMethod shippedOne(const assay::Method &method)
{
    StoredMethod stored;
    stored.method = method;
    stored.contentHash = documentHash(exchange::writeMethod(method));
    stored.origin = MethodOrigin::Shipped;
    return stored;
}

bool isTheLaboratorys(const StoredMethod &method)
{
    return method.origin == MethodOrigin::Saved || method.origin == MethodOrigin::Imported;
}

/// The newest version of one id, 0 for none, retired ones too.
struct Newest {
    int laboratory = 0;
    int shipped = 0;
};

bool isOfferedBeside(const StoredMethod &method, const Newest &newest)
{
    if (method.retired)
        return false;
    if (isTheLaboratorys(method))
        return method.method.version == newest.laboratory;
    return method.origin == MethodOrigin::Shipped && method.method.version == newest.shipped &&
           newest.shipped >= newest.laboratory;
}

QString day(const QDateTime &time)
{
    return time.date().toString(Qt::ISODate);
}

} // namespace

std::vector<StoredMethod> catalogueOf(const std::vector<StoredMethod> &laboratory,
                                      const std::vector<assay::Method> &shipped)
{
    std::vector<StoredMethod> catalogue = laboratory;
    for (const assay::Method &method : shipped) {
        StoredMethod stored = shippedOne(method);
        const auto known = std::ranges::find(catalogue, stored.contentHash, &StoredMethod::contentHash);
        if (known == catalogue.end())
            catalogue.push_back(std::move(stored));
        else
            known->origin = MethodOrigin::Shipped;
    }
    std::ranges::stable_sort(catalogue, [](const StoredMethod &a, const StoredMethod &b) {
        return a.method.id != b.method.id ? a.method.id < b.method.id : a.method.version > b.method.version;
    });
    return catalogue;
}

std::vector<StoredMethod> offeredOf(const std::vector<StoredMethod> &catalogue)
{
    std::map<QString, Newest> newest;
    for (const StoredMethod &method : catalogue) {
        Newest &known = newest[method.method.id];
        if (isTheLaboratorys(method))
            known.laboratory = std::max(known.laboratory, method.method.version);
        else if (method.origin == MethodOrigin::Shipped)
            known.shipped = std::max(known.shipped, method.method.version);
    }
    std::vector<StoredMethod> offered;
    for (const StoredMethod &method : catalogue) {
        if (isOfferedBeside(method, newest[method.method.id]))
            offered.push_back(method);
    }
    return offered;
}

bool isKeptApart(const std::vector<StoredMethod> &catalogue, const StoredMethod &method)
{
    return std::ranges::any_of(catalogue, [&](const StoredMethod &other) {
        return other.method.id == method.method.id && other.method.version == method.method.version &&
               other.contentHash != method.contentHash;
    });
}

QString originText(const StoredMethod &method)
{
    const MethodAct *arrival = method.arrival();
    switch (method.origin) {
    case MethodOrigin::Shipped:
        return Sentence::tr("shipped with the program");
    case MethodOrigin::Saved:
        return Sentence::tr("saved by %1 on %2").arg(arrival->person, day(arrival->at));
    case MethodOrigin::Imported:
        return Sentence::tr("imported from %1 on %2").arg(arrival->fileName, day(arrival->at));
    case MethodOrigin::OnRecord:
        break;
    }
    return method.runs > 0 ? Sentence::tr("on record with its runs")
                           : Sentence::tr("shipped with an earlier program");
}

QString versionText(const std::vector<StoredMethod> &catalogue, const StoredMethod &method)
{
    const QString version = Sentence::tr("version %1").arg(method.method.version);
    if (!isKeptApart(catalogue, method))
        return version;
    return Sentence::tr("%1, %2, %3").arg(version, originText(method), method.mark());
}

} // namespace plateau::notebook
