// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/checks.h"

#include <algorithm>
#include <initializer_list>
#include <optional>
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
