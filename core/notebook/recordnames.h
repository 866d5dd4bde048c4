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

} // namespace plateau::notebook
