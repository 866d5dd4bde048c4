// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/lots.h"

#include "core/assay/label.h"
#include "core/assay/limits.h"
#include "core/assay/localday.h"
#include "core/notebook/lotkeepingstore.h"
#include "core/notebook/lotopening.h"
#include "core/notebook/lotrules.h"
#include "core/notebook/opennotebook.h"
#include "core/notebook/sentence.h"
#include "core/notebook/text.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;
using assay::quoted;
using assay::shown;

namespace {

void take(Act &act, LotId lot, LotMovementKind kind, double volume_mL, const QString &note)
{
    const LotVersion label = currentLotVersion(act.database(), lot);
    requireLeft(act, lot, label, volume_mL);
    act.note(nameOf(label));
    storeLotMovement(act, lot, kind, -volume_mL, note);
    if (kind == LotMovementKind::Used)
        openTaken(act, {lot}, timeOf(act.at()).date());
    act.commit();
}

} // namespace

LotId Lots::receive(const LotLabel &label, double volume_mL, const QString &person)
{
    requireLabel(label);
    requireVolume(volume_mL, label.lot);
    Act act = m_open.act(person, u"lotReceived"_s);
    const LotId lot = storeLot(act);
    storeLotVersion(act, lot, label, {});
    storeLotMovement(act, lot, LotMovementKind::Received, volume_mL, {});
    act.note(nameOf(label));
    act.commit();
    return lot;
}

LotId Lots::receiveDry(const LotLabel &label, std::optional<double> mass_mg, const QString &person)
{
    requireLabel(label);
    constexpr double mg_per_g = 1000;
    if (mass_mg && !(*mass_mg > 0 && *mass_mg <= assay::limit::mass_g * mg_per_g))
        throw refused(
            Sentence::tr("The lot %1 was not stored: its mass is more than 0 and at most %2 mg, not "
                         "%3; leave it out where the label says none.")
                .arg(quoted(label.lot), shown(assay::limit::mass_g * mg_per_g), shown(*mass_mg)));
    Act act = m_open.act(person, u"lotReceived"_s);
    const LotId lot = storeLot(act);
    storeLotVersion(act, lot, label, {});
    storeDryLot(act, lot, mass_mg);
    act.note(nameOf(label));
    act.commit();
    return lot;
}

void Lots::relabel(LotId lot, const LotLabel &label, const QString &person, const QString &reason)
{
    requireLabel(label);
    requireReason(reason, Sentence::tr("The lot keeps its label, since another needs a reason: say why."));
    Act act = m_open.act(person, u"lotChanged"_s);
    const LotLabel before = currentLotVersion(act.database(), lot);
    if (before == label)
        throw refused(
            Sentence::tr("The lot %1 has this label already; nothing was stored.").arg(quoted(label.lot)));
    storeLotVersion(act, lot, label, reason);
    act.note(nameOf(label));
    act.commit();
}

void Lots::open(LotId lot, const QDate &day, const QString &person)
{
    Act act = m_open.act(person, u"lotOpened"_s);
    const LotVersion label = currentLotVersion(act.database(), lot);
    const planning::Lot stored = loadLots(act.database(), lot).at(0);
    if (stored.opened)
        throw refused(Sentence::tr("The lot %1 was opened on %2 already; nothing was stored.")
                          .arg(quoted(label.lot), assay::shownDay(*stored.opened)));
    if (!day.isValid() || day > timeOf(act.at()).date())
        throw refused(
            Sentence::tr(
                "The lot %1 is not noted as opened: the day must be a real date that is not in the future.")
                .arg(quoted(label.lot)));
    storeLotOpening(act, lot, day);
    act.note(nameOf(label));
    act.commit();
}

void Lots::correctOpening(LotId lot, const std::optional<QDate> &day, const QString &person,
                          const QString &reason)
{
    requireReason(
        reason,
        Sentence::tr("The opening stays as it was noted, since a correction needs a reason: say why."));
    Act act = m_open.act(person, u"lotOpeningCorrected"_s);
    const LotVersion label = currentLotVersion(act.database(), lot);
    const planning::Lot stored = loadLots(act.database(), lot).at(0);
    if (!stored.opened)
        throw refused(
            Sentence::tr("Nothing was stored: the lot %1 is not noted as opened.").arg(quoted(label.lot)));
    if (stored.opened == day)
        throw refused(Sentence::tr("The lot %1 was opened on %2 already; nothing was stored.")
                          .arg(quoted(label.lot), assay::shownDay(*day)));
    if (day)
        requireDay(act, *day, label.lot);
    const std::optional<QDate> taken = firstTakenFrom(act.database(), lot);
    if (taken && (!day || *day > *taken))
        throw refused(
            Sentence::tr("Nothing was stored: something was taken from the lot %1 on %2, so that it was "
                         "open by then; give that day or an earlier one, or take back first what was "
                         "ticked with it by mistake.")
                .arg(quoted(label.lot), assay::shownDay(*taken)));
    storeLotOpeningChange(act, lot, day, reason);
    act.note(nameOf(label));
    act.commit();
}

void Lots::use(LotId lot, double volume_mL, const QString &person, const QString &note)
{
    requireNote(note);
    Act act = m_open.act(person, u"lotUsed"_s);
    take(act, lot, LotMovementKind::Used, volume_mL, note);
}

void Lots::discard(LotId lot, double volume_mL, const QString &person, const QString &reason)
{
    requireReason(reason, Sentence::tr("Nothing was discarded, since that needs a reason: say why."));
    Act act = m_open.act(person, u"lotDiscarded"_s);
    take(act, lot, LotMovementKind::Discarded, volume_mL, reason);
}

void Lots::correct(LotId lot, double found_mL, const QString &person, const QString &reason)
{
    requireReason(reason, Sentence::tr("The lot was not corrected, since that needs a reason: say why."));
    Act act = m_open.act(person, u"lotCorrected"_s);
    const LotVersion label = currentLotVersion(act.database(), lot);
    if (!(found_mL >= 0 && found_mL <= largestContainer_mL))
        throw refused(
            Sentence::tr("The lot %1 was not corrected: what is found in it must lie between 0 and %2 "
                         "mL, not %3.")
                .arg(quoted(label.lot), shown(largestContainer_mL), shown(found_mL)));
    requireLiquid(act, lot, label);
    const double change_mL = found_mL - leftIn_mL(act, lot);
    if (change_mL == 0)
        throw refused(Sentence::tr("The lot %1 has %2 mL left already; nothing was stored.")
                          .arg(quoted(label.lot), shown(found_mL)));
    storeLotMovement(act, lot, LotMovementKind::Corrected, change_mL, reason);
    act.note(nameOf(label));
    act.commit();
}

std::vector<planning::Lot> Lots::all() const
{
    const Transaction snapshot(*m_open.database, Transaction::Kind::Read);
    return loadLots(*m_open.database);
}

std::vector<planning::Lot> Lots::inHand() const
{
    std::vector<planning::Lot> lots = all();
    std::erase_if(lots, planning::isUsedUp);
    return lots;
}

std::vector<LotMovement> Lots::movements(LotId lot) const
{
    const Transaction snapshot(*m_open.database, Transaction::Kind::Read);
    return loadMovements(*m_open.database, lot);
}

std::vector<LotTaking> Lots::takings(LotId lot) const
{
    const Transaction snapshot(*m_open.database, Transaction::Kind::Read);
    return loadTakings(*m_open.database, lot);
}

} // namespace plateau::notebook
