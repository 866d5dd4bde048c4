// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/distances.h"

#include "core/evaluation/checkfacts.h"
#include "core/evaluation/format.h"

#include <algorithm>
#include <cmath>

namespace plateau::evaluation {

namespace {

// Common practice, no source: see doubts.h.
constexpr double smallestSlip = 0.05;
constexpr double scaledDeviations = 3;
constexpr double relativeScatter = 0.03;
constexpr size_t fewestOthers = 3;

constexpr int distanceDecimals = 3;

/// As by a slipped decimal point.
bool isSlip(double absorbance, const std::vector<double> &others)
{
    const double median = medianOf(others);
    const double distance = std::abs(absorbance - median);
    if (distance <= std::max(smallestSlip, scaledDeviations * scaledDeviationOf(others, median)))
        return false;
    const auto [less, more] = std::minmax(absorbance, median);
    return less <= 0 || more > std::sqrt(10.0) * less;
}

/// How far a first reading may be from the median of tubes like it.
double scatterAllowed(const std::vector<double> &others, double median, const Rules &rules)
{
    return std::max({rules.firstReadingScatter, relativeScatter * std::abs(median),
                     scaledDeviations * scaledDeviationOf(others, median)});
}

class Distance
{
public:
    Distance(const OtherTubes &others, int tube, const QString &reading, double absorbance,
             const Rules &rules)
        : m_others(others)
        , m_tube(tube)
        , m_reading(reading)
        , m_absorbance(absorbance)
        , m_rules(rules)
    {
    }

    std::optional<Doubt> fromReplicates(const ReadTubes &replicates) const
    {
        const QString read = CheckText::tr("%1 with the same contents read").arg(tubeNames(replicates.tubes));
        if (isSlip(m_absorbance, replicates.absorbances))
            return slip(Doubt::Kind::FarFromReplicate, replicates.absorbances, read);
        if (!m_others.isFirstReading())
            return std::nullopt;
        return scattered(Doubt::Kind::FarFromReplicate, replicates.absorbances, read);
    }

    /// Without a replicate.
    std::optional<Doubt> fromAll() const
    {
        const ReadTubes own = m_others.ofSameContents();
        if (!own.isEmpty() && !isSlip(m_absorbance, own.absorbances))
            return std::nullopt; // the sample is known to look like that
        const ReadTubes all = m_others.all();
        if (!all.isEmpty() && isSlip(m_absorbance, all.absorbances))
            return slip(Doubt::Kind::FarFromOthers, all.absorbances,
                        CheckText::tr("the other tubes with the same reagents read about"));
        return std::nullopt;
    }

    std::optional<Doubt> fromAlike(bool isClear) const
    {
        const std::vector<double> clear = m_others.clear().absorbances;
        const QString clearRead = CheckText::tr("%1 blanks and standards read about").arg(clear.size());
        // A sample may be coloured: it lies above what is clear, and not below.
        const bool below = !clear.empty() && m_absorbance < medianOf(clear);
        if (isClear || below) {
            const auto doubt = scattered(Doubt::Kind::FarFromOthers, clear, clearRead, fewestOthers);
            if (isClear || doubt)
                return doubt;
        }
        const std::vector<double> samples = m_others.samples();
        return scattered(Doubt::Kind::FarFromOthers, samples,
                         CheckText::tr("%1 other samples read about").arg(samples.size()), fewestOthers);
    }

private:
    Doubt slip(Doubt::Kind kind, const std::vector<double> &others, const QString &read) const
    {
        const QStringList texts = comparedTexts(m_absorbance, {medianOf(others)}, distanceDecimals);
        return {kind,
                CheckText::tr("%1: %2 is %3, but %4 %5. Look for a slipped decimal point or the wrong tube.")
                    .arg(capitalised(tubeName(m_tube)), m_reading, texts[0], read, texts[1]),
                true};
    }

    std::optional<Doubt> scattered(Doubt::Kind kind, const std::vector<double> &others, const QString &read,
                                   size_t fewest = 1) const
    {
        if (others.size() < fewest)
            return std::nullopt;
        const double median = medianOf(others);
        const double allowed = scatterAllowed(others, median, m_rules);
        // 0.151 - 0.121 is a hair above 0.030
        if (std::abs(m_absorbance - median) <= allowed + 1e-12)
            return std::nullopt;
        const QStringList texts = comparedTexts(m_absorbance, {median}, distanceDecimals);
        return Doubt{kind,
                     CheckText::tr("%1: %2 is %3, but %4 %5, and the same reagents scatter by %6 at most. "
                                   "Look for a reagent left out or added twice, bubbles, or a coloured "
                                   "sample.")
                         .arg(capitalised(tubeName(m_tube)), m_reading, texts[0], read, texts[1],
                              absorbanceText(allowed)),
                     true};
    }

