// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/runfinder.h"

#include "core/notebook/additions.h"
#include "core/run/runcode.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

std::vector<RunId> findRuns(const Database &database, const QString &runCode)
{
    std::vector<RunId> found;
    Statement runs(database, u"SELECT run FROM search_run WHERE code = ? ORDER BY run DESC"_s);
    runs.run(runCode);
    while (runs.next())
        found.push_back({runs.integer(0)});
    return found;
}

QString runCodeOf(const Inputs &inputs)
{
    run::Run planned = inputs.plan;
    cutTo(planned, inputs.planned);
    return run::runCode(planned, inputs.method.version);
}

} // namespace plateau::notebook
