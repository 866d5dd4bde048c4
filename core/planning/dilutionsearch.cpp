// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/dilutionsearch.h"
#include "core/planning/slack.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <span>
#include <tuple>

namespace plateau::planning {

namespace {


using Chain = std::vector<const PossibleStep *>;

/// What is compared, in this order. Uncertainty and volumes in whole units, so that rounding makes no order.
struct Rank {
    int nearness = 0;
    bool unusual = false;
    long long certainty = 0;
    long long flasks = 0;
    long long uncertainty = 0;
    bool awkwardVolume = false;
    /// Ties beyond the stated order, so that it is always the same.
    long long distance = 0;
    double sampleVolume_mL = 0;
    double factor = 1;

    auto operator<=>(const Rank &) const = default;
};

struct Candidate {
    Rank rank;
    const DilutionTarget *target = nullptr;
    Chain chain;
};

double distanceOf(double logFactor, const DilutionTarget &target)
{
    return std::abs(logFactor - target.middle) + target.spread;
}

int nearnessOf(double distance)
{
    return static_cast<int>(std::floor(distance / equallyNear + slack));
}

double uncertaintyOf_percent(const Chain &chain)
{
    double sumOfSquares = 0;
    for (const PossibleStep *step : chain)
        sumOfSquares += *step->step.uncertainty_percent * *step->step.uncertainty_percent;
    return std::sqrt(sumOfSquares);
}

double factorOf(const Chain &chain)
{
    double factor = 1;
    for (const PossibleStep *step : chain)
        factor *= step->step.makeUpTo_mL / step->step.take_mL;
    return factor;
}

/// In steps of 0.05 mL, which every pipette of a range has.
bool isEasyVolume(double volume_mL)
{
    const double steps = volume_mL / 0.05;
    return std::abs(steps - std::round(steps)) < 1e-6;
}

Rank rankOf(const Chain &chain, double logFactor, const DilutionTarget &target)
{
    constexpr double units = 1e7;
    double flasks_mL = 0;
    for (const PossibleStep *step : chain)
        flasks_mL += step->step.makeUpTo_mL;
    const double distance = distanceOf(logFactor, target);
    const long long uncertainty = std::llround(uncertaintyOf_percent(chain) * units);
    return {nearnessOf(distance),
            !target.usual,
            uncertainty / std::llround(equallyCertain_percent * units),
            std::llround(flasks_mL * units),
            uncertainty,
            !target.usual && !isEasyVolume(target.sampleVolume_mL),
            std::llround(distance * units),
            target.sampleVolume_mL,
            factorOf(chain)};
}

/// The same pieces of glass, whatever they are set to: another setting of one pipette is no other plan.
bool isSameGlass(const Chain &one, const Chain &other)
{
    return std::ranges::is_permutation(one, other, [](const PossibleStep *a, const PossibleStep *b) {
        return a->pipette == b->pipette && a->flask == b->flask;
    });
}

/// The best so far, one for each set of glass.
class Shortlist
{
public:
    bool full() const { return m_best.size() >= proposalsForEachLength; }

    void offer(const Chain &chain, double logFactor, const DilutionTarget &target)
    {
        Candidate candidate{rankOf(chain, logFactor, target), &target, chain};
        if (full() && candidate.rank > m_best.back().rank)
            return;
        const auto same = std::ranges::find_if(
            m_best, [&](const Candidate &other) { return isSameGlass(other.chain, candidate.chain); });
        if (same != m_best.end()) {
            if (same->rank <= candidate.rank)
                return;
            m_best.erase(same);
        }
        m_best.insert(std::ranges::upper_bound(m_best, candidate.rank, {}, &Candidate::rank),
                      std::move(candidate));
        if (m_best.size() > proposalsForEachLength)
            m_best.pop_back();
    }

    const std::vector<Candidate> &best() const { return m_best; }

private:
    std::vector<Candidate> m_best;
};

/// Every chain of so many steps, in any order counted once, whose factor lies in the interval.
class Chains
{
public:
    Chains(const std::vector<PossibleStep> &steps, int length, double lowest, double highest)
        : m_steps(steps)
        , m_length(static_cast<std::size_t>(length))
        , m_lowest(lowest)
        , m_highest(highest)
    {
    }

