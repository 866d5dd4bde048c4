// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/checks.h"

#include "core/evaluation/advice.h"
#include "core/evaluation/format.h"
#include "core/quality/distributions.h"
#include "core/quality/statistics.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace plateau::evaluation {

namespace {

/// Everything the checks of one result share.
struct SampleView {
    const CheckContext &context;
    const run::Sample &sample;
    size_t measurand;
    Scope scope;
    std::vector<int> resultTubes;
    std::vector<int> spikedTubes;
    std::vector<int> blankTubes;

    TubeGroup group(std::initializer_list<const std::vector<int> *> parts) const
    {
        TubeGroup all{scope, measurand, {}};
        for (const std::vector<int> *part : parts)
            all.tubes.insert(all.tubes.end(), part->begin(), part->end());
        std::ranges::sort(all.tubes);
        return all;
    }
};

SampleView viewOf(const CheckContext &context, const Result &result)
{
    const assay::Method &method = context.layout.method();
    const auto found = std::ranges::find(method.measurands, result.measurand, &assay::Measurand::id);
    return {context,
            *run::findSample(context.layout.run(), result.sample),
            static_cast<size_t>(found - method.measurands.begin()),
            {Scope::Kind::Sample, result.sample, scopeMeasurand(method, result.measurand)},
            context.layout.resultTubes(result.sample),
            context.layout.tubesWith(run::Role::Spiked, result.sample),
            context.layout.tubesWith(run::Role::SampleBlank, result.sample)};
}

double lastAbsorbance(const run::Tube &tube, const QString &name)
{
    const run::Reading &reading = tube.readings.at(name);
    const auto *series = std::get_if<run::ReadingSeries>(&reading);
    return series ? series->back().absorbance : std::get<double>(reading);
}

double meanBlankReading(const SampleView &view, const QString &name)
{
    std::vector<double> readings;
    for (const int blank : view.context.layout.measurands()[view.measurand].blanks)
        readings.push_back(lastAbsorbance(view.context.tube(blank), name));
    return quality::mean(readings).value_or(0);
}

TubeState stateOf(const SampleView &view, int tube, bool usedUp)
{
    const CheckContext &context = view.context;
    const assay::Measurand &measurand = *context.layout.measurands()[view.measurand].measurand;
    TubeState state;
    state.netSignal = context.value(tube, view.measurand).netSignal.value_or(0);
    state.sampleVolume_mL = context.value(tube, view.measurand).sampleVolume_mL;
    state.usedUp = usedUp;
    state.largestReading = -1;
    for (const QString &name : assay::readingsOf(measurand.signal)) {
        const double absorbance = lastAbsorbance(context.tube(tube), name);
        if (absorbance > state.largestReading) {
            state.largestReading = absorbance;
            state.blankAtLargest = meanBlankReading(view, name);
        }
    }
    state.remaining = lastAbsorbance(context.tube(tube), assay::laterReading(measurand.signal));
    state.remainingWithoutSample = state.remaining + state.netSignal;
    return state;
}

/// What one unit of signal is worth in the tube, in g/L of the sample as received.
double signalWorth_g_per_L(const SampleView &view, int tube)
{
    const TubeValue &value = view.context.value(tube, view.measurand);
    return view.context.layout.measurands()[view.measurand].cuvette_g_per_L * value.totalVolume_mL /
           value.sampleVolume_mL * run::dilutionFactor(view.sample.dilution);
}

/// How far apart n values may lie, in g/L, with a word on where that comes from. The method's r is for two
/// results; for more the critical range of ISO 5725-6 grows with f(n)/f(2). The laboratory's own limit is
/// relative, and near nothing a part of nothing: there the noise of the two readings of a tube is the limit.
std::pair<double, QString> rangeLimit(const SampleView &view, double mean_g_per_L, int n,
                                      std::span<const int> tubes)
{
    const double rangeFactor = quality::criticalRangeFactor(n);
    const double widening = rangeFactor / quality::criticalRangeFactor(2);
    const auto &published = view.context.layout.method().acceptance.repeatability;
    if (published) {
        const double r = published->constant_g_per_L + published->proportional * std::abs(mean_g_per_L);
        return {r * widening, CheckText::tr("the method's repeatability limit")};
    }
    const double relative = view.context.rules.relativeRepeatability;
    const double own = relative * std::abs(mean_g_per_L) * widening;
    double noise = 0;
    for (const int tube : tubes)
        noise = std::max(noise, signalWorth_g_per_L(view, tube));
    noise *= rangeFactor * std::sqrt(2.0) * view.context.absorbanceUncertainty;
    if (noise > own)
        return {noise, CheckText::tr("the noise of the readings")};
    return {own, CheckText::tr("the laboratory's own limit of %1 %").arg(plainText(100 * relative))};
}

/// Concentrations (g/L) by sample volume, with their tubes.
struct VolumeGroup {
    std::vector<double> values;
    std::vector<int> tubes;
};
std::map<double, VolumeGroup> byVolume(const SampleView &view)
{
    std::map<double, VolumeGroup> groups;
    for (const int tube : view.resultTubes) {
        const TubeValue &value = view.context.value(tube, view.measurand);
        if (!value.concentration_g_per_L)
            continue;
        VolumeGroup &group = groups[value.sampleVolume_mL];
        group.values.push_back(*value.concentration_g_per_L);
        group.tubes.push_back(tube);
    }
    return groups;
}

Check agreement(const SampleView &view, CheckId id, std::span<const double> values, std::vector<int> tubes)
{
    const double mean = *quality::mean(values);
    const double spread = quality::range(values);
    const auto [limit, origin] = rangeLimit(view, mean, static_cast<int>(values.size()), tubes);
    Check check;
    check.id = id;
    check.scope = view.scope;
    check.passed = spread <= limit * (1 + 1e-9);
    check.tubes = std::move(tubes);
    const QString spreadText = significantText(spread, 3);
    const QString limitText = significantText(limit, 3);
    const bool duplicates = id == CheckId::DuplicateSpread;
    if (check.passed)
        check.message =
            (duplicates ? CheckText::tr("The replicates agree: %1 g/L apart, up to %2 g/L allowed (%3).")
                        : CheckText::tr("The sample volumes agree: %1 g/L apart, up to %2 g/L allowed (%3)."))
                .arg(spreadText, limitText, origin);
    else
        check.message =
            (duplicates
                 ? CheckText::tr(
                       "The replicates are %1 g/L apart, more than %2 g/L (%3). One of them was pipetted or "
                       "read wrongly: repeat the sample.")
                 : CheckText::tr(
                       "Different sample volumes give results %1 g/L apart, more than %2 g/L (%3). Suspect "
                       "an interference: dilute further, or check by a spike."))
                .arg(spreadText, limitText, origin);
    return check;
}

void addAgreementChecks(const SampleView &view, std::vector<Check> &checks)
{
    const std::map<double, VolumeGroup> groups = byVolume(view);
    std::vector<double> means;
    std::vector<int> all;
    for (const auto &[volume_mL, group] : groups) {
        if (group.values.size() > 1)
            checks.push_back(agreement(view, CheckId::DuplicateSpread, group.values, group.tubes));
        means.push_back(*quality::mean(group.values));
        all.insert(all.end(), group.tubes.begin(), group.tubes.end());
    }
    if (means.size() > 1)
        checks.push_back(agreement(view, CheckId::VolumeProportionality, means, all));
}

bool failedIn(const std::vector<Check> &checks, CheckId id)
{
    return std::ranges::any_of(checks, [&](const Check &c) { return c.id == id && !c.passed; });
}

void addSpikeCheck(const SampleView &view, std::vector<Check> &checks)
{
    const CheckContext &context = view.context;
    const QString measurand = context.layout.method().measurands[view.measurand].id;
    const auto spike = std::ranges::find_if(context.evaluation.spikes, [&](const SpikeRecovery &s) {
        return s.sample == view.sample.id && s.measurand == measurand;
    });
    if (spike == context.evaluation.spikes.end() || !spike->recovery_percent)
        return;
    const TubeGroup spiked = view.group({&view.spikedTubes});
    std::vector<Check> spikedWindow = windowChecks(context, spiked);
    const std::vector<Check> spikedReadings = readingChecks(context, spiked);
    spikedWindow.insert(spikedWindow.end(), spikedReadings.begin(), spikedReadings.end());
    const auto &own = context.layout.method().acceptance.spikeRecovery_percent;
    const assay::Interval limits = own.value_or(context.rules.spikeRecovery_percent);
    const QString found = significantText(*spike->recovery_percent, 4);
    const QString range = CheckText::tr("%1 to %2 %").arg(plainText(limits.lower), plainText(limits.upper));
    Check check;
    check.id = CheckId::SpikeRecovery;
    check.scope = view.scope;
    check.tubes = view.spikedTubes;
    const bool measurable = !failedIn(spikedWindow, CheckId::SignalHigh) &&
                            !failedIn(spikedWindow, CheckId::ReserveLow) &&
                            !failedIn(spikedWindow, CheckId::AbsorbanceHigh);
    check.passed = measurable && *spike->recovery_percent >= limits.lower - 1e-9 &&
                   *spike->recovery_percent <= limits.upper + 1e-9;
    if (check.passed)
        check.message = CheckText::tr("Recovery of the spike %1 % is within %2.").arg(found, range);
    else if (!measurable)
        check.message =
            CheckText::tr("The spiked tube lies above what the assay measures; its recovery of %1 % says "
                          "nothing. Repeat it with less spike or a stronger dilution.")
                .arg(found);
    else
        check.message =
            CheckText::tr("Recovery of the spike %1 % is outside %2. Suspect an interference or an error of "
                          "pipetting.")
                .arg(found, range);
    checks.push_back(std::move(check));
}

/// Of two advices of one kind the careful one: the stronger dilution, the smaller of larger volumes.
bool isMoreCareful(const Advice &advice, const Advice &other)
{
    if (advice.kind != other.kind)
        return false;
    return advice.kind == Advice::Kind::Dilute ? advice.factor > other.factor
                                               : advice.sampleVolume_mL < other.sampleVolume_mL;
}

void keepMoreCareful(std::optional<Advice> &kept, const Advice &advice)
{
    const bool atLeast = advice.atLeast || (kept && kept->atLeast);
    if (!kept || isMoreCareful(advice, *kept))
        kept = advice;
    kept->atLeast = atLeast;
}

void adviseDilution(const SampleView &view, const std::vector<int> &usedUp, Check &check)
{
    for (const int tube : check.tubes) {
        const bool result = std::ranges::find(view.resultTubes, tube) != view.resultTubes.end();
        if (!result || !view.context.value(tube, view.measurand).netSignal)
            continue;
        const bool exhausted = std::ranges::find(usedUp, tube) != usedUp.end();
        keepMoreCareful(check.advice, diluteAdvice(view.context.layout.method(), view.sample,
                                                   stateOf(view, tube, exhausted)));
    }
    if (check.advice)
        check.message = CheckText::tr("%1 Repeat %2.").arg(check.message, adviceText(*check.advice));
}

/// "0.05 g/L" at the window's lower end, for the volume and dilution of the tube.
QString quantificationLimit(const SampleView &view, int tube)
{
    const TubeValue &value = view.context.value(tube, view.measurand);
    if (!value.concentration_g_per_L || !value.netSignal || *value.netSignal == 0)
        return {};
    const double limit =
        *value.concentration_g_per_L * view.context.layout.method().window.minSignal / *value.netSignal;
    return CheckText::tr("%1 g/L").arg(significantText(limit, 2));
}

void adviseStrengthening(const SampleView &view, Check &check)
{
    for (const int tube : check.tubes) {
        const auto advice =
            strengthenAdvice(view.context.layout.method(), view.sample, stateOf(view, tube, false));
        if (advice)
            keepMoreCareful(check.advice, *advice);
    }
    if (check.advice) {
        const QString how = check.advice->kind == Advice::Kind::IncreaseVolume
                                ? CheckText::tr("with %1").arg(adviceText(*check.advice))
                                : adviceText(*check.advice);
        check.message = CheckText::tr("%1 Repeat %2.").arg(check.message, how);
    } else {
        const QString limit = quantificationLimit(view, check.tubes.front());
        check.message =
            limit.isEmpty()
                ? CheckText::tr("%1 Report as below the limit of quantification.").arg(check.message)
                : CheckText::tr("%1 Report as below the limit of quantification, %2.")
                      .arg(check.message, limit);
    }
}

void addAdvice(const SampleView &view, std::vector<Check> &checks)
{
    std::vector<int> usedUp;
    for (const Check &check : checks) {
        if (check.id == CheckId::ReserveLow)
            usedUp = check.tubes;
    }
    const bool untrustworthy =
        failedIn(checks, CheckId::WrongDirection) || failedIn(checks, CheckId::ReadingImplausible);
    for (Check &check : checks) {
        if (check.passed || untrustworthy)
            continue;
        if (check.id == CheckId::SignalHigh || check.id == CheckId::AbsorbanceHigh ||
            check.id == CheckId::ReserveLow)
            adviseDilution(view, usedUp, check);
        else if (check.id == CheckId::SignalLow)
            adviseStrengthening(view, check);
    }
}

} // namespace

std::vector<Check> sampleChecks(const CheckContext &context, const Result &result)
{
    const SampleView view = viewOf(context, result);
    // A spiked tube is judged by its own recovery; too strong a spike does not spoil the sample's result.
    const TubeGroup read = view.group({&view.resultTubes, &view.blankTubes});
    const TubeGroup measured = view.group({&view.resultTubes});

    std::vector<Check> checks = readingChecks(context, read);
    const TubeGroup spiked = view.group({&view.spikedTubes});
    checks.push_back(directionCheck(context, measured));
    for (Check &check : windowChecks(context, measured))
        checks.push_back(std::move(check));
    for (Check &check : seriesChecks(context, read))
        checks.push_back(std::move(check));
    addAgreementChecks(view, checks);
    if (!spiked.tubes.empty()) {
        for (Check &check : readingChecks(context, spiked)) {
            if (!check.passed &&
                (check.id == CheckId::ReadingMissing || check.id == CheckId::ReadingImplausible))
                checks.push_back(std::move(check));
        }
    }
    addSpikeCheck(view, checks);
    addAdvice(view, checks);
    return checks;
}

} // namespace plateau::evaluation
