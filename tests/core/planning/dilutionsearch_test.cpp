// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/dilutionsearch.h"

#include "tests/support/random.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace plateau::test {

using namespace planning;
using ::testing::SizeIs;

namespace {

/// A window of 0.1 to 1.6, and 0.8 aimed at: measurands this many decades apart, the strongest of this
/// signal.
DilutionTarget target(double strongest, double apart, double sampleVolume_mL, bool usual)
{
    const double signal = strongest * sampleVolume_mL / 0.1;
    return {sampleVolume_mL,
            usual,
            std::log10(signal / 1.6),
            std::log10(signal / 0.1) - apart,
            std::log10(signal / 0.8) - apart / 2,
            apart / 2};
}

/// The pieces of glass of a chain in whatever order.
std::vector<std::pair<int, int>> glassOf(const DilutionProposal &proposal)
{
    std::vector<std::pair<int, int>> glass;
    for (const ChainStep &step : proposal.chain)
        glass.emplace_back(step.pipette, step.flask);
    std::ranges::sort(glass);
    return glass;
}

/// What is compared in the order of the header: nearness, usual volume, certainty, flasks, uncertainty, easy
/// volume, distance.
using Order = std::tuple<int, bool, long long, long long, long long, bool, long long>;

/// Tries every chain with every sample volume; of each set of glass the best that there is, best first.
class Every
{
public:
    Every(const std::vector<DilutionTarget> &targets, const std::vector<PossibleStep> &steps,
          std::size_t length)
        : m_steps(steps)
        , m_length(length)
    {
        for (const DilutionTarget &each : targets)
            extend(each, 0, {});
    }

    std::vector<Order> best() const
    {
        std::vector<Order> orders;
        for (const auto &[glass, order] : m_best)
            orders.push_back(order);
        std::ranges::sort(orders);
        orders.resize(std::min(orders.size(), proposalsForEachLength));
        return orders;
    }

    static Order orderOf(const DilutionTarget &target, double logFactor, double sumOfSquares,
                         double flasks_mL)
    {
        const double distance = std::abs(logFactor - target.middle) + target.spread;
        const long long uncertainty = std::llround(std::sqrt(sumOfSquares) * 1e7);
        const double steps = target.sampleVolume_mL / 0.05;
        return {static_cast<int>(std::floor(distance / 0.3 + 1e-9)),
                !target.usual,
                uncertainty / 5'000'000,
                std::llround(flasks_mL * 1e7),
                uncertainty,
                !target.usual && std::abs(steps - std::round(steps)) >= 1e-6,
                std::llround(distance * 1e7)};
    }

private:
    void extend(const DilutionTarget &target, std::size_t first,
                const std::vector<const PossibleStep *> &chain)
    {
        if (chain.size() == m_length) {
            offer(target, chain);
            return;
        }
        for (std::size_t i = first; i < m_steps.size(); ++i) {
            std::vector<const PossibleStep *> longer = chain;
            longer.push_back(&m_steps[i]);
            extend(target, i, longer);
        }
    }

    void offer(const DilutionTarget &target, const std::vector<const PossibleStep *> &chain)
    {
        double logFactor = 0;
        double sumOfSquares = 0;
        double flasks_mL = 0;
        std::vector<std::pair<int, int>> glass;
        for (const PossibleStep *step : chain) {
            logFactor += step->logFactor;
            sumOfSquares += std::pow(*step->step.uncertainty_percent, 2);
            flasks_mL += step->step.makeUpTo_mL;
            glass.emplace_back(step->pipette, step->flask);
        }
        if (logFactor < target.lowest - 1e-9 || logFactor > target.highest + 1e-9)
            return;
        std::ranges::sort(glass);
        const Order order = orderOf(target, logFactor, sumOfSquares, flasks_mL);
        const auto [found, isNew] = m_best.try_emplace(glass, order);
        if (!isNew)
            found->second = std::min(found->second, order);
    }

