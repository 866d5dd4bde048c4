// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"

#include <vector>

namespace plateau::evaluation {

/// The line through the last readings of every series in the run (as many as the method's extrapolation asks
/// for, else the last four), in the order of the tubes. ended: every change from one of these readings to the
/// next agrees with the line within the noise of two readings (2 x sqrt(2) x absorbance uncertainty), and,
/// where the method does not extrapolate, the line is level within that noise as well; two readings are
/// enough for that. A series that is extrapolated has not ended with fewer readings than the method asks for,
/// nor with fewer than three, whose two changes can be alike. One reading has no line and shows no end.
std::vector<SeriesFit> seriesFits(const assay::Method &method, const run::Run &run,
                                  double absorbanceUncertainty);

} // namespace plateau::evaluation
