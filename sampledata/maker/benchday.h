// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "sampledata/maker/rack.h"

namespace plateau::sampledata {

/// What was keyed wrongly, and is corrected now or later.
struct Slip {
    int tube = 0;
    QString reading;
    double right = 0;
    double wrong = 0;
};

/// What the tubes of the rack show, by tube.
using RackReadings = std::vector<std::map<QString, double>>;
RackReadings readingsOf(const Rack &rack, Chance &chance);
/// Two digits of one of them change places in it; nothing where none has two unlike ones.
std::optional<Slip> slipInto(RackReadings &readings, const Rack &rack, Chance &chance);

/// The minutes of every tube's doses and readings, tube after tube.
void placeTimes(run::Run &run, const assay::Method &method);

/// From the first dose to the reading's slip, of a rack of so many samples in duplicate.
int durationOf_s(const assay::Method &method, int samples);

/// As a file with its readings, its lots and the times of every tube.
notebook::RunId bringIn(notebook::Notebook &notebook, Rack &rack, const RackReadings &readings);

/// At the bench: planned, dosed row by row and tube by tube out of named containers, every reading keyed.
/// untilTube: of the readings of the first point; those behind it are not taken.
notebook::RunId workAtBench(notebook::Notebook &notebook, Rack &rack, const RackReadings &readings,
                            QDateTime &now, std::optional<int> untilTube = {});

} // namespace plateau::sampledata
