// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/checks.h"

#include <algorithm>
#include <initializer_list>
#include <optional>
#include <span>
#include <utility>
#include <vector>

namespace plateau::evaluation {

/// Everything the checks of one result share.
struct SampleView {
    const CheckContext &context;
    const run::Sample &sample;
    size_t measurand;
    Scope scope;
    /// The result's.
    QString unit;
    std::vector<int> resultTubes;
    std::vector<int> spikedTubes;
    std::vector<int> blankTubes;

    TubeGroup group(std::initializer_list<const std::vector<int> *> parts) const
    {
        TubeGroup all{scope, measurand, {}};
        for (const std::vector<int> *part : parts)
            all.tubes.insert(all.tubes.end(), part->begin(), part->end());
        std::ranges::sort(all.tubes);
        return all;
    }
};

SampleView viewOf(const CheckContext &context, const Result &result);

/// What one unit of signal is worth in the tube, in g/L of the sample as received, by absorptivity.
double signalWorth_g_per_L(const SampleView &view, int tube);
/// How far apart n values may lie, in g/L, with a word on where that comes from. The method's r is for two
/// results; for more the critical range of ISO 5725-6 grows with f(n)/f(2). The laboratory's own limit is
/// relative, and near nothing a part of nothing: there the noise of the two readings of a tube is the limit.
std::pair<double, QString> rangeLimit(const SampleView &view, double mean_g_per_L, int n,
                                      std::span<const int> tubes);
/// duplicate-spread among the tubes of one sample volume, volume-proportionality among the volumes.
void addAgreementChecks(const SampleView &view, std::vector<Check> &checks);
/// Gives the failed window checks of the sample the advice for its repeat, in data and in words; none where
/// the readings themselves cannot be trusted.
void addAdvice(const SampleView &view, std::vector<Check> &checks);
/// The limit below which the result is to be reported, where its signal is too low and no repeat would help.
std::optional<double> lessThan(const SampleView &view, const Result &result);
std::optional<double> greaterThan(const Result &result);
bool failedIn(const std::vector<Check> &checks, CheckId id);

} // namespace plateau::evaluation
