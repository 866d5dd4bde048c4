// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/findings.h"

#include "core/exchange/json.h"

#include <QCoreApplication>

#include <algorithm>

namespace plateau::exchange {

using namespace Qt::StringLiterals;

namespace {

struct FindingsWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::Findings)
};

QStringList tokens(const QString &pointer)
{
    return pointer.isEmpty() ? QStringList() : pointer.mid(1).split(u'/');
}

bool isWildcard(const QString &token)
{
    return token == "*"_L1 || token == "#"_L1;
}

/// True if the place is the pattern's, or one above or below it. bound: what "#" stands for, empty as long as
/// it may be anything.
bool touches(const QStringList &place, const QStringList &pattern, QString &bound)
{
    for (qsizetype i = 0; i < std::min(place.size(), pattern.size()); ++i) {
        if (pattern[i] == "#"_L1)
            bound = place[i];
        else if (!isWildcard(pattern[i]) && pattern[i] != place[i])
            return false;
    }
    return true;
}

/// True if the place is the pattern's or, unless the pattern ends in "$", below it.
bool isUnder(const QStringList &place, const QStringList &pattern, const QString &bound)
{
    const bool alone = !pattern.isEmpty() && pattern.back() == "$"_L1;
    const qsizetype length = pattern.size() - (alone ? 1 : 0);
    if (place.size() < length || (alone && place.size() != length))
        return false;
    for (qsizetype i = 0; i < length; ++i) {
        const bool free = isWildcard(pattern[i]) && (pattern[i] == "*"_L1 || bound.isEmpty());
        const QString &wanted = pattern[i] == "#"_L1 ? bound : pattern[i];
        if (!free && wanted != place[i])
            return false;
    }
    return true;
}

} // namespace

bool Findings::full() const
{
    return m_problems.size() > json::maxProblems;
}

void Findings::remark(assay::Problem problem)
{
    if (full())
        return;
    if (m_problems.size() == json::maxProblems)
        problem = assay::error(
            {},
            FindingsWording::tr("there is more wrong than the %1 problems listed").arg(json::maxProblems));
    m_problems.push_back(std::move(problem));
}

void Findings::broken(const QString &pointer, const QString &message)
{
    remark(assay::error(pointer, message));
    unreadable(pointer);
}

void Findings::unreadable(const QString &pointer)
{
    if (!full())
        m_broken.push_back(tokens(pointer));
}

bool Findings::followsFromBroken(const assay::Problem &problem, const QString &prefix,
                                 const Consequences &consequences) const
{
    const QStringList place = tokens(prefix + problem.pointer);
    for (const QStringList &broken : m_broken) {
        if (broken == place.first(std::min(broken.size(), place.size())))
            return true;
        for (const Consequence &consequence : consequences) {
            QString bound;
            if ((!consequence.warningsOnly || problem.severity == assay::Problem::Severity::Warning) &&
                touches(broken, tokens(prefix + consequence.cause), bound) &&
                isUnder(place, tokens(prefix + consequence.effect), bound))
                return true;
        }
    }
    return false;
}

void Findings::meaning(const assay::Problems &problems, const QString &prefix,
                       const Consequences &consequences)
{
    for (const assay::Problem &problem : problems) {
        if (!followsFromBroken(problem, prefix, consequences))
            remark({problem.severity, prefix + problem.pointer, problem.message});
    }
}

} // namespace plateau::exchange
