// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/checkfacts.h"

#include "core/assay/localday.h"
#include "core/evaluation/format.h"
#include "core/quality/distributions.h"
#include "core/quality/statistics.h"
#include "core/run/waits.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

namespace {

constexpr int absorbanceDecimals = 3;

QString atLeast(const QString &limit)
{
    return CheckText::tr("at least %1").arg(limit);
}

CheckFact from(double value, double limit)
{
    const QStringList texts = comparedTexts(value, {limit}, absorbanceDecimals);
    return {texts[0], atLeast(texts[1]), LimitOrigin::Method,
            value > 0 ? limit / value : std::numeric_limits<double>::max()};
}

/// Those of a list that stand out, or none of them.
CheckFact counted(const Check &check, const QString &limit, LimitOrigin origin)
{
    return {check.passed ? CheckText::tr("none") : tubeNames(check.tubes), limit, origin};
}

/// The check as it would be of all tubes of its scope.
Check ofScope(const Check &check)
{
    Check whole = check;
    whole.tubes.clear();
    return whole;
}

std::vector<double> netSignals(const CheckContext &context, const Check &check, size_t measurand)
{
    std::vector<double> signals;
    for (const int tube : context.layout.resultTubes(check.scope.id)) {
        if (const auto &net = context.value(tube, measurand).netSignal)
            signals.push_back(*net);
    }
    if (check.scope.kind == Scope::Kind::Standard) {
        for (const int tube : tubesOf(context, ofScope(check))) {
            if (const auto &net = context.value(tube, measurand).netSignal)
                signals.push_back(*net);
        }
    }
    return signals;
}

double shown(const run::Reading &reading)
{
    const auto *series = std::get_if<run::ReadingSeries>(&reading);
    return series ? series->back().absorbance : std::get<double>(reading);
}

/// only: the one reading that counts; empty: all that the measurand takes.
std::vector<double> absorbancesOf(const CheckContext &context, const Check &check, size_t measurand,
                                  const QString &only = {})
{
    std::vector<double> absorbances;
    for (const int tube : tubesOf(context, ofScope(check))) {
        if (!context.term(tube, measurand).trusted())
            continue;
        for (const QString &name : assay::readingsOf(context.layout.method().measurands[measurand].signal)) {
            const auto &readings = context.tube(tube).readings;
            const auto found = readings.find(name);
            if (found != readings.end() && (only.isEmpty() || only == name))
                absorbances.push_back(shown(found->second));
        }
    }
    return absorbances;
}

CheckFact blankSpread(const CheckContext &context, size_t measurand)
{
    std::vector<double> signals;
    for (const int tube : context.layout.measurands()[measurand].blanks)
        signals.push_back(*context.value(tube, measurand).signal);
    if (signals.size() < 2)
        return {};
    const auto [limit, origin] = blankSpreadLimit(context, int(signals.size()));
    return upTo(quality::range(signals), limit, absorbanceDecimals, {}, origin);
}

/// "A2 after 10 to 15 min", of every reading that the method has a wait before.
QString waitsText(const CheckContext &context, const Check &check, size_t measurand)
{
    const std::vector<int> tubes = tubesOf(context, check);
    const std::vector<QString> readings =
        assay::readingsOf(context.layout.method().measurands[measurand].signal);
    QStringList waits;
    for (const int tube : tubes) {
        for (const run::TubeAct &act : run::tubeActs(context.layout.method(), context.tube(tube))) {
            if (act.kind != run::TubeAct::Kind::Read || !act.wait_min ||
                std::ranges::find(readings, act.name) == readings.end())
                continue;
            const bool isEarly = check.id == CheckId::ReadingEarly;
            const QString wait =
                withUnit(plainText(isEarly ? act.wait_min->lower : act.wait_min->upper), u"min"_s);
            waits
                << (isEarly ? CheckText::tr("%1 from %2") : CheckText::tr("%1 up to %2")).arg(act.name, wait);
        }
    }
    waits.removeDuplicates();
    return waits.join(CheckText::tr("; "));
}

QString sampleRange(const CheckContext &context)
{
    const assay::Method &method = context.layout.method();
    const assay::Component *sample = assay::findComponent(method, method.sample);
    return sample && sample->range_mL ? CheckText::tr("%1 to %2")
                                            .arg(plainText(sample->range_mL->lower),
                                                 withUnit(plainText(sample->range_mL->upper), u"mL"_s))
                                      : QString();
}

CheckFact lotDate(const CheckContext &context, const run::LotUse *lot)
{
    const std::optional<QDateTime> &used = context.layout.run().startedAt;
    if (!lot || !lot->expires || !used)
        return {};
    return {assay::shownDay(used->date()),
            CheckText::tr("until %1").arg(assay::shownDay(*lot->expires)), LimitOrigin::Label,
            // The lot that goes out of date first is the nearest.
            -static_cast<double>(lot->expires->toJulianDay())};
}

CheckFact signalFact(const CheckContext &context, const Check &check, size_t measurand)
{
    const assay::Window &window = context.layout.method().window;
    const std::vector<double> signals = netSignals(context, check, measurand);
    if (signals.empty())
        return {};
    if (check.id == CheckId::SignalLow)
        return from(*std::ranges::min_element(signals), window.minSignal);
    return upTo(*std::ranges::max_element(signals), window.maxSignal, absorbanceDecimals, {},
                LimitOrigin::Method);
}

CheckFact absorbanceFact(const CheckContext &context, const Check &check, size_t measurand)
{
    const assay::Method &method = context.layout.method();
    const bool isReserve = check.id == CheckId::ReserveLow;
    const QString later = assay::laterReading(method.measurands[measurand].signal);
    const std::vector<double> read = absorbancesOf(context, check, measurand, isReserve ? later : QString());
    if (read.empty() || !(isReserve ? method.window.reserveAbsorbance : method.window.maxAbsorbance))
        return {};
    if (isReserve)
        return from(*std::ranges::min_element(read), *method.window.reserveAbsorbance);
    return upTo(*std::ranges::max_element(read), *method.window.maxAbsorbance, absorbanceDecimals, {},
                LimitOrigin::Method);
}

CheckFact blankFact(const CheckContext &context, const Check &check, size_t measurand)
{
    if (check.id == CheckId::BlankSpread)
        return blankSpread(context, measurand);
    const BlankMean &blank = context.evaluation.blanks[measurand];
    if (check.id == CheckId::BlankMissing)
        return {QString::number(blank.n), atLeast(u"1"_s), LimitOrigin::CommonPractice};
    const std::optional<double> &limit = context.layout.method().acceptance.maxBlankSignal;
    return blank.mean && limit ? upTo(*blank.mean, *limit, absorbanceDecimals, {}, LimitOrigin::Method)
                               : CheckFact();
}

/// Of those that a number stands for by itself.
CheckFact measuredFact(const CheckContext &context, const Check &check, size_t measurand)
{
    switch (check.id) {
    case CheckId::SignalLow:
    case CheckId::SignalHigh:
        return signalFact(context, check, measurand);
    case CheckId::AbsorbanceHigh:
    case CheckId::ReserveLow:
        return absorbanceFact(context, check, measurand);
    case CheckId::BlankMissing:
    case CheckId::BlankHigh:
    case CheckId::BlankSpread:
        return blankFact(context, check, measurand);
    case CheckId::DuplicateSpread:
    case CheckId::VolumeProportionality:
        return agreementFact(context, check, measurand);
    case CheckId::StandardRecovery:
        return standardFact(context, check, measurand);
    case CheckId::SpikeRecovery:
        return spikeFact(context, check, measurand);
    case CheckId::ReadingEarly:
    case CheckId::ReadingLate:
        return counted(check, waitsText(context, check, measurand), LimitOrigin::Method);
    default:
        return {};
    }
}

} // namespace

