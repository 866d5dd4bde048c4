// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/database.h"
#include "core/notebook/progress.h"

#include <QString>
#include <QStringList>

namespace plateau::notebook {

/// What was written of one table.
struct ExportedTable {
    QString name;
    QStringList columns;
    qint64 rows = 0;
    /// SHA-256 of the JSON, hexadecimal.
    QString hash;
};

/// Every row of a table, in the order of its ids, as NAME.json and NAME.csv in that folder. JSON: an object
/// of the table's name, its columns, and its rows as lists, one a line; whole numbers without and others with
/// a decimal point, in the shortest form that reads back to the same number; null for nothing. CSV: RFC 4180
/// with a line of columns; texts always in quotation marks, nothing at all for nothing.
ExportedTable exportTable(const Database &database, const QString &table, const QStringList &columns,
                          const QString &folder, Progress &progress);

/// A cell of text as the export writes it.
QByteArray csvText(const QString &text);

} // namespace plateau::notebook
