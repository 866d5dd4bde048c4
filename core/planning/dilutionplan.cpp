// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/dilutionplan.h"

#include "core/evaluation/format.h"
#include "core/planning/dilutionsearch.h"
#include "core/planning/glassfor.h"
#include "core/run/volumes.h"
#include "core/planning/slack.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace plateau::planning {

using namespace Qt::StringLiterals;
using evaluation::significantText;
using evaluation::withUnit;

namespace {

struct DilutionSentence {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::DilutionPlan)
};

constexpr int usualLongestChain = 2;
constexpr int longestChain = 3;

const assay::Component *sampleOf(const assay::Method &method)
{
    return assay::findComponent(method, method.sample);
}

double usualSampleVolume_mL(const assay::Method &method)
{
    const assay::Component *sample = sampleOf(method);
    return sample ? sample->volume_mL : 0;
}

bool isSame(double one, double other)
{
    return std::abs(one - other) <= slack * std::max(std::abs(one), std::abs(other));
}

/// Which volumes of the sample come into question beside the method's own.
enum class Volumes {
    /// Those that leave a volume of diluent that a pipette delivers, too.
    WithDiluent,
    AnySettable,
};

std::vector<double> sampleVolumes_mL(const assay::Method &method, const DilutionQuestion &question,
                                     const Glassware &glassware, Volumes which)
{
    if (question.sampleVolume_mL)
        return {*question.sampleVolume_mL};
    std::vector<double> volumes{usualSampleVolume_mL(method)};
    const assay::Component *sample = sampleOf(method);
    if (!sample || !sample->range_mL)
        return volumes;
    for (const Pipette &pipette : glassware.pipettes) {
        for (const double volume_mL : settableVolumes_mL(pipette)) {
            const bool allowed = volume_mL >= sample->range_mL->lower * (1 - slack) &&
                                 volume_mL <= sample->range_mL->upper * (1 + slack);
            const auto same = [volume_mL](double other) { return isSame(volume_mL, other); };
            const bool dosable =
                which == Volumes::AnySettable || isDelivered(diluentBeside_mL(method, volume_mL), glassware);
            if (allowed && dosable && std::ranges::none_of(volumes, same))
                volumes.push_back(volume_mL);
        }
    }
    std::ranges::sort(volumes);
    return volumes;
}

struct Expected {
    const assay::Measurand *measurand = nullptr;
    double g_per_L = 0;
};

/// Those that are expected at all; a measurand that the sample does not hold cannot be brought anywhere.
std::vector<Expected> expectedOf(const assay::Method &method, const DilutionQuestion &question)
{
    std::vector<Expected> expected;
    for (const assay::Measurand &measurand : method.measurands) {
        const auto found = question.expected_g_per_L.find(measurand.id);
        if (found != question.expected_g_per_L.end() && found->second > 0)
            expected.push_back({&measurand, found->second});
    }
    return expected;
}

double signalOf(const assay::Method &method, const DilutionQuestion &question, const Expected &expected,
                double sampleVolume_mL, double factor)
{
    return predictedSignal(method, expected.measurand->id, expected.g_per_L, sampleVolume_mL, factor,
                           question.wavelength_nm, question.pathLength_mm);
}

/// Where the window lets the factor be at this sample volume.
DilutionTarget targetOf(const assay::Method &method, const DilutionQuestion &question,
                        const std::vector<Expected> &expected, double sampleVolume_mL)
{
    const assay::Interval span = aimedSignals(method.window);
    double weakest = 0;
    double strongest = 0;
    for (const Expected &each : expected) {
        const double undiluted = signalOf(method, question, each, sampleVolume_mL, 1);
        weakest = weakest > 0 ? std::min(weakest, undiluted) : undiluted;
        strongest = std::max(strongest, undiluted);
    }
    DilutionTarget target;
    target.sampleVolume_mL = sampleVolume_mL;
    target.usual = isSame(sampleVolume_mL, usualSampleVolume_mL(method));
    target.lowest = std::log10(strongest / span.upper);
    target.highest = std::log10(weakest / span.lower);
    target.middle = std::log10(std::sqrt(strongest * weakest) / aimedSignal(method.window));
    target.spread = std::log10(strongest / weakest) / 2;
    return target;
}

