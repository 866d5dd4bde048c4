// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"
#include "core/run/run.h"

namespace plateau::ui {

/// The problems of a run that is filled in on screen, with their JSON pointers put into the words of the
/// form:
/// "/samples/0/mass_g" becomes "sample P-104, mass". What has no word stays as it is.
assay::Problems inWordsOfTheForm(assay::Problems problems, const run::Run &run);

} // namespace plateau::ui
