// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/matrix.h"
#include "core/assay/problem.h"
#include "core/planning/laboratory.h"
#include "core/planning/planrecord.h"
#include "core/planning/tubeorder.h"
#include "core/planning/uncertaintysources.h"
#include "core/run/run.h"

#include <QDateTime>
#include <QString>

#include <array>
#include <optional>
#include <vector>

namespace plateau::ui {

/// A run as it is being filled in. Numbers are the texts that were typed, so that nothing typed is lost.
struct DilutionDraft {
    QString take_mL;
    QString makeUpTo_mL;
    bool operator==(const DilutionDraft &) const = default;
};

struct SampleDraft {
    QString id;
    QString mass_g;
    QString extract_mL;
    /// Empty: the method's.
    QString sampleVolume_mL;
    bool ownBlank = false;
    /// A step with both fields empty does not count.
    std::vector<DilutionDraft> dilution;
    /// By the method's measurand; empty, or shorter: nothing is expected.
    std::vector<QString> expected{};
    /// Empty: as many as the rack has of each.
    QString replicates{};
    /// Of the standard, into one tube more. Empty: none.
    QString spike_mL{};
    QString product{};
    assay::Matrix matrix = assay::Matrix::Clear;
    /// Empty: not said.
    QString received{};
    QString receivedFrom{};
    /// Number of the run that advised to repeat it.
    std::optional<qint64> repeats{};
    bool operator==(const SampleDraft &) const = default;
};

struct StandardDraft {
    QString id;
    QString concentration_g_per_L;
    QString lossPerHour_percent;
    /// Empty: not said, which only a standard that keeps its strength can do without.
    QString preparedAt;
    /// Else at usedAt.
    bool usedWhenRead = true;
    QString usedAt;
    int tubes = 2;
    /// Volumes in the tube, separated by spaces or semicolons, each in so many tubes. Empty: the method's.
    QString volumes_mL{};
    /// Standard uncertainty (k = 1) of the concentration; empty: it counts as exactly known.
    QString uncertainty_percent{};
    /// What says so, where it was not typed.
    QString uncertaintySource{};
};

/// In the order of planning::statedInputs. Empty: what the laboratory has for it.
struct UncertaintyDraft {
    std::array<QString, 7> texts;
};

struct RunDraft {
    QString title;
    run::Form form = run::Form::Liquid;
    std::vector<SampleDraft> samples;
    int replicates = 2;
    int blanks = 2;
    std::optional<StandardDraft> standard;
    /// A second standard, of a known value, that never calibrates.
    std::optional<StandardDraft> control{};
    run::Calibration calibration = run::Calibration::Absorptivity;
    int wavelength_nm = 340;
    QString pathLength_mm;
    UncertaintyDraft uncertainty;
    /// Also what times without a day are read by.
    QDateTime startedAt;
    /// How the tubes stand, where somebody moved one; see planning::arranged.
    std::vector<planning::TubeKey> order{};
    planning::Laboratory laboratory{};
    /// Who plans it, and answers for what was typed in place of the laboratory's numbers.
    QString person{};
};

struct DraftOutcome {
    run::Run run;
    /// What is known beyond the run, but for the start interval.
    planning::PlanRecord plan{};
    /// The run's uncertainties and whose they are, replicates last.
    std::vector<planning::OwnedInput> uncertainty{};
    assay::Problems problems;
};

/// The run that the draft stands for: blanks first, then the standard and the control, then each sample with
/// its replicates, its spiked tube and its own blank, unless they were put elsewhere. problems holds every
/// text that is no number and what run::problemsOf finds, each at its place in a plateau-run/1 document.
DraftOutcome runOf(const RunDraft &draft, const assay::Method &method);

} // namespace plateau::ui
