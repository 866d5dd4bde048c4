// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/equipment/outcome.h"

#include "core/equipment/photometric.h"
#include "core/equipment/protocol.h"
#include "core/equipment/series.h"
#include "core/equipment/volumeoutcome.h"
#include "core/evaluation/format.h"
#include "core/quality/statistics.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace plateau::equipment {

using namespace Qt::StringLiterals;
using evaluation::plainText;
using evaluation::withUnit;

namespace {

struct OutcomeWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::equipment::Outcome)
};

QString keyedSource(const Check &check)
{
    return check.source.trimmed().isEmpty() ? OutcomeWording::tr("keyed with the check")
                                            : check.source.trimmed();
}

QString usual()
{
    return OutcomeWording::tr("common practice, no source");
}

Outcome ofWavelength(const Check &check)
{
    Outcome outcome;
    for (const auto &row : check.rows) {
        if (!row[1])
            continue;
        const double tolerance_nm = wavelengthTolerance_nm(*row[0]);
        outcome.findings.push_back(
            held({OutcomeWording::tr("at %1").arg(withUnit(plainText(*row[0]), u"nm"_s)), *row[1] - *row[0],
                  u"nm"_s, -tolerance_nm, tolerance_nm, true,
                  OutcomeWording::tr("European Pharmacopoeia 2.2.25"), 2}));
    }
    return outcome;
}

Outcome ofAbsorbance(const Check &check)
{
    Outcome outcome;
    double squares = 0;
    for (std::size_t i = 0; i < dichromateBands().size(); ++i) {
        const DichromateBand &band = dichromateBands()[i];
        if (!check.rows[i][1])
            continue;
        const double found = specificAbsorbance(
            *check.rows[i][1], check.conditions.at(band.strong ? u"strong_mg_per_L"_s : u"weak_mg_per_L"_s),
            check.conditions.at(u"pathLength_mm"_s));
        outcome.findings.push_back(held({OutcomeWording::tr("A(1 %, 1 cm) at %1")
                                             .arg(withUnit(QString::number(band.wavelength_nm), u"nm"_s)),
                                         found,
                                         {},
                                         band.lowest,
                                         band.highest,
                                         true,
                                         OutcomeWording::tr("pharmacopoeia, control of absorbances"),
                                         1}));
        squares += std::pow(found / band.specificAbsorbance - 1, 2);
    }
    outcome.figures.scale_percent = 100 * std::sqrt(squares / double(outcome.findings.size()));
    return outcome;
}

Outcome ofNoise(const Item &item, const Check &check)
{
    Outcome outcome;
    const double limit = check.conditions.at(u"noise_limit"_s);
    const double zeroLimit = check.conditions.at(u"zero_limit"_s);
    const QString source = sourceOf(item, check, u"noise_limit"_s, usual());
    const std::vector<double> zero = columnOf(check, 0);
    double largest = *quality::standardDeviation(zero);
    outcome.findings.push_back(held({OutcomeWording::tr("standard deviation of the zero"),
                                     largest,
                                     {},
                                     std::nullopt,
                                     limit,
                                     true,
                                     source,
                                     4}));
    outcome.findings.push_back(held({OutcomeWording::tr("mean of the zero"),
                                     *quality::mean(zero),
                                     {},
                                     -zeroLimit,
                                     zeroLimit,
                                     true,
                                     sourceOf(item, check, u"zero_limit"_s, usual()),
                                     4}));
    const std::vector<double> coloured = columnOf(check, 1);
    if (!coloured.empty()) {
        const double s = *quality::standardDeviation(coloured);
        outcome.findings.push_back(held({OutcomeWording::tr("standard deviation of the coloured cuvette"),
                                         s,
                                         {},
                                         std::nullopt,
                                         limit,
                                         true,
                                         source,
                                         4}));
        largest = std::max(largest, s);
    }
    // The last digit hides anything within half a step to both sides.
    const double digit = check.conditions.at(u"digit"_s) / std::sqrt(12.0);
    outcome.figures.absorbance = std::hypot(largest, digit);
    return outcome;
}

Outcome ofWeighing(const Item &item, const Check &check)
{
    Outcome outcome;
    constexpr double mg_per_g = 1000;
    const double s_mg = mg_per_g * *quality::standardDeviation(columnOf(check, 0));
    outcome.findings.push_back(held({OutcomeWording::tr("standard deviation of one load"), s_mg, u"mg"_s,
                                     std::nullopt, check.conditions.at(u"repeat_limit_mg"_s), true,
                                     sourceOf(item, check, u"repeat_limit_mg"_s, usual()), 3}));
    const double limit_mg = check.conditions.at(u"deviation_limit_mg"_s);
    double largest_mg = 0;
    for (const auto &row : check.rows) {
        if (!row[1] || !row[2])
            continue;
        const double off_mg = mg_per_g * (*row[2] - *row[1]);
        largest_mg = std::max(largest_mg, std::abs(off_mg));
        outcome.findings.push_back(held(
            {OutcomeWording::tr("deviation from the weight of %1").arg(withUnit(plainText(*row[1]), u"g"_s)),
             off_mg, u"mg"_s, -limit_mg, limit_mg, true,
             sourceOf(item, check, u"deviation_limit_mg"_s, usual()), 3}));
    }
    outcome.figures.weighing_mg = std::hypot(s_mg, largest_mg / std::sqrt(3.0));
    return outcome;
}