    template <class Visit> void forEach(Visit visit)
    {
        m_chain.clear();
        if (m_length == 0 && m_lowest <= 0 && m_highest >= 0)
            visit(m_chain, 0.0);
        else if (m_length > 0 && !m_steps.empty())
            extend(0, 0, visit);
    }

private:
    template <class Visit> void extend(std::size_t first, double logFactor, Visit &visit)
    {
        // Steps are taken in the order of their factors: those still to come are no smaller than this one.
        const auto left = static_cast<double>(m_length - m_chain.size());
        const double atLeast = m_lowest - logFactor - (left - 1) * m_steps.back().logFactor;
        const auto begin =
            std::lower_bound(m_steps.begin() + static_cast<std::ptrdiff_t>(first), m_steps.end(), atLeast,
                             [](const PossibleStep &step, double wanted) { return step.logFactor < wanted; });
        for (auto step = begin; step != m_steps.end(); ++step) {
            if (logFactor + left * step->logFactor > m_highest)
                break;
            m_chain.push_back(&*step);
            if (m_chain.size() == m_length)
                visit(m_chain, logFactor + step->logFactor);
            else
                extend(static_cast<std::size_t>(step - m_steps.begin()), logFactor + step->logFactor, visit);
            m_chain.pop_back();
        }
    }

    const std::vector<PossibleStep> &m_steps;
    std::size_t m_length;
    double m_lowest;
    double m_highest;
    Chain m_chain;
};

struct Interval {
    double lowest;
    double highest;
};

/// The factors of one nearness: below the middle and above it.
std::vector<Interval> intervalsOf(const DilutionTarget &target, int nearness)
{
    const double outer = (nearness + 1) * equallyNear - target.spread;
    const double inner = nearness * equallyNear - target.spread;
    if (outer < 0)
        return {};
    if (inner <= slack)
        return {{target.middle - outer, target.middle + outer}};
    return {{target.middle - outer, target.middle - inner}, {target.middle + inner, target.middle + outer}};
}

int farthestOf(const std::vector<DilutionTarget> &targets)
{
    double farthest = 0;
    for (const DilutionTarget &target : targets) {
        if (target.lowest > target.highest)
            continue;
        farthest =
            std::max({farthest, distanceOf(target.lowest, target), distanceOf(target.highest, target)});
    }
    return nearnessOf(farthest);
}

void search(const DilutionTarget &target, const std::vector<PossibleStep> &steps, int length, int nearness,
            Shortlist &shortlist)
{
    for (const Interval &interval : intervalsOf(target, nearness)) {
        Chains chains(steps, length, std::max(interval.lowest, target.lowest) - slack,
                      std::min(interval.highest, target.highest) + slack);
        chains.forEach([&](const Chain &chain, double logFactor) {
            if (nearnessOf(distanceOf(logFactor, target)) == nearness)
                shortlist.offer(chain, logFactor, target);
        });
    }
}

RankedProposal proposalOf(const Candidate &candidate)
{
    RankedProposal ranked{{}, candidate.rank.nearness, !candidate.rank.unusual};
    DilutionProposal &proposal = ranked.proposal;
    proposal.sampleVolume_mL = candidate.target->sampleVolume_mL;
    proposal.factor = candidate.rank.factor;
    proposal.uncertainty_percent = uncertaintyOf_percent(candidate.chain);
    for (const PossibleStep *step : candidate.chain)
        proposal.chain.push_back({step->step, step->pipette, step->flask});
    // From the largest flask to the smallest every flask holds what the next step takes.
    std::ranges::stable_sort(proposal.chain, [](const ChainStep &one, const ChainStep &other) {
        return std::tuple(one.step.makeUpTo_mL, one.step.take_mL) >
               std::tuple(other.step.makeUpTo_mL, other.step.take_mL);
    });
    return ranked;
}

} // namespace

std::vector<RankedProposal> bestChains(const std::vector<DilutionTarget> &targets,
                                       const std::vector<PossibleStep> &steps, int length)
{
    Shortlist shortlist;
    const int farthest = farthestOf(targets);
    for (int nearness = 0; nearness <= farthest && !shortlist.full(); ++nearness) {
        for (const bool usual : {true, false}) {
            if (shortlist.full())
                break;
            for (const DilutionTarget &target : targets) {
                if (target.usual == usual && target.lowest <= target.highest + slack)
                    search(target, steps, length, nearness, shortlist);
            }
        }
    }
    std::vector<RankedProposal> proposals;
    for (const Candidate &candidate : shortlist.best())
        proposals.push_back(proposalOf(candidate));
    return proposals;
}

} // namespace plateau::planning
