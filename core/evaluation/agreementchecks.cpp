// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/sampleview.h"

#include "core/evaluation/format.h"
#include "core/quality/distributions.h"
#include "core/quality/statistics.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

namespace {

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

/// 0 where nothing of it would show beside its limit.
QString differenceText(const QString &number)
{
    return withUnit(number.toDouble() == 0 ? u"0"_s : number, u"g/L"_s);
}

void tellAgreement(Check &check, double spread, double limit, const QString &origin)
{
    const QStringList texts = comparedTexts(spread, {limit}, decimalsFor(limit, 3));
    const QString spreadText = differenceText(texts[0]);
    const QString limitText = differenceText(texts[1]);
    const bool duplicates = check.id == CheckId::DuplicateSpread;
    if (check.passed) {
        check.finding = (duplicates ? CheckText::tr("The replicates agree: %1 apart, up to %2 allowed (%3).")
                                    : CheckText::tr("The sample volumes agree: %1 apart, up to %2 allowed (%3)."))
                            .arg(spreadText, limitText, origin);
    } else if (duplicates) {
        check.finding = CheckText::tr("The replicates in %1 are %2 apart, more than %3 (%4).")
                            .arg(tubeNames(check.tubes), spreadText, limitText, origin);
        check.whatToDo = CheckText::tr("Read them again while they stand in the rack; if they still disagree, "
                                       "one of them was pipetted wrongly: repeat the sample.");
    } else {
        check.finding = CheckText::tr("Different sample volumes give results %1 apart, more than %2 (%3).")
                            .arg(spreadText, limitText, origin);
        check.whatToDo = CheckText::tr("Suspect an interference: dilute further, or check by a spike.");
    }
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
    tellAgreement(check, spread, limit, origin);
    return check;
}

} // namespace

double signalWorth_g_per_L(const SampleView &view, int tube)
{
    const TubeValue &value = view.context.value(tube, view.measurand);
    return view.context.layout.measurands()[view.measurand].cuvette_g_per_L * value.totalVolume_mL /
           value.sampleVolume_mL * run::dilutionFactor(view.sample.dilution);
}

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
    const QString percent = withUnit(plainText(100 * relative), u"%"_s);
    // Said as limitOriginName says it.
    return {own, relative == Rules{}.relativeRepeatability
                     ? CheckText::tr("%1, common practice").arg(percent)
                     : CheckText::tr("the laboratory's rule of %1").arg(percent)};
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

} // namespace plateau::evaluation
