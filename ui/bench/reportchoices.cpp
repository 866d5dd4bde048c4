// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/reportchoices.h"

#include "core/assay/listed.h"
#include "core/assay/localday.h"
#include "core/evaluation/compliance.h"
#include "core/evaluation/format.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct ReportchoicesWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::ReportSource)
};

QString runsText(const std::vector<notebook::ResultSource> &runs)
{
    QStringList texts;
    for (const notebook::ResultSource &run : runs)
        texts << ReportchoicesWords::tr("run %1, revision %2, as %3")
                     .arg(run.run.value)
                     .arg(run.revision)
                     .arg(run.sample);
    return assay::listed(texts);
}

QString ruleText(const notebook::SampleResults &results)
{
    const int accepted = static_cast<int>(results.accepted.size());
    switch (results.rule) {
    case notebook::ReportRule::MeanOfAccepted:
        return ReportchoicesWords::tr("the mean of %n accepted results", nullptr, accepted);
    case notebook::ReportRule::Named:
        return ReportchoicesWords::tr("the one named by the reviewer, of %n accepted results", nullptr,
                                      accepted);
    case notebook::ReportRule::LastAccepted:
        break;
    }
    return ReportchoicesWords::tr("the last of %n accepted results", nullptr, accepted);
}

QString reasonText(const notebook::ReportChoice &choice)
{
    const QString who =
        ReportchoicesWords::tr("chosen by %1 on %2").arg(choice.person, assay::shownDay(choice.at.date()));
    return choice.reason.isEmpty() ? who : ReportchoicesWords::tr("%1: %2").arg(who, choice.reason);
}

void choose(ReportedResult &reported, const notebook::SampleResults &results,
            const notebook::ResultSource &own)
{
    if (results.accepted.size() < 2 && !results.choice)
        return;
    if (!results.reported) {
        reported.isReported = false;
        reported.remark = results.obstacle;
        return;
    }
    reported.isReported = std::ranges::find(results.reportedFrom, own) != results.reportedFrom.end();
    reported.remark =
        ReportchoicesWords::tr("Reported is %1: %2").arg(ruleText(results), runsText(results.reportedFrom));
    if (results.choice)
        reported.remark = ReportchoicesWords::tr("%1 (%2)").arg(reported.remark, reasonText(*results.choice));
    if (results.rule == notebook::ReportRule::MeanOfAccepted) {
        reported.inPlace = results.reported;
        reported.inPlace->sample = reported.sample;
        reported.inPlace->measurand = reported.measurand;
    }
}

QString limitOf(const evaluation::Specification &specification)
{
    return ReportchoicesWords::tr("%1: %2 (%3, %4)")
        .arg(specification.product, evaluation::limitText(specification), specification.source,
             assay::shownDay(specification.date));
}

QString ruleOf(const evaluation::Specification &specification, const evaluation::Judgement &judgement)
{
    const QString name = evaluation::decisionRuleName(specification.rule);
    return judgement.guardBand
               ? ReportchoicesWords::tr("%1, guard band %2")
                     .arg(name, evaluation::withUnit(evaluation::significantText(*judgement.guardBand, 2),
                                                     evaluation::reportUnitWord(specification.unit)))
               : name;
}

} // namespace

void addLimits(ReportContent &content, const std::vector<evaluation::Specification> &specifications)
{
    std::vector<assay::Method> others;
    for (const ReportCompanion &companion : content.companions)
        others.push_back(companion.method);
    for (const evaluation::Result &result : content.evaluation.results) {
        const ReportItem *item = findItem(content, result.sample);
        const ReportedResult *reported = reportedAs(content, result);
        if (!item || item->product.isEmpty() || (reported && !reported->isReported))
            continue;
        for (const evaluation::Specification &specification :
             evaluation::specificationsFor(specifications, item->product, result.measurand, content.method)) {
            const evaluation::Judgement judgement =
                evaluation::judge(finalOf(content, result), content.method, specification, others);
            content.compliance.push_back({result.sample, result.measurand, limitOf(specification),
                                          ruleOf(specification, judgement), judgement.sentence});
        }
    }
}

void addChoices(ReportContent &content, const notebook::Notebook &notebook, const notebook::StoredRun &stored)
{
    if (stored.summary.state == notebook::RunState::Accepted) {
        for (ReportedResult &reported : content.reported) {
            if (reported.isReported)
                choose(reported, notebook.resultsOf(reported.sample, reported.measurand, stored.summary.id),
                       {stored.summary.id, stored.summary.revision, reported.sample});
        }
    }
}

} // namespace plateau::ui
