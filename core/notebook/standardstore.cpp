// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/standardstore.h"

#include "core/notebook/sentence.h"
#include "core/notebook/text.h"

#include <algorithm>
#include <map>

namespace plateau::notebook {

using namespace Qt::StringLiterals;
using planning::HeldPreparation;
using planning::HeldSubstance;
using planning::Preparation;
using planning::Substance;

namespace {

struct StandardVersion {
    qint64 substance = 0;
    Substance content;
};

/// By their rows, so that the last of a substance is its newest.
std::map<qint64, StandardVersion> loadStandardVersions(const Database &database)
{
    Statement query(database,
                    u"SELECT id, substance, name, supplier, lot, certificate, purity, purity_half_width, "
                    "water, water_half_width, molar_mass, density, expires FROM substance_version"_s);
    query.run();
    std::map<qint64, StandardVersion> versions;
    while (query.next()) {
        StandardVersion &version = versions[query.integer(0)];
        version.substance = query.integer(1);
        Substance &content = version.content;
        content.name = query.text(2);
        content.supplier = query.text(3);
        content.lot = query.text(4);
        content.certificate = query.text(5);
        content.purity = query.real(6);
        content.purityHalfWidth = query.real(7);
        content.water = query.real(8);
        content.waterHalfWidth = query.real(9);
        content.molarMass_g_per_mol = query.real(10);
        content.density_g_per_mL = query.optionalReal(11);
        if (!query.isNull(12))
            content.expires = QDate::fromString(query.text(12), Qt::ISODate);
    }
    return versions;
}

std::map<qint64, std::vector<double>> loadPortions(const Database &database)
{
    Statement query(database,
                    u"SELECT preparation, mass_mg FROM preparation_portion ORDER BY preparation, position"_s);
    query.run();
    std::map<qint64, std::vector<double>> portions;
    while (query.next())
        portions[query.integer(0)].push_back(query.real(1));
    return portions;
}

} // namespace

SubstanceId storeSubstance(Act &act)
{
    Statement insert(act.database(), u"INSERT INTO substance DEFAULT VALUES"_s);
    insert.run();
    act.covers(u"substance"_s, insert.insertedId());
    return {insert.insertedId()};
}

void storeSubstanceVersion(Act &act, SubstanceId id, const Substance &substance, const QString &reason)
{
    Statement insert(
        act.database(),
        u"INSERT INTO substance_version (substance, name, supplier, lot, certificate, purity, "
        "purity_half_width, water, water_half_width, molar_mass, density, expires, person, "
        "reason, at_utc, at_offset_min) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"_s);
    const std::optional<QString> expires =
        substance.expires ? std::optional(substance.expires->toString(Qt::ISODate)) : std::nullopt;
    insert.run(id.value, substance.name, substance.supplier, substance.lot, substance.certificate,
               substance.purity, substance.purityHalfWidth, substance.water, substance.waterHalfWidth,
               substance.molarMass_g_per_mol, substance.density_g_per_mL, expires, act.person(), reason,
               act.at());
    act.covers(u"substance_version"_s, insert.insertedId());
}

PreparationId storePreparation(Act &act, SubstanceId of, const Preparation &preparation)
{
    Statement insert(
        act.database(),
        u"INSERT INTO preparation (substance_version, name, name_key, measurand, analyte_molar_mass, "
        "analyte_per_molecule, mass_u_mg, flask_mL, flask, flask_u_mL, made_utc, made_offset_min, "
        "loss_per_hour, use_by_utc, use_by_offset_min, note, person, at_utc, at_offset_min) SELECT max(id), "
        "?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ? FROM substance_version WHERE substance = ?"_s);
    insert.run(preparation.name, comparisonKey(preparation.name), preparation.measurand,
               preparation.analyteMolarMass_g_per_mol, preparation.analytePerMolecule, preparation.mass_u_mg,
               preparation.flask_mL, preparation.flask, preparation.flask_u_mL, momentOf(preparation.madeAt),
               preparation.lossPerHour, optionalMoment(preparation.useBy), preparation.note, act.person(),
               act.at(), of.value);
    const qint64 id = insert.insertedId();
    act.covers(u"preparation"_s, id);
    Statement portion(act.database(),
                      u"INSERT INTO preparation_portion (preparation, position, mass_mg) VALUES (?, ?, ?)"_s);
    int position = 0;
    for (const double mass_mg : preparation.masses_mg) {
        portion.run(id, position++, mass_mg);
        act.covers(u"preparation_portion"_s, portion.insertedId());
    }
    return {id};
}

void storeDisposal(Act &act, PreparationId id, const QString &reason)
{
    Statement insert(act.database(),
                     u"INSERT INTO preparation_disposal (preparation, person, reason, at_utc, "
                     "at_offset_min) VALUES (?, ?, ?, ?, ?)"_s);
    insert.run(id.value, act.person(), reason, act.at());
    act.covers(u"preparation_disposal"_s, insert.insertedId());
}

std::vector<HeldSubstance> loadSubstances(const Database &database)
{
    std::map<qint64, HeldSubstance> newest;
    for (const auto &[row, version] : loadStandardVersions(database))
        newest[version.substance] = {version.substance, version.content};
    std::vector<HeldSubstance> all;
    for (auto &[id, held] : newest)
        all.push_back(std::move(held));
    return all;
}

std::vector<HeldPreparation> loadPreparations(const Database &database)
{
    const std::map<qint64, StandardVersion> versions = loadStandardVersions(database);
    std::map<qint64, std::vector<double>> portions = loadPortions(database);
    Statement query(database,
                    u"SELECT preparation.id, substance_version, name, measurand, analyte_molar_mass, "
                    "analyte_per_molecule, mass_u_mg, flask_mL, flask, flask_u_mL, made_utc, "
                    "made_offset_min, loss_per_hour, use_by_utc, use_by_offset_min, note, "
                    "preparation.person, preparation_disposal.reason FROM preparation LEFT JOIN "
                    "preparation_disposal ON preparation_disposal.preparation = preparation.id ORDER BY "
                    "preparation.id"_s);
    query.run();
    std::vector<HeldPreparation> all;
    while (query.next()) {
        const auto version = versions.find(query.integer(1));
        if (version == versions.end())
            throw Failure(Failure::Kind::Damaged,
                          Sentence::tr("The notebook is damaged: a standard was made of a substance it does "
                                       "not hold; go back to the latest backup."));
        HeldPreparation held;
        held.id = query.integer(0);
        held.of = version->second.content;
        Preparation &made = held.preparation;
        made.name = query.text(2);
        made.measurand = query.text(3);
        made.analyteMolarMass_g_per_mol = query.real(4);
        made.analytePerMolecule = query.real(5);
        made.masses_mg = portions[held.id];
        made.mass_u_mg = query.real(6);
        made.flask_mL = query.real(7);
        made.flask = query.text(8);
        made.flask_u_mL = query.real(9);
        made.madeAt = query.time(10);
        made.lossPerHour = query.real(12);
        made.useBy = query.optionalTime(13);
        made.note = query.text(15);
        held.person = query.text(16);
        if (!query.isNull(17))
            held.discarded = query.text(17);
        all.push_back(std::move(held));
    }
    return all;
}

std::vector<RunId> loadRunsOf(const Database &database, const HeldPreparation &held)
{
    Statement query(database, u"SELECT run, name, prepared_utc, prepared_offset_min FROM standard ORDER BY "
                              "run DESC"_s);
    query.run();
    std::vector<RunId> runs;
    while (query.next()) {
        run::Standard standard;
        standard.id = query.text(1);
        standard.preparedAt = query.optionalTime(2);
        const RunId run{query.integer(0)};
        if (planning::isStandardOf(held, standard) && (runs.empty() || runs.back() != run))
            runs.push_back(run);
    }
    return runs;
}

} // namespace plateau::notebook
