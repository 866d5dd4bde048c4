// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/lotrules.h"

#include "core/assay/label.h"
#include "core/notebook/lotstore.h"
#include "core/notebook/opennotebook.h"
#include "core/notebook/sentence.h"
#include "core/notebook/text.h"

#include <cmath>

namespace plateau::notebook {

using assay::quoted;
using assay::shown;

QString nameOf(const LotLabel &label)
{
    return Sentence::tr("%1, lot %2").arg(label.reagent, label.lot);
}

void requireLabel(const LotLabel &label)
{
    assay::Problems problems;
    checkLabel(problems, {}, label.reagent, Sentence::tr("the reagent"));
    checkLabel(problems, {}, label.lot, Sentence::tr("the lot"));
    if (!problems.empty())
        throw refused(Sentence::tr("The lot was not stored: %1.").arg(problems.front().message));
    if (label.expires && (!label.expires->isValid() || label.expires->year() > 9999))
        throw refused(Sentence::tr("The lot %1 was not stored: its use-by date is not a real date.")
                          .arg(quoted(label.lot)));
    if (label.keepsOpened_days &&
        (*label.keepsOpened_days < 1 || *label.keepsOpened_days > longestKeeping_days))
        throw refused(Sentence::tr("The lot %1 was not stored: once opened it keeps for 1 to %2 days, not "
                                   "%3; leave it out where none is stated.")
                          .arg(quoted(label.lot))
                          .arg(longestKeeping_days)
                          .arg(*label.keepsOpened_days));
    requireKeeping(label.keepsDissolved_days, label.lot);
}

void requireVolume(double volume_mL, const QString &lot)
{
    if (!(volume_mL > 0 && volume_mL <= largestContainer_mL))
        throw refused(
            Sentence::tr(
                "Nothing was stored for the lot %1: a volume is more than 0 and at most %2 mL, not %3.")
                .arg(quoted(lot), shown(largestContainer_mL), shown(volume_mL)));
}

void requireKeeping(const std::optional<int> &days, const QString &lot)
{
    if (days && (*days < 0 || *days > longestKeeping_days))
        throw refused(Sentence::tr("Nothing was stored for the lot %1: it keeps for 0 to %2 days, not %3; "
                                   "leave it out where none is stated.")
                          .arg(quoted(lot))
                          .arg(longestKeeping_days)
                          .arg(*days));
}

void requireDay(const Act &act, const QDate &day, const QString &lot)
{
    if (!day.isValid() || day > timeOf(act.at()).date())
        throw refused(
            Sentence::tr(
                "Nothing was stored for the lot %1: the day must be a real date that is not in the future.")
                .arg(quoted(lot)));
}

void requireLiquid(const Act &act, LotId lot, const LotLabel &label)
{
    if (loadLots(act.database(), lot).at(0).isDry)
        throw refused(
            Sentence::tr("Nothing was stored: the lot %1 is dry; note first in how much it was dissolved.")
                .arg(quoted(label.lot)));
}

void requireLeft(const Act &act, LotId lot, const LotLabel &label, double volume_mL)
{
    requireVolume(volume_mL, label.lot);
    requireLiquid(act, lot, label);
    const double left_mL = leftIn_mL(act, lot);
    if (volume_mL > left_mL)
        throw refused(
            Sentence::tr("Nothing was stored: the lot %1 has %2 mL left, less than the %3 mL taken; "
                         "correct what is left first, if that is wrong.")
                .arg(quoted(label.lot), shown(left_mL), shown(volume_mL)));
}

void requirePlace(const planning::StoragePlace &place, const QString &lot)
{
    assay::Problems problems;
    checkLabel(problems, {}, place.name, Sentence::tr("the place"));
    if (!problems.empty())
        throw refused(Sentence::tr("Nothing was stored: %1.").arg(problems.front().message));
    constexpr double coldest_C = -273.15;
    constexpr double hottest_C = 200;
    for (const std::optional<double> &limit : {place.lowest_C, place.highest_C}) {
        if (limit && !(*limit >= coldest_C && *limit <= hottest_C))
            throw refused(Sentence::tr("Nothing was stored for the lot %1: a place has %2 to %3 °C, not %4.")
                              .arg(quoted(lot), shown(coldest_C), shown(hottest_C), shown(*limit)));
    }
    if (place.lowest_C && place.highest_C && *place.lowest_C > *place.highest_C)
        throw refused(Sentence::tr("Nothing was stored for the lot %1: the place cannot be at least %2 and "
                                   "at most %3 °C; give the lower one first.")
                          .arg(quoted(lot), shown(*place.lowest_C), shown(*place.highest_C)));
}

void requireNote(const QString &note)
{
    if (!note.isEmpty())
        requireReason(note,
                      Sentence::tr("Nothing was stored: the note is blank; leave it out or say what for."));
}

double leftIn_mL(const Act &act, LotId lot)
{
    return loadLots(act.database(), lot).at(0).remaining_mL;
}

} // namespace plateau::notebook
