// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/standardage.h"

#include "core/evaluation/checks.h"
#include "core/evaluation/format.h"

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

QString StandardAge::facts() const
{
    return CheckText::tr("%1 old, %2 of its strength left")
        .arg(withUnit(significantText(age_h, 3), u"h"_s),
             withUnit(significantText(100 * remaining, 3), u"%"_s));
}

std::optional<StandardAge> ageOf(const run::Standard &standard, const run::Run &run, const Rules &rules)
{
    if (standard.lossPerHour <= 0 || !standard.preparedAt)
        return std::nullopt;
    run::Standard used = standard;
    used.concentration_g_per_L = 1;
    if (!used.usedAt)
        used.usedAt = run.startedAt;
    StandardAge age;
    age.age_h = run::ageAtUse_h(used);
    age.remaining = run::concentrationAtUse_g_per_L(used);
    age.tooOld = age.remaining < rules.minStandardRemaining || age.age_h > rules.maxStandardAge_h;
    return age;
}

assay::Problems agedStandards(const run::Run &run, const Rules &rules)
{
    assay::Problems problems;
    for (size_t i = 0; i < run.standards.size(); ++i) {
        const std::optional<StandardAge> age = ageOf(run.standards[i], run, rules);
        if (age && age->tooOld)
            problems.push_back(
                assay::warning(u"/standards/%1/preparedAt"_s.arg(i),
                               CheckText::tr("The standard %1 is too old: %2. Make a fresh one.")
                                   .arg(run.standards[i].id, age->facts())));
    }
    return problems;
}

} // namespace plateau::evaluation
