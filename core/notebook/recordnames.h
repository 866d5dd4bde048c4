// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/database.h"

#include <QString>

#include <map>
#include <optional>

namespace plateau::notebook {

/// Of a table, which columns hold the id of a row and of which table: "lot" names a row of "lot".
std::map<QString, QString> referencesOf(const Database &database, const QString &table);

/// What those at the bench call a row: the name on a container, the number of a run or of a tube in its rack. Nothing where it
/// has no name but its number in the file.
std::optional<QString> recordName(const Database &database, const QString &table, qint64 id);

/// Its place in the rack, from 1; 0 where there is no such tube.
int numberOfTube(const Database &database, qint64 id);

/// Of the newest method on record with that id; the id where there is none.
QString nameOfMethodId(const Database &database, const QString &methodId);

/// What the run's method calls a component; the component's id where it has none of that.
QString nameOfComponent(const Database &database, qint64 run, const QString &id);

/// What a measurand or a derived result is called by the run's method (0: no run is meant), by the newest method of that id
/// (empty: none is meant), or else by the newest method on record that has it; its own id where no method has.
QString nameOfMeasurand(const Database &database, qint64 run, const QString &methodId, const QString &id);

} // namespace plateau::notebook
