// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "sampledata/maker/rack.h"

namespace plateau::sampledata {

/// What becomes of a run that was read.
struct Judgement {
    notebook::RunDecision decision;
    /// What is run once more, and how.
    struct Again {
        QString sample;
        std::optional<evaluation::Advice> advice;
    };
    std::vector<Again> repeats;
    /// The standard was not found.
    bool standardFailed = false;
};

/// As a careful reviewer decides: rejected where blank or standard fail, else accepted, with a decision of
/// its own for every sample whose tubes disagree or that is out of range.
Judgement judgementOf(const evaluation::Evaluation &evaluation, const Rack &rack);

} // namespace plateau::sampledata
