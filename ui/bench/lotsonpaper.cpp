// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/lotsonpaper.h"

#include "ui/bench/pipettesource.h"

#include <algorithm>

namespace plateau::ui {

namespace {

using planning::ReagentDose;

/// A dose and the container it comes from; nothing: none holds it.
struct LotTurn {
    ReagentDose dose;
    std::optional<qint64> lot;
};

/// Doses of which no lot is known are left out.
std::vector<LotTurn> turnsOf(const QString &reagent, const PipetteSheet &sheet,
                             const std::vector<planning::Lot> &inHand, const QDateTime &at)
{
    const std::optional<notebook::LotId> inUse = lotInUse(sheet, reagent, inHand);
    if (!inUse)
        return {};
    const std::vector<ReagentDose> doses = planning::dosesOf(reagent, sheet.rounds(), sheet.run());
    const auto isDue = [&](const ReagentDose &dose) {
        return sheet.stateOf({dose.round, dose.tube}) == PipetteSheet::State::Due;
    };
    std::vector<double> due_mL;
    for (const ReagentDose &dose : doses) {
        if (isDue(dose))
            due_mL.push_back(dose.volume_mL);
    }
    const auto due = planning::lotsInTurn(inUse->value, inHand, reagent, due_mL, at);
    std::vector<LotTurn> turns;
    auto next = due.begin();
    for (const ReagentDose &dose : doses) {
        const Pipetted *went = sheet.pipetted({dose.round, dose.tube});
        if (isDue(dose))
            turns.push_back({dose, *next++});
        else if (went && went->lot)
            turns.push_back({dose, went->lot->value});
    }
    return turns;
}

std::vector<LotStretch> stretchesOf(const std::vector<LotTurn> &turns, const QString &standIn,
                                    const std::vector<planning::Lot> &inHand)
{
    std::vector<LotStretch> stretches;
    std::optional<qint64> before;
    for (const LotTurn &turn : turns) {
        if (!stretches.empty() && before == turn.lot) {
            stretches.back().lastTube = turn.dose.tube;
            continue;
        }
        const planning::Lot *lot = turn.lot ? planning::lotWith(*turn.lot, inHand) : nullptr;
        LotStretch stretch{standIn, turn.dose.tube, turn.dose.tube, false, {}, {}, false};
        if (lot) {
            stretch.lot = lot->lot;
            stretch.lastGoodDay = planning::lastGoodDay(*lot);
            stretch.isAnotherContainer = !stretches.empty() && stretches.back().lot == lot->lot;
        }
        stretches.push_back(stretch);
        before = turn.lot;
    }
    if (!stretches.empty())
        stretches.back().isLast = true;
    return stretches;
}

} // namespace

std::map<int, std::vector<LotStretch>>
lotsOnPaper(const PipetteSheet &sheet, const std::vector<planning::Lot> &inHand, const QDateTime &at)
{
    std::map<int, std::vector<LotStretch>> byRound;
    for (int own = 0; own < static_cast<int>(sheet.rounds().size()); ++own) {
        const planning::Round &round = sheet.round(own);
        const auto first = std::ranges::find(sheet.rounds(), round.name, &planning::Round::name);
        if (sheet.isSpike(own) || first - sheet.rounds().begin() != own)
            continue; // of two additions of one name the first one names the lot of both, as at the bench
        const std::vector<LotTurn> turns = turnsOf(round.name, sheet, inHand, at);
        const planning::Lot *planned = planning::containerOf(round.lot, round.name, inHand);
        if (std::ranges::all_of(turns,
                                [&](const LotTurn &turn) { return planned && turn.lot == planned->id; }))
            continue;
        for (int in = 0; in < static_cast<int>(sheet.rounds().size()); ++in) {
            std::vector<LotTurn> inRound;
            std::ranges::copy_if(turns, std::back_inserter(inRound),
                                 [in](const LotTurn &turn) { return turn.dose.round == in; });
            const bool isOwn = sheet.round(in).name == round.name;
            const auto stretches = stretchesOf(inRound, isOwn ? QString() : round.name, inHand);
            byRound[in].insert(byRound[in].end(), stretches.begin(), stretches.end());
        }
    }
    std::erase_if(byRound, [](const auto &ofRound) { return ofRound.second.empty(); });
    return byRound;
}

} // namespace plateau::ui
