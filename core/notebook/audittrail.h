// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"

#include <QDate>
#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace plateau::notebook {

class Database;

/// Which audit entries are wanted; what is left empty does not matter.
struct AuditFilter {
    /// With the jumps of the clock while it was on the bench.
    std::optional<RunId> run{};
    /// The name as it was given.
    QString person{};
    /// As AuditEntry::action. Empty: all but the further steps that made a file new (lastOfMaking).
    QStringList actions{};
    /// Days by the clock on the wall, both included.
    std::optional<QDate> from{};
    std::optional<QDate> to{};
    /// In the details, the person's name or the title of the run, without regard to case (of ASCII letters).
    QString text{};
    /// Only entries before this one: where the list that was shown ends.
    std::optional<qint64> before{};
    int most = 200;
};

/// An entry as a person reads it.
struct AuditItem {
    AuditEntry entry;
    /// Empty for an act on the notebook as a whole.
    QString runTitle;
    bool operator==(const AuditItem &other) const { return entry.hash == other.entry.hash; }
};

/// A value with what it is of, both in words.
struct AuditValue {
    /// "use-by date"; empty where the subject says it all.
    QString field;
    QString value;
    /// Then it is in C format, without a unit.
    bool isNumber = false;
    bool operator==(const AuditValue &) const = default;
};

/// One thing that an act changed.
struct AuditChange {
    /// "tube 5, A2", "the run", "label of a container: B-17".
    QString subject;
    /// Empty: there was nothing before.
    std::vector<AuditValue> before;
    std::vector<AuditValue> after;
    /// Why, where one is on record.
    QString reason;
    bool operator==(const AuditChange &) const = default;
};

/// The last of the steps that a program took to make the file new, up to its newest form; 1 where it took one, and 0 of a file
/// without entries. What a later program did to the file is none of them.
qint64 lastOfMaking(const Database &database);

/// Newest first.
std::vector<AuditItem> auditItems(const Database &database, const AuditFilter &filter);
/// Everybody who did something, by name; every kind of act there is.
QStringList auditPersons(const Database &database);
QStringList auditActions(const Database &database);

/// What the entry added, each with what stood there before. A run that was put on the bench is told by its tubes, method and
/// lots, another act that added many rows by how many of what. Rows that are only there for the file, and their numbers, are left out.
std::vector<AuditChange> auditChanges(const Database &database, qint64 entry);

} // namespace plateau::notebook
