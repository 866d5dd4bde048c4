// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/checkedequipment.h"

#include "core/assay/listed.h"
#include "core/assay/localday.h"
#include "core/evaluation/format.h"
#include "core/planning/glassfor.h"
#include "core/run/volumes.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <functional>
#include <set>
#include <utility>

namespace plateau::planning {

using namespace Qt::StringLiterals;
using equipment::Aspect;
using equipment::HeldCheck;
using equipment::HeldItem;
using equipment::Kind;

namespace {

struct CheckedEquipmentWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::CheckedEquipment)
};

bool sameName(const QString &one, const QString &other)
{
    return one.trimmed().compare(other.trimmed(), Qt::CaseInsensitive) == 0;
}

std::optional<equipment::Figures> figuresOf(const HeldCheck *check)
{
    if (!check)
        return std::nullopt;
    const auto outcome = equipment::outcomeOf(check->of, check->check);
    return outcome ? std::optional(outcome->figures) : std::nullopt;
}

template <class Glass>
void takeVolume(Glass &glass, const std::vector<HeldItem> &items, const QDate &today,
                const std::function<bool(Kind)> &isKind)
{
    for (const HeldItem &held : items) {
        if (!held.item.inUse || !isKind(held.item.kind) || !sameName(held.item.name, glass.name))
            continue;
        const HeldCheck *check = equipment::validCheck(held, Aspect::Volume, today);
        const auto figures = figuresOf(check);
        if (figures && figures->volume_percent) {
            glass.uncertainty_percent = *figures->volume_percent;
            glass.source = equipment::checkName(*check);
        }
    }
}

const HeldItem *photometerOf(const Laboratory &laboratory, const std::vector<HeldItem> &items)
{
    const HeldItem *only = nullptr;
    int count = 0;
    for (const HeldItem &held : items) {
        if (held.item.kind != Kind::Photometer || !held.item.inUse)
            continue;
        if (laboratory.photometer && sameName(held.item.name, laboratory.photometer->name))
            return &held;
        only = &held;
        ++count;
    }
    return !laboratory.photometer && count == 1 ? only : nullptr;
}

/// The widest of the sets in use: a run does not say which one was taken.
std::pair<std::optional<double>, QString> cuvettePath(const std::vector<HeldItem> &items, const QDate &today)
{
    std::optional<double> widest_percent;
    QString source;
    for (const HeldItem &held : items) {
        if (held.item.kind != Kind::Cuvettes || !held.item.inUse)
            continue;
        const HeldCheck *check = equipment::validCheck(held, Aspect::Match, today);
        const auto figures = figuresOf(check);
        if (figures && figures->pathLength_percent &&
            (!widest_percent || *figures->pathLength_percent > *widest_percent)) {
            widest_percent = figures->pathLength_percent;
            source = CheckedEquipmentWording::tr("%1, %2").arg(held.item.name, equipment::checkName(*check));
        }
    }
    return {widest_percent, source};
}

void takePath(Photometer &photometer, const HeldItem *held, const std::vector<HeldItem> &items,
              const QDate &today)
{
    auto [path_percent, pathSource] = cuvettePath(items, today);
    const HeldCheck *scale = held ? equipment::validCheck(*held, Aspect::Absorbance, today) : nullptr;
    const auto figures = figuresOf(scale);
    if (!path_percent && photometer.pathLength_percent) {
        path_percent = photometer.pathLength_percent;
        pathSource = photometer.checkedOn // in ISO 8601: it is kept with the run
                         ? CheckedEquipmentWording::tr("%1, %2").arg(
                               photometer.source, photometer.checkedOn->toString(Qt::ISODate))
                         : photometer.source;
    }
    if (!path_percent && !figures)
        return;
    QStringList sources;
    if (path_percent)
        sources << pathSource;
    if (figures && figures->scale_percent)
        sources << CheckedEquipmentWording::tr("absorbance scale by %1").arg(equipment::checkName(*scale));
    // The usual path length stands in for cuvettes that nobody checked.
    constexpr double usualPath_percent = 0.2;
    if (!path_percent)
        sources << CheckedEquipmentWording::tr("cuvettes: common practice, no source");
    photometer.pathLength_percent = std::hypot(path_percent.value_or(usualPath_percent),
                                               figures ? figures->scale_percent.value_or(0) : 0);
    photometer.pathSource = assay::listed(sources);
}

void takePhotometer(Laboratory &laboratory, const std::vector<HeldItem> &items, const QDate &today)
{
    const HeldItem *held = photometerOf(laboratory, items);
    const bool cuvettes = cuvettePath(items, today).first.has_value();
    if (!held && !(laboratory.photometer && cuvettes))
        return;
    if (!laboratory.photometer)
        laboratory.photometer = Photometer{held->item.name};
    Photometer &photometer = *laboratory.photometer;
    takePath(photometer, held, items, today);
    const HeldCheck *noise = held ? equipment::validCheck(*held, Aspect::Noise, today) : nullptr;
    const auto figures = figuresOf(noise);
    if (!figures || !figures->absorbance)
        return;
    photometer.absorbance = figures->absorbance;
    photometer.source = equipment::checkName(*noise);
    photometer.checkedOn.reset(); // the name of the check says the day
}

