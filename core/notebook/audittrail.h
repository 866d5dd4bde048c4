// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"

#include <QDate>
#include <QString>
#include <QStringList>

#include <functional>
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
    /// Every one of these words is in what a person reads of the entry: who, the run, what was done and to what, before, after
    /// and why; of moments what holds a dash or a colon. Without regard to case, to comma or point in numbers and to kinds of
    /// spaces; a number is not found within a longer one's digits, but at the beginning.
    QString text{};
    /// What a window says of an entry by itself (the name of the act in its language, its details), for text. Without it the
    /// details as they are on file.
    std::function<QString(const AuditEntry &)> shown{};
    /// Only entries before this one: where the list that was shown ends.
    std::optional<qint64> before{};
    int most = 200;
    /// Text is looked for in so many entries; what each changed is read for it, so that there must be an end. 0: in all.
    int mostLooked = 0;
};

/// An entry as a person reads it.
struct AuditItem {
    AuditEntry entry;
    /// Empty for an act on the notebook as a whole.
    QString runTitle;
    bool operator==(const AuditItem &other) const { return entry.hash == other.entry.hash; }
};

struct AuditPage {
    std::vector<AuditItem> items;
    /// The last entry that was looked at, where older ones were not: a page that goes on has it as `before`.
    std::optional<qint64> lookedTo{};
    /// When that one was done.
    QDateTime lookedBackTo{};
    /// The look ended by AuditFilter::mostLooked, not by how many it found.
    bool isCutShort = false;
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
AuditPage auditPage(const Database &database, const AuditFilter &filter);
/// Everybody who did something, by name; every kind of act there is.
QStringList auditPersons(const Database &database);
QStringList auditActions(const Database &database);

/// What the entry added, each with what stood there before. A run that was put on the bench is told by its tubes, method and
/// lots, another act that added many rows by how many of what. Rows that are only there for the file, and their numbers, are left out.
std::vector<AuditChange> auditChanges(const Database &database, qint64 entry);

} // namespace plateau::notebook
