// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/doubts.h"

#include "core/evaluation/checks.h"
#include "core/evaluation/format.h"
#include "core/run/volumes.h"

#include <algorithm>
#include <cmath>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

namespace {

// Common practice, no source: see the header.
constexpr double smallestDoubt = 0.05;
constexpr double scaledDeviations = 3;
/// Turns a median absolute deviation into a standard deviation of normally distributed values.
constexpr double deviationScale = 1.4826;

struct Others {
    std::vector<int> tubes;
    std::vector<double> absorbances;
};

double lastAbsorbance(const run::Reading &reading)
{
    const auto *series = std::get_if<run::ReadingSeries>(&reading);
    return series ? series->back().absorbance : std::get<double>(reading);
}

double medianOf(std::vector<double> values)
{
    std::ranges::sort(values);
    const size_t middle = values.size() / 2;
    return values.size() % 2 == 1 ? values[middle] : (values[middle - 1] + values[middle]) / 2;
}

double scaledDeviationOf(const std::vector<double> &values, double median)
{
    std::vector<double> deviations;
    for (const double value : values)
        deviations.push_back(std::abs(value - median));
    return deviationScale * medianOf(std::move(deviations));
}

bool isFar(double absorbance, const std::vector<double> &others)
{
    const double median = medianOf(others);
    const double distance = std::abs(absorbance - median);
    if (distance <= std::max(smallestDoubt, scaledDeviations * scaledDeviationOf(others, median)))
        return false;
    const auto [less, more] = std::minmax(absorbance, median);
    return less <= 0 || more > std::sqrt(10.0) * less;
}

QString sentenceOf(const std::vector<Check> &checks, CheckId id)
{
    const auto found =
        std::ranges::find_if(checks, [id](const Check &check) { return check.id == id && !check.passed; });
    return found == checks.end() ? QString() : capitalised(found->message);
}

/// One reading of one tube under judgement.
class Judgement
{
public:
    Judgement(const assay::Method &method, const run::Run &run, int tube, const QString &reading,
              double absorbance, const Rules &rules)
        : m_method(method)
        , m_run(run)
        , m_tube(tube)
        , m_reading(reading)
        , m_absorbance(absorbance)
        , m_rules(rules)
    {
    }

    QString sentence() const
    {
        // Alone in its tube, so that nothing is said again of what was read there before.
        const std::vector<Check> alone = checks(onlyThis(), readingChecks);
        if (const QString implausible = sentenceOf(alone, CheckId::ReadingImplausible);
            !implausible.isEmpty())
            return implausible;
        if (const QString wrong = sentenceOf(checks(withThis(), directionChecks), CheckId::WrongDirection);
            !wrong.isEmpty())
            return wrong;
        if (const QString high = sentenceOf(alone, CheckId::AbsorbanceHigh); !high.isEmpty())
            return high;
        if (const QString blank = blankSignal(); !blank.isEmpty())
            return blank;
        return distance();
    }

private:
    const run::Tube &content() const { return m_run.tubes[static_cast<size_t>(m_tube)]; }

    run::Run withThis() const
    {
        run::Run run = m_run;
        run.tubes[static_cast<size_t>(m_tube)].readings[m_reading] = m_absorbance;
        return run;
    }

    run::Run onlyThis() const
    {
        run::Run run = withThis();
        run.tubes[static_cast<size_t>(m_tube)].readings = {{m_reading, m_absorbance}};
        return run;
    }

    /// Of the tube alone, as every measurand sees it that rests on the reading.
    std::vector<Check> checks(const run::Run &run,
                              std::vector<Check> (*look)(const CheckContext &, const TubeGroup &)) const
    {
        const Layout layout(m_method, run, m_rules);
        const Evaluation evaluation = evaluate(m_method, run, m_rules);
        const CheckContext context{layout, evaluation, m_rules, layout.absorbanceUncertainty()};
        std::vector<Check> all;
        for (size_t m = 0; m < layout.measurands().size(); ++m) {
            const std::vector<QString> names = assay::readingsOf(m_method.measurands[m].signal);
            if (std::ranges::find(names, m_reading) == names.end())
                continue;
            for (Check &check : look(context, {{}, m, {m_tube}}))
                all.push_back(std::move(check));
        }
        return all;
    }

