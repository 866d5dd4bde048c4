// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/methodcatalogue.h"

#include "core/assay/label.h"
#include "core/assay/localday.h"
#include "core/exchange/writers.h"
#include "core/notebook/content.h"
#include "core/notebook/sentence.h"

#include <QFileInfo>

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
    return assay::shownDay(time.date());
}

/// "version 2, saved by Ines on 2026-03-02 (3fa9c1d2)"
QString whichOne(const std::vector<StoredMethod> &catalogue, const StoredMethod &method)
{
    const QString words =
        Sentence::tr("version %1, %2").arg(QString::number(method.method.version), originText(method));
    return isKeptApart(catalogue, method) ? Sentence::tr("%1 (%2)").arg(words, method.mark()) : words;
}

/// Why the id names no method; offered: those of it that a new run may have, none or several.
QString obstacleOf(const std::vector<StoredMethod> &catalogue, const std::vector<StoredMethod> &offered,
                   const QString &id)
{
    const QString quotedId = assay::quoted(id);
    if (!offered.empty()) {
        QStringList each;
        for (const StoredMethod &method : offered)
            each << whichOne(catalogue, method);
        return Sentence::tr("%1 methods with the id %2 are in use: %3. Put the whole method here in place of "
                            "its id, or retire all but one of them")
            .arg(QString::number(offered.size()), quotedId, each.join(Sentence::tr("; ")));
    }
    const auto known =
        std::ranges::find(catalogue, id, [](const StoredMethod &method) { return method.method.id; });
    if (known == catalogue.end())
        return Sentence::tr("there is no method %1, neither shipped nor in the notebook; correct the id, put "
                            "the whole method here in place of it, or import the method first")
            .arg(quotedId);
    return Sentence::tr("the method %1 is not in use; put the whole method here in place of its id, or bring "
                        "the method into use again")
        .arg(quotedId);
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

int newestVersion(const std::vector<StoredMethod> &catalogue, const QString &id)
{
    int newest = 0;
    for (const StoredMethod &known : catalogue) {
        if (known.method.id == id)
            newest = std::max(newest, known.method.version);
    }
    return newest;
}

const StoredMethod *sameAsNewest(const std::vector<StoredMethod> &catalogue, const assay::Method &method)
{
    assay::Method renumbered = method;
    renumbered.version = newestVersion(catalogue, method.id);
    const auto same = std::ranges::find_if(catalogue, [&](const StoredMethod &known) {
        return known.origin != MethodOrigin::OnRecord && known.method == renumbered;
    });
    return same == catalogue.end() ? nullptr : &*same;
}

void addImported(std::vector<StoredMethod> &catalogue, const assay::Method &method, const QString &fileName)
{
    StoredMethod stored = shippedOne(method);
    const bool known = std::ranges::any_of(catalogue, [&](const StoredMethod &other) {
        return other.contentHash == stored.contentHash && other.origin != MethodOrigin::OnRecord;
    });
    if (known)
        return;
    stored.origin = MethodOrigin::Imported;
    MethodAct act;
    act.kind = MethodActKind::Imported;
    act.at = QDateTime::currentDateTime();
    act.fileName = QFileInfo(fileName).fileName();
    stored.acts = {act};
    std::erase_if(catalogue,
                  [&](const StoredMethod &other) { return other.contentHash == stored.contentHash; });
    catalogue.push_back(std::move(stored));
}

exchange::MethodLookup lookupIn(std::vector<StoredMethod> catalogue)
{
    return [catalogue = std::move(catalogue)](const QString &id) {
        std::vector<StoredMethod> found = offeredOf(catalogue);
        std::erase_if(found, [&id](const StoredMethod &method) { return method.method.id != id; });
        if (found.size() == 1)
            return exchange::NamedMethod(found.front().method);
        return exchange::NamedMethod::none(obstacleOf(catalogue, found, id));
    };
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
    return method.runs > 0 ? Sentence::tr("from its runs")
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
