// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/runstore.h"
#include "core/notebook/sentence.h"
#include "core/notebook/stampstore.h"
#include "core/notebook/words.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

run::Run loadGeneral(const Database &database, RunId id)
{
    Statement query(database,
                    u"SELECT title, method.method_id, wavelength_nm, path_length_mm, calibration, "
                    "started_utc, started_offset_min FROM run JOIN method ON method.id = run.method "
                    "WHERE run.id = ?"_s);
    query.run(id.value);
    if (!query.next())
        throw noSuchRun(id);
    run::Run run;
    run.title = query.text(0);
    run.method = query.text(1);
    if (!query.isNull(2))
        run.wavelength_nm = int(query.integer(2));
    run.pathLength_mm = query.optionalReal(3);
    run.calibration = calibrationOf(query.text(4));
    run.startedAt = query.optionalTime(5);
    return run;
}

std::optional<run::UncertaintyInputs> loadUncertainty(const Database &database, RunId run)
{
    Statement query(database,
                    u"SELECT absorbance, absorptivity_percent, path_length_percent, total_volume_percent, "
                    "sample_volume_percent, dilution_percent, extract_percent FROM uncertainty "
                    "WHERE run = ?"_s);
    query.run(run.value);
    if (!query.next())
        return std::nullopt;
    return run::UncertaintyInputs{query.real(0), query.real(1), query.real(2), query.real(3),
                                  query.real(4), query.real(5), query.real(6)};
}

std::vector<run::Standard> loadStandards(const Database &database, RunId run)
{
    Statement query(database,
                    u"SELECT name, concentration_g_per_L, measurand, prepared_utc, prepared_offset_min, "
                    "used_utc, used_offset_min, loss_per_hour, percent FROM standard LEFT JOIN "
                    "standard_uncertainty ON standard_uncertainty.standard = standard.id WHERE run = ? "
                    "ORDER BY position"_s);
    query.run(run.value);
    std::vector<run::Standard> standards;
    while (query.next())
        standards.push_back({query.text(0), query.real(1), query.text(2), query.optionalTime(3),
                             query.optionalTime(5), query.real(7), query.optionalReal(8)});
    return standards;
}

std::vector<run::DilutionStep> loadDilution(const Database &database, qint64 sampleRow)
{
    Statement query(database,
                    u"SELECT take_mL, make_up_to_mL, percent FROM dilution LEFT JOIN dilution_uncertainty ON "
                    "dilution_uncertainty.dilution = dilution.id WHERE sample = ? ORDER BY position"_s);
    query.run(sampleRow);
    std::vector<run::DilutionStep> steps;
    while (query.next())
        steps.push_back({query.real(0), query.real(1), query.optionalReal(2)});
    return steps;
}

std::vector<run::Sample> loadSamples(const Database &database, RunId run)
{
    Statement query(database, u"SELECT sample.id, sample.name, sample.form, sample.mass_g, "
                              u"sample.extract_mL, other.name FROM sample "
                              "LEFT JOIN sample_repeat ON sample_repeat.sample = sample.id "
                              "LEFT JOIN sample AS other ON other.id = sample_repeat.repeats "
                              "WHERE sample.run = ? ORDER BY sample.position"_s);
    query.run(run.value);
    std::vector<run::Sample> samples;
    while (query.next())
        samples.push_back({query.text(1), formOf(query.text(2)), query.optionalReal(3), query.optionalReal(4),
                           loadDilution(database, query.integer(0)), query.text(5)});
    return samples;
}

std::vector<run::Tube> loadTubes(const Database &database, RunId run)
{
    Statement query(database,
                    u"SELECT role, sample, standard, sample_volume_mL, spike_standard, spike_volume_mL "
                    "FROM tube WHERE run = ? ORDER BY position"_s);
    query.run(run.value);
    std::vector<run::Tube> tubes;
    while (query.next()) {
        run::Tube tube;
        tube.role = roleOf(query.text(0));
        tube.sample = query.text(1);
        tube.standard = query.text(2);
        tube.sampleVolume_mL = query.optionalReal(3);
        if (!query.isNull(4))
            tube.spike = run::Spike{query.text(4), query.real(5)};
        tubes.push_back(tube);
    }
    return tubes;
}

std::vector<run::LotUse> loadLots(const Database &database, RunId run)
{
    Statement query(database,
                    u"SELECT component, lot, expires FROM lot_use WHERE run = ? ORDER BY position"_s);
    query.run(run.value);
    std::vector<run::LotUse> lots;
    while (query.next()) {
        const auto expires =
            query.isNull(2) ? std::nullopt : std::optional(QDate::fromString(query.text(2), Qt::ISODate));
        lots.push_back({query.text(0), query.text(1), expires});
    }
    return lots;
}

} // namespace

Failure noSuchRun(RunId run)
{
    return Failure(
        Failure::Kind::Refused,
        Sentence::tr("The notebook holds no run %1: choose one from its list of runs.").arg(run.value));
}

run::Run loadPlan(const Database &database, RunId id)
{
    run::Run run = loadGeneral(database, id);
    run.uncertainty = loadUncertainty(database, id);
    run.standards = loadStandards(database, id);
    run.samples = loadSamples(database, id);
    run.tubes = loadTubes(database, id);
    loadTimes(database, id, run.tubes);
    run.lots = loadLots(database, id);
    return run;
}

qint64 methodRowOf(const Database &database, RunId run)
{
    Statement query(database, u"SELECT method FROM run WHERE id = ?"_s);
    query.run(run.value);
    if (!query.next())
        throw noSuchRun(run);
    return query.integer(0);
}

qint64 tubeRow(const Database &database, RunId run, int index)
{
    Statement query(database, u"SELECT id FROM tube WHERE run = ? AND position = ?"_s);
    query.run(run.value, index);
    if (!query.next())
        throw Failure(
            Failure::Kind::Refused,
            Sentence::tr("Run %1 has no tube %2; nothing was stored.").arg(run.value).arg(index + 1));
    return query.integer(0);
}

} // namespace plateau::notebook
