// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/evaluatecommand.h"

#include "app/companions.h"
#include "app/console.h"
#include "app/methodsource.h"
#include "app/outcome.h"
#include "app/runfile.h"
#include "core/evaluation/evaluation.h"
#include "core/exchange/writers.h"

#include <QCoreApplication>

#include <algorithm>

namespace plateau::app {

using namespace Qt::StringLiterals;

namespace {

struct EvaluatecommandWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::app::Commands)
};

struct Arguments {
    QStringList runs;
    QStringList with;
    /// Empty: shipped methods alone.
    QString notebook;
    /// What is wrong with them; empty: nothing.
    QString fault;
};

Arguments parsed(const QStringList &arguments)
{
    Arguments found;
    bool options = true;
    for (qsizetype i = 0; i < arguments.size(); ++i) {
        const QString &argument = arguments[i];
        if (options && argument == "--"_L1) {
            options = false;
        } else if (options && argument == "--with"_L1) {
            if (++i == arguments.size())
                found.fault = EvaluatecommandWords::tr(
                    "--with needs a run file: plateau evaluate RUN.json --with OTHER.json");
            else
                found.with.append(arguments[i]);
        } else if (options && argument == "--notebook"_L1) {
            if (++i == arguments.size() || !found.notebook.isEmpty())
                found.fault = EvaluatecommandWords::tr(
                    "--notebook needs the name of one notebook: plateau evaluate RUN.json "
                    "--notebook FILE");
            else
                found.notebook = arguments[i];
        } else if (options && argument.startsWith(u'-')) {
            found.fault = EvaluatecommandWords::tr("evaluate has no option %1").arg(argument);
        } else {
            found.runs.append(argument);
        }
    }
    if (found.fault.isEmpty() && found.runs.isEmpty())
        found.fault = EvaluatecommandWords::tr(
            "evaluate needs a run file: plateau evaluate RUN.json [--with OTHER.json] "
            "... [--notebook FILE]");
    if (found.fault.isEmpty() && found.runs.size() > 1 && !found.with.isEmpty())
        found.fault = EvaluatecommandWords::tr(
            "--with goes with one run file, since it says where the terms of that run come from: plateau evaluate RUN.json "
            "--with OTHER.json ...");
    return found;
}

ExitStatus statusOf(const evaluation::Evaluation &evaluation)
{
    return evaluation.acceptable ? Sound : NeedsAttention;
}

int evaluateOne(const Arguments &given, const exchange::MethodLookup &methods)
{
    const auto document = readRunFile(given.runs.front(), methods);
    if (!document)
        return Unusable;
    Companions companions(*document, methods);
    for (const QString &path : given.with) {
        if (!companions.add(path))
            return Unusable;
    }
    const evaluation::Evaluation evaluation =
        evaluation::evaluate(document->method, document->run, {}, companions.all());
    const int status = written(writeOut(exchange::writeEvaluation(evaluation)));
    return status != Sound ? status : statusOf(evaluation);
}

/// A line each, in their order; one that cannot be read is told and the others go on.
int evaluateMany(const Arguments &given, const exchange::MethodLookup &methods)
{
    int worst = Sound;
    for (const QString &path : given.runs) {
        const auto document = readRunFile(path, methods);
        if (!document) {
            worst = Unusable;
            continue;
        }
        const evaluation::Evaluation evaluation = evaluation::evaluate(document->method, document->run);
        if (const int status = written(writeOut(exchange::writeEvaluationLine(path, evaluation))); status != Sound)
            return status;
        worst = std::max<int>(worst, statusOf(evaluation));
    }
    return worst;
}

} // namespace

int evaluateRun(const QStringList &arguments)
{
    const Arguments given = parsed(arguments);
    if (!given.fault.isEmpty())
        return wrongUse(given.fault);
    std::optional<exchange::MethodLookup> methods;
    try {
        methods = methodsIn(given.notebook);
    } catch (const notebook::Failure &failure) {
        return unusableNotebook(given.notebook, failure);
    }
    return given.runs.size() == 1 ? evaluateOne(given, *methods) : evaluateMany(given, *methods);
}

} // namespace plateau::app
