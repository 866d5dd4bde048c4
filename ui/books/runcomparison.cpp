// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/runcomparison.h"

#include "core/assay/listed.h"
#include "core/assay/localday.h"
#include "core/evaluation/checkfacts.h"
#include "core/evaluation/format.h"
#include "ui/bench/places.h"
#include "ui/bench/reviewedresult.h"
#include "ui/bench/verdicts.h"
#include "ui/books/measurandnames.h"
#include "ui/books/runsmodel.h"
#include "ui/shared/widgets.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>
#include <set>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct RunComparisonWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::RunComparison)
};

/// What there is of one run, by what it is; in the order it was told.
using Facts = std::vector<std::pair<QString, QString>>;

QString calibrationText(run::Calibration calibration)
{
    switch (calibration) {
    case run::Calibration::Standard:
        return RunComparisonWords::tr("the run's own standard");
    case run::Calibration::Line:
        return RunComparisonWords::tr("a line of standards");
    case run::Calibration::Absorptivity:
        break;
    }
    return RunComparisonWords::tr("molar absorptivity");
}

Facts conditionsOf(const notebook::StoredRun &stored)
{
    const run::Run &run = stored.run;
    const int wavelength_nm = run.wavelength_nm.value_or(stored.method.wavelength_nm);
    const double pathLength_mm = run.pathLength_mm.value_or(stored.method.pathLength_mm);
    return {
        {RunComparisonWords::tr("Method"),
         RunComparisonWords::tr("%1, version %2").arg(stored.method.name).arg(stored.method.version)},
        {RunComparisonWords::tr("Wavelength"), evaluation::withUnit(QString::number(wavelength_nm), u"nm"_s)},
        {RunComparisonWords::tr("Path length"),
         evaluation::withUnit(evaluation::plainText(pathLength_mm), u"mm"_s)},
        {RunComparisonWords::tr("Calibrated by"), calibrationText(run.calibration)},
        {RunComparisonWords::tr("Started"), momentText(run.startedAt.value_or(stored.summary.createdAt))},
        {RunComparisonWords::tr("Tubes"), QString::number(run.tubes.size())},
        {RunComparisonWords::tr("State"), stateText(stored.summary.state)},
        {RunComparisonWords::tr("Decided by"), stored.summary.decidedBy}};
}

Facts standardsOf(const notebook::StoredRun &stored)
{
    Facts facts;
    for (const run::Standard &standard : stored.run.standards) {
        // More figures than a standard is known to hide whether two are the same.
        QString text =
            evaluation::withUnit(evaluation::significantText(standard.concentration_g_per_L, 4), u"g/L"_s);
        if (standard.preparedAt)
            text = RunComparisonWords::tr("%1, made %2").arg(text, momentText(*standard.preparedAt));
        facts.emplace_back(standard.id, text);
    }
    return facts;
}

Facts lotsOf(const notebook::StoredRun &stored)
{
    Facts facts;
    for (const run::LotUse &use : stored.run.lots) {
        const assay::Component *component = assay::findComponent(stored.method, use.component);
        facts.emplace_back(
            component ? component->name : use.component,
            use.expires
                ? RunComparisonWords::tr("%1, until %2").arg(use.lot, assay::shownDay(*use.expires))
                : use.lot);
    }
    return facts;
}

/// Of each kind of tube all signals, in the order of the rack.
Facts signalsOf(const notebook::StoredRun &stored, const evaluation::Evaluation &evaluation)
{
    std::vector<std::pair<QString, QStringList>> groups;
    for (const evaluation::TubeValue &tube : evaluation.tubes) {
        const QString name = RunComparisonWords::tr("%1, %2").arg(briefContentsText(stored.run, tube.index),
                                                                   measurandName(stored.method, tube.measurand));
        auto group = std::ranges::find(groups, name, &std::pair<QString, QStringList>::first);
        if (group == groups.end())
            group = groups.insert(groups.end(), {name, {}});
        group->second.append(tube.signal ? evaluation::absorbanceText(*tube.signal) : u"–"_s);
    }
    Facts facts;
    for (const auto &[name, signals_] : groups)
        facts.emplace_back(name, signals_.join(u"  "_s));
    return facts;
}