std::vector<DilutionTarget> targetsOf(const assay::Method &method, const DilutionQuestion &question,
                                      const Glassware &glassware, Volumes which)
{
    const std::vector<Expected> expected = expectedOf(method, question);
    if (expected.empty() || !assay::absorptivity(method, question.wavelength_nm))
        return {};
    std::vector<DilutionTarget> targets;
    for (const double volume_mL : sampleVolumes_mL(method, question, glassware, which))
        targets.push_back(targetOf(method, question, expected, volume_mL));
    return targets;
}

/// As good in all that counts as one of fewer steps is not good enough to be made.
bool isWorthItsSteps(const RankedProposal &longer, const std::vector<RankedProposal> &shorter)
{
    return std::ranges::none_of(shorter, [&](const RankedProposal &other) {
        return other.proposal.chain.size() < longer.proposal.chain.size() &&
               other.nearness <= longer.nearness && other.usualVolume >= longer.usualVolume &&
               other.proposal.uncertainty_percent <= longer.proposal.uncertainty_percent + slack;
    });
}

/// Best first. Of each number of steps the simple ones, and only where there are none the others.
std::vector<RankedProposal> chainsInto(const std::vector<DilutionTarget> &targets,
                                       const std::vector<PossibleStep> &steps)
{
    const std::vector<PossibleStep> simple = simpleOnes(steps);
    std::vector<RankedProposal> found;
    for (int length = 0; length <= longestChain; ++length) {
        if (length > usualLongestChain && !found.empty())
            break;
        std::vector<RankedProposal> best = bestChains(targets, simple, length);
        if (best.empty())
            best = bestChains(targets, steps, length);
        for (RankedProposal &ranked : best) {
            if (isWorthItsSteps(ranked, found))
                found.push_back(std::move(ranked));
        }
    }
    return found;
}

QString foldText(double logFactor)
{
    return significantText(std::pow(10.0, logFactor), 3);
}

QString tooFarApart(const assay::Method &method, const DilutionQuestion &question,
                    const std::vector<Expected> &expected, double sampleVolume_mL)
{
    const auto bySignal = [&](const Expected &one, const Expected &other) {
        return signalOf(method, question, one, sampleVolume_mL, 1) <
               signalOf(method, question, other, sampleVolume_mL, 1);
    };
    const auto [weakest, strongest] = std::ranges::minmax_element(expected, bySignal);
    const assay::Interval span = aimedSignals(method.window);
    return DilutionSentence::tr("The net signals of %1 and %2 are expected %3-fold apart, more than the %4-fold that one "
                        "dilution can serve: plan a dilution for each.")
        .arg(strongest->measurand->name, weakest->measurand->name,
             significantText(signalOf(method, question, *strongest, sampleVolume_mL, 1) /
                                 signalOf(method, question, *weakest, sampleVolume_mL, 1),
                             2),
             significantText(span.upper / span.lower, 2));
}

QString tooWeak(const assay::Method &method, const DilutionQuestion &question,
                const std::vector<Expected> &expected, double sampleVolume_mL)
{
    const auto weakest = std::ranges::min_element(expected, {}, [&](const Expected &each) {
        return signalOf(method, question, each, sampleVolume_mL, 1);
    });
    const QStringList texts = evaluation::comparedTexts(
        signalOf(method, question, *weakest, sampleVolume_mL, 1), {aimedSignals(method.window).lower}, 3);
    return DilutionSentence::tr("%1 of the undiluted sample would give a net signal of %2 for %3, less than the %4 that "
                        "can be measured well.")
        .arg(withUnit(evaluation::plainText(sampleVolume_mL), u"mL"_s), texts[0], weakest->measurand->name,
             texts[1]);
}

} // namespace

assay::Interval aimedSignals(const assay::Window &window)
{
    constexpr double aimedPart = 0.8;
    const double upper = aimedPart * window.maxSignal;
    const double lower = window.minSignal > 0 ? window.minSignal : smallestAimedSignal;
    return {lower, lower < upper ? upper : window.maxSignal};
}

