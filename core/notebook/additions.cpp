// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/additions.h"

#include "core/assay/label.h"
#include "core/notebook/decisionstore.h"
#include "core/notebook/inputs.h"
#include "core/notebook/opennotebook.h"
#include "core/notebook/planstore.h"
#include "core/notebook/runstore.h"
#include "core/notebook/sentence.h"
#include "core/run/soundness.h"

#include <algorithm>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

/// As planned: nothing was done to it yet.
void requireFresh(const run::Tube &tube)
{
    run::Tube fresh = tube;
    fresh.pipetted_mL.clear();
    fresh.spoilt.clear();
    fresh.readings.clear();
    fresh.addedAt_min.clear();
    fresh.readAt_min.clear();
    if (!(fresh == tube))
        throw refused(
            Sentence::tr("The tubes were not added, since one of them comes with readings or marks: "
                         "add it as it is planned, and do the rest at the bench."));
}

void requireNew(const std::vector<run::Sample> &samples, const planning::PlannedSample &planned)
{
    if (std::ranges::find(samples, planned.sample.id, &run::Sample::id) == samples.end())
        throw refused(
            Sentence::tr("The tubes were not added: the plan tells of sample %1, which is not among "
                         "the new ones.")
                .arg(assay::quoted(planned.sample.id)));
}

/// A run that came without a plan has no rack that could be full.
void requireRoom(const std::optional<planning::PlanRecord> &plan, const run::Run &with,
                 const std::vector<planning::PlannedSample> &planned)
{
    planning::PlanRecord record;
    record.rackRows = plan ? plan->rackRows : 1;
    record.rackColumns = plan ? plan->rackColumns : static_cast<int>(with.tubes.size());
    record.samples = planned;
    requireUsable(planning::problemsOf(record, with), Sentence::tr("The tubes were not added: %1: %2."));
}

void storeAddition(Act &act, RunId run, const RackSize &before)
{
    Statement insert(act.database(),
                     u"INSERT INTO tube_addition (run, samples_before, tubes_before) VALUES (?, ?, ?)"_s);
    insert.run(run.value, before.samples, before.tubes);
    act.covers(u"tube_addition"_s, insert.insertedId());
}

/// "tubes 25, 26; samples P-104/2"
QString detailsOf(const std::vector<run::Sample> &samples, std::size_t tubes, const RackSize &before)
{
    QStringList numbers;
    for (std::size_t tube = 0; tube < tubes; ++tube)
        numbers << QString::number(before.tubes + static_cast<int>(tube) + 1);
    QString details = (tubes == 1 ? Sentence::tr("tube %1") : Sentence::tr("tubes %1")).arg(numbers.join(u", "_s));
    QStringList names;
    for (const run::Sample &sample : samples)
        names << sample.id;
    if (!names.isEmpty())
        details += Sentence::tr("; samples %1").arg(names.join(u", "_s));
    return details;
}

} // namespace

RackSize sizeOf(const run::Run &run)
{
    return {static_cast<int>(run.samples.size()), static_cast<int>(run.tubes.size())};
}

void cutTo(run::Run &run, const RackSize &size)
{
    run.samples.resize(std::min(run.samples.size(), static_cast<std::size_t>(size.samples)));
    run.tubes.resize(std::min(run.tubes.size(), static_cast<std::size_t>(size.tubes)));
}

std::optional<RackSize> plannedSize(const Database &database, RunId run)
{
    Statement query(
        database,
        u"SELECT samples_before, tubes_before FROM tube_addition WHERE run = ? ORDER BY id LIMIT 1"_s);
    query.run(run.value);
    if (!query.next())
        return std::nullopt;
    return RackSize{static_cast<int>(query.integer(0)), static_cast<int>(query.integer(1))};
}

void addTubes(Act &act, RunId run, const std::vector<run::Sample> &samples,
              const std::vector<run::Tube> &tubes, const std::vector<planning::PlannedSample> &planned)
{
    act.concerns(run);
    methodRowOf(act.database(), run);
    requireOnBench(act.database(), run);
    if (tubes.empty())
        throw refused(Sentence::tr("Nothing was stored, since no tube is named: choose at least one."));
    std::ranges::for_each(tubes, requireFresh);
    for (const planning::PlannedSample &told : planned)
        requireNew(samples, told);
    const Inputs inputs = loadInputs(act.database(), run);
    run::Run with = inputs.plan;
    with.samples.insert(with.samples.end(), samples.begin(), samples.end());
    with.tubes.insert(with.tubes.end(), tubes.begin(), tubes.end());
    requireUsable(run::problemsOf(with, inputs.method), Sentence::tr("The tubes were not added: %1: %2."));
    requireRoom(loadPlanRecord(act.database(), run), with, planned);
    const RackSize before = sizeOf(inputs.plan);
    storeAddition(act, run, before);
    storeFurther(act, run, samples, tubes, before);
    storePlannedSamples(act, run, planned);
    act.note(detailsOf(samples, tubes.size(), before));
    act.commit();
}

} // namespace plateau::notebook
