// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "tests/published/montecarlo.h"
#include "tests/published/pipetting.h"

/// What the runs have in common whose inputs are drawn.
namespace plateau::published {

inline constexpr run::UncertaintyInputs statedInputs{0.002, 0.8, 0.7, 0.9, 0.8, 0.6, 0.7};

/// reagent 1.0, water 1.0, sample 0.1, starter 0.02 (and a second one of 0.02) mL; M 100 g/mol; 6300 L/(mol
/// cm).
inline const Pipetting drawnScheme{{1.0}, 1.0, 0.1, 0.02};
inline const Absorptivities at340{{340, 6300}};

inline double drawnAbsorbance(Inputs &in, double read)
{
    return in.drawn(read, statedInputs.absorbance);
}

inline run::Tube withThird(run::Tube tube, double a3)
{
    tube.readings[QStringLiteral("A3")] = a3;
    return tube;
}

} // namespace plateau::published
