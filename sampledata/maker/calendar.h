// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "sampledata/maker/samplemaker.h"

namespace plateau::sampledata {

struct WorkingDay {
    QDate day;
    int runs = 0;
};

/// In their order, runs together as many as wanted. A laboratory of few runs makes about one a day, a busy
/// one up to twelve; nobody works at weekends and around the turn of the year.
std::vector<WorkingDay> workingDays(const WantedHistory &wanted);

} // namespace plateau::sampledata
