// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"
#include "core/run/run.h"

namespace plateau::run {

/// Times of components and readings that the method does not have are errors. A time that lies before what
/// the method has ahead of it in the same tube is a warning: such a run was kept as it was marked, and a mark
/// that came too late must not shut its file out. The order of additions with no wait between them is free.
void checkTimes(const Run &run, const assay::Method &method, assay::Problems &problems);

} // namespace plateau::run
