// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/doseticker.h"

#include "core/evaluation/format.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/benchworksheet.h"
#include "ui/bench/pipettesource.h"
#include "ui/bench/pipettewords.h"
#include "ui/bench/stores.h"

#include <QCoreApplication>

namespace plateau::ui {

using namespace Qt::StringLiterals;

namespace {

struct DoseTickerWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::DoseTicker)
};

} // namespace

QString tickNext(BenchSession &session, const Stores &stores, const NextAction &next)
{
    const Rack *rack = session.find(next.run);
    if (!rack || next.kind != NextAction::Kind::Pipette)
        return {};
    if (session.person().isEmpty())
        return DoseTickerWords::tr(
            "First say who is at the bench: type your name on the left and press Enter.");
    const QStringList missing = rack->sheet.readingsMissingBefore(next.dosing);
    if (!missing.isEmpty())
        return DoseTickerWords::tr(
                   "Nothing was ticked: %1 of tube %2 in rack %3 is not read yet, and after %4 it cannot "
                   "be. Read it first, or tick the tube on the Pipette page.")
            .arg(evaluation::andJoined(missing))
            .arg(next.dosing.tube + 1)
            .arg(rack->letter, rack->sheet.round(next.dosing.round).name);
    const planning::Laboratory laboratory = stores.laboratory();
    const PipetteSheet sheet = sheetOf(rack->stored, laboratory.glassware, rack->sheet.isFromPaper());
    const std::vector<planning::Lot> inHand = lotsFor(rack->stored, stores);
    PipettePanel::Source source = plannedSource(sheet, next.dosing, inHand, laboratory.glassware);
    // As the Pipette page: more is taken of a lot than it holds where that was confirmed there, and nowhere
    // else.
    const std::optional<BeyondBook::Why> confirmed =
        source.lot ? session.beyondBook().why(next.run, contentWords(sheet, next.dosing), *source.lot)
                   : std::nullopt;
    if (confirmed != BeyondBook::Why::Chosen)
        goOnWithNextLot(source, sheet, next.dosing, inHand, session.now().wall);
    // Who takes another bottle is to be told which.
    if (source.insteadOf)
        return DoseTickerWords::tr("Nothing was ticked: by the book the lot does not hold another tube of this. The Pipette page "
                                   "says which lot comes next.");
    if (source.isShort && !confirmed)
        return DoseTickerWords::
            tr("Nothing was ticked: by the book lot %1 does not hold another tube of this, and no other lot "
               "is fit. Choose or receive one, or tick the tube on the Pipette page to take more of it all "
               "the same.")
                .arg(lotOf(source.lot, inHand) ? lotOf(source.lot, inHand)->lot : QString());
    session.tick(next.run, {{doseOf(sheet, next.dosing), std::nullopt, source.lot, source.pipette, {}}});
    return {};
}

} // namespace plateau::ui
