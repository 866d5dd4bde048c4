// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/schedule.h"

#include <string>
#include <vector>

/// Checks on schedules that share no code and no idea with the scheduler.
namespace plateau::test {

/// Works the schedule at a bench second by second, with one pair of hands and one watch for each tube. What
/// went wrong, in words; empty if nothing did.
std::vector<std::string> workedAtTheBench(const planning::Schedule &schedule,
                                          const planning::Procedure &procedure, int tubes,
                                          const std::vector<planning::Span> &busy = {});

/// Tries every start of every operation on the grid, at this interval, in a diary of seconds. The starts of
/// the first tube's operations, the earliest first; empty if none do.
std::vector<int> startsByTrial(const planning::Procedure &procedure, int tubes, int interval_s,
                               const planning::Bench &bench = {});

} // namespace plateau::test
