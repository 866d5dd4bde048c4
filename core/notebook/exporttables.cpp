// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/exporttables.h"

#include "core/notebook/exportfile.h"
#include "core/notebook/statement.h"

#include <nlohmann/json.hpp>

namespace plateau::notebook {

using namespace Qt::StringLiterals;
using nlohmann::json;

namespace {

json cellOf(const Statement &row, int column)
{
    if (row.isNull(column))
        return nullptr;
    const QVariant value = row.value(column);
    switch (value.typeId()) {
    case QMetaType::LongLong:
    case QMetaType::Int:
        return value.toLongLong();
    case QMetaType::Double:
        return value.toDouble();
    default:
        return value.toString().toStdString();
    }
}

QByteArray csvCell(const Statement &row, int column, const json &cell)
{
    if (cell.is_null())
        return {};
    return cell.is_string() ? csvText(row.text(column)) : QByteArray::fromStdString(cell.dump());
}

QByteArray headJson(const QString &table, const QStringList &columns)
{
    json names = json::array();
    for (const QString &column : columns)
        names.push_back(column.toStdString());
    return QByteArray::fromStdString("{\"table\": " + json(table.toStdString()).dump() +
                                     ", \"columns\": " + names.dump() + ", \"rows\": [");
}

QByteArray headCsv(const QStringList &columns)
{
    QByteArrayList cells;
    for (const QString &column : columns)
        cells << csvText(column);
    return cells.join(',') + "\r\n";
}

} // namespace

QByteArray csvText(const QString &text)
{
    QByteArray cell = text.toUtf8();
    return '"' + cell.replace("\"", "\"\"") + '"';
}

ExportedTable exportTable(const Database &database, const QString &table, const QStringList &columns,
                          const QString &folder, Progress &progress)
{
    ExportedTable exported{table, columns, 0, {}};
    ExportFile inJson(u"%1/%2.json"_s.arg(folder, table));
    ExportFile inCsv(u"%1/%2.csv"_s.arg(folder, table));
    inJson.write(headJson(table, columns));
    inCsv.write(headCsv(columns));
    Statement rows(database, u"SELECT %1 FROM %2 ORDER BY id"_s.arg(columns.join(u", "_s), table));
    rows.run();
    while (rows.next()) {
        json row = json::array();
        QByteArrayList cells;
        for (int column = 0; column < columns.size(); ++column) {
            row.push_back(cellOf(rows, column));
            cells << csvCell(rows, column, row.back());
        }
        inJson.write((exported.rows++ == 0 ? "\n" : ",\n") + QByteArray::fromStdString(row.dump()));
        inCsv.write(cells.join(',') + "\r\n");
        progress.advance();
    }
    inJson.write("\n]}\n");
    exported.hash = inJson.finish();
    inCsv.finish();
    return exported;
}

} // namespace plateau::notebook
