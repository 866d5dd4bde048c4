// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/charts/controlchart.h"

#include <QString>

namespace plateau::charts {

/// "recovery of standards", "range of duplicates" …
QString quantityName(Quantity quantity);
/// "individuals with moving range" …
QString kindName(Kind kind);
/// "one beyond 3 s", "two of three beyond 2 s on one side" …
QString ruleName(quality::RunRule rule);
/// "moving range", "mean of 2" …
QString plottedName(Plotted plotted, const Settings &settings);

/// A value of the series with as many decimals as two figures of the deviation have, with its unit; where
/// there is no deviation yet, four figures.
QString valueText(const ControlChart &chart, double value, const QString &unit);
/// How many decimals that are.
int decimalsOf(const ControlChart &chart);
/// "run 112 (Perry tanks, 2026-03-02)"
QString runText(const RunFacts &run);

/// What the limits come from, or what is missing for them, in one or two sentences.
QString basisSentence(const ControlChart &chart);
/// Which rule, which run, and what to do.
QString findingSentence(const ControlChart &chart, const Panel &panel, const Finding &finding);
/// One point with all that is known of it: number, run, value, distance from the centre, what it breaks,
/// changes, why it is left out.
QString pointSentence(const ControlChart &chart, std::size_t point);

} // namespace plateau::charts
