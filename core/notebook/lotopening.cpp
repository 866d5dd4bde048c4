// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/lotopening.h"

#include "core/notebook/lotrules.h"
#include "core/notebook/lotstore.h"
#include "core/notebook/markstore.h"
#include "core/notebook/sentence.h"
#include "core/notebook/text.h"
#include "core/run/waits.h"

#include <algorithm>
#include <set>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

/// Of the lot that stands for %1: neither opened nor dry.
constexpr auto isClosedLot =
    "coalesce((SELECT day IS NULL FROM lot_opening_change AS said WHERE said.lot = %1 ORDER BY said.id DESC "
    "LIMIT 1), NOT EXISTS (SELECT 1 FROM lot_opening AS noted WHERE noted.lot = %1)) AND "
    "(NOT EXISTS (SELECT 1 FROM lot_dry AS dry WHERE dry.lot = %1) OR "
    "EXISTS (SELECT 1 FROM lot_dissolving AS wet WHERE wet.lot = %1))"_L1;

bool isClosed(const Database &database, LotId lot)
{
    Statement query(database, u"WITH own (lot) AS (VALUES (?)) SELECT 1 FROM own WHERE %1"_s.arg(
                                  QString(isClosedLot).arg(u"own.lot"_s)));
    query.run(lot.value);
    return query.next();
}

/// The one that the run names for the component; empty where it names none, or several.
QString onlyLotNamed(const run::Run &plan, const QString &component)
{
    std::set<QString> names;
    for (const run::LotUse &use : plan.lots) {
        if (use.component == component && !use.lot.isEmpty())
            names.insert(use.lot);
    }
    return names.size() == 1 ? *names.begin() : QString();
}

std::vector<LotId> containersOf(const Database &database, const QString &reagent, const QString &name)
{
    Statement query(
        database,
        u"SELECT lot FROM lot_version AS version WHERE name = ? AND reagent_key = ? AND id = (SELECT "
        "max(id) FROM lot_version AS newer WHERE newer.lot = version.lot) ORDER BY lot"_s);
    query.run(name, comparisonKey(reagent));
    std::vector<LotId> containers;
    while (query.next())
        containers.push_back({query.integer(0)});
    return containers;
}

/// It was filled or received by that day. What is written up late was opened before it was noted as received.
bool wasThere(const Database &database, const planning::Lot &lot, const QDate &day)
{
    if (lot.opened && *lot.opened <= day)
        return true;
    if (lot.aliquot)
        return lot.aliquot->day <= day;
    Statement query(
        database,
        u"WITH own (lot) AS (VALUES (?)) SELECT 1 FROM (SELECT at_utc, at_offset_min FROM own JOIN lot_movement ON "
        "lot_movement.lot = own.lot WHERE kind = 'received' UNION ALL SELECT at_utc, at_offset_min FROM own JOIN "
        "lot_dry ON lot_dry.lot = own.lot) WHERE date(at_utc, at_offset_min || ' minutes') <= ? LIMIT 1"_s);
    query.run(lot.id, day.toString(Qt::ISODate));
    return query.next();
}

/// Each once, in the order they are found.
class TakenLots
{
public:
    /// On that day; without one now.
    TakenLots(const Database &database, const assay::Method &method, const run::Run &plan,
              const std::optional<QDate> &day = {})
        : m_database(database)
        , m_method(method)
        , m_plan(plan)
        , m_day(day)
    {
    }

    void take(const run::Tube &planned, const Dose &dose)
    {
        const QString component = takenFrom(m_method, planned, dose);
        if (component.isEmpty() || !m_asked.insert(component).second)
            return;
        const auto lot = plannedLot(m_database, m_method, m_plan, component, m_day);
        if (lot && std::ranges::find(m_lots, *lot) == m_lots.end())
            m_lots.push_back(*lot);
    }
    const std::vector<LotId> &lots() const { return m_lots; }

private:
    const Database &m_database;
    const assay::Method &m_method;
    const run::Run &m_plan;
    std::optional<QDate> m_day;
    std::set<QString> m_asked;
    std::vector<LotId> m_lots;
};

} // namespace

