// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/pipettesource.h"

#include "core/assay/localday.h"
#include "core/notebook/records.h"
#include "ui/bench/pipettewords.h"
#include "ui/bench/stores.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>

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

std::vector<planning::Lot> lotsFor(const notebook::StoredRun &stored, const Stores &stores)
{
    std::vector<planning::Lot> lots = stores.lots();
    std::set<LotId> missing;
    for (const notebook::StoredMark &mark : stored.marks) {
        if (mark.lot && !lotOf(mark.lot, lots))
            missing.insert(*mark.lot);
    }
    if (missing.empty())
        return lots;
    for (const planning::Lot &lot : stores.everyLot()) {
        if (missing.contains(LotId{lot.id}))
            lots.push_back(lot);
    }
    return lots;
}

std::optional<LotId> lotInUse(const PipetteSheet &sheet, const QString &reagent,
                              const std::vector<planning::Lot> &inHand)
{
    if (const std::optional<LotId> last = lastLot(sheet, reagent))
        return last;
    const planning::Round *own = roundNamed(sheet, reagent);
    const planning::Lot *planned = own ? planning::containerOf(own->lot, reagent, inHand) : nullptr;
    return planned ? std::optional(LotId{planned->id}) : std::nullopt;
}

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
    for (const planning::Lot &lot : inHand) {
        if (lot.isDry || !planning::isSameReagent(lot.reagent, reagent))
            continue;
        source.lots.push_back({LotId{lot.id}, lotWords(lot)});
    }
    if (source.lots.empty() && own->lot.isEmpty())
        return source;
    const bool unknown = !own->lot.isEmpty() && !planning::containerOf(own->lot, reagent, inHand);
    source.lots.insert(source.lots.begin(),
                       {std::nullopt, unknown ? own->lot : PipetteSourceWords::tr("not noted")});
    if (const Pipetted *went = sheet.pipetted(dosing))
        source.lot = went->lot;
    if (!source.lot)
        source.lot = lotInUse(sheet, reagent, inHand);
    return source;
}

const planning::Lot *lotOf(const std::optional<LotId> &id, const std::vector<planning::Lot> &inHand)
{
    return id ? planning::lotWith(id->value, inHand) : nullptr;
}

void goOnWithNextLot(PipettePanel::Source &source, const PipetteSheet &sheet, const Dosing &dosing,
                     const std::vector<planning::Lot> &inHand, const QDateTime &at)
{
    const auto *dose = sheet.doseOf(dosing);
    if (!source.lot || !dose || sheet.stateOf(dosing) != PipetteSheet::State::Due)
        return;
    const planning::Lot *next =
        planning::goOnWith(source.lot->value, inHand, contentWords(sheet, dosing), dose->volume_mL, at);
    source.isShort = !next;
    if (next && LotId{next->id} != source.lot) {
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
    std::erase_if(due, [&](const Dosing &next) {
        return isTubesOwn(sheet, next) || contentWords(sheet, next) != reagent;
    });
    std::vector<double> doses_mL;
    for (const Dosing &next : due)
        doses_mL.push_back(sheet.doseOf(next)->volume_mL);
    const auto turns = planning::lotsInTurn(own->id, inHand, reagent, doses_mL, at);
    const auto then = std::ranges::find_if(turns, [own](const auto &turn) { return turn != own->id; });
    if (then == turns.end())
        return {};
    const int tubes = static_cast<int>(then - turns.begin());
    if (tubes == 0)
        return PipetteSourceWords::tr("By the book lot %1 does not hold what this tube takes.").arg(own->lot);
    return *then ? PipetteSourceWords::tr("Lot %1 is enough for %n tubes more; then take lot %2.", nullptr,
                                          tubes)
                       .arg(own->lot, planning::lotWith(**then, inHand)->lot)
                 : PipetteSourceWords::tr("Lot %1 is enough for %n tubes more, and no other lot is fit.",
                                          nullptr, tubes)
                       .arg(own->lot);
}

} // namespace plateau::ui
