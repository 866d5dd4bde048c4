// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"
#include "core/notebook/progress.h"

#include <QString>

namespace plateau::notebook {

/// The same once more as a person looks for it, in that folder: every run as plateau-run/1 with its method in
/// it (runs/000012.json), every evaluation as it was decided on (evaluations/000012-1.json), the laboratory
/// and its limits as they are now, and results.csv, a row for each result of each decision.
void exportDocuments(const Session &session, const QString &folder, Progress &progress);

} // namespace plateau::notebook