    /// Of a blank with this reading, alone in its rack: the first blank has no other to be compared with.
    QString blankSignal() const
    {
        const std::optional<double> limit = m_method.acceptance.maxBlankSignal;
        if (content().role != run::Role::Blank || !limit)
            return {};
        run::Run run = m_run;
        run.tubes = {withThis().tubes[static_cast<size_t>(m_tube)]};
        for (const TubeValue &value : evaluate(m_method, run, m_rules).tubes) {
            if (!value.signal || std::abs(*value.signal) <= *limit || !restsOnThis(value.measurand))
                continue;
            const QStringList texts = comparedTexts(*value.signal, {*limit}, 3);
            return CheckText::tr("%1: with this the blank's signal is %2, and the method allows %3. Look for a "
                                 "slipped decimal point or another tube.")
                .arg(capitalised(tubeName(m_tube)), texts[0], texts[1]);
        }
        return {};
    }

    bool restsOnThis(const QString &measurand) const
    {
        const assay::Measurand *found = assay::findMeasurand(m_method, measurand);
        const std::vector<QString> names = found ? assay::readingsOf(found->signal) : std::vector<QString>();
        return std::ranges::find(names, m_reading) != names.end();
    }

    bool isFirstReading() const { return m_reading == assay::readingsInOrder(m_method).front(); }

    /// Before the starter a sample's own blank and its spiked tube read what the sample reads.
    bool holdsTheSame(const run::Tube &other) const
    {
        const run::Tube &own = content();
        return other.sample == own.sample && other.standard == own.standard &&
               (other.role == own.role || (isFirstReading() && !own.sample.isEmpty()));
    }

    bool hasSameContents(const run::Tube &other) const
    {
        return holdsTheSame(other) &&
               run::sampleVolume_mL(m_method, other) == run::sampleVolume_mL(m_method, content());
    }

    template <class Belongs> Others othersRead(Belongs belongs) const
    {
        Others others;
        for (int i = 0; i < static_cast<int>(m_run.tubes.size()); ++i) {
            const run::Tube &other = m_run.tubes[static_cast<size_t>(i)];
            const auto read = other.readings.find(m_reading);
            if (i == m_tube || read == other.readings.end() || !other.spoilt.isEmpty() || !belongs(other))
                continue;
            others.tubes.push_back(i);
            others.absorbances.push_back(lastAbsorbance(read->second));
        }
        return others;
    }

    QString distance() const
    {
        const Others alike = othersRead([this](const run::Tube &other) { return hasSameContents(other); });
        if (!alike.tubes.empty())
            return isFar(m_absorbance, alike.absorbances)
                       ? distanceText(
                             alike,
                             CheckText::tr("%1 with the same contents read").arg(tubeNames(alike.tubes)))
                       : QString();
        if (!isFirstReading())
            return {};
        const Others all = othersRead([](const run::Tube &) { return true; });
        const Others own = othersRead([this](const run::Tube &other) { return holdsTheSame(other); });
        const bool explained = !own.tubes.empty() && !isFar(m_absorbance, own.absorbances);
        if (all.tubes.empty() || explained || !isFar(m_absorbance, all.absorbances))
            return {};
        return distanceText(all, CheckText::tr("the other tubes with the same reagents read about"));
    }

    QString distanceText(const Others &others, const QString &read) const
    {
        const QStringList texts = comparedTexts(m_absorbance, {medianOf(others.absorbances)}, 3);
        return CheckText::tr("%1: %2 is %3, but %4 %5. Look for a slipped decimal point or another tube.")
            .arg(capitalised(tubeName(m_tube)), m_reading, texts[0], read, texts[1]);
    }

    const assay::Method &m_method;
    const run::Run &m_run;
    int m_tube;
    const QString &m_reading;
    double m_absorbance;
    const Rules &m_rules;
};

} // namespace

QString doubtAbout(const assay::Method &method, const run::Run &run, int tube, const QString &reading,
                   double absorbance, const Rules &rules)
{
    return Judgement(method, run, tube, reading, absorbance, rules).sentence();
}

} // namespace plateau::evaluation
