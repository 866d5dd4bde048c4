// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/pipettesource.h"

#include "core/assay/localday.h"
#include "ui/bench/pipettewords.h"

#include <QCoreApplication>

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
        if (lot.isDry || lot.reagent.compare(reagent, Qt::CaseInsensitive) != 0)
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
    source.lot = lastLot(sheet, reagent);
    if (!source.lot)
        source.lot = planned;
    return source;
}

} // namespace plateau::ui
