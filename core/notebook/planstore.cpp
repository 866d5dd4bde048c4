// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/planstore.h"

#include "core/assay/label.h"
#include "core/notebook/detailstore.h"
#include "core/notebook/sentence.h"
#include "core/notebook/words.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

qint64 planSampleRow(const Database &database, RunId run, const QString &name)
{
    Statement query(database, u"SELECT id FROM sample WHERE run = ? AND name = ?"_s);
    query.run(run.value, name);
    query.next();
    return query.integer(0);
}

std::vector<qint64> dilutionRows(const Database &database, qint64 sample)
{
    Statement query(database, u"SELECT id FROM dilution WHERE sample = ? ORDER BY position"_s);
    query.run(sample);
    std::vector<qint64> rows;
    while (query.next())
        rows.push_back(query.integer(0));
    return rows;
}

void requireSampleIn(const Database &database, qint64 run, const QString &sample)
{
    Statement query(database, u"SELECT 1 FROM sample WHERE run = ? AND name = ?"_s);
    query.run(run, sample);
    if (!query.next())
        throw Failure(
            Failure::Kind::Refused,
            Sentence::tr("The plan was not stored: run %1, which it says to repeat, holds no sample "
                         "%2; choose the run that does.")
                .arg(QString::number(run), assay::quoted(sample)));
}

void storeSample(Act &act, RunId run, const planning::PlannedSample &planned, int position)
{
    const qint64 sample = planSampleRow(act.database(), run, planned.sample.id);
    if (planned.repeats)
        requireSampleIn(act.database(), *planned.repeats, planned.sample.id);
    const qint64 detail = storeDetail(act, planned.sample);
    Statement insert(act.database(),
                     u"INSERT INTO plan_sample (sample, detail, position, repeats) VALUES (?, ?, ?, ?)"_s);
    insert.run(sample, detail, position, planned.repeats);
    act.covers(u"plan_sample"_s, insert.insertedId());
    Statement insertStep(act.database(),
                         u"INSERT INTO plan_step (dilution, pipette, flask) VALUES (?, ?, ?)"_s);
    const std::vector<qint64> steps = dilutionRows(act.database(), sample);
    for (size_t i = 0; i < planned.glass.size(); ++i) {
        insertStep.run(steps.at(i), planned.glass[i].pipette, planned.glass[i].flask);
        act.covers(u"plan_step"_s, insertStep.insertedId());
    }
}

std::vector<planning::StepGlass> loadGlass(const Database &database, qint64 sample)
{
    Statement query(database, u"SELECT pipette, flask FROM plan_step JOIN dilution ON dilution.id = "
                              "plan_step.dilution WHERE dilution.sample = ? ORDER BY dilution.position"_s);
    query.run(sample);
    std::vector<planning::StepGlass> glass;
    while (query.next())
        glass.push_back({query.text(0), query.text(1)});
    return glass;
}

std::optional<qint64> standardRow(const Database &database, RunId run, const planning::InputOwner &owner)
{
    if (owner.input != planning::UncertaintyInput::Standard)
        return std::nullopt;
    Statement query(database, u"SELECT id FROM standard WHERE run = ? AND name = ?"_s);
    query.run(run.value, owner.standard);
    query.next();
    return query.integer(0);
}

void storeOwners(Act &act, RunId run, qint64 plan, const std::vector<planning::InputOwner> &owners)
{
    Statement insert(act.database(),
                     u"INSERT INTO plan_owner (plan, input, standard, owner, source, is_usual) "
                     "VALUES (?, ?, ?, ?, ?, ?)"_s);
    for (const planning::InputOwner &owner : owners) {
        insert.run(plan, planning::inputWord(owner.input), standardRow(act.database(), run, owner),
                   owner.owner, owner.source, owner.isDefault ? 1 : 0);
        act.covers(u"plan_owner"_s, insert.insertedId());
    }
}

std::vector<planning::InputOwner> loadOwners(const Database &database, RunId run)
{
    Statement query(database,
                    u"SELECT input, coalesce(standard.name, ''), owner, source, is_usual FROM plan_owner "
                    "JOIN plan ON plan.id = plan_owner.plan LEFT JOIN standard ON standard.id = "
                    "plan_owner.standard WHERE plan.run = ? ORDER BY plan_owner.id"_s);
    query.run(run.value);
    std::vector<planning::InputOwner> owners;
    while (query.next())
        owners.push_back(
            {inputOf(query.text(0)), query.text(1), query.text(2), query.text(3), query.integer(4) != 0});
    return owners;
}

} // namespace

void storePlanRecord(Act &act, RunId run, const planning::PlanRecord &plan)
{
    Statement insert(act.database(),
                     u"INSERT INTO plan (run, rack_rows, rack_columns, interval_s) VALUES (?, ?, ?, ?)"_s);
    insert.run(run.value, plan.rackRows, plan.rackColumns, plan.interval_s);
    const qint64 row = insert.insertedId();
    act.covers(u"plan"_s, row);
    storeOwners(act, run, row, plan.owners);
    storePlannedSamples(act, run, plan.samples);
}

void storePlannedSamples(Act &act, RunId run, const std::vector<planning::PlannedSample> &samples)
{
    Statement before(act.database(), u"SELECT count(*) FROM plan_sample JOIN sample ON sample.id = "
                                     "plan_sample.sample WHERE sample.run = ?"_s);
    before.run(run.value);
    before.next();
    int position = static_cast<int>(before.integer(0));
    before.next(); // to the end, so that no read stays open
    for (const planning::PlannedSample &planned : samples)
        storeSample(act, run, planned, position++);
}

std::optional<planning::PlanRecord> loadPlanRecord(const Database &database, RunId run)
{
    Statement query(database, u"SELECT rack_rows, rack_columns, interval_s FROM plan WHERE run = ?"_s);
    query.run(run.value);
    if (!query.next())
        return std::nullopt;
    planning::PlanRecord plan;
    plan.rackRows = int(query.integer(0));
    plan.rackColumns = int(query.integer(1));
    if (!query.isNull(2))
        plan.interval_s = int(query.integer(2));
    plan.owners = loadOwners(database, run);
    Statement samples(database,
                      u"SELECT sample.id, detail, repeats FROM plan_sample JOIN sample ON sample.id = "
                      "plan_sample.sample WHERE sample.run = ? ORDER BY plan_sample.position"_s);
    samples.run(run.value);
    while (samples.next()) {
        planning::PlannedSample planned{loadDetail(database, samples.integer(1)),
                                        loadGlass(database, samples.integer(0)), std::nullopt};
        if (!samples.isNull(2))
            planned.repeats = samples.integer(2);
        plan.samples.push_back(std::move(planned));
    }
    return plan;
}

} // namespace plateau::notebook
