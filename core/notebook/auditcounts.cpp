// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/auditcounts.h"

#include "core/notebook/database.h"
#include "core/notebook/recordnames.h"
#include "core/notebook/recordwords.h"
#include "core/notebook/sentence.h"
#include "core/notebook/statement.h"

#include <utility>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

int countOf(const RecordCounts &counts, const QString &table)
{
    const auto found = counts.find(table);
    return found == counts.end() ? 0 : found->second;
}

QString nameOfMethodOf(const Database &database, qint64 run)
{
    Statement query(database, u"SELECT method FROM run WHERE id = ?"_s);
    query.run(run);
    return query.next() ? recordName(database, u"method"_s, query.integer(0)).value_or(QString()) : QString();
}

std::vector<AuditValue> lotsOf(const Database &database, qint64 run)
{
    Statement query(database, u"SELECT component, lot FROM lot_use WHERE run = ? ORDER BY position"_s);
    query.run(run);
    std::vector<AuditValue> lots;
    while (query.next())
        lots.push_back({nameOfComponent(database, run, query.text(0)), Sentence::tr("lot %1").arg(query.text(1))});
    return lots;
}

} // namespace

std::vector<AuditChange> countedChanges(const RecordCounts &counts)
{
    std::vector<AuditChange> changes;
    for (const auto &[table, count] : counts)
        changes.push_back({Sentence::tr("%1: %2").arg(recordWord(table), QString::number(count)), {}, {}, {}});
    return changes;
}

AuditChange benchChange(const Database &database, qint64 run, const RecordCounts &counts)
{
    AuditChange change;
    change.subject =
        Sentence::tr("%n tubes by %1", nullptr, countOf(counts, u"tube"_s)).arg(nameOfMethodOf(database, run));
    const std::pair<QString, QString> told[] = {{u"sample"_s, Sentence::tr("samples")},
                                                {u"standard"_s, Sentence::tr("standards")},
                                                {u"reading"_s, Sentence::tr("readings")}};
    for (const auto &[table, word] : told) {
        if (const int count = countOf(counts, table))
            change.after.push_back({word, QString::number(count), true});
    }
    const std::vector<AuditValue> lots = lotsOf(database, run);
    change.after.insert(change.after.end(), lots.begin(), lots.end());
    return change;
}

} // namespace plateau::notebook
