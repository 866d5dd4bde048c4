// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/run/run.h"

#include <vector>

/// Small methods and tubes for tests: round numbers, so that a result can be followed in the head.
namespace plateau::test {

/// Rising, A1 to A2: buffer 1.0, water 1.0, sample 0.1 (0.05 to 0.5), starter 0.02 mL; V = 2.12 mL; M 100, e
/// 6300.
assay::Method risingMethod();
/// What a signal of 1 in a tube of risingMethod comes to: V M / (e d v n) with d 1 cm, n 1.
inline constexpr double risingFactor_g_per_L = 2.12 * 100 / (6300 * 0.1);
/// The same, falling, with a reserve of 0.1.
assay::Method fallingMethod();
/// Two measurands, "first" A1 to A2 and "second" A2 to A3, with a second enzyme of 0.02 mL between.
assay::Method sequentialMethod();
/// Coupled indicator A0, A1, A2; a second enzyme of 0.02 mL between A0 and A1.
assay::Method coupledMethod();

run::Tube blank(double a1, double a2);
run::Tube sampleTube(const char *sample, double a1, double a2);
run::Tube standardTube(const char *standard, double a1, double a2);
run::Sample liquid(const char *id, std::vector<run::DilutionStep> dilution = {});
run::Sample solid(const char *id, double mass_g, double extract_mL,
                  std::vector<run::DilutionStep> dilution = {});
/// A run of risingMethod: a blank of 0.010, one sample "S" of signal 0.510 in duplicate.
run::Run plainRun();
/// A coverage of every term that the contract's uncertainty object has.
run::UncertaintyInputs uncertainties();

} // namespace plateau::test
