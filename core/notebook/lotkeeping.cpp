// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/label.h"
#include "core/assay/localday.h"
#include "core/notebook/lotkeepingstore.h"
#include "core/notebook/lotrules.h"
#include "core/notebook/lots.h"
#include "core/notebook/opennotebook.h"
#include "core/notebook/sentence.h"
#include "core/notebook/text.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;
using assay::quoted;

namespace {

/// As many as a rack of freezer boxes holds; more is a slip of the finger.
constexpr int mostAliquots = 100;

/// What is taken from it opens it, where nobody noted that yet.
void openIfClosed(Act &act, LotId lot, const LotLabel &label, const QDate &day)
{
    const planning::Lot stored = loadLots(act.database(), lot).at(0);
    if (!stored.opened) {
        storeLotOpening(act, lot, day);
    } else if (day < *stored.opened) {
        throw refused(
            Sentence::tr("Nothing was stored: the lot %1 was opened on %2, so that this cannot have been "
                         "on %3.")
                .arg(quoted(label.lot), assay::shownDay(*stored.opened), assay::shownDay(day)));
    }
}

void requireDry(const Act &act, LotId lot, const LotLabel &label)
{
    const planning::Lot stored = loadLots(act.database(), lot).at(0);
    if (stored.isDry)
        return;
    throw refused(
        stored.dissolved
            ? Sentence::tr(
                  "Nothing was stored: the lot %1 was dissolved on %2 already; correct what is left, if the "
                  "volume is wrong.")
                  .arg(quoted(label.lot), assay::shownDay(stored.dissolved->day))
            : Sentence::tr(
                  "Nothing was stored: the lot %1 is not in the book as dry; receive it as dry to note how "
                  "it is dissolved.")
                  .arg(quoted(label.lot)));
}

LotLabel labelOfAliquot(const LotLabel &source, int number, const LotDivision &how)
{
    LotLabel label = source;
    label.lot = Sentence::tr("%1, aliquot %2").arg(source.lot).arg(number);
    if (how.keepsOpened_days)
        label.keepsOpened_days = how.keepsOpened_days;
    label.keepsDissolved_days.reset(); // what is dissolved is the source
    return label;
}

void requireDivision(const LotDivision &how, const LotLabel &label)
{
    if (how.aliquots < 1 || how.aliquots > mostAliquots)
        throw refused(Sentence::tr("Nothing was stored: the lot %1 is divided into 1 to %2 aliquots, not %3.")
                          .arg(quoted(label.lot))
                          .arg(mostAliquots)
                          .arg(how.aliquots));
    requireVolume(how.volume_mL, label.lot);
    requireKeeping(how.keeps_days, label.lot);
    requireNote(how.note);
    if (how.place)
        requirePlace(*how.place, label.lot);
}

} // namespace

void Lots::dissolve(LotId lot, const LotDissolving &how, const QString &person)
{
    requireNote(how.note);
    Act act = m_open.act(person, u"lotDissolved"_s);
    const LotVersion label = currentLotVersion(act.database(), lot);
    requireDry(act, lot, label);
    requireVolume(how.volume_mL, label.lot);
    requireDay(act, how.day, label.lot);
    requireKeeping(how.keeps_days, label.lot);
    LotDissolving told = how;
    std::optional<LotVersion> solvent;
    if (how.solventLot) {
        solvent = currentLotVersion(act.database(), *how.solventLot);
        told.solvent = nameOf(*solvent);
        requireLeft(act, *how.solventLot, *solvent, how.volume_mL);
    }
    requireReason(
        told.solvent,
        Sentence::tr("Nothing was stored: say in what the lot %1 is dissolved.").arg(quoted(label.lot)));
    openIfClosed(act, lot, label, how.day);
    if (how.keeps_days != label.keepsDissolved_days) {
        LotLabel changed = label;
        changed.keepsDissolved_days = how.keeps_days;
        storeLotVersion(act, lot, changed, Sentence::tr("as it was dissolved"));
    }
    storeDissolving(act, lot, told, solvent);
    act.note(nameOf(label));
    act.commit();
}

std::vector<LotId> Lots::divide(LotId lot, const LotDivision &how, const QString &person)
{
    Act act = m_open.act(person, u"lotDivided"_s);
    const LotVersion label = currentLotVersion(act.database(), lot);
    requireDivision(how, label);
    requireDay(act, how.day, label.lot);
    if (loadLots(act.database(), lot).at(0).aliquot)
        throw refused(Sentence::tr("Nothing was stored: %1 is an aliquot itself and is not divided further.")
                          .arg(quoted(label.lot)));
    requireLeft(act, lot, label, how.aliquots * how.volume_mL);
    openIfClosed(act, lot, label, how.day);
    const qint64 division = storeDivision(act, lot, how);
    const int last = lastAliquotOf(act.database(), lot);
    std::vector<LotId> aliquots;
    for (int number = last + 1; number <= last + how.aliquots; ++number) {
        const LotLabel own = labelOfAliquot(label, number, how);
        requireLabel(own);
        aliquots.push_back(storeLot(act));
        storeLotVersion(act, aliquots.back(), own, {});
        storeAliquot(act, division, aliquots.back(), number);
        if (how.place)
            storePlace(act, aliquots.back(), *how.place, {});
    }
    act.note(Sentence::tr("%1: %2 aliquots").arg(nameOf(label)).arg(how.aliquots));
    act.commit();
    return aliquots;
}

void Lots::store(LotId lot, const planning::StoragePlace &place, const QString &person, const QString &note)
{
    requireNote(note);
    Act act = m_open.act(person, u"lotStored"_s);
    const LotVersion label = currentLotVersion(act.database(), lot);
    requirePlace(place, label.lot);
    if (loadLots(act.database(), lot).at(0).place == place)
        throw refused(Sentence::tr("The lot %1 is there already (%2); nothing was stored.")
                          .arg(quoted(label.lot), placeText(place)));
    storePlace(act, lot, place, note);
    act.note(Sentence::tr("%1: %2").arg(nameOf(label), placeText(place)));
    act.commit();
}

void Lots::note(LotId lot, const QString &text, const QString &person)
{
    requireReason(text, Sentence::tr("Nothing was stored, since the note is blank: say what is to be kept."));
    Act act = m_open.act(person, u"lotNoted"_s);
    const LotVersion label = currentLotVersion(act.database(), lot);
    storeLotNote(act, lot, text);
    act.note(nameOf(label));
    act.commit();
}

void Lots::discardDry(LotId lot, const QString &person, const QString &reason)
{
    requireReason(reason, Sentence::tr("Nothing was discarded, since that needs a reason: say why."));
    Act act = m_open.act(person, u"lotDiscarded"_s);
    const LotVersion label = currentLotVersion(act.database(), lot);
    requireDry(act, lot, label);
    storeDryDisposal(act, lot, reason);
    act.note(nameOf(label));
    act.commit();
}

} // namespace plateau::notebook
