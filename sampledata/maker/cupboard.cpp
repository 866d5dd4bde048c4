// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "sampledata/maker/cupboard.h"

#include <algorithm>
#include <cmath>

namespace plateau::sampledata {

using namespace Qt::StringLiterals;

namespace {

constexpr double tubesOfAContainer = 130;
constexpr double smallest_mL = 1;
constexpr int keepsOpened_days = 60;
constexpr double weakActivity = 0.945;
constexpr double weakFade_per_day = 0.004;
constexpr double usualFade_per_day = 0.0001;
/// Further containers of a delivery are of the same lot.
constexpr int containersOfALot = 2;

/// Two letters of the supplier's for each reagent, by when it came for the first time: the names of reagents are in the
/// window's language, and their initials are often the same. No I and no O, which are read as figures.
QString lettersOf(int reagent)
{
    static const QString letters = u"ABCDEFGHJKLMNPQRSTUVWXYZ"_s;
    const int count = int(letters.size());
    const int round = reagent / count; // the first letters are then had again, with others behind them
    return QString(letters[(7 * reagent + 6) % count]) + letters[(11 * reagent + 9 + 5 * round) % count];
}

double rounded_mL(double volume_mL)
{
    return std::round(volume_mL * 1000) / 1000;
}

} // namespace

double OpenLot::activityOn(const QDate &day) const
{
    return activity - fade_per_day * double(opened.daysTo(day));
}

QDate OpenLot::lastGood() const
{
    return std::min(*label.expires, opened.addDays(keepsOpened_days));
}

bool Cupboard::isWeak(const QString &reagent) const
{
    const auto found = m_shelves.find(reagent);
    return found != m_shelves.end() && found->second.open && found->second.open->activity < 1;
}

OpenLot Cupboard::receive(Shelf &shelf, const assay::Component &reagent, const QDate &day,
                          const QString &person)
{
    OpenLot lot;
    const int delivery = shelf.received / containersOfALot;
    lot.label.reagent = reagent.name;
    constexpr int firstNumber = 310;
    constexpr int apart = 7;
    lot.label.lot = u"%1-%2%3"_s.arg(lettersOf(shelf.number))
                        .arg(day.year() % 100, 2, 10, QChar(u'0'))
                        .arg(firstNumber + apart * delivery, 4, 10, QChar(u'0'));
    lot.label.expires = day.addDays(m_chance.whole(240, 420));
    lot.label.keepsOpened_days = keepsOpened_days;
    lot.left_mL = std::max(smallest_mL, std::ceil(reagent.volume_mL * tubesOfAContainer));
    lot.fade_per_day = usualFade_per_day;
    lot.id = m_notebook.lots().receive(lot.label, lot.left_mL, person);
    ++shelf.received;
    return lot;
}

void Cupboard::note(OpenLot &lot, const QString &person)
{
    const double volume_mL = rounded_mL(lot.toNote_mL);
    if (volume_mL <= 0)
        return;
    m_notebook.lots().use(lot.id, volume_mL, person,
                          lot.firstToNote == lot.lastToNote
                              ? u"run %1"_s.arg(lot.firstToNote.value)
                              : u"runs %1 to %2"_s.arg(lot.firstToNote.value).arg(lot.lastToNote.value));
    lot.toNote_mL = 0;
    lot.firstToNote = {};
}

void Cupboard::noteLater(const std::map<QString, OpenLot> &taken, notebook::RunId run)
{
    for (const auto &[component, lot] : taken) {
        OpenLot &open = *m_shelves.at(lot.label.reagent).open;
        open.toNote_mL += lot.taken_mL;
        if (open.firstToNote.value == 0)
            open.firstToNote = run;
        open.lastToNote = run;
    }
}

void Cupboard::noteAll(const QString &person)
{
    for (auto &[reagent, shelf] : m_shelves) {
        if (shelf.open)
            note(*shelf.open, person);
    }
}

void Cupboard::discard(const QString &reagent, const QString &person, const QString &reason)
{
    const auto found = m_shelves.find(reagent);
    if (found == m_shelves.end() || !found->second.open)
        return;
    Shelf &shelf = found->second;
    note(*shelf.open, person);
    if (const double left_mL = rounded_mL(shelf.open->left_mL); left_mL > 0)
        m_notebook.lots().discard(shelf.open->id, left_mL, person, reason);
    shelf.open.reset();
}

OpenLot &Cupboard::take(const assay::Component &reagent, double volume_mL, const QDate &day,
                        const QString &person)
{
    const auto [place, isNew] = m_shelves.try_emplace(reagent.name);
    Shelf &shelf = place->second;
    if (isNew)
        shelf.number = int(m_shelves.size()) - 1;
    const bool weak = m_spoilt == reagent.name;
    if (shelf.open && weak)
        discard(reagent.name, person, u"moved to the next delivery"_s);
    else if (shelf.open && shelf.open->opened.daysTo(day) > keepsOpened_days)
        discard(reagent.name, person, u"open too long"_s);
    else if (shelf.open && shelf.open->left_mL < volume_mL)
        discard(reagent.name, person, u"too little for a rack"_s);
    if (!shelf.open) {
        // A weak lot is a delivery of its own: the sealed one waits behind it.
        if (weak)
            shelf.received += containersOfALot - shelf.received % containersOfALot;
        OpenLot next = shelf.sealed && !weak && *shelf.sealed->label.expires > day.addDays(keepsOpened_days)
                           ? *std::exchange(shelf.sealed, std::nullopt)
                           : receive(shelf, reagent, day, person);
        next.opened = day;
        if (weak) {
            shelf.received += containersOfALot - 1;
            next.activity = weakActivity;
            next.fade_per_day = weakFade_per_day;
            m_spoilt.clear();
        }
        m_notebook.lots().open(next.id, day, person);
        shelf.open = next;
        if (!shelf.sealed)
            shelf.sealed = receive(shelf, reagent, day, person);
    }
    shelf.open->left_mL -= volume_mL;
    shelf.open->taken_mL = volume_mL;
    return *shelf.open;
}

} // namespace plateau::sampledata
