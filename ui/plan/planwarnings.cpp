// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/plan/planwarnings.h"

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QString explainedUnder(const assay::Problem &problem)
{
    if (problem.severity != assay::Problem::Severity::Warning)
        return {};
    if (problem.pointer == "/standards"_L1)
        return u"standard-missing"_s;
    if (problem.pointer.endsWith("/preparedAt"_L1))
        return u"standard-too-old"_s;
    if (problem.pointer.endsWith("/lossPerHour"_L1))
        return u"standard-loss"_s;
    return problem.pointer.startsWith("/samples/"_L1) ? u"signal-expected"_s : QString();
}

HelpPlace placeFor(const QString &section)
{
    return section.isEmpty() ? HelpPlace() : HelpPlace{u"checks"_s, section};
}

} // namespace

void PlanWarnings::addRun(const assay::Problems &problems, const assay::Problems &words)
{
    for (std::size_t i = 0; i < problems.size(); ++i) {
        m_problems.push_back(words.at(i));
        m_places.push_back(placeFor(explainedUnder(problems[i])));
    }
}

void PlanWarnings::add(const assay::Problems &problems, const QString &section)
{
    for (const assay::Problem &problem : problems) {
        m_problems.push_back(problem);
        m_places.push_back(placeFor(section));
    }
}

} // namespace plateau::ui