BlankSpreadLimit blankSpreadLimit(const CheckContext &context, int blanks)
{
    const double noise =
        quality::criticalRangeFactor(blanks) * std::sqrt(2.0) * context.absorbanceUncertainty;
    const double rule = context.rules.maxBlankSpread;
    return noise > rule ? BlankSpreadLimit{noise, LimitOrigin::Noise}
                        : BlankSpreadLimit{rule, originOf(rule == Rules{}.maxBlankSpread)};
}

CheckFact factOf(const CheckContext &context, const Check &check, const run::LotUse *lot)
{
    const assay::Interval &plausible = context.rules.plausibleAbsorbance;
    switch (check.id) {
    case CheckId::ReadingMissing:
        return counted(check, CheckText::tr("none"), LimitOrigin::Method);
    case CheckId::ReadingImplausible:
        return counted(check,
                       CheckText::tr("%1 to %2").arg(plainText(plausible.lower), plainText(plausible.upper)),
                       originOf(plausible == Rules{}.plausibleAbsorbance));
    case CheckId::WrongDirection:
        return counted(check,
                       context.layout.method().direction == assay::Direction::Rising
                           ? CheckText::tr("absorbance rises")
                           : CheckText::tr("absorbance falls"),
                       LimitOrigin::Method);
    case CheckId::ReactionUnfinished:
        return counted(check, CheckText::tr("change within the noise"), LimitOrigin::CommonPractice);
    case CheckId::SampleVolumeOutsideRange:
        return counted(check, sampleRange(context), LimitOrigin::Method);
    case CheckId::StandardTooOld:
        return ageFact(context, check);
    case CheckId::LotExpired:
        return lotDate(context, lot);
    default:
        break;
    }
    const std::optional<size_t> measurand = measurandOf(context, check);
    return measurand ? measuredFact(context, check, *measurand) : CheckFact();
}

} // namespace plateau::evaluation
