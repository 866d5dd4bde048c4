// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/exportmanifest.h"

#include "core/notebook/notebook.h"
#include "core/notebook/sentence.h"

#include <QDir>

#include <nlohmann/json.hpp>

namespace plateau::notebook {

using namespace Qt::StringLiterals;
using nlohmann::ordered_json;

namespace {

QString textIn(const ordered_json &object, const char *key)
{
    return QString::fromStdString(object.at(key).get<std::string>());
}

ordered_json tableJson(const ExportedTable &table)
{
    ordered_json columns = ordered_json::array();
    for (const QString &column : table.columns)
        columns.push_back(column.toStdString());
    return {{"table", table.name.toStdString()},
            {"rows", table.rows},
            {"json_sha256", table.hash.toStdString()},
            {"columns", columns}};
}

ExportedTable tableIn(const ordered_json &object)
{
    ExportedTable table;
    table.name = textIn(object, "table");
    table.rows = object.at("rows").get<qint64>();
    table.hash = textIn(object, "json_sha256");
    for (const ordered_json &column : object.at("columns"))
        table.columns << QString::fromStdString(column.get<std::string>());
    return table;
}

} // namespace

QByteArray manifestJson(const ExportManifest &manifest)
{
    ordered_json tables = ordered_json::array();
    for (const ExportedTable &table : manifest.tables)
        tables.push_back(tableJson(table));
    const ordered_json document{
        {"format", QString::fromUtf16(exportFormat).toStdString()},
        {"program", manifest.program.toStdString()},
        {"exportedAt", manifest.exportedAt.toStdString()},
        {"notebook", manifest.notebook.toStdString()},
        {"schema", manifest.schema},
        {"audit", {{"entries", manifest.head.entries}, {"head", manifest.head.hash.toStdString()}}},
        {"tables", tables}};
    return QByteArray::fromStdString(document.dump(2)) + '\n';
}

ExportManifest readManifest(const QByteArray &json, const QString &path)
{
    const auto refuse = [&path](const QString &details) -> Failure {
        return Failure(Failure::Kind::NotANotebook,
                       Sentence::tr("The file %1 is not the manifest of an export of a notebook; nothing was "
                                    "imported: choose the folder that the export made.")
                           .arg(QDir::toNativeSeparators(path)),
                       details);
    };
    try {
        const ordered_json document = ordered_json::parse(json.constBegin(), json.constEnd());
        if (textIn(document, "format") != QString::fromUtf16(exportFormat))
            throw refuse(textIn(document, "format"));
        ExportManifest manifest;
        manifest.program = textIn(document, "program");
        manifest.exportedAt = textIn(document, "exportedAt");
        manifest.notebook = textIn(document, "notebook");
        manifest.schema = document.at("schema").get<int>();
        manifest.head = {document.at("audit").at("entries").get<int>(), textIn(document.at("audit"), "head")};
        for (const ordered_json &table : document.at("tables"))
            manifest.tables.push_back(tableIn(table));
        return manifest;
    } catch (const ordered_json::exception &wrong) {
        throw refuse(QString::fromUtf8(wrong.what()));
    }
}

} // namespace plateau::notebook
