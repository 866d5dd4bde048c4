// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/evaluatecommand.h"

#include "app/console.h"
#include "app/methodsource.h"
#include "app/outcome.h"
#include "app/runfile.h"
#include "core/assay/label.h"
#include "core/evaluation/evaluation.h"
#include "core/exchange/writers.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>

namespace plateau::app {

using namespace Qt::StringLiterals;

namespace {

struct Text {
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
                found.fault =
                    Text::tr("--with needs a run file: plateau evaluate RUN.json --with OTHER.json");
            else
                found.with.append(arguments[i]);
        } else if (options && argument == "--notebook"_L1) {
            if (++i == arguments.size() || !found.notebook.isEmpty())
                found.fault = Text::tr("--notebook needs the name of one notebook: plateau evaluate RUN.json "
                                       "--notebook FILE");
            else
                found.notebook = arguments[i];
        } else if (options && argument.startsWith(u'-')) {
            found.fault = Text::tr("evaluate has no option %1").arg(argument);
        } else {
            found.runs.append(argument);
        }
    }
    if (found.fault.isEmpty() && found.runs.size() != 1)
        found.fault = Text::tr("evaluate takes one run file: plateau evaluate RUN.json [--with OTHER.json] "
                               "... [--notebook FILE]");
    return found;
}

/// Ids of the other methods that derived quantities take from, in their order.
QStringList methodsTakenFrom(const assay::Method &method)
{
    QStringList ids;
    for (const assay::Derived &derived : method.derived) {
        for (const assay::DerivedTerm &term : derived.terms) {
            if (!term.method.isEmpty() && term.method != method.id && !ids.contains(term.method))
                ids.append(term.method);
        }
    }
    return ids;
}

/// The samples that are in a tube.
std::set<QString> samplesIn(const run::Run &run)
{
    std::set<QString> samples;
    for (const run::Tube &tube : run.tubes) {
        if (!tube.sample.isEmpty())
            samples.insert(tube.sample);
    }
    return samples;
}

/// The other runs, each held against the first one and those before it.
class Companions
{
public:
    Companions(const exchange::RunDocument &document, const exchange::MethodLookup &methods)
        : m_lookup(methods)
        , m_method(document.method)
        , m_takenFrom(methodsTakenFrom(document.method))
        , m_samples(samplesIn(document.run))
    {
    }

    /// False after a line on standard error for each problem.
    bool add(const QString &path)
    {
        auto document = readRunFile(path, m_lookup);
        if (!document)
            return false;
        if (const auto problem = problemOf(*document)) {
            reportProblems(path, {*problem});
            return false;
        }
        m_companions.push_back({std::move(document->method), std::move(document->run)});
        return true;
    }

    const std::vector<evaluation::Companion> &all() const { return m_companions; }

private:
    std::optional<assay::Problem> problemOf(const exchange::RunDocument &document)
    {
        const QString &id = document.method.id;
        if (m_takenFrom.isEmpty())
            return assay::error(u"/method"_s,
                                Text::tr("the method %1 takes no result from another run; leave "
                                         "out --with")
                                    .arg(assay::quoted(m_method.id)));
        if (!m_takenFrom.contains(id))
            return assay::error(u"/method"_s, Text::tr("the method %1 takes results from %2, not from %3")
                                                  .arg(assay::quoted(m_method.id), m_takenFrom.join(u", "_s),
                                                       assay::quoted(id)));
        bool shared = false;
        for (const QString &sample : samplesIn(document.run)) {
            if (!m_samples.contains(sample))
                continue;
            shared = true;
            if (!m_held.insert({id, sample}).second)
                return assay::error(u"/samples"_s,
                                    Text::tr("the sample %1 is in an earlier run of the method "
                                             "%2 as well; give the one that counts")
                                        .arg(assay::quoted(sample), assay::quoted(id)));
        }
        if (!shared)
            return assay::error(u"/samples"_s,
                                Text::tr("has none of the samples of the run that is evaluated; "
                                         "the same sample needs the same id in both"));
        return std::nullopt;
    }

    const exchange::MethodLookup &m_lookup;
    const assay::Method &m_method;
    QStringList m_takenFrom;
    std::set<QString> m_samples;
    /// Method and sample of what was added.
    std::set<std::pair<QString, QString>> m_held;
    std::vector<evaluation::Companion> m_companions;
};

int evaluate(const Arguments &given, const exchange::MethodLookup &methods)
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
    if (status != Sound)
        return status;
    return evaluation.acceptable ? Sound : NeedsAttention;
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
    return evaluate(given, *methods);
}

} // namespace plateau::app
