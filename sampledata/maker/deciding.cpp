// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "sampledata/maker/deciding.h"

#include <algorithm>

namespace plateau::sampledata {

using namespace Qt::StringLiterals;
using evaluation::CheckId;

namespace {

QString reasonToRejectRun(const evaluation::Evaluation &evaluation)
{
    for (const evaluation::Check &check : evaluation.checks) {
        if (check.passed)
            continue;
        if (check.id == CheckId::StandardRecovery)
            return u"the recovery of the standard is outside its limits"_s;
        if (check.id == CheckId::StandardTooOld)
            return u"the standard was too old"_s;
        if (check.id == CheckId::BlankHigh || check.id == CheckId::BlankSpread)
            return u"the blank is out of its limits"_s;
    }
    return {};
}

QString reasonToRepeat(CheckId id)
{
    switch (id) {
    case CheckId::DuplicateSpread:
        return u"duplicates lie too far apart"_s;
    case CheckId::SignalLow:
        return u"too little in the tube"_s;
    default:
        return u"out of the range of the method"_s;
    }
}

bool isControl(const Rack &rack, const QString &sample)
{
    return std::ranges::none_of(rack.samples,
                                [&](const MadeSample &made) { return made.sample.id == sample; });
}

} // namespace

Judgement judgementOf(const evaluation::Evaluation &evaluation, const Rack &rack)
{
    Judgement judgement;
    judgement.decision.kind = notebook::DecisionKind::Accepted;
    judgement.decision.reason = reasonToRejectRun(evaluation);
    if (!judgement.decision.reason.isEmpty()) {
        judgement.decision.kind = notebook::DecisionKind::Rejected;
        judgement.standardFailed = judgement.decision.reason == u"the recovery of the standard is outside its limits"_s;
        for (const MadeSample &made : rack.samples)
            judgement.repeats.push_back({made.sample.id, std::nullopt});
        return judgement;
    }
    QStringList named;
    for (const evaluation::Check &check : evaluation.checks) {
        const QString &sample = check.scope.id;
        if (check.passed || check.scope.kind != evaluation::Scope::Kind::Sample || named.contains(sample) ||
            isControl(rack, sample))
            continue;
        named.append(sample);
        judgement.repeats.push_back({sample, check.advice});
        judgement.decision.samples.push_back(
            {sample, notebook::SampleDecisionKind::Repeat, reasonToRepeat(check.id), check.advice});
    }
    if (!named.isEmpty())
        judgement.decision.reason = u"the others stand; once more: %1"_s.arg(named.join(u"; "_s));
    else if (!evaluation.acceptable)
        judgement.decision.reason = u"looked at; the results stand"_s;
    return judgement;
}

} // namespace plateau::sampledata
