// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/reviewedresult.h"

#include "core/assay/localday.h"
#include "core/evaluation/format.h"
#include "core/evaluation/unitsinwords.h"
#include "core/evaluation/wideuncertainty.h"
#include "ui/bench/unitsofrun.h"
#include "ui/bench/verdicts.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct ReviewedResultWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::ReviewedResult)
};

using evaluation::Standing;

QString spreadOf(const evaluation::Result &result, double factor)
{
    if (result.n < 2 || !result.value || !result.spread)
        return u"–"_s;
    return evaluation::spreadText(*result.spread * factor, *result.value * factor, 2);
}

QString dilutionOf(const run::Run &run, const QString &id)
{
    const run::Sample *sample = run::findSample(run, id);
    if (!sample)
        return u"–"_s;
    return sample->dilution.empty() ? ReviewedResultWords::tr("undiluted")
                                    : ReviewedResultWords::tr("%1-fold").arg(
                                          evaluation::roundedText(run::dilutionFactor(sample->dilution), 3));
}

State stateOf(Standing standing)
{
    switch (standing) {
    case Standing::Inside:
        return State::Good;
    case Standing::Outside:
        return State::Bad;
    case Standing::Undecided:
        break;
    }
    return State::Attention;
}

int gravity(const JudgedLimit &limit)
{
    switch (limit.judgement.standing) {
    case Standing::Inside:
        return 0;
    case Standing::Undecided:
        return 1;
    case Standing::Outside:
        break;
    }
    return 2;
}

Sentence limitSentence(const JudgedLimit &limit)
{
    QString judged = evaluation::capitalised(limit.judgement.sentence);
    if (limit.judgement.beyond)
        judged = ReviewedResultWords::tr("%1; %2").arg(judged,
                                                       evaluation::beyondLimitText(*limit.judgement.beyond));
    return {stateOf(limit.judgement.standing),
            ReviewedResultWords::tr("%1. The limit: %2, %3.")
                .arg(judged, limit.specification.source, assay::shownDay(limit.specification.date))};
}

} // namespace

ReviewedResult plainlyReviewed(const run::Run &run, const evaluation::Evaluation &evaluation,
                               const evaluation::Result &result)
{
    return {result,
            verdictIn(run, evaluation, result),
            resultText(result),
            spreadOf(result, 1),
            dilutionOf(run, result.sample),
            {},
            {}};
}

ReviewedResult reviewed(const notebook::StoredRun &stored, const evaluation::Evaluation &evaluation,
                        const evaluation::Result &result, const ReviewBasis &basis)
{
    ReviewedResult row = plainlyReviewed(stored.run, evaluation, result);
    row.unit = evaluation::reportUnitFromWord(result.unit);
    const QString product = productOf(stored, result.sample);
    std::vector<assay::Method> others;
    for (const evaluation::Companion &companion : stored.companions)
        others.push_back(companion.method);
    const auto unit = reportUnitIn(stored, basis.laboratory, result.sample, result.measurand,
                                   evaluation::formOf(result.unit));
    evaluation::Converted<double> factor;
    if (unit && row.unit)
        factor = evaluation::conversionFactor(*row.unit, *unit,
                                              evaluation::molarMassOf(result.measurand, stored.method, others));
    if (factor.value && !result.value) {
        // What is still to come will stand in it.
        row.unit = *unit;
    } else if (unit && result.value && evaluation::reportUnitWord(*unit) != result.unit) {
        const auto reported = evaluation::reportedAs(result, stored.method, *unit, others);
        if (reported.value) {
            row.unit = *unit;
            row.value = evaluation::reportedText(*reported.value);
            row.spread = spreadOf(result, factor.value.value_or(1));
        } else {
            row.obstacle = ReviewedResultWords::tr("It stands in %1 and not in %2: %3.")
                               .arg(result.unit, evaluation::reportUnitWord(*unit), reported.obstacle);
        }
    }
    if (product.isEmpty() || !result.value)
        return row;
    for (const evaluation::Specification &specification :
         evaluation::specificationsFor(basis.specifications, product, result.measurand, stored.method))
        row.limits.push_back(
            {specification, evaluation::judge(result, stored.method, specification, others)});
    return row;
}

