// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/recordnames.h"

#include "core/notebook/sentence.h"
#include "core/notebook/statement.h"

#include <nlohmann/json.hpp>

#include <initializer_list>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

QString memberText(const nlohmann::json &object, const char *key)
{
    if (!object.is_object() || !object.contains(key) || !object[key].is_string())
        return {};
    return QString::fromStdString(object[key].get<std::string>());
}

nlohmann::json methodIn(const QString &document)
{
    return nlohmann::json::parse(document.toStdString(), nullptr, false);
}

QString methodNameIn(const QString &document)
{
    return memberText(methodIn(document), "name");
}

/// Of the member of one of the method's lists that has this id; empty where none has.
QString memberNameIn(const QString &document, std::initializer_list<const char *> lists, const QString &id)
{
    const nlohmann::json method = methodIn(document);
    for (const char *list : lists) {
        if (!method.is_object() || !method.contains(list) || !method[list].is_array())
            continue;
        for (const nlohmann::json &member : method[list]) {
            if (memberText(member, "id") == id)
                return memberText(member, "name");
        }
    }
    return {};
}

/// The documents of the methods that the query, which takes the value, gives.
QStringList methodDocuments(const Database &database, const QString &condition, const QVariant &value)
{
    Statement query(database, u"SELECT content FROM method WHERE %1 ORDER BY id DESC"_s.arg(condition));
    query.runWith(QVariantList{value});
    QStringList documents;
    while (query.next())
        documents << query.text(0);
    return documents;
}

QStringList methodOfRun(const Database &database, qint64 run)
{
    return methodDocuments(database, u"id = (SELECT method FROM run WHERE id = ?)"_s, run);
}

/// The one text that the query, which takes the id, gives.
std::optional<QString> textByQuery(const Database &database, const QString &sql, qint64 id)
{
    Statement query(database, sql);
    query.run(id);
    return query.next() && !query.isNull(0) ? std::optional(query.text(0)) : std::nullopt;
}

/// How the name is found of rows that have one or several versions with one.
const std::map<QString, QString> &queriesOfNames()
{
    static const std::map<QString, QString> queries = [] {
        std::map<QString, QString> made;
        for (const QString &table : {u"sample"_s, u"standard"_s, u"sample_detail"_s, u"lot_version"_s, u"equipment_version"_s,
                                     u"substance_version"_s, u"preparation"_s, u"person_version"_s})
            made[table] = u"SELECT name FROM %1 WHERE id = ?"_s.arg(table);
        for (const auto &[owner, column] : {std::pair{u"lot"_s, u"lot"_s}, std::pair{u"person"_s, u"person"_s},
                                            std::pair{u"substance"_s, u"substance"_s},
                                            std::pair{u"equipment_item"_s, u"item"_s}}) {
            const QString versions = owner == "equipment_item"_L1 ? u"equipment_version"_s : owner + u"_version"_s;
            made[owner] = u"SELECT name FROM %1 WHERE %2 = ? ORDER BY id DESC LIMIT 1"_s.arg(versions, column);
        }
        made[u"shelf_sample"_s] = u"SELECT name FROM sample_detail JOIN shelf_version ON shelf_version.detail = "
                                  "sample_detail.id WHERE shelf_version.sample = ? ORDER BY shelf_version.id DESC LIMIT 1"_s;
        return made;
    }();
    return queries;
}

std::optional<QString> nameOfReading(const Database &database, qint64 id)
{
    Statement query(database, u"SELECT tube, name FROM reading WHERE id = ?"_s);
    query.run(id);
    if (!query.next())
        return std::nullopt;
    return Sentence::tr("tube %1, %2").arg(numberOfTube(database, query.integer(0))).arg(query.text(1));
}

/// "P-104, step 2"
std::optional<QString> nameOfDilution(const Database &database, qint64 id)
{
    Statement query(database,
                    u"SELECT name, dilution.position FROM dilution JOIN sample ON sample.id = dilution.sample WHERE dilution.id = ?"_s);
    query.run(id);
    if (!query.next())
        return std::nullopt;
    return Sentence::tr("%1, step %2", "a sample and a step of its dilution")
        .arg(query.text(0), QString::number(query.integer(1) + 1));
}

std::optional<QString> nameOfMethodRow(const Database &database, qint64 id)
{
    Statement query(database, u"SELECT content, version FROM method WHERE id = ?"_s);
    query.run(id);
    if (!query.next())
        return std::nullopt;
    return Sentence::tr("%1, version %2").arg(methodNameIn(query.text(0))).arg(query.integer(1));
}

} // namespace

std::map<QString, QString> referencesOf(const Database &database, const QString &table)
{
    Statement query(database, u"SELECT \"from\", \"table\" FROM pragma_foreign_key_list(?) WHERE \"to\" = 'id'"_s);
    query.run(table);
    std::map<QString, QString> references;
    while (query.next())
        references[query.text(0)] = query.text(1);
    return references;
}

std::optional<QString> recordName(const Database &database, const QString &table, qint64 id)
{
    if (table == "run"_L1)
        return Sentence::tr("run %1").arg(id);
    if (table == "tube"_L1)
        return QString::number(numberOfTube(database, id));
    if (table == "reading"_L1)
        return nameOfReading(database, id);
    if (table == "dilution"_L1)
        return nameOfDilution(database, id);
    if (table == "method"_L1)
        return nameOfMethodRow(database, id);
    const auto query = queriesOfNames().find(table);
    return query == queriesOfNames().end() ? std::nullopt : textByQuery(database, query->second, id);
}

int numberOfTube(const Database &database, qint64 id)
{
    Statement tube(database, u"SELECT position + 1 FROM tube WHERE id = ?"_s);
    tube.run(id);
    return tube.next() ? int(tube.integer(0)) : 0;
}

QString nameOfMethodId(const Database &database, const QString &methodId)
{
    Statement query(database, u"SELECT content FROM method WHERE method_id = ? ORDER BY id DESC LIMIT 1"_s);
    query.run(methodId);
    const QString name = query.next() ? methodNameIn(query.text(0)) : QString();
    return name.isEmpty() ? methodId : name;
}

QString nameOfComponent(const Database &database, qint64 run, const QString &id)
{
    for (const QString &document : methodOfRun(database, run)) {
        if (const QString name = memberNameIn(document, {"components"}, id); !name.isEmpty())
            return name;
    }
    return id;
}

QString nameOfMeasurand(const Database &database, qint64 run, const QString &methodId, const QString &id)
{
    const QStringList documents = methodOfRun(database, run) + methodDocuments(database, u"method_id = ?"_s, methodId) +
                                  methodDocuments(database, u"instr(content, ?) > 0"_s, u"\"%1\""_s.arg(id));
    for (const QString &document : documents) {
        if (const QString name = memberNameIn(document, {"measurands", "derived"}, id); !name.isEmpty())
            return name;
    }
    return id;
}

} // namespace plateau::notebook
