// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/runfinder.h"

#include "core/notebook/runstore.h"
#include "core/run/runcode.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

std::vector<RunId> findRuns(const Database &database, const QString &runCode)
{
    std::vector<RunId> found;
    Statement runs(database, u"SELECT run.id, method.version FROM run JOIN method ON method.id = run.method "
                             "ORDER BY run.id DESC"_s);
    runs.run();
    while (runs.next()) {
        const RunId id{runs.integer(0)};
        if (run::runCode(loadPlan(database, id), int(runs.integer(1))) == runCode)
            found.push_back(id);
    }
    return found;
}

QString runCodeOf(const StoredRun &stored)
{
    run::Run planned = stored.run;
    planned.samples.resize(size_t(stored.plannedSamples));
    planned.tubes.resize(size_t(stored.plannedTubes));
    return run::runCode(planned, stored.method.version);
}

} // namespace plateau::notebook
