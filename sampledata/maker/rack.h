// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/notebook.h"
#include "sampledata/maker/cupboard.h"
#include "sampledata/maker/racksamples.h"
#include "sampledata/maker/readings.h"
#include "sampledata/maker/standardmaking.h"
#include "sampledata/maker/story.h"

namespace plateau::sampledata {

/// A run that is about to be made, and what its tubes would show.
struct Rack {
    assay::Method method;
    run::Run run;
    planning::PlanRecord plan;
    std::vector<MadeSample> samples;
    /// Of each tube.
    std::vector<TubeTruth> truths;
    /// By component; of those that come from a container.
    std::map<QString, OpenLot> lots;
    QString analyst;
};

/// What the rack is made of.
struct RackParts {
    const MethodInUse &use;
    const assay::Method &method;
    /// With the figures of the checks that hold on that day.
    const planning::Laboratory &laboratory;
    std::vector<MadeSample> samples;
    std::vector<const FlaskOfStandard *> standards;
    QString analyst;
    QDateTime now;
};

/// Blanks, standards, the control and every sample twice, a coloured one with a blank of its own. Reagents
/// are taken out of the cupboard.
Rack rackOf(const RackParts &parts, Cupboard &cupboard, const Story &story, Chance &chance);

/// The control material of a method on that day: a new container of it is made up twice a year.
QString controlNameOf(const MethodInUse &use, const QDate &day);

} // namespace plateau::sampledata