std::vector<LotId> openTaken(Act &act, const std::vector<LotId> &taken, const QDate &day)
{
    std::vector<LotId> opened;
    for (const LotId lot : taken) {
        if (!isClosed(act.database(), lot))
            continue;
        act.bringsAbout(u"lotOpened"_s);
        storeLotOpening(act, lot, day);
        act.note(Sentence::tr("%1: something was taken from it")
                     .arg(nameOf(currentLotVersion(act.database(), lot))));
        opened.push_back(lot);
    }
    return opened;
}

bool namesClosedLot(const Database &database, RunId run)
{
    Statement query(
        database,
        u"SELECT 1 FROM lot_use CROSS JOIN lot_version AS version ON version.name = lot_use.lot "
        "WHERE lot_use.run = ? AND version.id = (SELECT max(id) FROM lot_version AS newer "
        "WHERE newer.lot = version.lot) AND %1 LIMIT 1"_s.arg(QString(isClosedLot).arg(u"version.lot"_s)));
    query.run(run.value);
    return query.next();
}

std::optional<LotId> plannedLot(const Database &database, const assay::Method &method, const run::Run &plan,
                                const QString &component, const std::optional<QDate> &day)
{
    const assay::Component *found = assay::findComponent(method, component);
    const QString name = onlyLotNamed(plan, component);
    if (!found || name.isEmpty())
        return std::nullopt;
    std::optional<planning::Lot> first;
    for (const LotId lot : containersOf(database, found->name, name)) {
        const planning::Lot stored = loadLots(database, lot).at(0);
        if (!stored.isDry && !planning::isUsedUp(stored) && (!day || wasThere(database, stored, *day)) &&
            (!first || planning::isUsedBefore(stored, *first)))
            first = stored;
    }
    return first ? std::optional(LotId{first->id}) : std::nullopt;
}

std::vector<LotId> lotsTakenUntil(const Database &database, const Inputs &inputs, int tube,
                                  const QString &reading)
{
    const run::Tube &planned = inputs.plan.tubes.at(static_cast<std::size_t>(tube));
    TakenLots taken(database, inputs.method, inputs.plan);
    for (const run::TubeAct &act : run::tubeActs(inputs.method, planned)) {
        if (act.kind == run::TubeAct::Kind::Read && act.name == reading)
            break;
        const Dose dose{tube, act.name, false};
        if (act.kind == run::TubeAct::Kind::Add && !doneMark(inputs.marks, dose))
            taken.take(planned, dose);
    }
    return taken.lots();
}

std::vector<LotId> lotsTakenIn(const Database &database, const assay::Method &method, const run::Run &run,
                               const QDate &day)
{
    TakenLots taken(database, method, run, day);
    for (int index = 0; index < static_cast<int>(run.tubes.size()); ++index) {
        const run::Tube &tube = run.tubes[static_cast<std::size_t>(index)];
        for (const auto &[component, volume_mL] : tube.pipetted_mL) {
            if (volume_mL > 0)
                taken.take(tube, {index, component, false});
        }
        std::vector<Dose> ahead;
        for (const run::TubeAct &act : run::tubeActs(method, tube)) {
            if (act.kind == run::TubeAct::Kind::Add) {
                const auto said = tube.pipetted_mL.find(act.name);
                if (said == tube.pipetted_mL.end() || said->second > 0) // else it was left out
                    ahead.push_back({index, act.name, false});
            } else if (tube.readings.contains(act.name)) {
                for (const Dose &dose : ahead)
                    taken.take(tube, dose);
                ahead.clear();
            }
        }
    }
    return taken.lots();
}

} // namespace plateau::notebook
