// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/worksheet.h"

#include "core/assay/listed.h"
#include "core/planning/glassfor.h"
#include "core/planning/glassware.h"
#include "core/run/volumes.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <tuple>

namespace plateau::planning {

namespace {

using Content = run::Addition::Content;

struct WorksheetWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::Round)
};

/// Volumes are keyed with a few decimals and made up by sums of them.
bool isSameVolume(double one_mL, double other_mL)
{
    return std::abs(one_mL - other_mL) < 1e-7;
}

const run::Addition *additionOf(const std::vector<run::Addition> &additions, const QString &component,
                                bool spike)
{
    const auto found = std::find_if(additions.begin(), additions.end(), [&](const run::Addition &addition) {
        return addition.component == component && (addition.content == Content::Spike) == spike;
    });
    return found == additions.end() ? nullptr : &*found;
}

QString contentOf(const assay::Method &method, const run::Tube &tube, const run::Addition &addition)
{
    switch (addition.content) {
    case Content::Spike:
        return tube.spike->standard;
    case Content::Standard:
        return tube.standard;
    case Content::Component:
        return addition.component == method.sample ? tube.sample : QString();
    case Content::Diluent:
        break;
    }
    if (addition.component == method.diluent)
        return {};
    const assay::Component *diluent = assay::findComponent(method, method.diluent);
    return diluent ? diluent->name : WorksheetWording::tr("Diluent");
}

double usualVolume_mL(const std::vector<std::optional<Round::Dose>> &doses, double own_mL)
{
    struct Share {
        double volume_mL;
        int tubes;
    };
    std::vector<Share> shares;
    for (const auto &dose : doses) {
        if (!dose)
            continue;
        const auto share = std::find_if(shares.begin(), shares.end(), [&dose](const Share &each) {
            return isSameVolume(each.volume_mL, dose->volume_mL);
        });
        if (share == shares.end())
            shares.push_back({dose->volume_mL, 1});
        else
            ++share->tubes;
    }
    const auto rank = [own_mL](const Share &share) {
        return std::tuple(-share.tubes, !isSameVolume(share.volume_mL, own_mL), share.volume_mL);
    };
    const auto best =
        std::min_element(shares.begin(), shares.end(),
                         [&rank](const Share &one, const Share &other) { return rank(one) < rank(other); });
    return best == shares.end() ? own_mL : best->volume_mL;
}

/// All tubes' additions, planned and as they were made.
struct Rack {
    const assay::Method &method;
    const run::Run &run;
    std::vector<std::vector<run::Addition>> planned;
    std::vector<std::vector<run::Addition>> made;
};

std::vector<std::optional<Round::Dose>> dosesInRound(const Rack &rack, const QString &component, bool spike)
{
    std::vector<std::optional<Round::Dose>> doses;
    for (std::size_t tube = 0; tube < rack.run.tubes.size(); ++tube) {
        const run::Addition *planned = additionOf(rack.planned[tube], component, spike);
        const run::Addition *made = additionOf(rack.made[tube], component, spike);
        doses.emplace_back();
        if (planned && made && std::max(planned->volume_mL, made->volume_mL) > 0)
            doses.back() =
                Round::Dose{made->volume_mL, contentOf(rack.method, rack.run.tubes[tube], *made), false};
    }
    return doses;
}

QString pipettesFor(const Round &round, const Glassware &glassware)
{
    QStringList names{pipetteFor(round.usualVolume_mL, glassware)};
    for (const auto &dose : round.doses) {
        if (!dose || !dose->odd || dose->volume_mL <= 0)
            continue;
        if (const QString name = pipetteFor(dose->volume_mL, glassware); !names.contains(name))
            names << name;
    }
    names.removeAll(QString());
    return assay::listed(names);
}

Round roundOf(const Rack &rack, int step, const assay::Component &component, bool spike,
              const Glassware &glassware)
{
    Round round;
    round.step = step;
    round.component = component.id;
    round.name = spike ? WorksheetWording::tr("Spike") : component.name;
    round.suspension = component.suspension && !spike;
    round.doses = dosesInRound(rack, component.id, spike);
    round.usualVolume_mL = usualVolume_mL(round.doses, component.volume_mL);
    for (auto &dose : round.doses) {
        if (dose)
            dose->odd = !isSameVolume(dose->volume_mL, round.usualVolume_mL);
    }
    const auto lot = std::find_if(rack.run.lots.begin(), rack.run.lots.end(),
                                  [&](const run::LotUse &use) { return use.component == component.id; });
    if (!spike && lot != rack.run.lots.end())
        round.lot = lot->lot;
    round.pipette = pipettesFor(round, glassware);
    return round;
}

} // namespace

const QString &contentName(const Round &round, const Round::Dose &dose)
{
    return dose.content.isEmpty() ? round.name : dose.content;
}

bool isTubesOwn(const Round::Dose &dose, const run::Tube &tube)
{
    return !dose.content.isEmpty() && (dose.content == tube.sample || dose.content == tube.standard ||
                                       (tube.spike && dose.content == tube.spike->standard));
}

std::vector<ReagentDose> dosesOf(const QString &reagent, const std::vector<Round> &rounds,
                                 const run::Run &run)
{
    std::vector<ReagentDose> doses;
    for (std::size_t round = 0; round < rounds.size(); ++round) {
        for (std::size_t tube = 0; tube < run.tubes.size(); ++tube) {
            const auto &dose = rounds[round].doses.at(tube);
            if (dose && !isTubesOwn(*dose, run.tubes[tube]) && contentName(rounds[round], *dose) == reagent)
                doses.push_back({static_cast<int>(round), static_cast<int>(tube), dose->volume_mL});
        }
    }
    return doses;
}

QString pipetteFor(double volume_mL, const Glassware &glassware)
{
    const Pipette *best = nullptr;
    const auto rank = [](const Pipette &pipette) {
        return std::tuple(pipette.largest_mL, settingStep_mL(pipette) <= 0);
    };
    for (const Pipette &pipette : glassware.pipettes) {
        if (makes(pipette, volume_mL) && (!best || rank(pipette) < rank(*best)))
            best = &pipette;
    }
    return best ? best->name : QString();
}

std::vector<Round> roundsOf(const assay::Method &method, const run::Run &run, const Glassware &glassware)
{
    Rack rack{method, run, {}, {}};
    for (const run::Tube &tube : run.tubes) {
        rack.planned.push_back(run::plannedAdditions(method, tube));
        rack.made.push_back(run::additions(method, tube));
    }
    const bool anySpike = std::any_of(run.tubes.begin(), run.tubes.end(),
                                      [](const run::Tube &tube) { return tube.spike.has_value(); });
    std::vector<Round> rounds;
    for (std::size_t step = 0; step < method.steps.size(); ++step) {
        const auto *add = std::get_if<assay::AddStep>(&method.steps[step]);
        const assay::Component *component = add ? assay::findComponent(method, add->component) : nullptr;
        if (!component)
            continue;
        rounds.push_back(roundOf(rack, static_cast<int>(step), *component, false, glassware));
        if (anySpike && component->id == method.sample)
            rounds.push_back(roundOf(rack, static_cast<int>(step), *component, true, glassware));
    }
    return rounds;
}

} // namespace plateau::planning
