// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/deciding.h"

#include "core/assay/label.h"
#include "core/evaluation/settled.h"
#include "core/exchange/writers.h"
#include "core/notebook/basisstore.h"
#include "core/notebook/benchwork.h"
#include "core/notebook/companions.h"
#include "core/notebook/decisionstore.h"
#include "core/notebook/inputs.h"
#include "core/notebook/laboratorystore.h"
#include "core/notebook/opennotebook.h"
#include "core/notebook/runstore.h"
#include "core/notebook/sampledecisions.h"
#include "core/notebook/sentence.h"
#include "core/notebook/text.h"

#include <algorithm>

namespace plateau::notebook {

using namespace Qt::StringLiterals;
using assay::quoted;

namespace {

/// Everybody who put the run on the bench or did anything on it there, as names are compared. What is decided
/// on it, and what the program notes by itself, is no work at the bench.
QStringList benchNames(const Database &database, RunId run)
{
    Statement query(database, u"SELECT DISTINCT person, action FROM audit WHERE run = ?"_s);
    query.run(run.value);
    QStringList names;
    while (query.next()) {
        if (isBenchWork(query.text(1)))
            names.append(comparisonKey(query.text(0)));
    }
    return names;
}

void requireMayDecide(const Database &database, RunId run, const Signer &signer)
{
    if (!mayReview(database, signer))
        throw refused(
            Sentence::tr(
                "Run %1 was not decided on: a reviewer or a head decides here, and %2 is an analyst.")
                .arg(QString::number(run.value), quoted(signer.name)));
    if (!loadLaboratory(database).review.secondPersonReviews)
        return;
    QStringList own{comparisonKey(signer.name)};
    if (signer.rows)
        own = nameKeysOf(database, signer.rows->person.id);
    const QStringList bench = benchNames(database, run);
    if (std::ranges::any_of(own, [&](const QString &name) { return bench.contains(name); }))
        throw refused(Sentence::tr("Run %1 was not decided on: nobody reviews their own run here, and %2 "
                                   "worked on it; ask somebody else.")
                          .arg(QString::number(run.value), quoted(signer.name)));
}

void requireRunReason(const RunDecision &decision, bool acceptable)
{
    if (decision.kind == DecisionKind::Rejected)
        requireReason(decision.reason,
                      Sentence::tr("The run was not rejected, since that needs a reason: say why."));
    else if (!acceptable)
        requireReason(decision.reason,
                      Sentence::tr("The run was not accepted: not everything in it passed, so accepting it "
                                   "needs a reason."));
    else if (!decision.reason.isEmpty())
        requireReason(
            decision.reason,
            Sentence::tr("The run was not accepted: its reason is blank; leave it out or say why."));
}

/// Those that are decided to be repeated; of the others that nobody decided by themselves, those of which the
/// evaluation says so.
QStringList samplesToRepeat(const run::Run &run, const std::vector<SampleDecision> &decided,
                            const evaluation::Evaluation &evaluation)
{
    const QStringList advised = repeatsOf(evaluation.results);
    QStringList repeats;
    for (const run::Sample &sample : run.samples) {
        const auto own = std::ranges::find(decided, sample.id, &SampleDecision::sample);
        if (own == decided.end() ? advised.contains(sample.id) : own->kind == SampleDecisionKind::Repeat)
            repeats.append(sample.id);
    }
    return repeats;
}

/// The samples that somebody rejected, had repeated, or accepted by themselves for a reason, and those that are
/// repeated since the evaluation says so: what failed with them is answered.
QStringList answeredSamples(const std::vector<SampleDecision> &decided, const QStringList &repeats)
{
    QStringList answered = repeats;
    for (const SampleDecision &one : decided) {
        if (one.kind != SampleDecisionKind::Accepted || !comparisonKey(one.reason).isEmpty())
            answered.append(one.sample);
    }
    return answered;
}

/// Where nothing failed but what is decided sample by sample, nobody has to say it again.
QString runReason(const RunDecision &decision, const evaluation::Evaluation &evaluation,
                  const QStringList &answered)
{
    if (decision.kind == DecisionKind::Accepted && decision.reason.isEmpty() && !evaluation.acceptable &&
        evaluation::isReportableBut(evaluation, answered))
        return Sentence::tr("What did not pass is decided sample by sample; everything else passed.");
    return decision.reason;
}

} // namespace

Signer signerOf(OpenNotebook &open, Persons &persons, const QString &person, const QString &passphrase)
{
    requirePerson(person);
    if (!arePersonsSetUp(*open.database))
        return {person, std::nullopt};
    const Person proven = persons.check({person, passphrase});
    return {proven.name, loadPerson(*open.database, proven.id)};
}

bool mayReview(const Database &database, const Signer &signer)
{
    const bool isAnalyst = signer.rows && signer.rows->person.role == PersonRole::Analyst;
    return !isAnalyst || !loadLaboratory(database).review.reviewerDecides;
}

void decideRun(OpenNotebook &open, Persons &persons, RunId run, const RunDecision &wanted)
{
    const Signer signer = signerOf(open, persons, wanted.person, wanted.passphrase);
    Act act =
        open.act(signer.name, wanted.kind == DecisionKind::Accepted ? u"runAccepted"_s : u"runRejected"_s);
    act.concerns(run);
    const Database &database = act.database();
    const Inputs inputs = loadInputs(database, run);
    requireOnBench(database, run);
    requireUnchanged(open.session(), run);
    requireMayDecide(database, run, signer);
    const run::Run current = inputs.run();
    const std::vector<CompanionRow> companions = findCompanions(database, run, inputs);
    for (const CompanionRow &companion : companions)
        requireUnchanged(open.session(), companion.run);
    const evaluation::Evaluation evaluation =
        evaluation::evaluate(inputs.method, current, {}, loadCompanions(database, companions, std::nullopt));
    const std::vector<SampleDecision> samples = requireSampleDecisions(current, wanted);
    const QStringList repeats = samplesToRepeat(current, samples, evaluation);
    RunDecision reasoned = wanted;
    reasoned.reason = runReason(wanted, evaluation, answeredSamples(samples, repeats));
    requireRunReason(reasoned, evaluation.acceptable);
    const Decision decision{wanted.kind,
                            signer.name,
                            reasoned.reason,
                            timeOf(act.at()),
                            reviewHash(current, inputs.method),
                            exchange::writeEvaluation(evaluation),
                            evaluation.acceptable,
                            act.programVersion()};
    const qint64 row =
        storeDecision(act, run, decision, inputs.newest(), repeats);
    storeSampleDecisions(act, row, samples);
    if (const auto version = signer.versionRow())
        storeSignature(act, row, *version);
    storeDecisionBasis(act, row);
    storeCompanions(act, row, companions);
    act.commit();
}

void reopenRun(OpenNotebook &open, Persons &persons, RunId run, const WantedReopening &wanted)
{
    requireReason(wanted.reason,
                  Sentence::tr("The run was not reopened, since that needs a reason: say why."));
    const Signer signer = signerOf(open, persons, wanted.person, wanted.passphrase);
    Act act = open.act(signer.name, u"runReopened"_s);
    act.concerns(run);
    const Database &database = act.database();
    methodRowOf(database, run);
    if (stateOf(database, run) == RunState::OnBench)
        throw refused(Sentence::tr("Run %1 is on the bench already; nothing was stored.").arg(run.value));
    if (!mayReview(database, signer))
        throw refused(Sentence::tr("Run %1 was not reopened: a reviewer or a head decides here, and %2 is an "
                                   "analyst.")
                          .arg(QString::number(run.value), quoted(signer.name)));
    storeReopening(act, loadDecisions(database, run).back().id, wanted.reason, signer.versionRow());
    act.commit();
}

} // namespace plateau::notebook
