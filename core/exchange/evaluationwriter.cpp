// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/jsonparts.h"
#include "core/exchange/jsontext.h"
#include "core/exchange/writers.h"

namespace plateau::exchange {

using namespace plateau::evaluation;
using nlohmann::ordered_json;

namespace {

ordered_json adviceJson(const std::optional<Advice> &advice)
{
    if (!advice)
        return nullptr;
    if (advice->kind == Advice::Kind::IncreaseVolume)
        return {{"kind", "increaseVolume"}, {"sampleVolume_mL", advice->sampleVolume_mL}};
    return {{"kind", "dilute"},
            {"factor", advice->factor},
            {"atLeast", advice->atLeast},
            {"steps", dilutionJson(advice->steps)}};
}

ordered_json checkJson(const Check &check)
{
    return {{"id", utf8(checkWord(check.id))},
            {"scope", utf8(scopeWord(check.scope))},
            {"passed", check.passed},
            {"message", utf8(check.message())},
            {"advice", adviceJson(check.advice)},
            {"tubes", ordered_json(check.tubes)}};
}

ordered_json factorJson(const Factor &factor)
{
    return {{"measurand", utf8(factor.measurand)}, {"factor_g_per_L", factor.factor_g_per_L}};
}

ordered_json blankJson(const BlankMean &blank)
{
    return {{"measurand", utf8(blank.measurand)}, {"mean", orNull(blank.mean)}, {"n", blank.n}};
}

ordered_json tubeJson(const TubeValue &tube)
{
    return {{"index", tube.index},
            {"role", utf8(run::roleWord(tube.role))},
            {"measurand", utf8(tube.measurand)},
            {"signal", orNull(tube.signal)},
            {"netSignal", orNull(tube.netSignal)},
            {"concentration_g_per_L", orNull(tube.concentration_g_per_L)},
            {"pipetted_g_per_L", orNull(tube.pipetted_g_per_L)},
            {"quantificationLimit_g_per_L", orNull(tube.quantificationLimit_g_per_L)},
            {"totalVolume_mL", tube.totalVolume_mL},
            {"sampleVolume_mL", tube.sampleVolume_mL}};
}

ordered_json budgetJson(const BudgetTerm &term)
{
    return {
        {"term", utf8(term.term)}, {"standardUncertainty", term.standardUncertainty}, {"share", term.share}};
}

ordered_json termJson(const ResultTerm &term)
{
    return {{"method", utf8(term.method)},
            {"version", term.methodVersion},
            {"measurand", utf8(term.measurand)},
            {"factor", term.factor},
            {"value", orNull(term.value)}};
}

ordered_json resultJson(const Result &result)
{
    ordered_json object{{"sample", utf8(result.sample)},
                        {"measurand", utf8(result.measurand)},
                        {"value", orNull(result.value)},
                        {"unit", utf8(result.unit)},
                        {"n", result.n},
                        {"spread", orNull(result.spread)},
                        {"expandedUncertainty", orNull(result.expandedUncertainty)},
                        {"coverageFactor", orNull(result.coverageFactor)},
                        {"budget", listOf(result.budget, budgetJson)},
                        {"verdict", utf8(verdictWord(result.verdict))},
                        {"checks", listOf(result.checks, checkJson)},
                        {"degreesOfFreedom", orNull(result.degreesOfFreedom)},
                        {"lessThan", orNull(result.lessThan)},
                        {"greaterThan", orNull(result.greaterThan)}};
    // Only where they say something, so that what is measured reads as it always did.
    if (!result.terms.empty())
        object["terms"] = listOf(result.terms, termJson);
    if (!result.spread)
        object.erase("spread");
    return object;
}

ordered_json recoveryJson(const StandardRecovery &standard)
{
    return {{"standard", utf8(standard.standard)},
            {"measurand", utf8(standard.measurand)},
            {"expected_g_per_L", standard.expected_g_per_L},
            {"found_g_per_L", orNull(standard.found_g_per_L)},
            {"recovery_percent", orNull(standard.recovery_percent)}};
}

ordered_json spikeJson(const SpikeRecovery &spike)
{
    return {{"sample", utf8(spike.sample)},
            {"measurand", utf8(spike.measurand)},
            {"recovery_percent", orNull(spike.recovery_percent)}};
}

ordered_json seriesJson(const SeriesFit &fit)
{
    return {{"tube", fit.tube},
            {"reading", utf8(fit.reading)},
            {"atStart", fit.atStart},
            {"slope_per_min", fit.slope_per_min},
            {"slopeStandardError_per_min", orNull(fit.slopeStandardError_per_min)},
            {"points", fit.points},
            {"ended", fit.ended}};
}

ordered_json lineJson(const CalibrationLine &line)
{
    return {{"measurand", utf8(line.measurand)},
            {"intercept", line.intercept},
            {"slope_per_mg", line.slope_per_mg},
            {"residual", orNull(line.residual)},
            {"points", line.points}};
}

ordered_json evaluationJson(const Evaluation &evaluation)
{
    return {
        {"format", "plateau-evaluation/1"},
        {"method", {{"id", utf8(evaluation.methodId)}, {"version", evaluation.methodVersion}}},
        {"factors", listOf(evaluation.factors, factorJson)},
        {"blanks", listOf(evaluation.blanks, blankJson)},
        {"tubes", listOf(evaluation.tubes, tubeJson)},
        {"results", listOf(evaluation.results, resultJson)},
        {"standards", listOf(evaluation.standards, recoveryJson)},
        {"spikes", listOf(evaluation.spikes, spikeJson)},
        {"checks", listOf(evaluation.checks, checkJson)},
        {"acceptable", evaluation.acceptable},
        {"series", listOf(evaluation.series, seriesJson)},
        {"lines", listOf(evaluation.lines, lineJson)}};
}

} // namespace

QByteArray writeEvaluation(const Evaluation &evaluation)
{
    return jsonText(evaluationJson(evaluation));
}

QByteArray writeEvaluationLine(const QString &runFile, const Evaluation &evaluation)
{
    return jsonLine({{"run", utf8(runFile)}, {"evaluation", evaluationJson(evaluation)}});
}

} // namespace plateau::exchange