Sentence standingOf(const ReviewedResult &reviewed)
{
    if (reviewed.limits.empty())
        return {State::Pending, u"–"_s};
    const JudgedLimit &worst = *std::ranges::max_element(reviewed.limits, {}, gravity);
    return {stateOf(worst.judgement.standing),
            evaluation::standingName(worst.judgement.standing, worst.specification.kind)};
}

std::vector<evaluation::ReportUnit> commonUnits(const std::vector<ReviewedResult> &results)
{
    std::vector<evaluation::ReportUnit> common;
    for (const run::Form form : {run::Form::Liquid, run::Form::Solid}) {
        std::set<evaluation::ReportUnit> units;
        for (const ReviewedResult &row : results) {
            if (row.unit && evaluation::formOf(*row.unit) == form)
                units.insert(*row.unit);
        }
        if (units.size() == 1)
            common.push_back(*units.begin());
    }
    return common;
}

std::vector<Sentence> inUnitOf(const std::vector<ReviewedResult> &results, std::vector<Sentence> sentences)
{
    for (const evaluation::ReportUnit unit : commonUnits(results)) {
        for (Sentence &sentence : sentences)
            sentence.text =
                evaluation::inUnit(sentence.text, evaluation::evaluationUnit(evaluation::formOf(unit)), unit);
    }
    return sentences;
}

QString beyondLimitsText(const std::vector<ReviewedResult> &results)
{
    std::vector<std::pair<QString, QStringList>> standings;
    for (const ReviewedResult &reviewed : results) {
        if (reviewed.limits.empty() || standingOf(reviewed).state == State::Good)
            continue;
        const QString standing = standingOf(reviewed).text;
        auto known = std::ranges::find(standings, standing, &std::pair<QString, QStringList>::first);
        if (known == standings.end())
            known = standings.insert(standings.end(), {standing, {}});
        if (!known->second.contains(reviewed.result.sample))
            known->second << reviewed.result.sample;
    }
    QStringList parts;
    for (const auto &[standing, samples] : standings) {
        constexpr qsizetype most = 3; // the table says it of every one
        const QString names = samples.mid(0, most).join(ReviewedResultWords::tr(", "));
        parts << (samples.size() > most ? ReviewedResultWords::tr("%1: %2 and %3 more")
                                              .arg(standing, names)
                                              .arg(samples.size() - most)
                                        : ReviewedResultWords::tr("%1: %2").arg(standing, names));
    }
    return parts.isEmpty() ? QString()
                           : ReviewedResultWords::tr("Against the limits of the products: %1.")
                                 .arg(parts.join(ReviewedResultWords::tr("; ")));
}

std::vector<Sentence> sentencesAbout(const ReviewedResult &reviewed, const assay::Method &method, const run::Run &run,
                                     const evaluation::Evaluation &evaluation,
                                     const std::map<QString, QString> &methodNames)
{
    std::vector<Sentence> sentences = failureSentences(run, evaluation, reviewed.result);
    const auto own = evaluation::reportUnitFromWord(reviewed.result.unit);
    for (Sentence &sentence : sentences) {
        if (own && reviewed.unit)
            sentence.text = evaluation::inUnit(sentence.text, *own, *reviewed.unit);
    }
    if (sentences.empty() && reviewed.result.value)
        sentences.push_back({State::Good, ReviewedResultWords::tr("No check failed for this result.")});
    if (const QString wide = evaluation::wideUncertaintyText(reviewed.result); !wide.isEmpty())
        sentences.push_back({State::Attention, wide + u' ' + evaluation::narrowerUncertaintyText(reviewed.result)});
    for (const JudgedLimit &limit : reviewed.limits)
        sentences.push_back(limitSentence(limit));
    if (!reviewed.obstacle.isEmpty())
        sentences.push_back({State::Attention, reviewed.obstacle});
    if (evaluation.standards.empty())
        sentences.push_back(
            {method.acceptance.standardRecovery_percent ? State::Attention : State::Info,
             ReviewedResultWords::tr(
                 "No standard was measured in this run: nothing in it shows what the assay recovers.")});
    for (Sentence &sentence : derivedToCome(method, evaluation, methodNames))
        sentences.push_back(std::move(sentence));
    return sentences;
}

} // namespace plateau::ui
