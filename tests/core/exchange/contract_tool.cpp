// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// For schema_test.py: what the program's own reader says of a file, and what it writes.
//   contract_tool read FILE...      one line a file, "accepted" or "refused"
//   contract_tool evaluate FILE     the evaluation of a run
//   contract_tool rewrite FILE      the run written again, its method inside
#include "core/evaluation/evaluation.h"
#include "core/exchange/library.h"
#include "core/exchange/readers.h"
#include "core/exchange/writers.h"

#include <QCoreApplication>

#include <cstdio>

using namespace plateau;
using namespace plateau::exchange;
using namespace Qt::StringLiterals;

namespace {

bool accepts(const QString &path, const MethodLookup &lookup)
{
    const auto bytes = readFile(path);
    if (!bytes.value)
        return false;
    if (path.endsWith("laboratory.json"_L1))
        return readLaboratory(*bytes.value).value.has_value();
    if (path.endsWith("specifications.json"_L1))
        return readSpecifications(*bytes.value).value.has_value();
    return path.endsWith("method.json"_L1) ? readMethod(*bytes.value).value.has_value()
                                           : readRun(*bytes.value, lookup).value.has_value();
}

int write(const QString &command, const QString &path, const MethodLookup &lookup)
{
    const auto bytes = readFile(path);
    const auto read = readRun(bytes.value.value_or(QByteArray()), lookup);
    for (const assay::Problem &problem : read.problems)
        std::fprintf(stderr, "%s\n", problemLine(path, problem).toUtf8().constData());
    if (!read.value)
        return 2;
    const QByteArray text = command == "evaluate"_L1
                                ? writeEvaluation(evaluation::evaluate(read.value->method, read.value->run))
                                : writeRun(read.value->run, &read.value->method);
    std::fwrite(text.constData(), 1, static_cast<std::size_t>(text.size()), stdout);
    return 0;
}

} // namespace

int main(int argc, char **argv)
{
    const QCoreApplication application(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    const MethodLookup lookup = MethodLibrary::load(u":/methods"_s).lookup();
    if (arguments.size() < 3)
        return 2;
    if (arguments[1] != "read"_L1)
        return write(arguments[1], arguments[2], lookup);
    for (const QString &path : arguments.sliced(2))
        std::puts(accepts(path, lookup) ? "accepted" : "refused");
    return 0;
}
