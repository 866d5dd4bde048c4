// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/benchworksheet.h"

#include "core/notebook/marks.h"

#include <algorithm>

namespace plateau::ui {

namespace {

/// What counts of a dose, or of a tube as a whole.
using Effect = std::pair<notebook::Dose, std::optional<notebook::StoredMark>>;

WorksheetAct::Change changeBy(const notebook::StoredMark &mark, std::vector<Effect> &effects)
{
    auto effect = std::find_if(effects.begin(), effects.end(),
                               [&mark](const Effect &known) { return known.first == mark.dose; });
    if (effect == effects.end())
        effect = effects.insert(effects.end(), {mark.dose, std::nullopt});
    WorksheetAct::Change change{mark.dose, effect->second, std::nullopt};
    if (mark.kind == notebook::MarkKind::Done || mark.kind == notebook::MarkKind::Spoilt)
        change.now = mark;
    effect->second = change.now;
    return change;
}

bool isAlike(const std::optional<notebook::StoredMark> &one, const std::optional<notebook::StoredMark> &other)
{
    if (!one || !other)
        return one.has_value() == other.has_value();
    return one->volume_mL == other->volume_mL && one->lot == other->lot && one->pipette == other->pipette &&
           one->note == other->note;
}

bool takesBack(const WorksheetAct &act, const WorksheetAct &earlier)
{
    return std::is_permutation(act.changes.begin(), act.changes.end(), earlier.changes.begin(),
                               earlier.changes.end(), [](const auto &one, const auto &other) {
                                   return one.dose == other.dose && isAlike(one.now, other.before);
                               });
}

} // namespace

std::optional<Dosing> dosingOf(const PipetteSheet &sheet, const notebook::Dose &dose)
{
    for (int round = 0; round < static_cast<int>(sheet.rounds().size()); ++round) {
        const Dosing dosing{round, dose.tube};
        if (doseOf(sheet, dosing) == dose)
            return dosing;
    }
    return std::nullopt;
}

notebook::Dose doseOf(const PipetteSheet &sheet, const Dosing &dosing)
{
    return {dosing.tube, sheet.round(dosing.round).component, sheet.isSpike(dosing.round)};
}

PipetteSheet sheetOf(const notebook::StoredRun &stored, const planning::Glassware &glassware, bool fromPaper)
{
    // The worksheet says what is to go in; what went in is said by the marks.
    run::Run planned = stored.run;
    for (run::Tube &tube : planned.tubes)
        tube.pipetted_mL.clear();
    const PipetteSheet bare(stored.method, planned, planning::roundsOf(stored.method, planned, glassware),
                            {});
    PipetteMarks marks;
    marks.fromPaper = fromPaper;
    for (const notebook::StoredMark &mark : stored.marks) {
        const auto dosing = dosingOf(bare, mark.dose);
        if (!dosing)
            continue;
        if (mark.kind == notebook::MarkKind::Done)
            marks.ticked[*dosing] = {mark.volume_mL, mark.planned_mL, mark.lot, mark.pipette, mark.note};
        else if (mark.kind == notebook::MarkKind::Undone)
            marks.ticked.erase(*dosing);
    }
    const auto plannedEnd = planned.tubes.begin() + stored.plannedTubes;
    const bool isTicked = std::ranges::any_of(
        marks.ticked, [&](const auto &mark) { return mark.first.tube < stored.plannedTubes; });
    const bool isRead = std::any_of(planned.tubes.begin(), plannedEnd,
                                    [](const run::Tube &tube) { return !tube.readings.empty(); });
    if (plannedEnd != planned.tubes.end() && (fromPaper || (isRead && !isTicked)))
        marks.elsewhere = stored.plannedTubes;
    return {stored.method, planned, bare.rounds(), std::move(marks)};
}

int rackColumns(const notebook::StoredRun &stored, const planning::Laboratory &laboratory)
{
    return stored.plan ? stored.plan->rackColumns : laboratory.rackColumns;
}

std::optional<WorksheetAct> lastAct(const notebook::StoredRun &stored)
{
    std::vector<WorksheetAct> standing;
    std::vector<Effect> effects;
    const auto &marks = stored.marks;
    for (auto first = marks.begin(); first != marks.end();) {
        const auto end = std::find_if(first, marks.end(), [first](const notebook::StoredMark &mark) {
            return mark.kind != first->kind || mark.at != first->at;
        });
        WorksheetAct act;
        for (; first != end; ++first)
            act.changes.push_back(changeBy(*first, effects));
        if (!standing.empty() && takesBack(act, standing.back()))
            standing.pop_back();
        else
            standing.push_back(std::move(act));
    }
    return standing.empty() ? std::nullopt : std::optional(standing.back());
}

} // namespace plateau::ui
