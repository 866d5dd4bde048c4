// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/run/run.h"

namespace plateau::run {

/// Whether the run has that standard in tubes of controls only: it is material of a known value that the run
/// is held against, and was not prepared for it.
bool isControl(const Run &run, const QString &standard);
/// Whether that sample of the run is material that stands in the rack as a control, run after run.
bool isControlSample(const Run &run, const QString &sample);

} // namespace plateau::run
