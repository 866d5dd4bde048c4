// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/checklines.h"

#include "core/evaluation/checkfacts.h"
#include "core/evaluation/checksnotmade.h"
#include "core/evaluation/format.h"
#include "core/evaluation/layout.h"

#include <algorithm>
#include <array>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

namespace {

/// The order a run is judged in.
constexpr std::array order{
    CheckId::BlankMissing,       CheckId::BlankHigh,
    CheckId::BlankSpread,        CheckId::StandardRecovery,
    CheckId::StandardTooOld,     CheckId::DuplicateSpread,
    CheckId::SpikeRecovery,      CheckId::VolumeProportionality,
    CheckId::ReadingEarly,       CheckId::ReadingLate,
    CheckId::ReactionUnfinished, CheckId::LotExpired,
    CheckId::SignalLow,          CheckId::SignalHigh,
    CheckId::AbsorbanceHigh,     CheckId::ReserveLow,
    CheckId::WrongDirection,     CheckId::SampleVolumeOutsideRange,
    CheckId::ReadingImplausible, CheckId::ReadingMissing,
};
static_assert(order.size() == static_cast<size_t>(CheckId::SampleVolumeOutsideRange) + 1);

struct Judged {
    CheckLine line;
    std::optional<double> strain;
};

bool calibrates(const CheckContext &context, const Check &check)
{
    const std::optional<size_t> measurand = measurandOf(context, check);
    return check.id == CheckId::StandardRecovery && measurand &&
           context.layout.run().calibration == run::Calibration::Standard &&
           std::ranges::any_of(context.layout.measurands()[*measurand].calibration,
                               [&](const CalibrationPoint &point) {
                                   return std::ranges::find(check.tubes, point.tube) != check.tubes.end();
                               });
}

CheckOutcome outcomeOf(const CheckContext &context, const Check &check)
{
    if (check.passed)
        return calibrates(context, check) ? CheckOutcome::NotJudged : CheckOutcome::Passed;
    if (check.id == CheckId::ReadingMissing)
        return CheckOutcome::Waiting;
    if (check.advice)
        return CheckOutcome::Repeat;
    return check.id == CheckId::SignalLow && check.scope.kind == Scope::Kind::Sample ? CheckOutcome::Noted
                                                                                     : CheckOutcome::Failed;
}

QString titleOf(const CheckContext &context, const Check &check)
{
    const auto isControl = [&](int tube) { return context.tube(tube).role == run::Role::Control; };
    if (check.id == CheckId::StandardRecovery && !check.tubes.empty() &&
        std::ranges::all_of(check.tubes, isControl))
        return CheckText::tr("Recovery of the control");
    return checkTitle(check.id);
}

QString whereOf(const CheckContext &context, const Check &check, const run::LotUse *lot)
{
    QStringList parts{check.scope.id};
    if (const assay::Measurand *measurand =
            assay::findMeasurand(context.layout.method(), check.scope.measurand))
        parts << measurand->name;
    else
        parts << check.scope.measurand;
    if (lot) {
        const assay::Component *component = assay::findComponent(context.layout.method(), lot->component);
        parts << (component ? component->name : lot->component) << lot->lot;
    }
    parts.removeAll(QString());
    return parts.join(CheckText::tr(", "));
}

Judged judgedOf(const CheckContext &context, const Check &check, const run::LotUse *lot)
{
    const CheckFact fact = factOf(context, check, lot);
    const QString dash = u"–"_s;
    CheckLine line;
    line.id = check.id;
    line.outcome = outcomeOf(context, check);
    line.what = titleOf(context, check);
    line.where = whereOf(context, check, lot);
    line.found = fact.found.isEmpty() ? dash : fact.found;
    line.limit = line.outcome == CheckOutcome::NotJudged || fact.limit.isEmpty() ? dash : fact.limit;
    line.origin = fact.origin;
    line.message = capitalised(check.message());
    return {line, fact.strain};
}

/// Standards and controls are few, and each has its name.
bool isGathered(const CheckLine &line, const CheckLine &other)
{
    const bool alike = line.id == other.id && line.outcome == other.outcome;
    return alike && line.id != CheckId::StandardRecovery && line.id != CheckId::StandardTooOld &&
           (line.outcome == CheckOutcome::Passed || line.outcome == CheckOutcome::Waiting);
}

void gather(std::vector<Judged> &all, Judged fresh)
{
    const auto known =
        std::ranges::find_if(all, [&](const Judged &old) { return isGathered(old.line, fresh.line); });
    if (known == all.end()) {
        all.push_back(std::move(fresh));
        return;
    }
    const int checks = known->line.checks + 1;
    if (fresh.strain && (!known->strain || *fresh.strain > *known->strain))
        *known = std::move(fresh);
    known->line.checks = checks;
}

/// What several have in common, and what only the one has whose number stands there.
void nameGathered(Judged &judged)
{
    CheckLine &line = judged.line;
    if (line.checks == 1)
        return;
    if (line.outcome == CheckOutcome::Waiting) {
        line.where = CheckText::tr("%1 places").arg(line.checks);
        line.found = CheckText::tr("some");
        return;
    }
    // A wider spread of another sample may be further from its own limit: whose number it is has to be told.
    line.where = judged.strain && !line.where.isEmpty()
                     ? CheckText::tr("%1 (of %2 nearest its limit)").arg(line.where, QString::number(line.checks))
                     : QString();
}

int placeOf(const CheckLine &line)
{
    return static_cast<int>(std::ranges::find(order, line.id) - order.begin());
}

} // namespace

