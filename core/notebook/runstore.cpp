// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/runstore.h"

#include "core/notebook/stampstore.h"
#include "core/notebook/words.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

std::optional<QString> unlessEmpty(const QString &text)
{
    return text.isEmpty() ? std::nullopt : std::optional(text);
}

RunId storeRun(Act &act, const run::Run &run, qint64 methodRow)
{
    Statement insert(
        act.database(),
        u"INSERT INTO run (title, method, wavelength_nm, path_length_mm, calibration, started_utc, "
        "started_offset_min, created_utc, created_offset_min) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)"_s);
    insert.run(run.title, methodRow, run.wavelength_nm, run.pathLength_mm, calibrationWord(run.calibration),
               optionalMoment(run.startedAt), act.at());
    act.covers(u"run"_s, insert.insertedId());
    return {insert.insertedId()};
}

void storeUncertainty(Act &act, RunId run, const run::UncertaintyInputs &inputs)
{
    Statement insert(act.database(),
                     u"INSERT INTO uncertainty (run, absorbance, absorptivity_percent, path_length_percent, "
                     "total_volume_percent, sample_volume_percent, dilution_percent, extract_percent) "
                     "VALUES (?, ?, ?, ?, ?, ?, ?, ?)"_s);
    insert.run(run.value, inputs.absorbance, inputs.absorptivity_percent, inputs.pathLength_percent,
               inputs.totalVolume_percent, inputs.sampleVolume_percent, inputs.dilution_percent,
               inputs.extract_percent);
    act.covers(u"uncertainty"_s, insert.insertedId());
}

void storeStandards(Act &act, RunId run, const std::vector<run::Standard> &standards)
{
    Statement insert(
        act.database(),
        u"INSERT INTO standard (run, position, name, concentration_g_per_L, measurand, prepared_utc, "
        "prepared_offset_min, used_utc, used_offset_min, loss_per_hour) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"_s);
    Statement insertUncertainty(act.database(),
                                u"INSERT INTO standard_uncertainty (standard, percent) VALUES (?, ?)"_s);
    int position = 0;
    for (const run::Standard &standard : standards) {
        insert.run(run.value, position++, standard.id, standard.concentration_g_per_L, standard.measurand,
                   optionalMoment(standard.preparedAt), optionalMoment(standard.usedAt),
                   standard.lossPerHour);
        const qint64 row = insert.insertedId();
        act.covers(u"standard"_s, row);
        if (!standard.uncertainty_percent)
            continue;
        insertUncertainty.run(row, *standard.uncertainty_percent);
        act.covers(u"standard_uncertainty"_s, insertUncertainty.insertedId());
    }
}

void storeDilution(Act &act, qint64 sampleRow, const std::vector<run::DilutionStep> &steps)
{
    Statement insert(act.database(), u"INSERT INTO dilution (sample, position, take_mL, make_up_to_mL) "
                                     "VALUES (?, ?, ?, ?)"_s);
    Statement insertUncertainty(act.database(),
                                u"INSERT INTO dilution_uncertainty (dilution, percent) VALUES (?, ?)"_s);
    int position = 0;
    for (const run::DilutionStep &step : steps) {
        insert.run(sampleRow, position++, step.take_mL, step.makeUpTo_mL);
        const qint64 row = insert.insertedId();
        act.covers(u"dilution"_s, row);
        if (!step.uncertainty_percent)
            continue;
        insertUncertainty.run(row, *step.uncertainty_percent);
        act.covers(u"dilution_uncertainty"_s, insertUncertainty.insertedId());
    }
}

qint64 sampleRow(const Database &database, RunId run, const QString &name)
{
    Statement query(database, u"SELECT id FROM sample WHERE run = ? AND name = ?"_s);
    query.run(run.value, name);
    query.next();
    return query.integer(0);
}

void storeRepeats(Act &act, RunId run, const std::vector<run::Sample> &samples)
{
    Statement insert(act.database(), u"INSERT INTO sample_repeat (sample, repeats) VALUES (?, ?)"_s);
    for (const run::Sample &sample : samples) {
        if (sample.repeats.isEmpty())
            continue;
        insert.run(sampleRow(act.database(), run, sample.id), sampleRow(act.database(), run, sample.repeats));
        act.covers(u"sample_repeat"_s, insert.insertedId());
    }
}

void storeSamples(Act &act, RunId run, const std::vector<run::Sample> &samples, int position = 0)
{
    Statement insert(act.database(), u"INSERT INTO sample (run, position, name, form, mass_g, extract_mL) "
                                     "VALUES (?, ?, ?, ?, ?, ?)"_s);
    for (const run::Sample &sample : samples) {
        insert.run(run.value, position++, sample.id, formWord(sample.form), sample.mass_g, sample.extract_mL);
        const qint64 row = insert.insertedId();
        act.covers(u"sample"_s, row);
        storeDilution(act, row, sample.dilution);
    }
    storeRepeats(act, run, samples);
}

void storeTubes(Act &act, RunId run, const std::vector<run::Tube> &tubes, int position = 0)
{
    Statement insert(
        act.database(),
        u"INSERT INTO tube (run, position, role, sample, standard, sample_volume_mL, spike_standard, "
        "spike_volume_mL) VALUES (?, ?, ?, ?, ?, ?, ?, ?)"_s);
    for (const run::Tube &tube : tubes) {
        std::optional<QString> spikeStandard;
        std::optional<double> spikeVolume_mL;
        if (tube.spike) {
            spikeStandard = tube.spike->standard;
            spikeVolume_mL = tube.spike->volume_mL;
        }
        insert.run(run.value, position++, run::roleWord(tube.role), unlessEmpty(tube.sample),
                   unlessEmpty(tube.standard), tube.sampleVolume_mL, spikeStandard, spikeVolume_mL);
        act.covers(u"tube"_s, insert.insertedId());
    }
}

void storeLots(Act &act, RunId run, const std::vector<run::LotUse> &lots)
{
    Statement insert(
        act.database(),
        u"INSERT INTO lot_use (run, position, component, lot, expires) VALUES (?, ?, ?, ?, ?)"_s);
    int position = 0;
    for (const run::LotUse &use : lots) {
        const auto expires = use.expires ? std::optional(use.expires->toString(Qt::ISODate)) : std::nullopt;
        insert.run(run.value, position++, use.component, use.lot, expires);
        act.covers(u"lot_use"_s, insert.insertedId());
    }
}

} // namespace

RunId storePlan(Act &act, const run::Run &run, qint64 methodRow)
{
    const RunId id = storeRun(act, run, methodRow);
    if (run.uncertainty)
        storeUncertainty(act, id, *run.uncertainty);
    storeStandards(act, id, run.standards);
    storeSamples(act, id, run.samples);
    storeTubes(act, id, run.tubes);
    storeTimes(act, id, run.tubes);
    storeLots(act, id, run.lots);
    return id;
}

void storeFurther(Act &act, RunId run, const std::vector<run::Sample> &samples,
                  const std::vector<run::Tube> &tubes, const RackSize &before)
{
    storeSamples(act, run, samples, before.samples);
    storeTubes(act, run, tubes, before.tubes);
}

} // namespace plateau::notebook
