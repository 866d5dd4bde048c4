// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/schema.h"

#include "core/notebook/content.h"
#include "core/notebook/database.h"
#include "core/notebook/statement.h"

#include <map>
#include <mutex>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

const QLatin1StringView newestFingerprint =
    "9548d71112e27960288920a653c7598afe80b9d7e1fbc555f9c9f1842d819563"_L1;

const std::vector<SchemaStep> &schemaSteps()
{
    static const std::vector<SchemaStep> steps{firstSchemaStep(),  secondSchemaStep(), thirdSchemaStep(),
                                               fourthSchemaStep(), fifthSchemaStep(),  sixthSchemaStep(),
                                               seventhSchemaStep(), eighthSchemaStep(), ninthSchemaStep()};
    return steps;
}

bool isDerived(const QString &table)
{
    return table.startsWith("search_"_L1);
}

QStringList protectionOf(const QString &table, const QStringList &keys)
{
    QString pushedOut = u"id = NEW.id"_s;
    for (const QString &key : keys)
        pushedOut += u" OR ("_s + key + u')';
    const QString refuse = u"BEGIN SELECT RAISE(ABORT, 'rows of %1 are only ever added'); END"_s.arg(table);
    return {
        u"CREATE TRIGGER %1_no_update BEFORE UPDATE ON %1 %2"_s.arg(table, refuse),
        u"CREATE TRIGGER %1_no_delete BEFORE DELETE ON %1 %2"_s.arg(table, refuse),
        u"CREATE TRIGGER %1_no_replace BEFORE INSERT ON %1 WHEN EXISTS (SELECT 1 FROM %1 WHERE %2) %3"_s.arg(
            table, pushedOut, refuse),
    };
}

Layout layoutOf(const Database &database)
{
    Layout layout;
    // What a word index keeps itself in is its engine's own affair and may differ with its version.
    Statement objects(
        database, u"SELECT type, name, CASE WHEN name IN (SELECT name FROM pragma_table_list WHERE schema = "
                  "'main' AND type = 'shadow') THEN '' ELSE coalesce(sql, '') END FROM sqlite_schema"_s);
    objects.run();
    while (objects.next())
        layout.objects[{objects.text(0), objects.text(1)}] = objects.text(2);
    Statement columns(database, u"SELECT tables.name, columns.name FROM sqlite_schema AS tables CROSS JOIN "
                                "pragma_table_info(tables.name) AS columns WHERE tables.type = 'table' "
                                "ORDER BY tables.name, columns.cid"_s);
    columns.run();
    while (columns.next())
        layout.columns[columns.text(0)].append(columns.text(1));
    return layout;
}

namespace {

struct KnownLayouts {
    std::mutex mutex;
    std::map<int, Layout> byNumber;
};

KnownLayouts &knownLayouts()
{
    static KnownLayouts known;
    return known;
}

Layout builtLayout(const std::vector<SchemaStep> &steps, int number)
{
    Database database(Database::InMemory::Yes);
    database.setForeignKeys(false); // as in a migration
    for (const SchemaStep &step : steps) {
        if (step.number <= number)
            applyStatements(database, step);
    }
    return layoutOf(database);
}

} // namespace

Layout layoutAfter(const std::vector<SchemaStep> &steps, int number)
{
    if (&steps != &schemaSteps())
        return builtLayout(steps, number);
    // Every opening asks for the newest, every verification for all of them.
    const std::lock_guard lock(knownLayouts().mutex);
    auto &known = knownLayouts().byNumber;
    const auto found = known.find(number);
    return found != known.end() ? found->second
                                : known.emplace(number, builtLayout(steps, number)).first->second;
}

QString fingerprintOf(const Layout &layout)
{
    FieldHash hash("plateau-schema/1");
    for (const auto &[object, sql] : layout.objects) {
        hash.add(object.type);
        hash.add(object.name);
        hash.add(sql);
    }
    return hash.hex();
}

bool hasNewestLayout(const Database &database)
{
    const Layout found = layoutOf(database);
    if (fingerprintOf(found) != newestFingerprint)
        return false;
    const std::lock_guard lock(knownLayouts().mutex);
    knownLayouts().byNumber.emplace(schemaSteps().back().number, found);
    return true;
}

void applyStatements(const Database &database, const SchemaStep &step)
{
    for (const QString &statement : step.statements)
        database.execute(statement);
}

} // namespace plateau::notebook