    const std::vector<PossibleStep> &m_steps;
    std::size_t m_length;
    std::map<std::vector<std::pair<int, int>>, Order> m_best;
};

Order orderOf(const RankedProposal &ranked, const std::vector<DilutionTarget> &targets)
{
    const DilutionProposal &proposal = ranked.proposal;
    const auto target =
        std::ranges::find(targets, proposal.sampleVolume_mL, &DilutionTarget::sampleVolume_mL);
    double flasks_mL = 0;
    for (const ChainStep &step : proposal.chain)
        flasks_mL += step.step.makeUpTo_mL;
    return Every::orderOf(*target, std::log10(proposal.factor), std::pow(proposal.uncertainty_percent, 2),
                          flasks_mL);
}

Glassware someGlass(Random &random)
{
    Glassware glass;
    for (int i = random.whole(1, 3); i > 0; --i) {
        const double smallest_mL = std::round(random.magnitude(0.02, 5) * 1000) / 1000 + 0.001;
        const double step_mL = std::round(random.magnitude(0.01, 1) * 1000) / 1000;
        glass.pipettes.push_back({{},
                                  smallest_mL,
                                  smallest_mL + random.whole(1, 8) * step_mL,
                                  step_mL,
                                  random.chance(0.3) ? 0.5 : random.between(0.1, 2)});
    }
    for (int i = random.whole(1, 3); i > 0; --i)
        glass.flasks.push_back(
            {{},
             random.chance() ? random.oneOf(std::vector<double>{5, 10, 20, 50}) : random.between(3, 50),
             random.chance(0.3) ? 0.1 : random.between(0.02, 0.5)});
    return glass;
}

} // namespace

TEST(DilutionSearch, FindsTheBestOfEverySetOfGlassAsASearchThatTriesAll)
{
    std::size_t found = 0;
    int several = 0;
    for (unsigned seed = 1; seed <= 400; ++seed) {
        SCOPED_TRACE(seed);
        Random random(seed);
        const std::vector<PossibleStep> steps = possibleSteps(someGlass(random));
        const double strongest = random.magnitude(0.5, 20000);
        const double apart = random.chance() ? 0 : random.between(0, 1);
        std::vector<DilutionTarget> targets{target(strongest, apart, 0.1, true)};
        for (int i = random.whole(0, 3); i > 0; --i)
            targets.push_back(target(strongest, apart, 0.1 + 0.03 * i, false));
        for (const int length : {0, 1, 2, 3}) {
            SCOPED_TRACE(length);
            if (length == 3 && steps.size() > 60)
                continue;
            const auto proposals = bestChains(targets, steps, length);
            std::vector<Order> orders;
            std::vector<std::vector<std::pair<int, int>>> glass;
            for (const RankedProposal &ranked : proposals) {
                orders.push_back(orderOf(ranked, targets));
                glass.push_back(glassOf(ranked.proposal));
            }
            std::ranges::sort(glass);
            EXPECT_EQ(std::ranges::adjacent_find(glass), glass.end()) << "one set of glass twice";
            EXPECT_EQ(orders, Every(targets, steps, static_cast<std::size_t>(length)).best());
            found += proposals.size();
            several += proposals.size() > 1 ? 1 : 0;
        }
    }
    EXPECT_GT(found, 1000U);
    EXPECT_GT(several, 100);
}

// Checked flasks make no easy factors, and two steps do not do: billions of chains of three lie in reach.
// Looked at one by one they take minutes for each sample, and the window waits.
TEST(DilutionSearch, FindsThreeStepsOfFinelySetPipettesAmongBillions)
{
    const Glassware glass{{{{}, 1, 10, 0.005, 0.3}, {{}, 1, 5, 0.003, 0.5}},
                          {{{}, 9.987, 0.07}, {{}, 19.983, 0.06}}};
    const std::vector<PossibleStep> steps = possibleSteps(glass);
    ASSERT_GT(steps.size(), 5000U);
    const std::vector<DilutionTarget> targets{target(700, 0, 0.1, true)};
    ASSERT_TRUE(bestChains(targets, steps, 2).empty());
    const auto proposals = bestChains(targets, steps, 3);
    ASSERT_THAT(proposals, SizeIs(proposalsForEachLength));
    for (const RankedProposal &ranked : proposals)
        EXPECT_NEAR(ranked.proposal.factor, 700 / 0.8, 0.5);
}

} // namespace plateau::test
