// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/shelf.h"

#include "core/assay/label.h"
#include "core/notebook/opennotebook.h"
#include "core/notebook/runstore.h"
#include "core/notebook/sentence.h"
#include "core/notebook/shelfstore.h"
#include "core/notebook/text.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;
using assay::quoted;

namespace {

void requireSample(const planning::ShelfSample &sample)
{
    for (const assay::Problem &problem : problemsOf(sample)) {
        if (problem.severity == assay::Problem::Severity::Error)
            throw Failure(Failure::Kind::Refused,
                          Sentence::tr("The sample %1 was not stored: %2: %3.")
                              .arg(quoted(sample.id), problem.pointer, problem.message));
    }
}

/// besides: a registration that may have the id.
void requireFree(const Database &database, const QString &id, std::optional<ShelfId> besides)
{
    for (const ShelfEntry &entry : loadWaiting(database, id)) {
        if (entry.id != besides)
            throw refused(
                Sentence::tr("Nothing was stored: the sample %1 is among the samples that wait already; change it "
                             "there, or give this one another id.")
                    .arg(quoted(entry.sample.id)));
    }
}

ShelfState requireOnShelf(const Database &database, ShelfId id)
{
    ShelfState state = loadShelfState(database, id);
    if (state.withdrawn)
        throw refused(Sentence::tr("The sample %1 was withdrawn; nothing was stored: register it again.")
                          .arg(quoted(state.sample.id)));
    return state;
}

} // namespace

ShelfId Shelf::registerSample(const planning::ShelfSample &sample, const QString &person)
{
    return registerSamples({sample}, person).front();
}

std::vector<ShelfId> Shelf::registerSamples(const std::vector<planning::ShelfSample> &samples,
                                            const QString &person)
{
    if (samples.empty())
        throw refused(Sentence::tr("Nothing was stored, since no sample is named: name at least one."));
    for (const planning::ShelfSample &sample : samples)
        requireSample(sample);
    Act act = m_open.act(person, u"sampleRegistered"_s);
    std::vector<ShelfId> ids;
    QStringList names;
    for (const planning::ShelfSample &sample : samples) {
        requireFree(act.database(), sample.id, std::nullopt);
        ids.push_back(storeRegistration(act));
        storeShelfVersion(act, ids.back(), sample);
        names << sample.id;
    }
    act.note(names.join(u", "_s));
    act.commit();
    return ids;
}

void Shelf::change(ShelfId id, const planning::ShelfSample &sample, const QString &person)
{
    requireSample(sample);
    Act act = m_open.act(person, u"sampleChanged"_s);
    const ShelfState state = requireOnShelf(act.database(), id);
    if (state.sample == sample)
        throw refused(Sentence::tr("The sample %1 is registered like this already; nothing was stored.")
                          .arg(quoted(sample.id)));
    if (state.sample.id != sample.id) {
        if (state.inRun)
            throw refused(
                Sentence::tr("The sample %1 keeps its id, since a run holds it by that; nothing was "
                             "stored.")
                    .arg(quoted(state.sample.id)));
        requireFree(act.database(), sample.id, id);
    }
    storeShelfVersion(act, id, sample);
    act.note(sample.id);
    act.commit();
}

void Shelf::withdraw(ShelfId id, const QString &person, const QString &reason)
{
    requireReason(reason, Sentence::tr("The sample was not withdrawn, since that needs a reason: say why."));
    Act act = m_open.act(person, u"sampleWithdrawn"_s);
    const ShelfState state = requireOnShelf(act.database(), id);
    storeWithdrawal(act, id, reason);
    act.note(state.sample.id);
    act.commit();
}

void Shelf::waiveRepeat(RunId run, const QString &sample, const QString &person, const QString &reason)
{
    requireReason(reason,
                  Sentence::tr("The repeat still waits, since doing without it needs a reason: say why."));
    Act act = m_open.act(person, u"repeatWaived"_s);
    methodRowOf(act.database(), run);
    if (!asksForRepeat(act.database(), run, sample))
        throw refused(Sentence::tr("Run %1 has no repeat of the sample %2 waiting; nothing was stored.")
                          .arg(QString::number(run.value), quoted(sample)));
    act.concerns(run);
    storeWaiver(act, run, sample, reason);
    act.note(sample);
    act.commit();
}

planning::ShelfSample Shelf::sample(ShelfId id) const
{
    const Transaction snapshot(*m_open.database, Transaction::Kind::Read);
    return loadShelfState(*m_open.database, id).sample;
}

std::optional<planning::ShelfSample> Shelf::takenBy(RunId run, const QString &sample) const
{
    const Transaction snapshot(*m_open.database, Transaction::Kind::Read);
    return loadTakenBy(*m_open.database, run, sample);
}

std::vector<WaitingSample> Shelf::waiting() const
{
    const Transaction snapshot(*m_open.database, Transaction::Kind::Read);
    return allWaiting(*m_open.database);
}

std::vector<PastResult> Shelf::lastResults(const QString &product, const QString &measurand, int most) const
{
    const Transaction snapshot(*m_open.database, Transaction::Kind::Read);
    return pastResults(*m_open.database, product, measurand, most);
}

} // namespace plateau::notebook
