// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/equipmentnotes.h"

#include "core/planning/checkedequipment.h"

#include <algorithm>

namespace plateau::ui {

namespace {

QStringList glassIn(const notebook::StoredRun &stored, const planning::Laboratory &laboratory)
{
    QStringList ticked;
    for (const notebook::StoredMark &mark : stored.marks) {
        if (mark.kind == notebook::MarkKind::Done && !mark.pipette.isEmpty())
            ticked << mark.pipette;
    }
    const planning::PlanRecord plan = stored.plan.value_or(planning::PlanRecord{});
    if (ticked.isEmpty())
        return planning::glassOf(stored.method, laboratory, stored.run, plan);
    for (const planning::PlannedSample &sample : plan.samples) {
        for (const planning::StepGlass &step : sample.glass)
            ticked << step.pipette << step.flask;
    }
    ticked.removeDuplicates();
    return ticked;
}

} // namespace

QDate dayOf(const notebook::StoredRun &stored)
{
    return stored.run.startedAt.value_or(stored.summary.createdAt).date();
}

std::vector<Sentence> equipmentSentences(const notebook::StoredRun &stored,
                                         const planning::Laboratory &laboratory,
                                         const std::vector<equipment::HeldItem> &items, const QDate &today)
{
    std::vector<Sentence> sentences;
    for (const planning::EquipmentDoubt &doubt : planning::equipmentDoubts(
             laboratory, glassIn(stored, laboratory), planning::isWeighedFor(stored.run), items,
             std::min(dayOf(stored), today), today))
        sentences.push_back({doubt.late ? State::Attention : State::Bad, doubt.sentence});
    return sentences;
}

} // namespace plateau::ui