    const OtherTubes &m_others;
    int m_tube;
    const QString &m_reading;
    double m_absorbance;
    const Rules &m_rules;
};

/// How far the signals of two tubes may be apart, with a word on where that comes from.
std::pair<double, QString> signalLimit(const SampleView &view, int tube, std::vector<int> replicates)
{
    const CheckContext &context = view.context;
    const run::Role role = context.tube(tube).role;
    if (role == run::Role::Blank || role == run::Role::SampleBlank) {
        const auto [limit, origin] = blankSpreadLimit(context, 2);
        return {limit, limitOriginName(origin)};
    }
    const double worth_g_per_L = signalWorth_g_per_L(view, tube);
    replicates.push_back(tube);
    // Of their mean, as the check of the spread will have it.
    double sum = 0;
    for (const int each : replicates) {
        const TubeValue &value = context.value(each, view.measurand);
        sum += value.netSignal.value_or(value.signal.value_or(0));
    }
    const double mean = sum / static_cast<double>(replicates.size());
    auto [limit_g_per_L, origin] = rangeLimit(view, mean * worth_g_per_L, 2, replicates);
    return {limit_g_per_L / worth_g_per_L, std::move(origin)};
}

} // namespace

std::optional<Doubt> farInReading(const OtherTubes &others, int tube, const QString &reading,
                                  double absorbance, const Rules &rules)
{
    const Distance distance(others, tube, reading, absorbance, rules);
    const ReadTubes replicates = others.replicates();
    if (!replicates.isEmpty())
        return distance.fromReplicates(replicates);
    if (!others.isFirstReading())
        return std::nullopt;
    if (auto doubt = distance.fromAll())
        return doubt;
    return others.ofSameContents().isEmpty() ? distance.fromAlike(others.isClear()) : std::nullopt;
}

std::optional<Doubt> farFromUsual(const OtherTubes &others, int tube, const QString &reading, double absorbance,
                                  double usualBlank)
{
    if (!others.isFirstReading() || !others.isClear() || !others.all().isEmpty() || !isSlip(absorbance, {usualBlank}))
        return std::nullopt;
    const QStringList texts = comparedTexts(absorbance, {usualBlank}, distanceDecimals);
    return Doubt{Doubt::Kind::FarFromOthers,
                 CheckText::tr("%1: %2 is %3, but blanks of earlier runs by this method read about %4. Look for a slipped "
                               "decimal point, and that the photometer was set to zero as always.")
                     .arg(capitalised(tubeName(tube)), reading, texts[0], texts[1]),
                 true};
}

std::optional<Doubt> farInSignal(const SampleView &view, int tube, const std::vector<int> &replicates)
{
    // In the words of the window's checks where there is a blank; the distance is the same.
    const bool isNet = view.context.value(tube, view.measurand).netSignal.has_value();
    const auto signalOf = [&](int each) {
        const TubeValue &value = view.context.value(each, view.measurand);
        return isNet ? value.netSignal : value.signal;
    };
    const std::optional<double> own = signalOf(tube);
    std::vector<double> signals;
    std::vector<int> compared;
    for (const int other : replicates) {
        const std::optional<double> signal = signalOf(other);
        if (!signal || !view.context.term(other, view.measurand).trusted())
            continue;
        signals.push_back(*signal);
        compared.push_back(other);
    }
    if (!own || signals.empty())
        return std::nullopt;
    const double median = medianOf(signals);
    const auto [limit, origin] = signalLimit(view, tube, compared);
    if (!(std::abs(*own - median) > limit + 1e-12))
        return std::nullopt;
    const QStringList texts = comparedTexts(*own, {median}, distanceDecimals);
    return Doubt{
        Doubt::Kind::FarFromReplicate,
        (isNet ? CheckText::tr(
                     "%1: with this its net signal is %2, but %3 with the same contents gave %4, and at most %6 is allowed "
                     "between them (%5). Look for a typing error, the wrong tube or a pipetting error.")
               : CheckText::tr(
                     "%1: with this its signal is %2, but %3 with the same contents gave %4, and at most %6 is allowed "
                     "between them (%5). Look for a typing error, the wrong tube or a pipetting error."))
            .arg(capitalised(tubeName(tube)), texts[0], tubeNames(compared), texts[1], origin,
                 absorbanceText(limit)),
        true};
}

} // namespace plateau::evaluation