Facts resultsOf(const notebook::StoredRun &stored, const evaluation::Evaluation &evaluation, const ReviewBasis &basis)
{
    Facts facts;
    for (const evaluation::Result &result : evaluation.results)
        facts.emplace_back(RunComparisonWords::tr("%1, %2").arg(result.sample,
                                                                measurandName(stored.method, result.measurand)),
                           RunComparisonWords::tr("%1 (%2)").arg(reviewed(stored, evaluation, result, basis).value,
                                                                 evaluation::verdictText(result.verdict)));
    for (const evaluation::StandardRecovery &standard : evaluation.standards) {
        if (standard.recovery_percent)
            facts.emplace_back(
                RunComparisonWords::tr("Recovery of %1, %2")
                    .arg(standard.standard, measurandName(stored.method, standard.measurand)),
                evaluation::withUnit(QString::number(*standard.recovery_percent, 'f', 1), u"%"_s));
    }
    return facts;
}

/// Each check that was made, once: failed where it failed anywhere.
Facts checksOf(const run::Run &run, const evaluation::Evaluation &evaluation)
{
    std::map<evaluation::CheckId, QStringList> failed;
    for (const evaluation::Check &check : evaluation.checks) {
        QStringList &scopes = failed[check.id];
        if (!check.passed && !scopes.contains(evaluation::scopeText(check.scope, run)))
            scopes.append(evaluation::scopeText(check.scope, run));
    }
    Facts facts;
    for (const auto &[id, scopes] : failed)
        facts.emplace_back(evaluation::checkTitle(id),
                           scopes.isEmpty() ? RunComparisonWords::tr("passed")
                                            : RunComparisonWords::tr("failed: %1").arg(assay::listed(scopes)));
    return facts;
}

/// Side by side: in the order of the one, and behind it what only the other has.
void append(std::vector<ComparedLine> &lines, const QString &section, const Facts &one, const Facts &other)
{
    std::set<QString> told;
    const auto valueOf = [](const Facts &facts, const QString &name) {
        QStringList values;
        for (const auto &[what, value] : facts) {
            if (what == name)
                values.append(value);
        }
        const QString text = values.join(u", "_s);
        return text.isEmpty() ? u"–"_s : text;
    };
    for (const Facts *facts : {&one, &other}) {
        for (const auto &[what, value] : *facts) {
            if (told.insert(what).second)
                lines.push_back({section, what, valueOf(one, what), valueOf(other, what)});
        }
    }
}

} // namespace

std::vector<ComparedLine> compareRuns(const notebook::StoredRun &one, const ReviewBasis &basisOfOne,
                                      const notebook::StoredRun &other, const ReviewBasis &basisOfOther)
{
    const evaluation::Evaluation ofOne = notebook::evaluationOf(one);
    const evaluation::Evaluation ofOther = notebook::evaluationOf(other);
    std::vector<ComparedLine> lines;
    append(lines, RunComparisonWords::tr("Conditions"), conditionsOf(one), conditionsOf(other));
    append(lines, RunComparisonWords::tr("Standards"), standardsOf(one), standardsOf(other));
    append(lines, RunComparisonWords::tr("Lots"), lotsOf(one), lotsOf(other));
    append(lines, RunComparisonWords::tr("Signals"), signalsOf(one, ofOne), signalsOf(other, ofOther));
    append(lines, RunComparisonWords::tr("Results"), resultsOf(one, ofOne, basisOfOne),
           resultsOf(other, ofOther, basisOfOther));
    append(lines, RunComparisonWords::tr("Checks"), checksOf(one.run, ofOne), checksOf(other.run, ofOther));
    std::ranges::stable_sort(lines, std::greater(), &ComparedLine::differs);
    return lines;
}

} // namespace plateau::ui
