// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/updating.h"

#include "core/notebook/migration.h"
#include "core/notebook/opening.h"
#include "core/notebook/searchindex.h"

namespace plateau::notebook {

bool needsUpdate(const QString &path)
{
    const int newest = schemaSteps().back().number;
    const auto database = lookAtNotebookFile(path, Access::ReadWrite, newest);
    return schemaVersion(*database) < newest || !searchKnowsAllRuns(*database);
}

void updateNotebook(const QString &path, const UpdateWatch &watch, const Surroundings &surroundings)
{
    OpeningManner manner;
    manner.watch = watch;
    openNotebookFile(path, Access::ReadWrite, schemaSteps(), surroundings, manner);
}

} // namespace plateau::notebook
