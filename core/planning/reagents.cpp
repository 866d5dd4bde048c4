// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/reagents.h"

#include "core/run/reagent.h"
#include "core/run/volumes.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace plateau::planning {

namespace {

/// Less than any pipette shows.
constexpr double negligible_mL = 1e-9;

/// By component id; the sample is none of them.
std::map<QString, double> taken_mL(const assay::Method &method, const run::Run &run)
{
    std::map<QString, double> taken;
    for (const run::Tube &tube : run.tubes) {
        for (const run::Addition &addition : run::additions(method, tube)) {
            if (addition.content == run::Addition::Content::Diluent)
                taken[method.diluent] += addition.volume_mL;
            else if (addition.content == run::Addition::Content::Component &&
                     addition.component != method.sample)
                taken[addition.component] += addition.volume_mL;
        }
    }
    return taken;
}

struct LotCandidate {
    const Lot *lot = nullptr;
    LotFitness fitness = LotFitness::Good;

    /// Unfit ones last, then the oldest first, what is opened before what is not.
    auto order() const
    {
        const std::optional<QDate> last = lastGoodDay(*lot);
        return std::tuple(fitness != LotFitness::Good, !last.has_value(), last.value_or(QDate()),
                          !lot->opened.has_value());
    }
};

std::vector<LotCandidate> candidatesFor(const QString &reagent, const std::vector<Lot> &lots,
                                     const QDateTime &from, const QDateTime &to)
{
    std::vector<LotCandidate> candidates;
    for (const Lot &lot : lots) {
        if (isSameReagent(lot.reagent, reagent))
            candidates.push_back({&lot, fitnessOf(lot, from, to)});
    }
    std::ranges::stable_sort(candidates, {}, &LotCandidate::order);
    return candidates;
}

/// Takes from the good ones in their order; left_mL is what other components leave of a lot.
void share(ReagentNeed &need, const std::vector<LotCandidate> &candidates, std::map<qint64, double> &left_mL)
{
    double open_mL = need.withOverage_mL;
    for (const LotCandidate &candidate : candidates) {
        if (candidate.fitness != LotFitness::Good || open_mL <= negligible_mL)
            continue;
        double &left = left_mL[candidate.lot->id];
        const double share_mL = std::min(left, open_mL);
        if (share_mL <= negligible_mL)
            continue;
        need.shares.push_back({candidate.lot->id, share_mL});
        left -= share_mL;
        open_mL -= share_mL;
    }
    need.short_mL = open_mL > negligible_mL ? open_mL : 0;
}

} // namespace

std::vector<ReagentNeed> reagentNeeds(const assay::Method &method, const run::Run &run,
                                      double overage_percent, const std::vector<Lot> &lots,
                                      const QDateTime &from, const QDateTime &to)
{
    std::map<QString, double> taken = taken_mL(method, run);
    std::map<qint64, double> left_mL;
    for (const Lot &lot : lots)
        left_mL[lot.id] = lot.remaining_mL;
    const std::vector<Round> rounds = roundsOf(method, run, {});
    std::vector<ReagentNeed> needs;
    for (const assay::Component &component : method.components) {
        if (component.id == method.sample)
            continue;
        ReagentNeed need;
        need.component = component.id;
        need.reagent = component.name;
        need.tubes_mL = taken[component.id];
        need.doses = dosesOf(component.name, rounds, run);
        need.round =
            static_cast<int>(std::ranges::find(rounds, component.id, &Round::component) - rounds.begin());
        need.withOverage_mL = need.tubes_mL * (1 + overage_percent / 100);
        const std::vector<LotCandidate> candidates = candidatesFor(component.name, lots, from, to);
        double good_mL = 0;
        for (const LotCandidate &candidate : candidates) {
            need.lots.emplace_back(candidate.lot->id, candidate.fitness);
            if (candidate.fitness != LotFitness::Good)
                continue;
            good_mL += candidate.lot->remaining_mL;
            need.servedByLot.emplace_back(candidate.lot->id,
                                          run::tubesServed(candidate.lot->remaining_mL, component.volume_mL));
        }
        need.tubesServed = run::tubesServed(good_mL, component.volume_mL);
        share(need, candidates, left_mL);
        needs.push_back(std::move(need));
    }
    return needs;
}

} // namespace plateau::planning
