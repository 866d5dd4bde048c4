// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/model.h"
#include "core/evaluation/uncertainty.h"

#include <boost/math/differentiation/autodiff.hpp>

#include <memory>
#include <span>
#include <vector>

namespace plateau::evaluation {

using Differential = boost::math::differentiation::autodiff_fvar<double, 1>;

/// Takes one input after the other for the variable and lets the Model say how the result moves with it.
class Sensitivities
{
public:
    Sensitivities(const Layout &layout, const MeasurandTerms &terms, const run::Sample &sample,
                  std::span<const int> tubes)
        : m_index(layout, sample.dilution.size(), terms.calibration.size())
        , m_sample(sample)
        , m_tubes(tubes)
        , m_input(inputValues<Differential>(layout, m_index))
        , m_model(layout, terms, m_index, m_input)
    {
    }

    const InputIndex &index() const { return m_index; }

    double to(size_t input)
    {
        const Differential value = m_input[input];
        m_input[input] = boost::math::differentiation::make_fvar<double, 1>(static_cast<double>(value));
        const double sensitivity = m_model.result(m_tubes, m_sample).derivative(1);
        m_input[input] = value;
        return sensitivity;
    }

private:
    InputIndex m_index;
    const run::Sample &m_sample;
    std::span<const int> m_tubes;
    std::vector<Differential> m_input;
    Model<Differential> m_model;
};

/// The same for the sum of factor x result over what a run contributes.
class JointSensitivities
{
public:
    explicit JointSensitivities(const RunShare &share)
        : m_share(share)
    {
        for (const Contribution &part : share.contributions)
            m_parts.push_back(
                std::make_unique<Sensitivities>(*share.layout, *part.terms, *share.sample, part.tubes));
    }

    const RunShare &share() const { return m_share; }
    Sensitivities &part(size_t number) { return *m_parts[number]; }
    /// Up to the dilution steps every part has its inputs at the same places.
    const InputIndex &index() const { return m_parts.front()->index(); }

    /// To an absorbance or a relative factor, which all parts share.
    double to(size_t input)
    {
        double sum = 0;
        for (size_t i = 0; i < m_parts.size(); ++i)
            sum += m_share.contributions[i].factor * m_parts[i]->to(input);
        return sum;
    }

private:
    const RunShare &m_share;
    std::vector<std::unique_ptr<Sensitivities>> m_parts;
};

} // namespace plateau::evaluation
