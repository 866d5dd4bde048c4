// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/samerun.h"

#include "core/exchange/writers.h"
#include "core/notebook/additions.h"
#include "core/notebook/inputs.h"
#include "core/notebook/runfinder.h"
#include "core/notebook/runlist.h"
#include "core/run/runcode.h"

#include <algorithm>

namespace plateau::notebook {

namespace {

bool hasReadings(const run::Run &run)
{
    return std::ranges::any_of(run.tubes, [](const run::Tube &tube) { return !tube.readings.empty(); });
}

/// As it was put on the bench: what is keyed carries what was typed, marks and further tubes came later.
QByteArray arrivalOf(Inputs inputs)
{
    std::erase_if(inputs.readings, [](const StoredReading &reading) {
        return reading.corrects || !reading.typed.isEmpty() || reading.order > 0;
    });
    std::erase_if(inputs.marks,
                  [&](const StoredMark &mark) { return mark.order > 0 || mark.at != inputs.arrivedAt; });
    cutTo(inputs.plan, inputs.planned);
    return exchange::writeRun(inputs.run(), &inputs.method);
}

} // namespace

std::optional<RunSummary> findSameRun(const Database &database, const run::Run &run,
                                      const assay::Method &method)
{
    const QByteArray document = exchange::writeRun(run, &method);
    const bool isPlan = !hasReadings(run);
    for (const RunId id : findRuns(database, run::runCode(run, method.version))) {
        const RunSummary summary = loadSummary(database, id);
        if (isPlan && summary.readingsTaken > 0)
            continue;
        if (arrivalOf(loadInputs(database, id)) == document)
            return summary;
    }
    return std::nullopt;
}

} // namespace plateau::notebook