double aimedSignal(const assay::Window &window)
{
    const assay::Interval span = aimedSignals(window);
    return std::clamp(window.maxSignal / 2, span.lower, span.upper);
}

double predictedSignal(const assay::Method &method, const QString &measurand, double expected_g_per_L,
                       double sampleVolume_mL, double dilutionFactor, int wavelength_nm, double pathLength_mm)
{
    const assay::Measurand *analyte = assay::findMeasurand(method, measurand);
    const std::optional<double> absorptivity = assay::absorptivity(method, wavelength_nm);
    if (!analyte || !absorptivity)
        return 0;
    run::Tube tube;
    tube.sampleVolume_mL = sampleVolume_mL;
    const double volume_mL = run::volumeAt_mL(method, tube, assay::laterReading(analyte->signal));
    const double cuvette_g_per_L = expected_g_per_L / dilutionFactor * sampleVolume_mL / volume_mL;
    return cuvette_g_per_L * *absorptivity * (pathLength_mm / 10) * analyte->chromophorePerMolecule /
           analyte->molarMass_g_per_mol;
}

std::vector<DilutionProposal> proposeDilutions(const assay::Method &method, const DilutionQuestion &question,
                                               const Glassware &glassware)
{
    const std::vector<PossibleStep> steps = possibleSteps(withUsualGlass(glassware));
    std::vector<RankedProposal> found = chainsInto(targetsOf(method, question, glassware, Volumes::WithDiluent), steps);
    if (found.empty())
        found = chainsInto(targetsOf(method, question, glassware, Volumes::AnySettable), steps);
    std::vector<DilutionProposal> proposals;
    for (RankedProposal &ranked : found) {
        DilutionProposal &proposal = proposals.emplace_back(std::move(ranked.proposal));
        for (ChainStep &step : proposal.chain) {
            step.pipette = glassware.pipettes.empty() ? notListed : step.pipette;
            step.flask = glassware.flasks.empty() ? notListed : step.flask;
        }
        for (const Expected &each : expectedOf(method, question))
            proposal.predictedSignal[each.measurand->id] =
                signalOf(method, question, each, proposal.sampleVolume_mL, proposal.factor);
    }
    return proposals;
}

QString whyNone(const assay::Method &method, const DilutionQuestion &question, const Glassware &glassware)
{
    const std::vector<Expected> expected = expectedOf(method, question);
    if (expected.empty())
        return DilutionSentence::tr("Say how much the sample is expected to hold: a dilution is planned from that.");
    if (!assay::absorptivity(method, question.wavelength_nm))
        return DilutionSentence::tr("The method has no absorptivity at %1, so no signal can be predicted.")
            .arg(withUnit(QString::number(question.wavelength_nm), u"nm"_s));
    if (!proposeDilutions(method, question, glassware).empty())
        return {};

    std::vector<DilutionTarget> targets = targetsOf(method, question, glassware, Volumes::AnySettable);
    const DilutionTarget largest = targets.back();
    std::erase_if(targets,
                  [](const DilutionTarget &target) { return target.lowest > target.highest + slack; });
    if (targets.empty())
        return tooFarApart(method, question, expected, largest.sampleVolume_mL);
    if (std::ranges::all_of(targets, [](const DilutionTarget &target) { return target.highest < -slack; }))
        return tooWeak(method, question, expected, largest.sampleVolume_mL);
    const DilutionTarget easiest = *std::ranges::min_element(targets, {}, [](const DilutionTarget &target) {
        return target.highest < -slack ? INFINITY : target.lowest;
    });
    if (possibleSteps(withUsualGlass(glassware)).empty())
        return DilutionSentence::tr("The sample has to be diluted, but no pipette and flask of the laboratory make a "
                            "dilution.");
    return DilutionSentence::tr("With %1 of sample it has to be diluted %2- to %3-fold; no chain of up to %4 steps "
                        "with the laboratory's pipettes and flasks does that.")
        .arg(withUnit(evaluation::plainText(easiest.sampleVolume_mL), u"mL"_s),
             foldText(std::max(0.0, easiest.lowest)), foldText(easiest.highest))
        .arg(longestChain);
}

} // namespace plateau::planning
