// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/companions.h"

#include "core/assay/label.h"

#include <QCoreApplication>

namespace plateau::app {

using namespace Qt::StringLiterals;

namespace {

struct CompanionsWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::app::Commands)
};

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

} // namespace

Companions::Companions(const exchange::RunDocument &document, const exchange::MethodLookup &methods)
    : m_lookup(methods)
    , m_method(document.method)
    , m_takenFrom(methodsTakenFrom(document.method))
    , m_samples(samplesIn(document.run))
{
}

bool Companions::add(const QString &path)
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

std::optional<assay::Problem> Companions::problemOf(const exchange::RunDocument &document)
{
    const QString &id = document.method.id;
    if (m_takenFrom.isEmpty())
        return assay::error(u"/method"_s,
                            CompanionsWords::tr("the method %1 takes no result from another run; leave "
                                                "out --with")
                                .arg(assay::quoted(m_method.id)));
    if (!m_takenFrom.contains(id))
        return assay::error(
            u"/method"_s, CompanionsWords::tr("the method %1 takes results from %2, not from %3")
                              .arg(assay::quoted(m_method.id), m_takenFrom.join(u", "_s), assay::quoted(id)));
    bool shared = false;
    for (const QString &sample : samplesIn(document.run)) {
        if (!m_samples.contains(sample))
            continue;
        shared = true;
        if (!m_held.insert({id, sample}).second)
            return assay::error(u"/samples"_s,
                                CompanionsWords::tr("the sample %1 is in an earlier run of the method "
                                                    "%2 as well; give the one that counts")
                                    .arg(assay::quoted(sample), assay::quoted(id)));
    }
    if (!shared)
        return assay::error(u"/samples"_s,
                            CompanionsWords::tr("has none of the samples of the run that is evaluated; "
                                                "the same sample needs the same id in both"));
    return std::nullopt;
}

} // namespace plateau::app
