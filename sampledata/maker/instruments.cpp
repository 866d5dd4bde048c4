// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "sampledata/maker/instruments.h"

#include "sampledata/maker/checkfigures.h"

namespace plateau::sampledata {

using namespace Qt::StringLiterals;
using equipment::Aspect;
using equipment::Item;
using equipment::Kind;

namespace {

constexpr int minutesOfACheck = 25;
constexpr int month_days = 30;
constexpr int quarter_days = 90;
constexpr int half_days = 182;
constexpr int year_days = 365;

std::vector<Item> itemsOf(const planning::Laboratory &laboratory)
{
    std::vector<Item> items;
    const QString photometer = laboratory.photometer ? laboratory.photometer->name : u"P1"_s;
    items.push_back(
        {Kind::Photometer,
         photometer,
         u"PH-0047"_s,
         0,
         0,
         {{Aspect::Wavelength, year_days}, {Aspect::Absorbance, half_days}, {Aspect::Noise, month_days}}});
    int number = 301;
    for (const planning::Pipette &pipette : laboratory.glassware.pipettes) {
        if (pipette.step_mL > 0)
            items.push_back({Kind::PistonPipette,
                             pipette.name,
                             u"PP-%1"_s.arg(number++),
                             pipette.largest_mL,
                             pipette.smallest_mL,
                             {{Aspect::Volume, quarter_days}}});
    }
    items.push_back(
        {Kind::Balance, u"B2, weighing room"_s, u"BA-0112"_s, 0, 0, {{Aspect::Weighing, month_days}}});
    items.push_back(
        {Kind::Thermometer, u"T4, water bath"_s, u"TH-0009"_s, 0, 0, {{Aspect::Temperature, year_days}}});
    items.push_back(
        {Kind::Cuvettes, u"set A, 24 glass cuvettes"_s, u"CU-A"_s, 0, 0, {{Aspect::Match, half_days}}});
    return items;
}

} // namespace

Instruments::Instruments(notebook::Notebook &notebook, const planning::Laboratory &laboratory,
                         const Story &story, quint64 seed)
    : m_notebook(notebook)
    , m_story(story)
    , m_chance(seed, 4)
{
    for (const Item &item : itemsOf(laboratory))
        m_kept.push_back({item, {}, {}});
}

void Instruments::add(const QString &person)
{
    for (Kept &kept : m_kept)
        kept.id = m_notebook.equipment().add(kept.item, person);
}

bool Instruments::asksFor(const Kept &kept, Aspect aspect, const QDate &day) const
{
    const auto due = kept.due.find(aspect);
    const bool isDue = due == kept.due.end() || day >= due->second;
    if (aspect == Aspect::Absorbance && day == m_story.lampChanged)
        return true;
    if (kept.item.name != nameOfWornPipette())
        return isDue;
    // The check of the pipette that wears out was put off until it could not be any more.
    const bool isPutOff = day >= m_story.pipetteWearsFrom && day < m_story.pipetteFails;
    return (isDue && !isPutOff) || day == m_story.pipetteFails || day == m_story.pipetteRepaired;
}

bool Instruments::checkOne(Kept &kept, Aspect aspect, const QDate &day, QDateTime &now, const QString &person)
{
    if (!asksFor(kept, aspect, day))
        return false;
    now = now.addSecs(60 * minutesOfACheck);
    m_notebook.equipment().addCheck(kept.id, checkOf(kept.item, aspect, day, m_story, m_chance), person);
    // Some days before the last day that the check covers.
    kept.due[aspect] = day.addDays(kept.item.every_days.at(aspect) - m_chance.whole(0, 6));
    return true;
}

bool Instruments::check(const QDate &day, QDateTime &now, const QString &person)
{
    bool any = false;
    for (Kept &kept : m_kept) {
        for (const auto &[aspect, days] : kept.item.every_days)
            any = checkOne(kept, aspect, day, now, person) || any;
    }
    return any;
}

} // namespace plateau::sampledata
