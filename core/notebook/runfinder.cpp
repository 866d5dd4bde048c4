// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/runfinder.h"

#include "core/notebook/additions.h"
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
        run::Run planned = loadPlan(database, id);
        if (const auto size = plannedSize(database, id))
            cutTo(planned, *size);
        if (run::runCode(planned, int(runs.integer(1))) == runCode)
            found.push_back(id);
    }
    return found;
}

QString runCodeOf(const Inputs &inputs)
{
    run::Run planned = inputs.plan;
    cutTo(planned, inputs.planned);
    return run::runCode(planned, inputs.method.version);
}

} // namespace plateau::notebook