/// The first check after the day of the run that failed, where none that was passed comes in between.
const HeldCheck *failedAfter(const HeldItem &held, Aspect aspect, const QDate &day, const QDate &today)
{
    std::vector<const HeldCheck *> later;
    for (const HeldCheck &check : held.checks) {
        if (check.check.aspect == aspect && !check.withdrawn && check.check.day > day &&
            check.check.day <= today)
            later.push_back(&check);
    }
    std::ranges::stable_sort(later, {}, [](const HeldCheck *check) { return check->check.day; });
    if (later.empty())
        return nullptr;
    const auto outcome = equipment::outcomeOf(later.front()->of, later.front()->check);
    return outcome && outcome->passed ? nullptr : later.front();
}

bool concerns(const HeldItem &held, const Laboratory &laboratory, const QStringList &glass, bool weighs,
              const std::vector<HeldItem> &items)
{
    if (!held.item.inUse)
        return false;
    if (equipment::holdsVolume(held.item.kind))
        return std::ranges::any_of(glass,
                                   [&](const QString &name) { return sameName(name, held.item.name); });
    if (held.item.kind == Kind::Photometer)
        return photometerOf(laboratory, items) == &held;
    return held.item.kind != Kind::Balance || weighs;
}

/// Nobody can have checked by the book what the book did not have yet.
void addDoubtsSince(const HeldItem &held, const QString &name, const QDate &day, const QDate &today,
                    std::vector<EquipmentDoubt> &doubts)
{
    for (const auto &[aspect, days] : held.item.every_days) {
        if (const HeldCheck *failed = failedAfter(held, aspect, day, today))
            doubts.push_back({held.id, false,
                              CheckedEquipmentWording::tr("%1: not in the book of equipment yet on that day; its next "
                                                          "check, on %2, failed: %3.")
                                  .arg(name, assay::shownDay(failed->check.day), equipment::aspectName(aspect))});
    }
}

void addDoubts(const HeldItem &held, const QDate &day, const QDate &today,
               std::vector<EquipmentDoubt> &doubts)
{
    const QString name = evaluation::capitalised(equipment::titleOf(held.item));
    const auto then = equipment::itemOn(held, day);
    if (!then) {
        addDoubtsSince(held, name, day, today, doubts);
        return;
    }
    if (!then->inUse)
        return;
    HeldItem asItWas = held;
    asItWas.item = *then;
    for (const equipment::AspectStanding &standing : equipment::standingsOf(asItWas, day)) {
        if (equipment::isInDoubt(standing.standing)) {
            doubts.push_back(
                {held.id, standing.standing != equipment::Standing::Failed,
                 CheckedEquipmentWording::tr("%1: %2.").arg(name, equipment::standingText(standing, day))});
        } else if (const HeldCheck *failed = failedAfter(held, standing.aspect, day, today)) {
            doubts.push_back(
                {held.id, false,
                 CheckedEquipmentWording::tr("%1: passed before this run, but failed afterwards, on %2: %3.")
                     .arg(name, assay::shownDay(failed->check.day),
                          equipment::aspectName(standing.aspect))});
        }
    }
}

} // namespace

Laboratory withChecks(const Laboratory &laboratory, const std::vector<HeldItem> &items, const QDate &today)
{
    Laboratory checked = laboratory;
    for (Pipette &pipette : checked.glassware.pipettes)
        takeVolume(pipette, items, today,
                   [](Kind kind) { return kind == Kind::PistonPipette || kind == Kind::BulbPipette; });
    for (Flask &flask : checked.glassware.flasks)
        takeVolume(flask, items, today, [](Kind kind) { return kind == Kind::Flask; });
    takePhotometer(checked, items, today);
    return checked;
}

QStringList glassOf(const assay::Method &method, const Laboratory &laboratory, const run::Run &run,
                    const PlanRecord &plan)
{
    std::set<double> doses_mL;
    for (const assay::Component &component : method.components) {
        if (component.volume_mL > 0)
            doses_mL.insert(component.volume_mL);
    }
    for (const run::Tube &tube : run.tubes) {
        if (tube.role != run::Role::Blank)
            doses_mL.insert(run::sampleVolume_mL(method, tube));
    }
    QStringList names;
    for (const Pipette &pipette : laboratory.glassware.pipettes) {
        if (std::ranges::any_of(doses_mL, [&](double dose_mL) { return makes(pipette, dose_mL); }))
            names << pipette.name;
    }
    for (const PlannedSample &sample : plan.samples) {
        for (const StepGlass &step : sample.glass)
            names << step.pipette << step.flask;
    }
    names.removeAll(QString());
    names.removeDuplicates();
    return names;
}

bool isWeighedFor(const run::Run &run)
{
    return std::ranges::any_of(run.samples,
                               [](const run::Sample &sample) { return sample.form == run::Form::Solid; }) ||
           std::ranges::any_of(run.standards,
                               [](const run::Standard &standard) { return standard.preparedAt.has_value(); });
}

std::vector<EquipmentDoubt> equipmentDoubts(const Laboratory &laboratory, const QStringList &glass,
                                            bool weighs, const std::vector<HeldItem> &items, const QDate &day,
                                            const QDate &today)
{
    std::vector<EquipmentDoubt> doubts;
    for (const HeldItem &held : items) {
        if (concerns(held, laboratory, glass, weighs, items))
            addDoubts(held, day, today, doubts);
    }
    std::ranges::stable_sort(doubts, {}, &EquipmentDoubt::late);
    return doubts;
}

} // namespace plateau::planning
