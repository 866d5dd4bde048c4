// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/pipettesource.h"

#include "core/assay/localday.h"
#include "ui/bench/pipettewords.h"

#include <QCoreApplication>

#include <algorithm>

namespace plateau::ui {

namespace {

using notebook::LotId;

struct PipetteSourceWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::PipetteSource)
};

QString lotWords(const planning::Lot &lot)
{
    const std::optional<QDate> last = planning::lastGoodDay(lot);
    return last ? PipetteSourceWords::tr("%1, use by %2").arg(lot.lot, assay::shownDay(*last))
                : lot.lot;
}

/// The round that the reagent has for its own; nullptr for what only stands in or is a tube's own.
const planning::Round *roundNamed(const PipetteSheet &sheet, const QString &reagent)
{
    for (const planning::Round &round : sheet.rounds()) {
        if (round.name == reagent)
            return &round;
    }
    return nullptr;
}

std::optional<LotId> lastLot(const PipetteSheet &sheet, const QString &reagent)
{
    std::optional<LotId> last;
    for (int round = 0; round < static_cast<int>(sheet.rounds().size()); ++round) {
        for (int tube = 0; tube < sheet.tubes(); ++tube) {
            const Pipetted *went = sheet.pipetted({round, tube});
            if (went && went->lot && contentWords(sheet, {round, tube}) == reagent)
                last = went->lot;
        }
    }
    return last;
}

QString lastPipette(const PipetteSheet &sheet, int round, double volume_mL)
{
    QString last;
    for (int tube = 0; tube < sheet.tubes(); ++tube) {
        const Pipetted *went = sheet.pipetted({round, tube});
        if (went && went->planned_mL == volume_mL && !went->pipette.isEmpty())
            last = went->pipette;
    }
    return last;
}

} // namespace

PipettePanel::Source plannedSource(const PipetteSheet &sheet, const Dosing &dosing,
                                   const std::vector<planning::Lot> &inHand,
                                   const planning::Glassware &glassware)
{
    PipettePanel::Source source;
    for (const planning::Pipette &pipette : glassware.pipettes)
        source.pipettes << pipette.name;
    if (const auto *dose = sheet.doseOf(dosing)) {
        source.pipette = lastPipette(sheet, dosing.round, dose->volume_mL);
        if (source.pipette.isEmpty())
            source.pipette = planning::pipetteFor(dose->volume_mL, glassware);
    }
    const QString reagent = contentWords(sheet, dosing);
    const planning::Round *own = roundNamed(sheet, reagent);
    if (isTubesOwn(sheet, dosing) || !own)
        return source;
    // Of several containers of the planned lot the one that is to be used up first, as the plan counts on it.
    const planning::Lot *best = nullptr;
    for (const planning::Lot &lot : inHand) {
        if (lot.isDry || !planning::isSameReagent(lot.reagent, reagent))
            continue;
        source.lots.push_back({LotId{lot.id}, lotWords(lot)});
        if (lot.lot == own->lot && (!best || planning::isUsedBefore(lot, *best)))
            best = &lot;
    }
    const std::optional<LotId> planned = best ? std::optional(LotId{best->id}) : std::nullopt;
    if (source.lots.empty() && own->lot.isEmpty())
        return source;
    const bool unknown = !planned && !own->lot.isEmpty();
    source.lots.insert(source.lots.begin(),
                       {std::nullopt, unknown ? own->lot : PipetteSourceWords::tr("not noted")});
    if (const Pipetted *went = sheet.pipetted(dosing))
        source.lot = went->lot;
    if (!source.lot)
        source.lot = lastLot(sheet, reagent);
    if (!source.lot)
        source.lot = planned;
    return source;
}

const planning::Lot *lotOf(const std::optional<LotId> &id, const std::vector<planning::Lot> &inHand)
{
    const auto found = std::ranges::find_if(inHand, [&](const planning::Lot &lot) { return id == LotId{lot.id}; });
    return found == inHand.end() ? nullptr : &*found;
}

void goOnWithNextLot(PipettePanel::Source &source, const PipetteSheet &sheet, const Dosing &dosing,
                     const std::vector<planning::Lot> &inHand, const QDateTime &at)
{
    const auto *dose = sheet.doseOf(dosing);
    if (!source.lot || !dose || sheet.stateOf(dosing) != PipetteSheet::State::Due)
        return;
    if (const planning::Lot *own = lotOf(source.lot, inHand); own && planning::holds(*own, dose->volume_mL))
        return;
    const planning::Lot *next = planning::nextLot(inHand, contentWords(sheet, dosing), dose->volume_mL, at);
    source.isShort = !next;
    if (next) {
        source.insteadOf = source.lot;
        source.lot = LotId{next->id};
    }
}

QString lotHint(const PipettePanel::Source &source, const PipetteSheet &sheet, const Dosing &dosing,
                const std::vector<planning::Lot> &inHand, const QDateTime &at)
{
    const planning::Lot *own = lotOf(source.lot, inHand);
    if (!own || sheet.stateOf(dosing) != PipetteSheet::State::Due)
        return {};
    const QString reagent = contentWords(sheet, dosing);
    std::vector<Dosing> due = sheet.dueIn(dosing.round, dosing.tube, sheet.tubes() - 1);
    for (const Dosing &before : sheet.dueIn(dosing.round, 0, dosing.tube - 1))
        due.push_back(before);
    std::vector<planning::Lot> rest = inHand;
    planning::Lot &left = rest[static_cast<std::size_t>(own - inHand.data())];
    int tubes = 0;
    for (const Dosing &next : due) {
        if (isTubesOwn(sheet, next) || contentWords(sheet, next) != reagent)
            continue;
        const double volume_mL = sheet.doseOf(next)->volume_mL;
        if (planning::holds(left, volume_mL)) {
            left.remaining_mL -= volume_mL;
            ++tubes;
            continue;
        }
        if (tubes == 0)
            return PipetteSourceWords::tr("By the book lot %1 does not hold what this tube takes.").arg(left.lot);
        const planning::Lot *then = planning::nextLot(rest, reagent, volume_mL, at);
        return then ? PipetteSourceWords::tr("Lot %1 is enough for %n tubes more; then take lot %2.", nullptr, tubes)
                          .arg(left.lot, then->lot)
                    : PipetteSourceWords::tr("Lot %1 is enough for %n tubes more, and no other lot is fit.", nullptr, tubes)
                          .arg(left.lot);
    }
    return {};
}

} // namespace plateau::ui
