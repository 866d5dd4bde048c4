// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/planrecord.h"

#include "core/assay/label.h"
#include "core/assay/limits.h"
#include "core/run/tubesoundness.h"

#include <QCoreApplication>
#include <QSet>

#include <set>

namespace plateau::planning {

using namespace Qt::StringLiterals;
using namespace plateau::assay;

namespace {

struct PlanRecordWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::PlanRecord)
};

constexpr int longestInterval_s = 24 * 3600;

void checkGlass(const std::vector<StepGlass> &glass, const run::Sample &sample, const QString &pointer,
                Problems &problems)
{
    if (!glass.empty() && glass.size() != sample.dilution.size())
        problems.push_back(error(
            pointer, PlanRecordWording::tr(
                         "names the glass of %1 dilution steps, but the sample has %2; name it for each "
                         "step or for none")
                         .arg(glass.size())
                         .arg(sample.dilution.size())));
    for (std::size_t i = 0; i < glass.size(); ++i) {
        const QString place = pointerTo(pointer, static_cast<qsizetype>(i));
        checkLabel(problems, pointerTo(place, u"pipette"_s), glass[i].pipette,
                   PlanRecordWording::tr("the pipette"));
        checkLabel(problems, pointerTo(place, u"flask"_s), glass[i].flask,
                   PlanRecordWording::tr("the flask"));
    }
}

void checkSample(const PlannedSample &planned, const run::Run &run, const QString &pointer,
                 Problems &problems)
{
    const QString place = pointerTo(pointer, u"sample"_s);
    for (const Problem &problem : problemsOf(planned.sample))
        problems.push_back({problem.severity, place + problem.pointer, problem.message});
    const run::Sample *sample = run::findSample(run, planned.sample.id);
    if (!sample) {
        problems.push_back(
            error(pointerTo(place, u"id"_s),
                  PlanRecordWording::tr("the run has no sample %1").arg(quoted(planned.sample.id))));
        return;
    }
    if (planned.sample.form != sample->form)
        problems.push_back(error(pointerTo(place, u"form"_s),
                                 PlanRecordWording::tr("is not the form that the run gives the sample %1")
                                     .arg(quoted(planned.sample.id))));
    checkGlass(planned.glass, *sample, pointerTo(pointer, u"glass"_s), problems);
    if (planned.repeats && *planned.repeats < 1)
        problems.push_back(
            error(pointerTo(pointer, u"repeats"_s), PlanRecordWording::tr("runs are numbered from 1 on")));
}

void checkRack(const PlanRecord &plan, const run::Run &run, Problems &problems)
{
    const bool possible = plan.rackRows >= 1 && plan.rackColumns >= 1 &&
                          plan.rackRows <= int(run::maxTubes) && plan.rackColumns <= int(run::maxTubes) &&
                          plan.rackRows * plan.rackColumns <= int(run::maxTubes);
    if (!possible)
        problems.push_back(
            error(u"/rackRows"_s, PlanRecordWording::tr("a rack has 1 to %1 positions, not %2 x %3")
                                      .arg(run::maxTubes)
                                      .arg(plan.rackRows)
                                      .arg(plan.rackColumns)));
    else if (std::size_t(plan.rackRows * plan.rackColumns) < run.tubes.size())
        problems.push_back(
            error(u"/rackRows"_s, PlanRecordWording::tr("a rack of %1 x %2 does not hold the run's %3 tubes")
                                      .arg(plan.rackRows)
                                      .arg(plan.rackColumns)
                                      .arg(run.tubes.size())));
}

void checkOwners(const std::vector<InputOwner> &owners, const run::Run &run, Problems &problems)
{
    const QString list = u"/owners"_s;
    std::set<std::pair<UncertaintyInput, QString>> named;
    for (std::size_t i = 0; i < owners.size(); ++i) {
        const InputOwner &owner = owners[i];
        const QString pointer = pointerTo(list, static_cast<qsizetype>(i));
        const bool isStandard = owner.input == UncertaintyInput::Standard;
        if (owner.input == UncertaintyInput::Replicates)
            problems.push_back(error(pointerTo(pointer, u"input"_s),
                                     PlanRecordWording::tr("nobody but the run answers for its replicates")));
        else if (!isStandard && !run.uncertainty)
            problems.push_back(error(pointerTo(pointer, u"input"_s),
                                     PlanRecordWording::tr("the run states no uncertainty")));
        if (isStandard ? !run::findStandard(run, owner.standard) : !owner.standard.isEmpty())
            problems.push_back(
                error(pointerTo(pointer, u"standard"_s),
                      PlanRecordWording::tr("the run has no standard %1 that this could be said of")
                          .arg(quoted(owner.standard))));
        if (named.contains({owner.input, owner.standard}))
            problems.push_back(
                error(pointer, PlanRecordWording::tr("names an owner for this a second time")));
        named.insert({owner.input, owner.standard});
        for (const auto &[key, text, what] :
             {std::tuple(u"owner"_s, owner.owner, PlanRecordWording::tr("the owner")),
              std::tuple(u"source"_s, owner.source, PlanRecordWording::tr("the source"))}) {
            checkProse(problems, pointerTo(pointer, key), text, what);
            if (text.trimmed().isEmpty())
                problems.push_back(error(pointerTo(pointer, key), PlanRecordWording::tr("is blank")));
        }
    }
}

} // namespace

Problems problemsOf(const PlanRecord &plan, const run::Run &run)
{
    Problems problems;
    QSet<QString> named;
    for (std::size_t i = 0; i < plan.samples.size(); ++i) {
        const QString pointer = pointerTo(u"/samples"_s, static_cast<qsizetype>(i));
        const QString &id = plan.samples[i].sample.id;
        if (named.contains(id))
            problems.push_back(
                error(pointerTo(pointerTo(pointer, u"sample"_s), u"id"_s),
                      PlanRecordWording::tr("the sample %1 is planned twice").arg(quoted(id))));
        named.insert(id);
        checkSample(plan.samples[i], run, pointer, problems);
    }
    checkRack(plan, run, problems);
    checkOwners(plan.owners, run, problems);
    if (plan.interval_s)
        checkWithin(problems, u"/interval_s"_s, *plan.interval_s, 0, longestInterval_s, u"s"_s);
    return problems;
}

} // namespace plateau::planning
