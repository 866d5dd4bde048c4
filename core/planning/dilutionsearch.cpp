// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/dilutionsearch.h"
#include "core/planning/slack.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <ranges>
#include <span>
#include <tuple>
#include <utility>

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

/// What is compared as whole numbers is counted in so many to the unit.
constexpr double unitsOfRank = 1e7;

double distanceOf(double logFactor, const DilutionTarget &target)
{
    return std::abs(logFactor - target.middle) + target.spread;
}

long long wholeDistance(double distance)
{
    return std::llround(distance * unitsOfRank);
}

int nearnessOf(double distance)
{
    return static_cast<int>(std::floor(distance / equallyNear + slack));
}

double squareOf(const PossibleStep &step)
{
    return *step.step.uncertainty_percent * *step.step.uncertainty_percent;
}

double uncertaintyOf_percent(const Chain &chain)
{
    double sumOfSquares = 0;
    for (const PossibleStep *step : chain)
        sumOfSquares += squareOf(*step);
    return std::sqrt(sumOfSquares);
}

long long certaintyOf(long long uncertainty)
{
    return uncertainty / std::llround(equallyCertain_percent * unitsOfRank);
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
    double flasks_mL = 0;
    for (const PossibleStep *step : chain)
        flasks_mL += step->step.makeUpTo_mL;
    const double distance = distanceOf(logFactor, target);
    const long long uncertainty = std::llround(uncertaintyOf_percent(chain) * unitsOfRank);
    return {nearnessOf(distance),
            !target.usual,
            certaintyOf(uncertainty),
            std::llround(flasks_mL * unitsOfRank),
            uncertainty,
            !target.usual && !isEasyVolume(target.sampleVolume_mL),
            wholeDistance(distance),
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

/// What a chain has of its glass, whatever that is set to.
struct Glass {
    /// Of the uncertainties in percent.
    double sumOfSquares = 0;
    double flasks_mL = 0;

    Glass with(const Glass &other, double times = 1) const
    {
        return {sumOfSquares + times * other.sumOfSquares, flasks_mL + times * other.flasks_mL};
    }
};

Glass glassOf(const PossibleStep &step)
{
    return {squareOf(step), step.step.makeUpTo_mL};
}

/// The best so far, one for each set of glass.
class Shortlist
{
public:
    /// sets: so many different sets of glass there are at most.
    explicit Shortlist(std::size_t sets)
        : m_most(std::min(sets, proposalsForEachLength))
    {
    }

    /// What is farther off, or of an unusual volume, finds every place taken by better ones.
    bool full() const { return m_best.size() >= m_most; }

    /// A chain of at least those volumes and uncertainties, however near it comes.
    bool mayTake(int nearness, const DilutionTarget &target, const Glass &atLeast) const
    {
        if (!full())
            return true;
        constexpr double summedUpOtherwise =
            1e-3; // of a unit: whole numbers are no larger for the order of a sum
        const auto units = [](double value) { return std::llround(value * unitsOfRank - summedUpOtherwise); };
        const long long uncertainty = units(std::sqrt(atLeast.sumOfSquares));
        const Rank &last = m_best.back().rank;
        return std::tuple(nearness, !target.usual, certaintyOf(uncertainty), units(atLeast.flasks_mL),
                          uncertainty) <=
               std::tuple(last.nearness, last.unusual, last.certainty, last.flasks, last.uncertainty);
    }

    void offer(const Chain &chain, double logFactor, const DilutionTarget &target)
    {
        const Rank rank = rankOf(chain, logFactor, target);
        if (full() && rank > m_best.back().rank)
            return;
        Candidate candidate{rank, &target, chain};
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
    std::size_t m_most;
    std::vector<Candidate> m_best;
};

/// Their uncertainty is the same, too: it is that of the glass.
using SameGlass = std::vector<const PossibleStep *>;

/// Steps by their factors, and those of each pipette and flask.
struct Steps {
    explicit Steps(const std::vector<PossibleStep> &steps)
        : all(steps)
    {
        std::map<std::pair<int, int>, SameGlass> byGlass;
        for (const PossibleStep &step : steps)
            byGlass[{step.pipette, step.flask}].push_back(&step);
        for (auto &[glass, same] : byGlass) {
            const Glass own = glassOf(*same.front());
            const bool isFirst = glasses.empty();
            least.sumOfSquares = isFirst ? own.sumOfSquares : std::min(least.sumOfSquares, own.sumOfSquares);
            least.flasks_mL = isFirst ? own.flasks_mL : std::min(least.flasks_mL, own.flasks_mL);
            glasses.push_back(std::move(same));
        }
    }

    /// How many different sets of so many pairs of pipette and flask there are.
    std::size_t sets(int length) const
    {
        std::size_t count = 1;
        for (std::size_t i = 1; i <= static_cast<std::size_t>(length); ++i)
            count = count * (glasses.size() + i - 1) / i;
        return count;
    }

    const std::vector<PossibleStep> &all;
    std::vector<SameGlass> glasses;
    /// No step has less of either.
    Glass least;
};

/// The chains of so many steps, in any order counted once, whose factor lies in the interval and has the
/// nearness. What decides between chains of the same glass is how near the factor comes, so that of the last
/// steps that one pipette and one flask can make only the nearest are looked at: three steps of finely set
/// pipettes are billions of chains.
class Chains
{
public:
    Chains(const Steps &steps, std::size_t length, const DilutionTarget &target, int nearness,
           Shortlist &shortlist)
        : m_steps(steps)
        , m_length(length)
        , m_target(target)
        , m_nearness(nearness)
        , m_shortlist(shortlist)
    {
    }

    void offer(double lowest, double highest)
    {
        m_lowest = lowest;
        m_highest = highest;
        m_chain.clear();
        if (m_length > 0)
            extend(m_steps.all.data(), 0, {});
        else if (lowest <= 0 && highest >= 0 && isAsNear(0))
            m_shortlist.offer(m_chain, 0, m_target);
    }

private:
    bool isAsNear(double logFactor) const
    {
        return nearnessOf(distanceOf(logFactor, m_target)) == m_nearness;
    }

    void extend(const PossibleStep *first, double logFactor, const Glass &glass)
    {
        const auto left = static_cast<double>(m_length - m_chain.size());
        if (!m_shortlist.mayTake(m_nearness, m_target, glass.with(m_steps.least, left)))
            return;
        if (m_chain.size() + 1 == m_length) {
            end(first, logFactor, glass);
            return;
        }
        // Steps are taken in the order of their factors: those still to come are no smaller than this one.
        for (const PossibleStep &step : within(first, m_lowest - logFactor - (left - 1) * largestLog(),
                                               (m_highest - logFactor) / left)) {
            m_chain.push_back(&step);
            extend(&step, logFactor + step.logFactor, glass.with(glassOf(step)));
            m_chain.pop_back();
        }
    }

    double largestLog() const { return m_steps.all.empty() ? 0 : m_steps.all.back().logFactor; }

    /// From that step on, those of such factors.
    std::span<const PossibleStep> within(const PossibleStep *first, double lowest, double highest) const
    {
        const std::span rest(first, m_steps.all.data() + m_steps.all.size());
        const auto begin = std::ranges::lower_bound(rest, lowest, {}, &PossibleStep::logFactor);
        const auto end = std::ranges::upper_bound(begin, rest.end(), highest, {}, &PossibleStep::logFactor);
        return {begin, std::max(begin, end)};
    }

    /// The last step: of each pipette and flask the nearest, offered in the order of all.
    void end(const PossibleStep *first, double logFactor, const Glass &glass)
    {
        m_ends.clear();
        const auto all = within(first, m_lowest - logFactor, m_highest - logFactor);
        if (all.size() <= m_steps.glasses.size()) {
            for (const PossibleStep &step : all) {
                if (isAsNear(logFactor + step.logFactor))
                    m_ends.push_back(&step);
            }
            offerEnds(logFactor);
            return;
        }
        for (const SameGlass &same : m_steps.glasses) {
            if (m_shortlist.mayTake(m_nearness, m_target, glass.with(glassOf(*same.front()))))
                addNearest(same, first, logFactor);
        }
        std::ranges::sort(m_ends);
        offerEnds(logFactor);
    }

    void offerEnds(double logFactor)
    {
        for (const PossibleStep *step : m_ends) {
            m_chain.push_back(step);
            m_shortlist.offer(m_chain, logFactor + step->logFactor, m_target);
            m_chain.pop_back();
        }
    }

    void addNearest(const SameGlass &same, const PossibleStep *first, double logFactor)
    {
        const auto isBefore = [](const PossibleStep *step, double wanted) {
            return step->logFactor < wanted;
        };
        const double lowest = std::max(m_lowest - logFactor, first->logFactor);
        auto begin = std::lower_bound(same.begin(), same.end(), lowest, isBefore);
        while (begin != same.end() && *begin < first) // of the same factor, and counted the other way round
            ++begin;
        const auto middle = std::lower_bound(begin, same.end(), m_target.middle - logFactor, isBefore);
        addFirstThatIsAsNear(std::span(middle, same.end()), logFactor);
        addFirstThatIsAsNear(std::span(begin, middle) | std::views::reverse, logFactor);
    }

    /// Of steps that lead farther and farther away; with those that are equally far.
    void addFirstThatIsAsNear(auto &&steps, double logFactor)
    {
        std::optional<long long> nearest;
        for (const PossibleStep *step : steps) {
            const double sum = logFactor + step->logFactor;
            const double distance = distanceOf(sum, m_target);
            if (nearnessOf(distance) > m_nearness || (nearest && wholeDistance(distance) != *nearest))
                return;
            if (nearnessOf(distance) < m_nearness || sum < m_lowest || sum > m_highest)
                continue;
            nearest = wholeDistance(distance);
            m_ends.push_back(step);
        }
    }

    const Steps &m_steps;
    std::size_t m_length;
    const DilutionTarget &m_target;
    int m_nearness;
    Shortlist &m_shortlist;
    double m_lowest = 0;
    double m_highest = 0;
    Chain m_chain;
    std::vector<const PossibleStep *> m_ends;
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

void search(const DilutionTarget &target, const Steps &steps, int length, int nearness, Shortlist &shortlist)
{
    Chains chains(steps, static_cast<std::size_t>(length), target, nearness, shortlist);
    for (const Interval &interval : intervalsOf(target, nearness))
        chains.offer(std::max(interval.lowest, target.lowest) - slack,
                     std::min(interval.highest, target.highest) + slack);
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
    const Steps byGlass(steps);
    Shortlist shortlist(byGlass.sets(length));
    const int farthest = farthestOf(targets);
    for (int nearness = 0; nearness <= farthest && !shortlist.full(); ++nearness) {
        for (const bool usual : {true, false}) {
            if (shortlist.full())
                break;
            for (const DilutionTarget &target : targets) {
                if (target.usual == usual && target.lowest <= target.highest + slack)
                    search(target, byGlass, length, nearness, shortlist);
            }
        }
    }
    std::vector<RankedProposal> proposals;
    for (const Candidate &candidate : shortlist.best())
        proposals.push_back(proposalOf(candidate));
    return proposals;
}

} // namespace plateau::planning
