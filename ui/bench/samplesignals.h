// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/planning/dilutionplan.h"
#include "ui/bench/rundraft.h"
#include "ui/shared/theme.h"

#include <optional>

namespace plateau::ui {

/// The number typed there; nothing for an empty text and for one that is no number.
std::optional<double> numberIn(const QString &text);
/// The dilution factor of the steps typed, a dash where they are not typed to their end.
QString factorText(const SampleDraft &sample);

struct SignalShown {
    /// Empty where nothing is expected.
    QString text;
    std::optional<State> state;
};
/// What the sample is expected to show of that measurand, and how it lies to the method's window.
SignalShown signalOf(const SampleDraft &sample, run::Form form, const assay::Method &method, int measurand,
                     int wavelength_nm, double pathLength_mm);

/// The sample with the best dilution and volume for what is expected of it; why holds the reason where there
/// is none. Nothing, and why empty, where nothing is expected.
std::optional<SampleDraft> withProposedDilution(const SampleDraft &sample, run::Form form,
                                                const assay::Method &method, int wavelength_nm,
                                                double pathLength_mm, const planning::Glassware &glassware,
                                                QString &why);

} // namespace plateau::ui
