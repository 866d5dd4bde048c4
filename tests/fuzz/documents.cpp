// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/fuzz/targets.h"

#include "core/evaluation/evaluation.h"
#include "core/exchange/library.h"
#include "core/exchange/readers.h"
#include "core/exchange/writers.h"

#include <algorithm>
#include <cmath>

namespace plateau::fuzz {

using namespace Qt::StringLiterals;

namespace {

const exchange::MethodLookup &installed()
{
    static const exchange::MethodLookup lookup = exchange::MethodLibrary::load(u":/methods"_s).lookup();
    return lookup;
}

bool isFinite(const std::optional<double> &number)
{
    return !number || std::isfinite(*number);
}

void requireAnswer(bool isRead, const assay::Problems &problems)
{
    const bool hasError = std::ranges::any_of(problems, [](const assay::Problem &problem) {
        return problem.severity == assay::Problem::Severity::Error;
    });
    require(isRead != hasError, "a value is there if and only if no problem is an error");
    for (const assay::Problem &problem : problems) {
        const QString line = exchange::problemLine(u"file"_s, problem);
        require(!problem.message.isEmpty() && !line.contains(u'\n'), "a problem is one line");
    }
}

} // namespace

void tryRun(const QByteArray &bytes)
{
    const auto read = exchange::readRun(bytes, installed());
    requireAnswer(read.value.has_value(), read.problems);
    if (!read.value)
        return;
    const assay::Method &method = read.value->method;
    const auto again = exchange::readRun(
        exchange::writeRun(read.value->run, read.value->methodEmbedded ? &method : nullptr), installed());
    require(again.value && again.value->run == read.value->run && again.value->method == method,
            "a run that was written is read as the same");
    const evaluation::Evaluation evaluation = evaluation::evaluate(method, read.value->run);
    for (const evaluation::Result &result : evaluation.results)
        require(isFinite(result.value), "a result is finite or absent");
    const QByteArray written = exchange::writeEvaluation(evaluation);
    require(exchange::readEvaluation(written).value.has_value(), "an evaluation that was written is read");
    require(written == exchange::writeEvaluation(evaluation::evaluate(method, again.value->run)),
            "the same run gives the same evaluation to the last digit");
}

void tryMethod(const QByteArray &bytes)
{
    const auto read = exchange::readMethod(bytes);
    requireAnswer(read.value.has_value(), read.problems);
    if (!read.value)
        return;
    const auto again = exchange::readMethod(exchange::writeMethod(*read.value));
    require(again.value && *again.value == *read.value, "a method that was written is read as the same");
}

} // namespace plateau::fuzz
