// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"

#include <limits>

namespace plateau::notebook {

struct NewReading {
    qint64 tubeRow = 0;
    QString name;
    run::Reading value;
    QString typed;
    std::optional<ReadingId> corrects{};
    /// Of a correction, and only of one.
    QString reason{};
    /// One more of the series that the reading before, which corrects names, was the end of.
    bool again = false;
    ReadingOrigin origin{};
};
ReadingId storeReading(Act &act, const NewReading &reading);

/// All readings of the run, corrected ones too, oldest first.
std::vector<StoredReading> loadReadings(const Database &database, RunId run);
/// The reading that counts for a tube and a point; nullptr if there is none yet.
const StoredReading *currentReading(const std::vector<StoredReading> &readings, int tube,
                                    const QString &name);
/// Puts into the run's tubes what counted when the reading with that id was the newest.
void placeReadings(run::Run &run, const std::vector<StoredReading> &readings,
                   ReadingId newest = {std::numeric_limits<qint64>::max()});

/// Throws Failure(Refused) if the method takes no such reading or no photometer shows such a value.
void requireReading(const assay::Method &method, int tube, const QString &name, const run::Reading &value);

} // namespace plateau::notebook