QString limitOriginName(LimitOrigin origin)
{
    switch (origin) {
    case LimitOrigin::Laboratory:
        return CheckText::tr("laboratory's rule");
    case LimitOrigin::CommonPractice:
        return CheckText::tr("common practice");
    case LimitOrigin::Noise:
        return CheckText::tr("noise of the readings");
    case LimitOrigin::Label:
        return CheckText::tr("lot's use-by date");
    case LimitOrigin::Method:
        break;
    }
    return CheckText::tr("method");
}

std::vector<CheckLine> checkLines(const assay::Method &method, const run::Run &run,
                                  const Evaluation &evaluation, const Rules &rules)
{
    const Layout layout(method, run, rules);
    const CheckContext context{layout, evaluation, rules, layout.absorbanceUncertainty()};
    // Checks of lots come in the order of the lots that have a date.
    std::vector<const run::LotUse *> dated;
    for (const run::LotUse &lot : run.lots) {
        if (lot.expires)
            dated.push_back(&lot);
    }
    std::size_t lots = 0;
    std::vector<Judged> judged;
    for (const Check &check : evaluation.checks) {
        const run::LotUse *lot = nullptr;
        if (check.id == CheckId::LotExpired && lots < dated.size())
            lot = dated[lots++];
        gather(judged, judgedOf(context, check, lot));
    }
    std::vector<CheckLine> lines;
    for (Judged &one : judged) {
        nameGathered(one);
        lines.push_back(std::move(one.line));
    }
    for (CheckLine &line : checksNotMade(method, run))
        lines.push_back(std::move(line));
    std::ranges::stable_sort(lines, [](const CheckLine &one, const CheckLine &other) {
        const auto rank = [](const CheckLine &line) {
            const bool stands = line.outcome == CheckOutcome::NotJudged;
            return stands ? CheckOutcome::Passed : line.outcome;
        };
        return std::pair(rank(one), placeOf(one)) < std::pair(rank(other), placeOf(other));
    });
    return lines;
}

int failedChecks(const std::vector<CheckLine> &lines)
{
    int count = 0;
    for (const CheckLine &line : lines) {
        if (line.outcome == CheckOutcome::Failed || line.outcome == CheckOutcome::Repeat)
            count += line.checks;
    }
    return count;
}

} // namespace plateau::evaluation
