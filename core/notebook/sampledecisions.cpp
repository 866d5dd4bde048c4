// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/sampledecisions.h"

#include "core/assay/label.h"
#include "core/assay/limits.h"
#include "core/notebook/opennotebook.h"
#include "core/notebook/sentence.h"
#include "core/notebook/text.h"
#include "core/notebook/words.h"

#include <algorithm>
#include <limits>

namespace plateau::notebook {

using namespace Qt::StringLiterals;
using assay::quoted;
using evaluation::Advice;

namespace {

double factorOf(const std::vector<run::DilutionStep> &steps)
{
    double factor = 1;
    for (const run::DilutionStep &step : steps)
        factor *= step.makeUpTo_mL / step.take_mL;
    return factor;
}

bool isPossible(const run::DilutionStep &step)
{
    return step.take_mL >= assay::limit::smallestVolume_mL && step.makeUpTo_mL >= step.take_mL &&
           step.makeUpTo_mL <= assay::limit::flaskVolume_mL;
}

bool isPossible(const Advice &advice)
{
    if (advice.kind == Advice::Kind::IncreaseVolume)
        return advice.sampleVolume_mL >= assay::limit::smallestVolume_mL &&
               advice.sampleVolume_mL <= assay::limit::tubeVolume_mL;
    return !advice.steps.empty() &&
           std::ranges::all_of(advice.steps, [](const auto &step) { return isPossible(step); }) &&
           factorOf(advice.steps) <= assay::limit::dilutionFactor;
}

/// Of what somebody advised only what is stored.
Advice asStored(const Advice &advice)
{
    Advice stored;
    stored.kind = advice.kind;
    if (advice.kind == Advice::Kind::IncreaseVolume) {
        stored.sampleVolume_mL = advice.sampleVolume_mL;
        return stored;
    }
    for (const run::DilutionStep &step : advice.steps)
        stored.steps.push_back({step.take_mL, step.makeUpTo_mL});
    stored.factor = factorOf(stored.steps);
    return stored;
}

void requireSense(const SampleDecision &decision, DecisionKind ofRun)
{
    if (decision.kind == SampleDecisionKind::Accepted && ofRun == DecisionKind::Rejected)
        throw refused(Sentence::tr("The run was not decided on: the sample %1 of a rejected run cannot be "
                                   "accepted; accept the run and reject the other samples.")
                          .arg(quoted(decision.sample)));
    if (decision.kind == SampleDecisionKind::Rejected || !decision.reason.isEmpty())
        requireReason(
            decision.reason,
            decision.kind == SampleDecisionKind::Rejected
                ? Sentence::tr(
                      "The run was not decided on, since rejecting the sample %1 needs a reason: say why.")
                      .arg(quoted(decision.sample))
                : Sentence::tr("The run was not decided on: the reason for the sample %1 is blank; leave it "
                               "out or say why.")
                      .arg(quoted(decision.sample)));
    if (!decision.advice)
        return;
    if (decision.kind != SampleDecisionKind::Repeat)
        throw refused(Sentence::tr("The run was not decided on: there is advice on repeating the sample %1, "
                                   "but it is not to be repeated; leave the advice out.")
                          .arg(quoted(decision.sample)));
    if (!isPossible(*decision.advice))
        throw refused(
            Sentence::tr("The run was not decided on: the sample %1 cannot be repeated as advised; give "
                         "dilution steps from less to more volume, or how much sample to take.")
                .arg(quoted(decision.sample)));
}

std::vector<run::DilutionStep> loadSteps(const Database &database, qint64 row)
{
    Statement query(database, u"SELECT take_mL, make_up_to_mL FROM decision_step WHERE decision_sample = ? "
                              "ORDER BY position"_s);
    query.run(row);
    std::vector<run::DilutionStep> steps;
    while (query.next())
        steps.push_back({query.real(0), query.real(1)});
    return steps;
}

} // namespace

std::vector<SampleDecision> requireSampleDecisions(const run::Run &run, const RunDecision &decision)
{
    std::vector<SampleDecision> inOrder;
    QStringList named;
    for (const SampleDecision &sample : decision.samples) {
        if (!run::findSample(run, sample.sample))
            throw refused(
                Sentence::tr("The run was not decided on: it holds no sample %1; remove its decision.")
                    .arg(quoted(sample.sample)));
        if (named.contains(sample.sample))
            throw refused(
                Sentence::tr(
                    "The run was not decided on: there are two decisions on the sample %1; remove one.")
                    .arg(quoted(sample.sample)));
        named.append(sample.sample);
        requireSense(sample, decision.kind);
    }
    for (const run::Sample &sample : run.samples) {
        const auto found = std::ranges::find(decision.samples, sample.id, &SampleDecision::sample);
        if (found == decision.samples.end())
            continue;
        inOrder.push_back(*found);
        if (found->advice)
            inOrder.back().advice = asStored(*found->advice);
    }
    return inOrder;
}

void storeSampleDecisions(Act &act, qint64 decisionRow, const std::vector<SampleDecision> &samples)
{
    for (const SampleDecision &sample : samples) {
        std::optional<double> volume_mL;
        if (sample.advice && sample.advice->kind == Advice::Kind::IncreaseVolume)
            volume_mL = sample.advice->sampleVolume_mL;
        Statement insert(act.database(), u"INSERT INTO decision_sample (decision, sample, kind, reason, "
                                         "sample_volume_mL) VALUES (?, ?, ?, ?, ?)"_s);
        insert.run(decisionRow, sample.sample, sampleDecisionWord(sample.kind), sample.reason, volume_mL);
        const qint64 row = insert.insertedId();
        act.covers(u"decision_sample"_s, row);
        if (!sample.advice)
            continue;
        Statement insertStep(act.database(),
                             u"INSERT INTO decision_step (decision_sample, position, take_mL, "
                             "make_up_to_mL) VALUES (?, ?, ?, ?)"_s);
        int position = 0;
        for (const run::DilutionStep &step : sample.advice->steps) {
            insertStep.run(row, position++, step.take_mL, step.makeUpTo_mL);
            act.covers(u"decision_step"_s, insertStep.insertedId());
        }
    }
}

std::vector<SampleDecision> loadSampleDecisions(const Database &database, qint64 decisionRow)
{
    Statement query(database, u"SELECT id, sample, kind, reason, sample_volume_mL FROM decision_sample "
                              "WHERE decision = ? ORDER BY id"_s);
    query.run(decisionRow);
    std::vector<SampleDecision> samples;
    while (query.next()) {
        SampleDecision sample{query.text(1), sampleDecisionKindOf(query.text(2)), query.text(3), {}};
        Advice advice;
        advice.steps = loadSteps(database, query.integer(0));
        if (const auto volume_mL = query.optionalReal(4)) {
            advice.kind = Advice::Kind::IncreaseVolume;
            advice.sampleVolume_mL = *volume_mL;
            sample.advice = advice;
        } else if (!advice.steps.empty()) {
            advice.factor = factorOf(advice.steps);
            sample.advice = advice;
        }
        samples.push_back(std::move(sample));
    }
    return samples;
}

QStringList withdrawnSamples(const Database &database, RunId run, std::optional<qint64> before)
{
    Statement query(database, u"SELECT sample FROM decision_sample WHERE kind <> 'accepted' AND decision = "
                              "(SELECT max(id) FROM decision WHERE run = ? AND id < ?) ORDER BY id"_s);
    query.run(run.value, before.value_or(std::numeric_limits<qint64>::max()));
    QStringList samples;
    while (query.next())
        samples.append(query.text(0));
    return samples;
}

SampleDecisionKind decidedOf(const Decision &decision, const QString &sample)
{
    const auto own = std::ranges::find(decision.samples, sample, &SampleDecision::sample);
    if (own != decision.samples.end())
        return own->kind;
    if (decision.kind == DecisionKind::Rejected)
        return SampleDecisionKind::Rejected;
    return decision.repeats.contains(sample) ? SampleDecisionKind::Repeat : SampleDecisionKind::Accepted;
}

bool acceptsResult(const Decision &decision, const evaluation::Result &result)
{
    if (decision.kind == DecisionKind::Rejected)
        return false;
    const auto own = std::ranges::find(decision.samples, result.sample, &SampleDecision::sample);
    return own != decision.samples.end() ? own->kind == SampleDecisionKind::Accepted
                                         : result.verdict != evaluation::Verdict::Repeat;
}

} // namespace plateau::notebook
