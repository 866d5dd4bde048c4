// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>
#include <QStringList>

#include <map>
#include <tuple>
#include <vector>

namespace plateau::notebook {

class Database;

/// "Plat" in the file header: the file is ours, whatever its name.
inline constexpr qint64 applicationId = 0x506C6174;

/// One numbered change of the schema. A step that has been shipped never changes again; a later need is a new
/// step. Steps after the first leave audit and audit_record as they are, give every new table an
/// "id INTEGER PRIMARY KEY", and protect it with protectionOf; derived ones are free of both.
struct SchemaStep {
    int number = 0;
    /// One line for the audit trail.
    QString description;
    /// One SQL statement each.
    QStringList statements;
    /// Fills what the step made that follows from the records (isDerived).
    void (*derive)(const Database &) = nullptr;
};

/// All steps of this program, numbered from 1 without a gap.
const std::vector<SchemaStep> &schemaSteps();
SchemaStep firstSchemaStep();
SchemaStep secondSchemaStep();
SchemaStep thirdSchemaStep();
SchemaStep fourthSchemaStep();
SchemaStep fifthSchemaStep();
SchemaStep sixthSchemaStep();
SchemaStep seventhSchemaStep();
SchemaStep eighthSchemaStep();
SchemaStep ninthSchemaStep();

/// A table, or the storage of one, that follows from the records and can be made anew from them at any time
/// (searchindex.h): it is not protected, and no audit entry covers it.
bool isDerived(const QString &table);

/// Triggers that let rows of a table only ever be added: they refuse UPDATE and DELETE, and any INSERT OR
/// REPLACE that would push out a row by its id or by one of the keys (SQL conditions on the old row and NEW),
/// since REPLACE fires no delete trigger where recursive triggers are off.
QStringList protectionOf(const QString &table, const QStringList &keys);

/// What stands in a schema, for comparing and for finding the columns a record had when it was hashed.
struct Layout {
    struct Name {
        QString type;
        QString name;
        bool operator<(const Name &other) const
        {
            return std::tie(type, name) < std::tie(other.type, other.name);
        }
    };
    /// The SQL text by type and name; empty for what SQLite makes by itself.
    std::map<Name, QString> objects;
    /// Column names in their order, by table.
    std::map<QString, QStringList> columns;
};

Layout layoutOf(const Database &database);
/// As the steps up to that number make it, in a fresh database.
Layout layoutAfter(const std::vector<SchemaStep> &steps, int number);

/// SHA-256 over the objects of a layout.
QString fingerprintOf(const Layout &layout);
/// Of what all steps of this program make. To make it, for a comparison, takes some hundred statements at every start.
extern const QLatin1StringView newestFingerprint;
/// Whether the file's schema is what all steps make, to the last letter. If not, schemaFindings says what is otherwise.
bool hasNewestLayout(const Database &database);

/// Runs the statements of one step; transaction and version are the caller's.
void applyStatements(const Database &database, const SchemaStep &step);

} // namespace plateau::notebook
