// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/checksnotmade.h"

#include "core/evaluation/checkfacts.h"
#include "core/evaluation/checks.h"
#include "core/evaluation/format.h"
#include "core/evaluation/layout.h"

#include <algorithm>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

namespace {

/// What is measured of which no tube holds a known amount.
std::vector<const assay::Measurand *> withoutStandard(const assay::Method &method, const run::Run &run)
{
    std::vector<const assay::Measurand *> open;
    if (!method.acceptance.standardRecovery_percent || run.calibration != run::Calibration::Absorptivity)
        return open;
    for (const assay::Measurand &measurand : method.measurands) {
        const bool isKnown = std::ranges::any_of(run.tubes, [&](const run::Tube &tube) {
            const run::Standard *standard = run::findStandard(run, tube.standard);
            return standard && tube.spoilt.isEmpty() && Layout::holds(*standard, measurand) &&
                   (tube.role == run::Role::Standard || tube.role == run::Role::Control);
        });
        if (!isKnown)
            open.push_back(&measurand);
    }
    return open;
}

QString recoveryRange(const assay::Interval &range)
{
    return CheckText::tr("%1 to %2").arg(plainText(range.lower), withUnit(plainText(range.upper), u"%"_s));
}

} // namespace

std::vector<CheckLine> checksNotMade(const assay::Method &method, const run::Run &run)
{
    std::vector<CheckLine> lines;
    for (const assay::Measurand *measurand : withoutStandard(method, run)) {
        CheckLine line;
        line.id = CheckId::StandardRecovery;
        line.outcome = CheckOutcome::NotMade;
        line.what = checkTitle(line.id);
        line.where = method.measurands.size() > 1 ? measurand->name : QString();
        line.found = CheckText::tr("no standard");
        line.limit = recoveryRange(*method.acceptance.standardRecovery_percent);
        line.message = CheckText::tr("The method judges the recovery of a standard (%1), and no tube of this run held one or a "
                                     "control: nothing in the run shows what the assay recovered. Say in the reason why it may "
                                     "stand, or repeat it with a standard.")
                           .arg(line.limit);
        lines.push_back(std::move(line));
    }
    return lines;
}

assay::Problems checksNotPlanned(const assay::Method &method, const run::Run &run)
{
    const auto open = withoutStandard(method, run);
    if (open.empty() || run.tubes.empty())
        return {};
    const QString range = recoveryRange(*method.acceptance.standardRecovery_percent);
    if (open.size() == method.measurands.size())
        return {assay::warning(u"/standards"_s,
                               afterColon(CheckText::tr("This run has no standard, and the method judges the recovery of one (%1). Add a "
                                                        "standard or a control; without one the review cannot tell whether the assay finds "
                                                        "what is there.")
                                              .arg(range)))};
    QStringList names;
    for (const assay::Measurand *measurand : open)
        names << measurand->name;
    return {assay::warning(u"/standards"_s,
                           afterColon(CheckText::tr("No standard of this run holds %1, and the method judges its recovery (%2). "
                                                    "Add a standard or a control that does.")
                                          .arg(andJoined(names), range)))};
}

} // namespace plateau::evaluation
