// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/othertubes.h"

#include "core/run/volumes.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

namespace plateau::evaluation {

namespace {

double lastAbsorbance(const run::Reading &reading)
{
    const auto *series = std::get_if<run::ReadingSeries>(&reading);
    return series ? series->back().absorbance : std::get<double>(reading);
}

} // namespace

double medianOf(std::vector<double> values)
{
    std::ranges::sort(values);
    const size_t middle = values.size() / 2;
    return values.size() % 2 == 1 ? values[middle] : (values[middle - 1] + values[middle]) / 2;
}

double scaledDeviationOf(const std::vector<double> &values, double median)
{
    /// Turns a median absolute deviation into a standard deviation of normally distributed values.
    constexpr double deviationScale = 1.4826;
    std::vector<double> deviations;
    deviations.reserve(values.size());
    for (const double value : values)
        deviations.push_back(std::abs(value - median));
    return deviationScale * medianOf(std::move(deviations));
}

OtherTubes::OtherTubes(const assay::Method &method, const run::Run &run, int tube, const QString &reading)
    : m_method(method)
    , m_run(run)
    , m_tube(tube)
    , m_reading(reading)
{
}

bool OtherTubes::isFirstReading() const
{
    return m_reading == assay::readingsInOrder(m_method).front();
}

bool OtherTubes::holdsTheSame(const run::Tube &other) const
{
    return other.sample == own().sample && other.standard == own().standard &&
           (other.role == own().role || (isFirstReading() && !own().sample.isEmpty()));
}

bool OtherTubes::isReplicate(const run::Tube &other) const
{
    return holdsTheSame(other) &&
           run::sampleVolume_mL(m_method, other) == run::sampleVolume_mL(m_method, own());
}

template <class Belongs> ReadTubes OtherTubes::readWhere(Belongs belongs) const
{
    ReadTubes others;
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

ReadTubes OtherTubes::replicates() const
{
    return readWhere([this](const run::Tube &other) { return isReplicate(other); });
}

ReadTubes OtherTubes::ofSameContents() const
{
    return readWhere([this](const run::Tube &other) { return holdsTheSame(other); });
}

ReadTubes OtherTubes::all() const
{
    return readWhere([](const run::Tube &) { return true; });
}

ReadTubes OtherTubes::clear() const
{
    return readWhere([](const run::Tube &other) { return other.sample.isEmpty(); });
}

std::vector<double> OtherTubes::samples() const
{
    const ReadTubes read = readWhere(
        [this](const run::Tube &other) { return !other.sample.isEmpty() && other.sample != own().sample; });
    std::map<QString, std::vector<double>> bySample;
    for (size_t i = 0; i < read.tubes.size(); ++i)
        bySample[m_run.tubes[static_cast<size_t>(read.tubes[i])].sample].push_back(read.absorbances[i]);
    std::vector<double> middles;
    middles.reserve(bySample.size());
    for (auto &[sample, absorbances] : bySample)
        middles.push_back(medianOf(std::move(absorbances)));
    return middles;
}

std::optional<int> OtherTubes::neighbour() const
{
    const auto own_min = own().readAt_min.find(m_reading);
    const double now_min =
        own_min == own().readAt_min.end() ? std::numeric_limits<double>::infinity() : own_min->second;
    std::optional<int> before;
    double before_min = -1;
    bool anyTime = false;
    for (const int i : all().tubes) {
        const auto &times_min = m_run.tubes[static_cast<size_t>(i)].readAt_min;
        const auto read_min = times_min.find(m_reading);
        if (read_min == times_min.end())
            continue;
        anyTime = true;
        if (read_min->second <= now_min && read_min->second >= before_min) {
            before = i;
            before_min = read_min->second;
        }
    }
    if (!anyTime && m_tube > 0 && m_run.tubes[static_cast<size_t>(m_tube - 1)].readings.contains(m_reading))
        before = m_tube - 1;
    if (!before || isReplicate(m_run.tubes[static_cast<size_t>(*before)]))
        return std::nullopt;
    return before;
}

double OtherTubes::absorbanceOf(int tube) const
{
    return lastAbsorbance(m_run.tubes[static_cast<size_t>(tube)].readings.at(m_reading));
}

} // namespace plateau::evaluation
