// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "core/run/run.h"

#include <functional>
#include <random>
#include <vector>

namespace plateau::published {

/// The uncertain inputs of a calculation, either at their stated values or drawn from normal distributions
/// (JCGM 101: propagation of distributions). Every call is a new, independent draw.
class Inputs
{
public:
    /// At their stated values.
    Inputs() = default;
    explicit Inputs(unsigned seed)
        : m_engine(seed)
        , m_drawn(true)
    {
    }

    double drawn(double value, double standardUncertainty)
    {
        return m_drawn ? value + standardUncertainty * m_normal(m_engine) : value;
    }
    /// 1, with a relative standard uncertainty in percent.
    double factor(double percent) { return drawn(1, percent / 100); }

private:
    std::mt19937_64 m_engine;
    std::normal_distribution<double> m_normal;
    bool m_drawn = false;
};

/// The result of a run as a plain function of its inputs, written out by hand in the test.
using HandCalculation = std::function<double(Inputs &)>;

struct Distribution {
    double mean = 0;
    double standardDeviation = 0;
    /// Of the standard deviation, from the draws' fourth moment.
    double standardError = 0;
    /// Ends of the central 95.45 %, each with this standard error.
    double lower = 0;
    double upper = 0;
    double endStandardError = 0;
};
Distribution propagate(const HandCalculation &calculation, int draws, unsigned seed);

/// The evaluation's result against the hand calculation: the value to rounding, the combined standard
/// uncertainty within four standard errors of the draws, and the ends of the expanded interval within those
/// of the draws and a twentieth of u, which is what the curvature of the quotients makes at relative
/// uncertainties of about 1 %. (That is stricter than JCGM 101:2008, clause 8, with one significant digit;
/// clause from memory.)
void expectSameUncertainty(const evaluation::Result &result, const HandCalculation &calculation);

} // namespace plateau::published
