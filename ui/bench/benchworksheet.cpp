// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/benchworksheet.h"

#include "core/notebook/marks.h"

#include <algorithm>

namespace plateau::ui {

namespace {

std::optional<Dosing> dosingOf(const PipetteSheet &sheet, const notebook::Dose &dose)
{
    for (int round = 0; round < static_cast<int>(sheet.rounds().size()); ++round) {
        const Dosing dosing{round, dose.tube};
        if (doseOf(sheet, dosing) == dose)
            return dosing;
    }
    return std::nullopt;
}

} // namespace

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
    return {stored.method, planned, bare.rounds(), std::move(marks)};
}

int rackColumns(const notebook::StoredRun &stored, const planning::Laboratory &laboratory)
{
    return stored.plan ? stored.plan->rackColumns : laboratory.rackColumns;
}

std::vector<Dosing> lastTicks(const PipetteSheet &sheet, const notebook::StoredRun &stored)
{
    std::vector<Dosing> ticks;
    QDateTime at;
    for (auto mark = stored.marks.rbegin(); mark != stored.marks.rend(); ++mark) {
        if (mark->kind != notebook::MarkKind::Done || (at.isValid() && mark->at != at) ||
            notebook::doneMark(stored.marks, mark->dose) != &*mark)
            continue;
        if (const auto dosing = dosingOf(sheet, mark->dose)) {
            at = mark->at;
            ticks.push_back(*dosing);
        }
    }
    std::reverse(ticks.begin(), ticks.end());
    return ticks;
}

} // namespace plateau::ui
