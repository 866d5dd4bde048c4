// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/methodrecords.h"

#include "core/assay/label.h"
#include "core/exchange/methodcomparison.h"
#include "core/exchange/writers.h"
#include "core/notebook/methodacts.h"
#include "core/notebook/methodcatalogue.h"
#include "core/notebook/methodstore.h"
#include "core/notebook/sentence.h"

#include <QFileInfo>

#include <algorithm>
#include <limits>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

/// "Glycerol, version 2"
QString nameOf(const assay::Method &method)
{
    return Sentence::tr("%1, version %2").arg(method.name).arg(method.version);
}

QString hashOf(const assay::Method &method)
{
    return documentHash(exchange::writeMethod(method));
}

const StoredMethod *findContent(const std::vector<StoredMethod> &methods, const QString &hash)
{
    const auto found = std::ranges::find(methods, hash, &StoredMethod::contentHash);
    return found == methods.end() ? nullptr : &*found;
}

bool isOffered(const std::vector<StoredMethod> &catalogue, const QString &hash)
{
    return findContent(offeredOf(catalogue), hash) != nullptr;
}

MethodOutcome knownAlready(const std::vector<StoredMethod> &catalogue, const StoredMethod &known)
{
    MethodOutcome outcome{false, known.method, {}, false};
    if (known.retired)
        outcome.sentence = Sentence::tr(
            "Nothing was stored: %1, has this content already and is retired; reinstate it to use it.");
    else if (!isOffered(catalogue, known.contentHash))
        outcome.sentence =
            Sentence::tr("Nothing was stored: %1, has this content already; a newer version is "
                         "used for new runs.");
    else
        outcome.sentence = Sentence::tr("Nothing was stored: %1, has this content already.");
    outcome.sentence = outcome.sentence.arg(nameOf(known.method));
    outcome.needsAttention = known.retired || !isOffered(catalogue, known.contentHash);
    return outcome;
}

/// Nothing where no other content has its id and version.
QString clashSentence(const std::vector<StoredMethod> &catalogue, const assay::Method &method,
                      const QString &hash)
{
    std::vector<StoredMethod> others;
    for (const StoredMethod &known : catalogue) {
        if (known.method.id == method.id && known.method.version == method.version &&
            known.contentHash != hash)
            others.push_back(known);
    }
    if (others.empty())
        return {};
    const QString words = exchange::differenceWords(exchange::differences(others[0].method, method));
    if (others.size() == 1)
        return Sentence::tr(
                   "%1, is stored and kept apart from the one of that id and version that is %2: they "
                   "differ in %3.")
            .arg(nameOf(method), originText(others[0]), words);
    return Sentence::tr(
               "%1, is stored and kept apart from %2 others of that id and version: from the one that "
               "is %3 it differs in %4.")
        .arg(nameOf(method))
        .arg(others.size())
        .arg(originText(others[0]), words);
}

MethodOutcome imported(const std::vector<StoredMethod> &catalogue, const assay::Method &method,
                       const QString &hash)
{
    MethodOutcome outcome{true, method, clashSentence(catalogue, method, hash), true};
    const bool offered = isOffered(catalogue, hash);
    if (outcome.sentence.isEmpty()) {
        outcome.needsAttention = !offered;
        outcome.sentence = offered ? Sentence::tr("%1, is stored.")
                                   : Sentence::tr("%1, is stored; a newer version is used for new runs.");
        outcome.sentence = outcome.sentence.arg(nameOf(method));
    }
    return outcome;
}

/// A name that would forge a second line, or that is longer than a label, is kept in quotation marks with its
/// signs as codes.
QString storableName(const QString &fileName)
{
    const QString name = QFileInfo(fileName).fileName();
    return assay::labelFault(name) ? assay::quoted(name) : name;
}

void changeState(Act &act, const assay::Method &method, MethodActKind kind, const QString &reason,
                 const QString &alreadySo)
{
    const std::vector<StoredMethod> laboratory = loadMethods(act.database());
    const StoredMethod *known = findContent(laboratory, hashOf(method));
    const bool retired = known && known->retired;
    if (retired == (kind == MethodActKind::Retired))
        throw Failure(Failure::Kind::Refused, alreadySo.arg(nameOf(method)));
    act.note(nameOf(method));
    storeMethodAct(act, storeMethod(act, method), {kind, reason, {}});
    act.commit();
}

} // namespace

MethodOutcome saveMethod(Act &act, const assay::Method &method, const QString &note,
                         const std::vector<assay::Method> &shipped)
{
    const std::vector<StoredMethod> catalogue = catalogueOf(loadMethods(act.database()), shipped);
    const int newest = newestVersion(catalogue, method.id);
    if (newest == std::numeric_limits<int>::max())
        throw Failure(Failure::Kind::Refused,
                      Sentence::tr("%1 has no version left to give; nothing was stored: give the method "
                                   "another id.")
                          .arg(assay::quoted(method.id)));
    if (const StoredMethod *known = sameAsNewest(catalogue, method))
        return knownAlready(catalogue, *known);
    assay::Method next = method;
    next.version = newest;
    if (newest == 0 || !findContent(catalogue, hashOf(next)))
        next.version = newest + 1;
    act.note(nameOf(next));
    storeMethodAct(act, storeMethod(act, next), {MethodActKind::Saved, note, {}});
    act.commit();
    return {true, next, Sentence::tr("%1, is saved.").arg(nameOf(next)), false};
}

MethodOutcome importMethod(Act &act, const assay::Method &method, const QString &fileName,
                           const std::vector<assay::Method> &shipped)
{
    const QString hash = hashOf(method);
    const std::vector<StoredMethod> catalogue = catalogueOf(loadMethods(act.database()), shipped);
    const StoredMethod *known = findContent(catalogue, hash);
    if (known && known->origin != MethodOrigin::OnRecord)
        return knownAlready(catalogue, *known);
    act.note(nameOf(method));
    storeMethodAct(act, storeMethod(act, method), {MethodActKind::Imported, {}, storableName(fileName)});
    const MethodOutcome outcome = imported(catalogueOf(loadMethods(act.database()), shipped), method, hash);
    act.commit();
    return outcome;
}

void retireMethod(Act &act, const assay::Method &method, const QString &reason)
{
    changeState(act, method, MethodActKind::Retired, reason,
                Sentence::tr("%1, is retired already; nothing was stored."));
}

void reinstateMethod(Act &act, const assay::Method &method, const QString &reason)
{
    changeState(act, method, MethodActKind::Reinstated, reason,
                Sentence::tr("%1, is not retired; nothing was stored."));
}

} // namespace plateau::notebook
