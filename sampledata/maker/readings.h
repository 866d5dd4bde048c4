// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/run/run.h"
#include "sampledata/maker/chance.h"

#include <map>

namespace plateau::sampledata {

/// What is true of a tube before anybody reads it.
struct TubeTruth {
    /// In what is pipetted, dilution and all, by measurand.
    std::map<QString, double> pipetted_g_per_L{};
    /// What went in is so much of what should have.
    double dosed = 1;
    /// Of the substance that reacts within the waiting time.
    double conversion = 1;
    double background = 0.2;
    double blankSignal = 0.006;
    /// The starter stays out of it.
    bool withoutStarter = false;
    /// What the photometer shows is so much of what there is, with so much noise (absorbance).
    double scale = 1;
    double noise = 0.0012;
};

/// What the photometer shows at every reading point of the tube, to three decimals: the signals by the
/// volumes, the absorptivity and the kind of signal of the method, on what the tube holds already.
std::map<QString, double> readingsOf(const assay::Method &method, const run::Tube &tube,
                                     const TubeTruth &truth, Chance &chance);

/// Net signal of so much in the solution at the method's usual sample volume; for choosing dilutions.
double signalOf(const assay::Method &method, const assay::Measurand &measurand, double pipetted_g_per_L,
                const run::Tube &tube);

} // namespace plateau::sampledata
