// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/localday.h"
#include "core/evaluation/checkfacts.h"
#include "core/evaluation/checks.h"

#include "core/evaluation/format.h"
#include "core/evaluation/standardage.h"
#include "core/quality/statistics.h"
#include "core/run/controls.h"

#include <algorithm>
#include <cmath>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

namespace {

std::vector<int> tubesOfRole(const run::Run &run, run::Role role)
{
    std::vector<int> tubes;
    for (int i = 0; i < static_cast<int>(run.tubes.size()); ++i) {
        if (run.tubes[static_cast<size_t>(i)].role == role)
            tubes.push_back(i);
    }
    return tubes;
}

/// Standards proper, and controls that name a standard.
std::vector<int> tubesOfStandard(const run::Run &run, const QString &standard)
{
    std::vector<int> tubes;
    for (int i = 0; i < static_cast<int>(run.tubes.size()); ++i) {
        const run::Tube &tube = run.tubes[static_cast<size_t>(i)];
        if ((tube.role == run::Role::Standard || tube.role == run::Role::Control) &&
            tube.standard == standard)
            tubes.push_back(i);
    }
    return tubes;
}

/// What was found, and what to do about it.
struct Said {
    QString finding;
    QString whatToDo{};
};

Check plainCheck(CheckId id, const Scope &scope, bool passed, Said said, std::vector<int> tubes = {})
{
    Check check;
    check.id = id;
    check.scope = scope;
    check.passed = passed;
    check.finding = std::move(said.finding);
    check.whatToDo = std::move(said.whatToDo);
    check.tubes = std::move(tubes);
    return check;
}

std::vector<double> blankSignals(const CheckContext &context, size_t measurand)
{
    std::vector<double> signals;
    for (const int tube : context.layout.measurands()[measurand].blanks)
        signals.push_back(*context.value(tube, measurand).signal);
    return signals;
}

Check blankMissing(const Scope &scope, int read)
{
    return plainCheck(
        CheckId::BlankMissing, scope, read > 0,
        read > 0 ? Said{CheckText::tr("Blanks read: %1.").arg(read)}
                 : Said{CheckText::tr("No blank has been read: the results are not corrected for what the "
                                      "reagents themselves do."),
                        CheckText::tr("Run a blank with diluent in place of sample.")});
}

Check blankHigh(const Scope &scope, double mean, double limit, std::vector<int> tubes)
{
    const bool passed = std::abs(mean) <= limit + 1e-12;
    const QStringList texts = comparedTexts(mean, {limit}, 3);
    Said said =
        passed ? Said{CheckText::tr("Mean blank signal %1 is within %2.").arg(texts[0], texts[1])}
               : Said{CheckText::tr("Mean blank signal %1 is beyond the method's %2.").arg(texts[0], texts[1]),
                      CheckText::tr("Look for a contaminated reagent or cuvette and repeat the blank.")};
    return plainCheck(CheckId::BlankHigh, scope, passed, std::move(said), std::move(tubes));
}

Check blankSpread(const CheckContext &context, const Scope &scope, std::span<const double> signals,
                  std::vector<int> tubes)
{
    const auto [limit, origin] = blankSpreadLimit(context, int(signals.size()));
    const double spread = quality::range(signals);
    const bool passed = spread <= limit + 1e-12;
    const QStringList texts = comparedTexts(spread, {limit}, 3);
    Said said =
        passed ? Said{CheckText::tr("The blanks agree: %1 apart, up to %2 allowed.").arg(texts[0], texts[1])}
               : Said{CheckText::tr("The blanks (%1) are %2 apart, more than %3 (%4).")
                          .arg(tubeNames(tubes), texts[0], texts[1], limitOriginName(origin)),
                      CheckText::tr("One of them was pipetted or read wrongly: read them again.")};
    return plainCheck(CheckId::BlankSpread, scope, passed, std::move(said), std::move(tubes));
}

void addBlankChecks(const CheckContext &context, size_t measurand, std::vector<Check> &checks)
{
    const assay::Method &method = context.layout.method();
    const Scope scope{Scope::Kind::Run, {}, scopeMeasurand(method, method.measurands[measurand].id)};
    const std::vector<double> signals = blankSignals(context, measurand);
    const std::vector<int> read = context.layout.measurands()[measurand].blanks;
    const TubeGroup blanks{scope, measurand, tubesOfRole(context.layout.run(), run::Role::Blank)};
    // Blanks that stand in the rack unread are readings that are missing; those read implausibly are said to
    // be just that.
    const bool toCome = read.empty() && !blanks.tubes.empty();
    if (!context.layout.measurands()[measurand].blanksLost && !toCome)
        checks.push_back(blankMissing(scope, static_cast<int>(read.size())));
    if (!blanks.tubes.empty()) {
        for (Check &check : readingChecks(context, blanks))
            checks.push_back(std::move(check));
        for (Check &check : seriesChecks(context, blanks))
            checks.push_back(std::move(check));
        for (Check &check : timingChecks(context, blanks))
            checks.push_back(std::move(check));
    }
    if (method.acceptance.maxBlankSignal && !signals.empty())
        checks.push_back(blankHigh(scope, *quality::mean(signals), *method.acceptance.maxBlankSignal, read));
    if (signals.size() > 1)
        checks.push_back(blankSpread(context, scope, signals, read));
}

void addLotChecks(const CheckContext &context, std::vector<Check> &checks)
{
    const run::Run &run = context.layout.run();
    if (!run.startedAt)
        return;
    for (const run::LotUse &lot : run.lots) {
        if (!lot.expires)
            continue;
        const bool passed = run.startedAt->date() <= *lot.expires;
        const assay::Component *component = assay::findComponent(context.layout.method(), lot.component);
        const QString what = component ? component->name : lot.component;
        const QString date = assay::shownDay(*lot.expires);
        checks.push_back(plainCheck(
            CheckId::LotExpired, {}, passed,
            passed ? Said{CheckText::tr("%1, lot %2, is in date until %3.").arg(what, lot.lot, date)}
                   : Said{CheckText::tr("%1, lot %2, expired on %3.").arg(what, lot.lot, date),
                          CheckText::tr("Repeat with a lot in date, or say why it may stand.")}));
    }
}

bool calibrates(const CheckContext &context, size_t measurand, const std::vector<int> &tubes)
{
    return std::ranges::any_of(
        context.layout.measurands()[measurand].calibration,
        [&](const CalibrationPoint &point) { return std::ranges::find(tubes, point.tube) != tubes.end(); });
}

void addRecoveryCheck(const CheckContext &context, const TubeGroup &group, const StandardRecovery &recovery,
                      std::vector<Check> &checks)
{
    const std::optional<assay::Interval> &limits =
        context.layout.method().acceptance.standardRecovery_percent;
    if (!limits || !recovery.recovery_percent)
        return;
    const QStringList texts = comparedTexts(*recovery.recovery_percent, {limits->lower, limits->upper}, 1);
    const QString range = CheckText::tr("%1 to %2").arg(texts[1], withUnit(texts[2], u"%"_s));
    const QString found = withUnit(texts[0], u"%"_s);
    const int decimals = decimalsFor(recovery.expected_g_per_L, 3);
    const QStringList strengths =
        comparedTexts(*recovery.found_g_per_L, {recovery.expected_g_per_L}, decimals);
    const QString grams = u"g/L"_s;
    const QString facts = CheckText::tr("%1 found, %2 at use")
                              .arg(withUnit(strengths[0], grams), withUnit(strengths[1], grams));
    if (context.layout.run().calibration == run::Calibration::Standard &&
        calibrates(context, group.measurand, group.tubes)) {
        checks.push_back(
            plainCheck(CheckId::StandardRecovery, group.scope, true,
                       {CheckText::tr("This standard calibrates the run and cannot judge itself; a second "
                                      "standard or a control would.")},
                       group.tubes));
        return;
    }
    const bool isControl = run::isControl(context.layout.run(), recovery.standard);
    const bool passed = *recovery.recovery_percent >= limits->lower - 1e-9 &&
                        *recovery.recovery_percent <= limits->upper + 1e-9;
    checks.push_back(plainCheck(
        CheckId::StandardRecovery, group.scope, passed,
        passed ? Said{CheckText::tr("Recovery %1 is within %2 (%3).").arg(found, range, facts)}
               : Said{CheckText::tr("Recovery %1 is outside %2 (%3).").arg(found, range, facts),
                      isControl ? CheckText::tr("Check the control's value and its date, the pipette and the "
                                                "reagents before any result of this run is used.")
                                : CheckText::tr("Check the preparation and age of the standard, the pipette and "
                                                "the reagents before any result of this run is used.")},
        group.tubes));
}

void addAgeCheck(const CheckContext &context, const run::Standard &standard, std::vector<Check> &checks)
{
    const std::optional<StandardAge> age = ageOf(standard, context.layout.run(), context.rules);
    if (!age)
        return;
    const bool isControl = run::isControl(context.layout.run(), standard.id);
    Said said;
    if (!age->tooOld)
        said = {isControl ? CheckText::tr("The control was fresh enough: %1.")
                          : CheckText::tr("The standard was fresh enough: %1.")};
    else if (isControl)
        said = {CheckText::tr("The control was too old: %1."), CheckText::tr("Take a fresh one.")};
    else
        said = {CheckText::tr("The standard was too old: %1."), CheckText::tr("Make a fresh one.")};
    said.finding = said.finding.arg(age->facts());
    checks.push_back(plainCheck(CheckId::StandardTooOld, {Scope::Kind::Standard, standard.id, {}}, !age->tooOld,
                                std::move(said)));
}

void addStandardChecks(const CheckContext &context, const run::Standard &standard, std::vector<Check> &checks)
{
    const std::vector<int> tubes = tubesOfStandard(context.layout.run(), standard.id);
    if (tubes.empty())
        return;
    if (standard.concentration_g_per_L > 0)
        addAgeCheck(context, standard, checks);
    const assay::Method &method = context.layout.method();
    for (size_t m = 0; m < method.measurands.size(); ++m) {
        const assay::Measurand &measurand = method.measurands[m];
        if (!Layout::holds(standard, measurand))
            continue;
        const TubeGroup group{
            {Scope::Kind::Standard, standard.id, scopeMeasurand(method, measurand.id)}, m, tubes};
        for (Check &check : readingChecks(context, group))
            checks.push_back(std::move(check));
        for (Check &check : directionChecks(context, group))
            checks.push_back(std::move(check));
        // The levels of a calibration line reach from nothing to the window's top on purpose.
        if (context.layout.run().calibration != run::Calibration::Line) {
            for (Check &check : windowChecks(context, group))
                checks.push_back(std::move(check));
        }
        for (Check &check : seriesChecks(context, group))
            checks.push_back(std::move(check));
        for (Check &check : timingChecks(context, group))
            checks.push_back(std::move(check));
        const auto recovery =
            std::ranges::find_if(context.evaluation.standards, [&](const StandardRecovery &r) {
                return r.standard == standard.id && r.measurand == measurand.id;
            });
        if (recovery != context.evaluation.standards.end())
            addRecoveryCheck(context, group, *recovery, checks);
    }
}

} // namespace

std::vector<Check> runChecks(const CheckContext &context)
{
    std::vector<Check> checks;
    for (size_t m = 0; m < context.layout.measurands().size(); ++m)
        addBlankChecks(context, m, checks);
    addLotChecks(context, checks);
    for (const run::Standard &standard : context.layout.run().standards)
        addStandardChecks(context, standard, checks);
    return checks;
}

} // namespace plateau::evaluation