Outcome ofTemperature(const Item &item, const Check &check)
{
    Outcome outcome;
    const double limit_C = check.conditions.at(u"limit_C"_s);
    double largest_C = 0;
    for (const auto &row : check.rows) {
        if (!row[0] || !row[1])
            continue;
        const double off_C = *row[1] - *row[0];
        largest_C = std::max(largest_C, std::abs(off_C));
        outcome.findings.push_back(
            held({OutcomeWording::tr("at %1").arg(withUnit(plainText(*row[0]), u"°C"_s)), off_C, u"°C"_s,
                  -limit_C, limit_C, true, sourceOf(item, check, u"limit_C"_s, usual()), 2}));
    }
    outcome.figures.temperature_C = largest_C / std::sqrt(3.0);
    return outcome;
}

Outcome ofMatch(const Item &item, const Check &check)
{
    Outcome outcome;
    const std::vector<double> found = columnOf(check, 0);
    outcome.findings.push_back(
        held({OutcomeWording::tr("largest minus smallest of %1 cuvettes").arg(found.size()),
              quality::range(found),
              {},
              std::nullopt,
              check.conditions.at(u"limit"_s),
              true,
              sourceOf(item, check, u"limit"_s, usual()),
              3}));
    outcome.figures.pathLength_percent = check.conditions.at(u"path_percent"_s) / std::sqrt(3.0);
    return outcome;
}

Outcome withoutVerdict(const Item &item, const Check &check)
{
    switch (check.aspect) {
    case Aspect::Volume:
        return volumeOutcome(item, check);
    case Aspect::Wavelength:
        return ofWavelength(check);
    case Aspect::Absorbance:
        return ofAbsorbance(check);
    case Aspect::Noise:
        return ofNoise(item, check);
    case Aspect::Weighing:
        return ofWeighing(item, check);
    case Aspect::Temperature:
        return ofTemperature(item, check);
    default:
        return ofMatch(item, check);
    }
}

} // namespace

QString sourceOf(const Item &item, const Check &check, const QString &key, const QString &offered)
{
    const std::vector<ProtocolField> fields = protocolFor(item, check.aspect).fields;
    const auto field = std::ranges::find(fields, key, &ProtocolField::key);
    return field->usual == check.conditions.at(key) ? offered : keyedSource(check);
}

Finding held(Finding finding)
{
    // What differs from a limit by the last bits of the arithmetic only is that limit.
    const double slack =
        1e-9 * std::max({std::abs(finding.lowest.value_or(0)), std::abs(finding.highest.value_or(0)), 1e-6});
    finding.passed = (!finding.lowest || finding.value >= *finding.lowest - slack) &&
                     (!finding.highest || finding.value <= *finding.highest + slack);
    return finding;
}

std::optional<Outcome> outcomeOf(const Item &item, const Check &check)
{
    // The day is for whoever stores it to judge.
    if (assay::hasErrors(problemsOf(item, check, check.day)))
        return std::nullopt;
    Outcome outcome = withoutVerdict(item, check);
    outcome.passed = std::ranges::all_of(outcome.findings, &Finding::passed);
    return outcome;
}

QString foundText(const Finding &finding)
{
    std::vector<double> limits;
    for (const auto &limit : {finding.lowest, finding.highest}) {
        if (limit)
            limits.push_back(*limit);
    }
    const QStringList texts = evaluation::comparedTexts(finding.value, limits, finding.decimals);
    return finding.unit.isEmpty() ? texts.front() : withUnit(texts.front(), finding.unit);
}

QString limitText(const Finding &finding)
{
    std::vector<double> limits;
    for (const auto &limit : {finding.lowest, finding.highest}) {
        if (limit)
            limits.push_back(*limit);
    }
    if (limits.empty())
        return {};
    const QStringList texts = evaluation::comparedTexts(finding.value, limits, finding.decimals);
    const QString last = finding.unit.isEmpty() ? texts.back() : withUnit(texts.back(), finding.unit);
    if (limits.size() == 2)
        return OutcomeWording::tr("%1 to %2").arg(texts[1], last);
    return finding.highest ? OutcomeWording::tr("at most %1").arg(last)
                           : OutcomeWording::tr("at least %1").arg(last);
}

} // namespace plateau::equipment
