// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "core/evaluation/working.h"

namespace plateau::evaluation {

/// Five significant figures, so that the calculation can be followed.
QString figures(double value);
/// An absorbance as it was read: with the three decimals of a photometer, or with those that were keyed where they
/// are more.
QString readText(double absorbance);
/// Every term of the budget, and how they add up.
WorkingSection uncertaintySection(const Result &result);
/// What the formulas are written in. Numbers stand there; here their units.
WorkingSection symbolSection(run::Calibration calibration, const run::Sample &sample, const Result &result);
/// What is to be reported in place of the value, where the result is less or greater than a bound.
void addBound(const Result &result, WorkingSection &section);
/// How a series was read at the starter's addition: what was read when, the line through it, and where that meets 0 min.
void addExtrapolation(const run::Tube &tube, const QString &reading, std::size_t points, const QString &value,
                      std::vector<WorkingLine> &lines);
/// What was pipetted otherwise than planned in a tube, so that V and v can be followed.
void addPipetted(const assay::Method &method, const run::Run &run, int tube, std::vector<WorkingLine> &lines);
/// Of a derived quantity: each term as it was found, then their sum.
std::vector<WorkingSection> derivedWorking(const Result &result);

} // namespace plateau::evaluation
