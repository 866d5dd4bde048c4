// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/benchworksheet.h"

#include "core/notebook/marks.h"

#include <algorithm>
#include <limits>

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
    if (act.isOfDilutions() || earlier.isOfDilutions())
        return act.isTick != earlier.isTick && act.dilutions.size() == earlier.dilutions.size() &&
               std::ranges::is_permutation(act.dilutions, earlier.dilutions);
    return std::is_permutation(act.changes.begin(), act.changes.end(), earlier.changes.begin(),
                               earlier.changes.end(), [](const auto &one, const auto &other) {
                                   return one.dose == other.dose && isAlike(one.now, other.before);
                               });
}

/// Acts one after the other; each is weighed against the one ahead of it.
class StandingActs
{
public:
    explicit StandingActs(const notebook::StoredRun &stored)
        : m_dilution(stored.dilutionMarks.begin())
        , m_dilutionsEnd(stored.dilutionMarks.end())
    {
    }

    void add(WorksheetAct act)
    {
        if (!m_standing.empty() && takesBack(act, m_standing.back()))
            m_standing.pop_back();
        else
            m_standing.push_back(std::move(act));
    }

    /// Those that were ticked or taken back before that mark.
    void addDilutionsBefore(notebook::MarkId mark)
    {
        while (m_dilution != m_dilutionsEnd && m_dilution->after < mark) {
            WorksheetAct act;
            act.isTick = m_dilution->kind == notebook::MarkKind::Done;
            const auto first = m_dilution;
            for (; m_dilution != m_dilutionsEnd && m_dilution->kind == first->kind &&
                   m_dilution->at == first->at && m_dilution->after == first->after;
                 ++m_dilution)
                act.dilutions.push_back(m_dilution->place);
            add(std::move(act));
        }
    }

    std::optional<WorksheetAct> last() const
    {
        return m_standing.empty() ? std::nullopt : std::optional(m_standing.back());
    }

private:
    std::vector<notebook::StoredDilutionMark>::const_iterator m_dilution;
    std::vector<notebook::StoredDilutionMark>::const_iterator m_dilutionsEnd;
    std::vector<WorksheetAct> m_standing;
};

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
    for (const notebook::StoredDilutionMark &mark : stored.dilutionMarks) {
        if (mark.kind == notebook::MarkKind::Done)
            marks.diluted.insert(mark.place);
        else
            marks.diluted.erase(mark.place);
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
    StandingActs acts(stored);
    std::vector<Effect> effects;
    const auto &marks = stored.marks;
    for (auto first = marks.begin(); first != marks.end();) {
        const auto end = std::find_if(first, marks.end(), [first](const notebook::StoredMark &mark) {
            return mark.kind != first->kind || mark.at != first->at;
        });
        acts.addDilutionsBefore(first->id);
        WorksheetAct act;
        for (; first != end; ++first)
            act.changes.push_back(changeBy(*first, effects));
        acts.add(std::move(act));
    }
    acts.addDilutionsBefore({std::numeric_limits<qint64>::max()});
    return acts.last();
}

} // namespace plateau::ui
