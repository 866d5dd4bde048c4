// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/sampleview.h"

#include "core/evaluation/format.h"

#include <algorithm>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

namespace {

void addSpikeCheck(const SampleView &view, std::vector<Check> &checks)
{
    const CheckContext &context = view.context;
    const QString measurand = context.layout.method().measurands[view.measurand].id;
    const auto spike = std::ranges::find_if(context.evaluation.spikes, [&](const SpikeRecovery &s) {
        return s.sample == view.sample.id && s.measurand == measurand;
    });
    if (spike == context.evaluation.spikes.end() || !spike->recovery_percent)
        return;
    // What the spike comes on top of is not known while the replicates disagree.
    if (failedIn(checks, CheckId::DuplicateSpread))
        return;
    const TubeGroup spiked = view.group({&view.spikedTubes});
    std::vector<Check> spikedWindow = windowChecks(context, spiked);
    const std::vector<Check> spikedReadings = readingChecks(context, spiked);
    spikedWindow.insert(spikedWindow.end(), spikedReadings.begin(), spikedReadings.end());
    const auto &own = context.layout.method().acceptance.spikeRecovery_percent;
    const assay::Interval limits = own.value_or(context.rules.spikeRecovery_percent);
    const QStringList texts = comparedTexts(*spike->recovery_percent, {limits.lower, limits.upper}, 1);
    const QString found = withUnit(texts[0], u"%"_s);
    const QString range = CheckText::tr("%1 to %2").arg(texts[1], withUnit(texts[2], u"%"_s));
    Check check;
    check.id = CheckId::SpikeRecovery;
    check.scope = view.scope;
    check.tubes = view.spikedTubes;
    const bool measurable = !failedIn(spikedWindow, CheckId::SignalHigh) &&
                            !failedIn(spikedWindow, CheckId::ReserveLow) &&
                            !failedIn(spikedWindow, CheckId::AbsorbanceHigh);
    check.passed = measurable && *spike->recovery_percent >= limits.lower - 1e-9 &&
                   *spike->recovery_percent <= limits.upper + 1e-9;
    if (check.passed) {
        check.finding = CheckText::tr("Recovery of the spike %1 is within %2.").arg(found, range);
    } else if (!measurable) {
        check.finding = CheckText::tr("The spiked tube lies above what the assay measures; its recovery of "
                                      "%1 says nothing.")
                            .arg(found);
        check.whatToDo = CheckText::tr("Repeat it with less spike or a higher dilution.");
    } else {
        check.finding = CheckText::tr("Recovery of the spike %1 is outside %2.").arg(found, range);
        check.whatToDo = CheckText::tr("Suspect an interference or a pipetting error.");
    }
    checks.push_back(std::move(check));
}

} // namespace

SampleView viewOf(const CheckContext &context, const Result &result)
{
    const assay::Method &method = context.layout.method();
    const auto found = std::ranges::find(method.measurands, result.measurand, &assay::Measurand::id);
    return {context,
            *run::findSample(context.layout.run(), result.sample),
            static_cast<size_t>(found - method.measurands.begin()),
            {Scope::Kind::Sample, result.sample, scopeMeasurand(method, result.measurand)},
            result.unit,
            context.layout.resultTubes(result.sample),
            context.layout.tubesWith(run::Role::Spiked, result.sample),
            context.layout.tubesWith(run::Role::SampleBlank, result.sample)};
}

bool failedIn(const std::vector<Check> &checks, CheckId id)
{
    return std::ranges::any_of(checks, [&](const Check &c) { return c.id == id && !c.passed; });
}

std::vector<Check> sampleChecks(const CheckContext &context, const Result &result)
{
    const SampleView view = viewOf(context, result);
    // A spiked tube is judged by its own recovery; too strong a spike does not spoil the sample's result.
    const TubeGroup read = view.group({&view.resultTubes, &view.blankTubes});
    const TubeGroup measured = view.group({&view.resultTubes});

    std::vector<Check> checks = readingChecks(context, read);
    const TubeGroup spiked = view.group({&view.spikedTubes});
    for (Check &check : directionChecks(context, measured))
        checks.push_back(std::move(check));
    for (Check &check : windowChecks(context, measured))
        checks.push_back(std::move(check));
    for (Check &check : seriesChecks(context, read))
        checks.push_back(std::move(check));
    for (Check &check : timingChecks(context, read))
        checks.push_back(std::move(check));
    addAgreementChecks(view, checks);
    if (!spiked.tubes.empty()) {
        for (Check &check : readingChecks(context, spiked)) {
            if (!check.passed &&
                (check.id == CheckId::ReadingMissing || check.id == CheckId::ReadingImplausible))
                checks.push_back(std::move(check));
        }
        for (auto look : {directionChecks, timingChecks}) {
            for (Check &check : look(context, spiked)) {
                if (!check.passed)
                    checks.push_back(std::move(check));
            }
        }
    }
    addSpikeCheck(view, checks);
    addAdvice(view, checks);
    return checks;
}

} // namespace plateau::evaluation
